import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axeViolations, startLatewood } from "../kit/browser.ts";
import { openSupper, type PiecePage } from "./piece-page.ts";

const latewood = startLatewood();
const wide = { width: 1440, height: 900 };

/** Whatever the model says of how the piece stands, and of what is unsafe about it. */
const status = (page: Page) => page.locator(".model").getByRole("status").textContent();

/** The state whose button is pressed, if any. */
const stands = (page: Page) =>
  page
    .getByRole("group", { name: "How it stands" })
    .locator('[aria-pressed="true"]')
    .allTextContents();

/** A picture of the canvas alone, as its bytes. */
const seen = async ({ page }: PiecePage) =>
  (await page.locator(".model canvas").screenshot()).toString("base64");

const set = (page: Page, label: string, step: number) =>
  page.getByLabel(label, { exact: true }).fill(String(step));

describe("leaves and arms are moved", () => {
  test("from state to state by button; each looks another way, and the picture keeps its size", async () => {
    const bench = await openSupper(await latewood.open(wide));
    const { page } = bench;
    expect(await stands(page)).toEqual(["All leaves up"]);
    const looks = new Set([await seen(bench)]);
    const { width, height } = (await page.locator(".model canvas").boundingBox()) ?? {};
    for (const name of ["Closed", "Front leaf up", "Back leaf up"]) {
      const frames = await bench.frames();
      await bench.press(name);
      await expect.poll(bench.frames).toBeGreaterThan(frames);
      expect(await stands(page)).toEqual([name]);
      expect(await status(page)).toBe(`It stands: ${name.toLowerCase()}.`);
      looks.add(await seen(bench));
    }
    expect(looks.size).toBe(4);
    expect(await page.locator(".model canvas").boundingBox()).toMatchObject({ width, height });
    await bench.press("All leaves up");
    await expect.poll(() => seen(bench).then((one) => looks.has(one))).toBe(true);
  });

  test("by keyboard on the picture, round and round, and the hint says how", async () => {
    const { page } = await openSupper(await latewood.open(wide));
    const canvas = page.locator(".model canvas");
    await canvas.focus();
    const hint = await canvas.getAttribute("aria-describedby");
    expect(await page.locator(`[id="${hint}"]`).textContent()).toContain("L goes on");
    const seenStates: string[] = [];
    for (let i = 0; i < 4; i++) {
      await page.keyboard.press("l");
      seenStates.push((await stands(page)).join());
    }
    expect(seenStates).toEqual(["Closed", "Front leaf up", "Back leaf up", "All leaves up"]);
    await page.keyboard.press("Shift+L");
    expect(await stands(page)).toEqual(["Back leaf up"]);
  });

  test("by hand, a degree a key; a leaf that nothing holds is warned of, until its arms are out", async () => {
    const { page } = await openSupper(await latewood.open(wide));
    expect(await status(page)).not.toContain("Unsafe");
    await set(page, "Arms of the front leaf", 0);
    await expect.poll(() => status(page)).toContain("Unsafe. The front leaf is up");
    expect(await stands(page)).toEqual([]);
    const leaf = page.getByLabel("Front leaf", { exact: true });
    expect(await leaf.getAttribute("aria-valuetext")).toBe("up");
    await leaf.focus();
    await page.keyboard.press("ArrowRight");
    expect(await leaf.getAttribute("aria-valuetext")).toBe("1° down");
    await page.keyboard.press("End");
    expect(await leaf.getAttribute("aria-valuetext")).toBe("down");
    expect(await stands(page)).toEqual(["Back leaf up"]);
    expect(await status(page)).not.toContain("Unsafe");
    await set(page, "Arms of the front leaf", 40);
    await expect.poll(() => status(page)).toContain("Unsafe. An arm is out under the front leaf");
    await page.getByRole("button", { name: "All leaves up", exact: true }).click();
    expect(await status(page)).toBe("It stands: all leaves up.");
  });

  test("and nothing that is written is drawn anew for it", async () => {
    const { page } = await openSupper(await latewood.open(wide));
    const changes = await page.evaluate(() => {
      const heard = { count: 0 };
      const writing = document.querySelector(".writing");
      if (!writing) throw new Error("there is no writing");
      new MutationObserver((all) => {
        heard.count += all.length;
      }).observe(writing, {
        subtree: true,
        childList: true,
        attributes: true,
        characterData: true,
      });
      Object.assign(window, { heard });
      return heard.count;
    });
    expect(changes).toBe(0);
    for (const step of [5, 25, 60, 90]) await set(page, "Back leaf", step);
    await page.getByRole("button", { name: "Closed", exact: true }).click();
    const heard = () =>
      page.evaluate(() => (window as unknown as { heard: { count: number } }).heard.count);
    expect(await heard()).toBe(0);
    await page.getByRole("button", { name: "Parts", exact: true }).click();
    await expect.poll(heard).toBeGreaterThan(0);
  });

  test("a view that the maker fitted stays as it is while a leaf is scrubbed", async () => {
    const bench = await openSupper(await latewood.open(wide));
    const { page } = bench;
    await bench.press("Closed");
    await bench.press("Fit");
    const before = await seen(bench);
    await set(page, "Front leaf", 45);
    await expect.poll(() => seen(bench)).not.toBe(before);
    await bench.press("Closed");
    // To the pixel: neither nearer nor farther for what was moved meanwhile.
    await expect.poll(() => seen(bench)).toBe(before);
  });
});

