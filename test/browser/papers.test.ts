import { describe, expect, test } from "vitest";
import { axeViolations, startLatewood } from "../kit/browser.ts";
import { openDemo, openSupper, type PiecePage } from "./piece-page.ts";

const latewood = startLatewood();
const wide = { width: 1440, height: 900 };

/** Turns to the papers and waits until they are drawn: how many there are. */
async function papersOf({ page }: PiecePage): Promise<number> {
  await page.getByRole("link", { name: /^Papers/ }).click();
  await page.getByText(/^\d+ sheets\.$/).waitFor();
  const count = await page.locator(".sheets li").count();
  expect(count).toBeGreaterThan(5);
  return count;
}

/** The PDF behind a link: its pages, each as large as it says [pt]. */
async function pagesBehind({ page }: PiecePage, link: string): Promise<readonly string[]> {
  const href = await page.getByRole("link", { name: link, exact: true }).getAttribute("href");
  const response = await page.request.get(new URL(href ?? "", latewood.url()).href);
  expect([response.status(), response.headers()["content-type"]]).toEqual([200, "application/pdf"]);
  const text = (await response.body()).toString("latin1");
  expect(text.slice(0, 5)).toBe("%PDF-");
  return [...text.matchAll(/\/Type \/Page\n[^>]*?\/MediaBox \[0 0 ([\d.]+ [\d.]+)\]/g)].map(
    ([, size]) => size ?? "",
  );
}

describe("the papers of a piece", () => {
  test("every sheet is seen before it is printed, and the PDF has as many pages", async () => {
    const bench = await openSupper(await latewood.open(wide));
    const count = await papersOf(bench);
    const { page } = bench;
    for (let number = 1; number <= count; number++) {
      const button = page.getByRole("button", {
        name: new RegExp(`^Sheet ${number} of ${count}: .`),
      });
      const sheet = page.locator(".sheets li").filter({ has: button });
      expect(await sheet.locator("path").count(), `sheet ${number}`).toBeGreaterThan(0);
      const [strip] = await sheet.getByText(`${number} of ${count}`).allTextContents();
      expect(strip).toBe(`${number} of ${count}`);
    }
    // Letter, lying, for a piece in inches; 11 × 8.5 in at 72 to the inch.
    expect(await pagesBehind(bench, "Open the PDF")).toEqual(Array(count).fill("792 612"));
    await bench.press("A4");
    await page.getByText(/^\d+ sheets\.$/).waitFor();
    const viewBox = await page.locator(".sheets svg").first().getAttribute("viewBox");
    expect(viewBox).toBe("0 0 297 210");
    const onA4 = await pagesBehind(bench, "Open the PDF");
    expect(onA4.length).toBe(await page.locator(".sheets li").count());
    expect(onA4[0]).toMatch(/^841\.8\d* 595\.2\d*$/);
  });

  test("a sheet is enlarged by keyboard, turned to the next, printed alone, and closed", async () => {
    const bench = await openDemo(await latewood.open(wide));
    const count = await papersOf(bench);
    const { page } = bench;
    const second = page.getByRole("button", { name: new RegExp(`^Sheet 2 of ${count}: `) });
    await second.focus();
    await page.keyboard.press("Enter");
    const large = page.getByRole("dialog", { name: new RegExp(`^Sheet 2 of ${count}: `) });
    await large.getByRole("img", { name: /^Sheet 2 of / }).waitFor();
    expect((await pagesBehind(bench, "This sheet as PDF")).length).toBe(1);
    await page.getByRole("button", { name: "Next sheet", exact: true }).press("Enter");
    await page.getByRole("dialog", { name: new RegExp(`^Sheet 3 of ${count}: `) }).waitFor();
    await page.keyboard.press("Escape");
    await expect.poll(() => page.getByRole("dialog").count()).toBe(0);
    expect(await second.evaluate((e) => e === document.activeElement)).toBe(true);
  });

  test("are drawn anew when the piece changes; until then the last ones stay, greyed", async () => {
    const bench = await openDemo(await latewood.open(wide));
    const { page } = bench;
    await papersOf(bench);
    const old = page.locator('.sheets[data-old="true"]');
    expect(await old.count()).toBe(0);
    const title = page.locator(".sheets svg").first();
    const before = await title.textContent();
    await page.evaluate(() => {
      const heard: string[] = [];
      const sheets = document.querySelector(".sheets");
      if (!sheets) throw new Error("there are no sheets");
      new MutationObserver(() => heard.push(sheets.getAttribute("data-old") ?? "")).observe(
        sheets,
        {
          attributes: true,
        },
      );
      Object.assign(window, { heard });
    });
    await bench.press("mm");
    await expect.poll(() => title.textContent()).not.toBe(before);
    await page.getByText(/^\d+ sheets\.$/).waitFor();
    expect(await page.evaluate(() => (window as unknown as { heard: string[] }).heard)).toEqual([
      "true",
      "false",
    ]);
    await bench.press(/^Undo/);
  });

  test("a piece that cannot be made has none, and has them again when that is undone", async () => {
    const bench = await openDemo(await latewood.open(wide));
    await papersOf(bench);
    const { page } = bench;
    await page.getByRole("link", { name: /^Shape/ }).click();
    await bench.write("Length of the top", "12 in");
    await page
      .getByText(/between the legs, .* are needed/)
      .first()
      .waitFor();
    await page.getByRole("link", { name: /^Papers/ }).click();
    await page.getByText("The piece cannot be made as it stands, and has no sheets.").waitFor();
    expect(await page.locator(".sheets li").count()).toBe(0);
    await bench.press(/^Undo/);
    await page.getByText(/^\d+ sheets\.$/).waitFor();
  });

  for (const [width, height] of [
    [1440, 900],
    [1024, 768],
    [390, 844],
  ] as const) {
    test(`axe finds nothing, and nothing runs off the side, ${width} wide`, async () => {
      for (const theme of ["light", "dark"] as const) {
        const bench = await openDemo(await latewood.open({ width, height, theme }));
        const { page } = bench;
        await papersOf(bench);
        expect(await axeViolations(page), theme).toEqual([]);
        const over = await page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>(".papers *")]
            .filter((e) => !(e instanceof SVGElement) && e.closest(".spoken") === null)
            .filter((e) => e.getBoundingClientRect().right > window.innerWidth + 0.5)
            .map((e) => e.outerHTML.slice(0, 80)),
        );
        expect(over, theme).toEqual([]);
        await page.getByRole("button", { name: /^Sheet 1 of / }).click();
        expect(await axeViolations(page), `${theme}, enlarged`).toEqual([]);
      }
    });
  }
});
