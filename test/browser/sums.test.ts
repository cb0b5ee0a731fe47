import { describe, expect, test } from "vitest";
import { topics } from "../../src/reckon/index.ts";
import { axeViolations, startLatewood } from "../kit/browser.ts";
import { quickSums } from "./quick-sums.ts";

const latewood = startLatewood();

const sizes = [
  { name: "desktop", width: 1440, height: 900 },
  { name: "tablet", width: 1024, height: 768 },
  { name: "phone", width: 360, height: 740 },
];

describe("reckoning", () => {
  test("a maker reckons a top's movement, mends a slip, and finds it after a reload", async () => {
    const bench = quickSums(await latewood.open());
    await bench.turnTo("Movement across the grain");
    await bench.field("Timber").selectOption("Black cherry");
    await bench.write("Width across the grain", "3' 4 1/2\"");
    await bench.write("Moisture content now", "6 %");
    await bench.write("Moisture content then", "10 %");
    // 40.5 in × 0.00248 × 4 = 0.40 in, by hand from Table 13-5.
    expect(await bench.figure()).toBe("13⁄32″ scant");
    expect(await bench.working()).toContain("1028.7·0.00248·(10 − 6)");
    expect(await bench.working()).toContain("Wood Handbook, Table 13-5, read second-hand");

    await bench.write("Width across the grain", "3 ells");
    const place = bench.field("Width across the grain");
    expect(await place.getAttribute("aria-invalid")).toBe("true");
    const note = bench.page.locator(`[id="${await place.getAttribute("aria-describedby")}"]`);
    expect(await note.textContent()).toContain("ells");
    expect(await bench.figure()).toBe("13⁄32″ scant");

    await bench.write("Width across the grain", "1028.7 mm");
    expect(await place.getAttribute("aria-invalid")).toBe("false");
    await bench.page.reload();
    expect(await bench.field("Width across the grain").inputValue()).toBe("1028.7 mm");
    expect(await bench.figure()).toBe("13⁄32″ scant");
  });

  test("changing the side changes no answer, and a bare number keeps its meaning", async () => {
    const bench = quickSums(await latewood.open());
    await bench.turnTo("Movement across the grain");
    await bench.write("Width across the grain", "36");
    await bench.changeSide("mm");
    expect(await bench.field("Width across the grain").inputValue()).toBe("36 in");
    expect(await bench.figure()).toBe("13.4 mm");
    await bench.changeSide("inch");
    expect(await bench.figure()).toBe("17⁄32″ scant");
  });

  test("by keyboard alone: to the questions, step a size, choose a figure's working", async () => {
    const bench = quickSums(await latewood.open({ path: "#/sag" }));
    const { keyboard } = bench.page;
    const before = await bench.figure();
    await keyboard.press("Tab");
    await keyboard.press("Enter");
    await keyboard.press("Tab");
    await keyboard.press("Tab");
    const focused = () => bench.page.evaluate(() => document.activeElement?.id ?? "");
    expect(await focused()).toBe(await bench.field("Span between supports").getAttribute("id"));
    await keyboard.press("ArrowUp");
    expect(await bench.field("Span between supports").inputValue()).toBe('36 1/16"');
    for (let i = 0; i < 5; i++) await keyboard.press("PageUp");
    expect(await bench.field("Span between supports").inputValue()).toBe('39 3/16"');
    expect(await bench.figure()).not.toBe(before);
    await bench.page.getByRole("button", { name: /Sag after years/i }).focus();
    await keyboard.press("Enter");
    expect(await bench.working()).toContain("growth under a load that stays");
  });

  test("every topic opens with an answer, a drawing with a name, and its working", async () => {
    const bench = quickSums(await latewood.open());
    for (const topic of topics) {
      await bench.turnTo(topic.title);
      expect(await bench.figure(), topic.name).not.toBe("");
      expect(await bench.page.locator(".answer").getAttribute("data-stale")).toBe("false");
      expect(await bench.page.getByRole("img").getAttribute("aria-label")).toMatch(/\w{3}/);
      expect((await bench.working())?.length).toBeGreaterThan(40);
    }
  });

  test("damaged and hostile kept texts do no harm", async () => {
    const page = await latewood.open();
    await page.evaluate(() => {
      localStorage.setItem("latewood/units", '"ell"');
      localStorage.setItem(
        "latewood/sums",
        JSON.stringify({ cup: { width: "<img src=x onerror=alert(1)>", nonsense: "1" } }),
      );
    });
    await page.goto(`${latewood.url()}#/cup`);
    await page.reload();
    const bench = quickSums(page);
    expect(await bench.field("Width of the board").inputValue()).toContain("<img");
    expect(await bench.page.locator("img").count()).toBe(0);
    await page.evaluate(() => localStorage.setItem("latewood/sums", "{{{"));
    await page.reload();
    expect(await bench.figure()).not.toBe("");
  });
});

describe("everybody can use it", () => {
  for (const { name, width, height } of sizes) {
    for (const theme of ["light", "dark"] as const) {
      test(`axe finds nothing on a ${name}, ${theme}`, async () => {
        const page = await latewood.open({ width, height, theme });
        const bench = quickSums(page);
        for (const topic of ["movement", "router", "cup"]) {
          await page.goto(`${latewood.url()}#/${topic}`);
          expect(await axeViolations(page)).toEqual([]);
        }
        await bench.write("Width of the board", "rubbish");
        expect(await axeViolations(page)).toEqual([]);
      });
    }
    test(`nothing runs off the side of a ${name}`, async () => {
      const page = await latewood.open({ width, height });
      for (const topic of topics) {
        await page.goto(`${latewood.url()}#/${topic.name}`);
        const over = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        expect(over, topic.name).toBeLessThanOrEqual(0);
      }
    });
  }

  test("what can be touched is large enough for a finger", async () => {
    const page = await latewood.open({ width: 360, height: 740 });
    const small = await page
      .locator("header button, main input, main select, main button, nav a")
      .evaluateAll((all) =>
        all
          .map((e) => (e instanceof HTMLInputElement && e.type === "radio" ? e.parentElement : e))
          .filter((e) => e !== null && e.getBoundingClientRect().height < 43.5)
          .map((e) => e?.outerHTML.slice(0, 80)),
      );
    expect(small).toEqual([]);
  });
});