describe("a drop-leaf table at Shape", () => {
  test("is begun from the list, its things are chosen among the shop’s, and idle questions go", async () => {
    const page = await latewood.open(wide);
    await page.getByLabel("What it is called").fill("Window table");
    await page.getByRole("button", { name: "Begin a drop-leaf table" }).click();
    await page.getByRole("heading", { level: 1, name: "Drop-leaf table" }).waitFor();
    const cutters = page.getByLabel("Cutters of the leaf joint", { exact: true });
    expect(await cutters.inputValue()).toBe("1/2 in pair");
    expect(await cutters.locator("option").allTextContents()).toContain("10 mm pair");
    const hinge = page.getByLabel("Hinges of the leaves", { exact: true });
    await hinge.selectOption("deep table hinge 38");
    await page.locator(".head-where", { hasText: /every edit kept, / }).waitFor();
    await page.reload();
    await expect.poll(() => hinge.inputValue()).toBe("deep table hinge 38");
    await page.getByText("square edges", { exact: true }).click();
    await expect.poll(() => cutters.count()).toBe(0);
    expect(await page.getByLabel("Pin towards the leaf", { exact: true }).count()).toBe(0);
    expect(await hinge.count()).toBe(1);
  });

  test("its title says how wide it is open and closed", async () => {
    const bench = await openSupper(await latewood.open(wide));
    expect(await bench.overAll()).toMatch(/^44″ × 42 .*″ × 29 1⁄4″, closed 20 .*″ wide$/);
  });
});

describe("everybody can move them", () => {
  for (const [width, height] of [
    [1440, 900],
    [1024, 768],
    [390, 844],
  ] as const) {
    test(`axe finds nothing, nothing runs off the side, and a finger finds all of it, ${width} wide`, async () => {
      for (const theme of ["light", "dark"] as const) {
        const { page } = await openSupper(await latewood.open({ width, height, theme }));
        const hand = page.getByRole("button", { name: "By hand", exact: true });
        if ((await hand.getAttribute("aria-expanded")) === "false") await hand.click();
        await set(page, "Arms of the front leaf", 0);
        expect(await axeViolations(page), theme).toEqual([]);
        const bad = await page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>(".model-tools :is(button, input)")]
            .filter((e) => {
              const { right, height: high, left } = e.getBoundingClientRect();
              return right > window.innerWidth + 0.5 || left < 0 || high < 43.5;
            })
            .map((e) => e.outerHTML.slice(0, 80)),
        );
        expect(bad, theme).toEqual([]);
        const [tools, writing] = await Promise.all(
          [".model-tools", ".writing"].map((one) => page.locator(one).boundingBox()),
        );
        const isBeside = (writing?.x ?? 0) + (writing?.width ?? 0) <= (tools?.x ?? 0) + 1;
        const isUnder = (tools?.y ?? 0) + (tools?.height ?? 0) <= (writing?.y ?? 0) + 1;
        expect(isBeside || isUnder, `${theme}: the writing keeps off the scrubbers`).toBe(true);
      }
    });
  }
});
