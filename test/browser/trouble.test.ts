import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { startLatewood } from "../kit/browser.ts";
import { sampleDocument } from "../kit/documents.ts";
import { drawn, type PiecePage, piecePage } from "./piece-page.ts";

const latewood = startLatewood();

/** What the browser itself says in its console of a server that is gone. */
const GONE = /ERR_CONNECTION_REFUSED|ERR_CONNECTION_RESET|ERR_EMPTY_RESPONSE|ERR_FAILED/;
const wide = { width: 1440, height: 900 };

/** A fresh piece of this name, on the bench. */
async function fresh(name: string, quiet: RegExp = GONE): Promise<PiecePage> {
  const page = await latewood.open({ ...wide, quiet });
  await page.getByLabel("What it is called").fill(name);
  await page.getByRole("button", { name: "Begin a plain table" }).click();
  return drawn(page);
}

/** The piece on a page, as the server has it. */
const onServer = (page: Page) => keptAt(page.url());

async function keptAt(url: string) {
  const [, id] = /#\/piece\/([^/]+)/.exec(url) ?? [];
  const response = await fetch(new URL(`api/pieces/${id}`, latewood.url()));
  return response.json();
}

const text = (bench: PiecePage, label: string) => bench.field(label).inputValue();

describe("the server dies and comes back", () => {
  test("every edit that was shown meanwhile is kept, each once", async () => {
    const bench = await fresh("Killed table");
    const { page } = bench;
    await bench.write("Client", "Before");
    await bench.kept();
    await latewood.kill();
    await bench.write("Length of the top", "61 in");
    await bench.write("Height", "30 in");
    await bench.write("Client", "Meanwhile");
    await page.getByText(/Not kept yet: The program on this computer does not answer/).waitFor();
    expect(await text(bench, "Client")).toBe("Meanwhile");
    await expect.poll(bench.overAll).toContain("61″");
    await latewood.revive();
    await page.getByRole("button", { name: "Try again" }).click();
    await bench.kept();
    expect(await page.getByRole("button", { name: "Try again" }).count()).toBe(0);
    const { step, document } = await onServer(page);
    expect(step).toBe(4);
    expect(document.client).toBe("Meanwhile");
    expect(document.assemblies.table).toMatchObject({ length: "61 in", height: "30 in" });
    await page.reload();
    await drawn(page);
    expect(await text(bench, "Client")).toBe("Meanwhile");
    expect(await text(bench, "Height")).toBe("30 in");
  });

  test("an edit and an undo whose answers are lost are made once", async () => {
    const bench = await fresh("Lost answers");
    const { page } = bench;
    let isCut = true;
    // The request arrives and is carried out; its answer does not come back.
    await page.route(/\/(edits|undo)$/, async (route) => {
      if (!isCut) return route.continue();
      isCut = false;
      await route.fetch();
      return route.abort();
    });
    await bench.write("Client", "Once");
    await page.getByText(/Not kept yet/).waitFor();
    await bench.kept();
    expect((await onServer(page)).step).toBe(1);
    await bench.write("Client", "Twice");
    await expect.poll(async () => (await onServer(page)).step).toBe(2);
    isCut = true;
    await bench.press(/^Undo/);
    await page.getByText(/Not kept yet/).waitFor();
    await bench.kept();
    expect(await text(bench, "Client")).toBe("Once");
    const { step, document } = await onServer(page);
    expect([step, document.client]).toEqual([3, "Once"]);
  });

  test("a piece is read once the server answers, and the page says meanwhile why not", async () => {
    const bench = await fresh("Late reading");
    const { page } = bench;
    const id = new URL(page.url()).hash;
    await page.goto(`${latewood.url()}#/pieces`);
    await page
      .getByRole("link", { name: /Late reading/ })
      .first()
      .waitFor();
    await latewood.kill();
    await page.evaluate((hash) => {
      window.location.hash = hash;
    }, id);
    await page.getByText(/Not read yet: The program on this computer does not answer/).waitFor();
    await latewood.revive();
    await drawn(page);
    expect(await text(bench, "Name of the piece")).toBe("Late reading");
    expect(await page.getByText(/Not read yet/).count()).toBe(0);
  });
});

describe("manners of hands", () => {
  test("Ctrl+Z held ten times too long undoes all there is, and is no fault", async () => {
    const bench = await fresh("Held key", /400/);
    const { page } = bench;
    await bench.write("Client", "One");
    await bench.write("Client", "Two");
    await bench.kept();
    for (let i = 0; i < 12; i++) await page.keyboard.press("ControlOrMeta+Z");
    await expect.poll(() => text(bench, "Client")).toBe("");
    await bench.kept();
    expect(await page.getByRole("alert").count()).toBe(0);
    for (let i = 0; i < 12; i++) await page.keyboard.press("ControlOrMeta+Shift+Z");
    await expect.poll(() => text(bench, "Client")).toBe("Two");
    await bench.kept();
    expect((await onServer(page)).step).toBe(6);
  });

  test("Back a moment after typing keeps what was typed", async () => {
    const bench = await fresh("Back at once");
    const { page } = bench;
    const before = await onServer(page);
    await bench.field("Length of the top").fill("63 in");
    await page.waitForTimeout(100);
    await page.goBack();
    await page.getByRole("heading", { level: 1, name: "Pieces" }).waitFor();
    await page.goForward();
    await drawn(page);
    expect(await text(bench, "Length of the top")).toBe("63 in");
    expect((await onServer(page)).step).toBe(before.step + 1);
  });

  test("so does leaving the page for good", async () => {
    const bench = await fresh("Closed at once");
    const { page } = bench;
    const url = page.url();
    await bench.field("Client").fill("Typed last");
    await page.waitForTimeout(100);
    await page.goto("about:blank");
    // The browser sends the last of a page that is gone when it gets to it.
    await expect.poll(async () => (await keptAt(url)).document.client).toBe("Typed last");
    await page.goto(url);
    await drawn(page);
    expect(await text(bench, "Client")).toBe("Typed last");
  });

  test("and turning to another station, with no preview left behind", async () => {
    const bench = await fresh("Turned at once");
    const { page } = bench;
    await bench.field("Length of the top").fill("64 in");
    await page.evaluate(() => {
      window.location.hash = window.location.hash.replace("shape", "proof");
    });
    await expect.poll(bench.overAll).toContain("64″");
    await expect
      .poll(async () => (await onServer(page)).document.assemblies.table.length)
      .toBe("64 in");
    await bench.press(/^Undo/);
    await expect.poll(bench.overAll).not.toContain("64″");
  });
});

test("two pages write the same field: the later is told, and shows what is kept", async () => {
  const one = await fresh("Two writers", /409/);
  const other = piecePage(
    await latewood.open({ ...wide, path: new URL(one.page.url()).hash, quiet: /409/ }),
  );
  await drawn(other.page);
  await other.write("Height", "30 in");
  await other.kept();
  await one.write("Height", "31 in");
  await one.page.getByText(/Not kept: height: 31 in\./).waitFor();
  await expect.poll(() => text(one, "Height")).toBe("30 in");
  expect((await onServer(one.page)).document.assemblies.table.height).toBe("30 in");
  await one.press("I have read this");
  expect(await one.page.getByText(/Not kept/).count()).toBe(0);
  await one.write("Height", "31 in");
  await one.kept();
  expect((await onServer(one.page)).document.assemblies.table.height).toBe("31 in");
});

describe("faults", () => {
  test("a piece of an unknown kind says so, and its other fields can be written", async () => {
    const document = sampleDocument({
      name: "Unknown kind",
      assemblies: { table: { kind: "nosuch" } },
    });
    const response = await fetch(new URL("api/pieces", latewood.url()), {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ text: JSON.stringify(document) }),
    });
    const { id } = await response.json();
    const page = await latewood.open({ ...wide, path: `#/piece/${id}/shape` });
    await page.getByText("There is no such kind of furniture.").waitFor();
    const bench = piecePage(page);
    await bench.write("Client", "Somebody");
    await bench.kept();
    await bench.press("mm");
    await page.getByText(/Not kept: .*nosuch/).waitFor();
    expect(await text(bench, "Client")).toBe("Somebody");
  });

  test("a mistake of the page's is told in words, with a way out", async () => {
    const page = await latewood.open({ ...wide, quiet: /console: /, path: "#/emc" });
    // No server of ours sends such a day; it stands for whatever else the page cannot show.
    await page.route(/\/api\/pieces$/, (route) =>
      route.fulfill({
        json: {
          pieces: [{ id: "a", name: "A", client: "", demo: false, changed: "never", steps: 1 }],
        },
      }),
    );
    await page.evaluate(() => {
      window.location.hash = "#/piece/nobody/shape";
    });
    await page.getByRole("link", { name: "All pieces" }).click();
    await page.getByRole("heading", { name: "Latewood made a mistake here" }).waitFor();
    await page.unroute(/\/api\/pieces$/);
    await page.evaluate(() => {
      window.location.hash = "#/emc";
    });
    await page.getByText("Quick sums").first().waitFor();
    await page.goBack();
    await page.getByRole("heading", { level: 1, name: "Pieces" }).waitFor();
  });

  test("a kernel that did not load is loaded at the next edit", async () => {
    const page = await latewood.open({ ...wide, quiet: /wasm|ERR_FAILED|ArrayBuffer/ });
    await page.context().route(/\.wasm$/, (route) => route.abort());
    await page.getByLabel("What it is called").fill("No kernel");
    await page.getByRole("button", { name: "Begin a plain table" }).click();
    await page.getByText(/The model could not be worked/).waitFor();
    await page.context().unroute(/\.wasm$/);
    const bench = piecePage(page);
    await bench.write("Height", "30 in");
    await expect.poll(() => page.getByText(/The model could not be worked/).count()).toBe(0);
    await drawn(page);
  });
});

test("a measured size that leaves no joint says so at its field", async () => {
  const bench = await fresh("Measured thin");
  const { page } = bench;
  await bench.press("Parts");
  await bench.press("R1");
  const field = bench.field("Thickness, as measured");
  await field.fill("3 mm");
  await field.press("Enter");
  await expect.poll(() => field.getAttribute("aria-invalid")).toBe("true");
  const note = page.locator(`[id="${await field.getAttribute("aria-describedby")}"]`);
  expect(await note.textContent()).toMatch(/of wood are left outside a mortise/);
  await bench.kept();
});

test("the arrow keys step a size of the maker's own, from the computed one where there is none", async () => {
  const bench = await fresh("Stepped");
  const { page } = bench;
  const label = await page
    .getByRole("region", { name: "Joints" })
    .locator(".own-value label")
    .first()
    .textContent();
  const field = bench.field(label ?? "");
  expect(await field.inputValue()).toBe("");
  const computed = await field.getAttribute("placeholder");
  await field.focus();
  await page.keyboard.press("ArrowUp");
  const stepped = await field.inputValue();
  expect(stepped).not.toBe("");
  await page.keyboard.press("ArrowDown");
  expect(await field.inputValue()).toBe(computed);
  // Too large for any leg: the field itself says why.
  await field.fill("200 in");
  await field.press("Enter");
  const note = page.locator(`[id="${await field.getAttribute("aria-describedby")}"]`);
  await expect.poll(() => note.textContent()).not.toBe("");
  expect(await field.getAttribute("aria-invalid")).toBe("true");
});
