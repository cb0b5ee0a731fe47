import { describe, expect, test } from "vitest";
import { topics } from "../../src/reckon/index.ts";
import { axeViolations, startLatewood } from "../kit/browser.ts";
import { quickSums, textsOffPlate } from "./quick-sums.ts";
import { wildTexts } from "./wild-texts.ts";

const latewood = startLatewood();

const sizes = [
  { name: "desktop", width: 1440, height: 900 },
  { name: "tablet", width: 1024, height: 768 },
  { name: "phone", width: 360, height: 740 },
];

describe("reckoning", () => {
  test("a maker reckons a top's movement, mends a slip, and finds it after a reload", async () => {
    const bench = quickSums(await latewood.open({ path: "#/emc" }));
    await bench.turnTo("Movement across the grain");
    await bench.field("Timber").selectOption("Black cherry");
    await bench.write("Width across the grain", "3' 4 1/2\"");
    await bench.write("Moisture content now", "6 %");
    await bench.write("Moisture content then", "10 %");
    // 40.5 in × 0.00248 × 4 = 0.40 in, by hand from Table 13-5.
    expect(await bench.figure()).toBe("13⁄32″");
    expect(await bench.working()).toContain("1028.7·0.00248·(10 − 6)");
    expect(await bench.working()).toContain("Wood Handbook, Table 13-5, read second-hand");

    await bench.write("Width across the grain", "3 ells");
    const place = bench.field("Width across the grain");
    await place.blur();
    expect(await place.getAttribute("aria-invalid")).toBe("true");
    const note = bench.page.locator(`[id="${await place.getAttribute("aria-describedby")}"]`);
    expect(await note.textContent()).toContain("ells");
    expect(await bench.figure()).toBe("13⁄32″");

    await bench.write("Width across the grain", "1028.7 mm");
    expect(await place.getAttribute("aria-invalid")).toBe("false");
    await bench.page.reload();
    expect(await bench.field("Width across the grain").inputValue()).toBe("1028.7 mm");
    expect(await bench.figure()).toBe("13⁄32″");
  });

  test("changing the side changes no answer, and a bare number keeps its meaning", async () => {
    const bench = quickSums(await latewood.open({ path: "#/emc" }));
    await bench.turnTo("Movement across the grain");
    await bench.write("Width across the grain", "36");
    await bench.changeSide("mm");
    expect(await bench.field("Width across the grain").inputValue()).toBe("36 in");
    expect(await bench.figure()).toBe("13.5 mm");
    await bench.changeSide("inch");
    expect(await bench.figure()).toBe("17⁄32″");
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
    const bench = quickSums(await latewood.open({ path: "#/emc" }));
    for (const topic of topics) {
      await bench.turnTo(topic.title);
      expect(await bench.figure(), topic.name).not.toBe("");
      expect(await bench.isOld(), topic.name).toBe(false);
      expect(await bench.page.getByRole("img").getAttribute("aria-label")).toMatch(/\w{3}/);
      expect((await bench.working())?.length).toBeGreaterThan(40);
    }
  });

  test("damaged and hostile kept texts do no harm", async () => {
    const page = await latewood.open({ path: "#/emc" });
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

describe("manners", () => {
  test("half a fraction shakes nothing: the old answer stays, the complaint waits for the keys", async () => {
    const page = await latewood.open({ path: "#/sag", width: 1440, height: 900 });
    const bench = quickSums(page);
    await page.evaluate(() => document.fonts.ready);
    await page.clock.install();
    await page.clock.pauseAt(Date.now() + 10_000);
    const thickness = bench.field("Thickness");
    await thickness.focus();
    await thickness.fill("1");
    const [figure, layout] = [await bench.figure(), await bench.layout()];
    await thickness.pressSequentially("/");
    await page.clock.runFor(200);
    expect(await bench.isOld()).toBe(true);
    expect(await bench.complaint()).toBe("");
    expect(await thickness.getAttribute("aria-invalid")).toBe("false");
    expect([await bench.figure(), await bench.layout()]).toEqual([figure, layout]);
    expect(await page.locator(".finding").first().isVisible()).toBe(false);

    await page.clock.runFor(1000);
    expect(await bench.complaint()).toMatch(/^thickness: .*such as 7⁄8″/);
    expect(await thickness.getAttribute("aria-invalid")).toBe("true");
    expect(await bench.figure()).toBe(figure);
    expect((await bench.layout()).split("; ").slice(-3)).toEqual(layout.split("; ").slice(-3));
    expect(await page.locator(".findings").count()).toBe(0);

    await thickness.pressSequentially("2");
    expect(await bench.isOld()).toBe(false);
    expect(await bench.complaint()).toBe("");
    expect(await thickness.getAttribute("aria-invalid")).toBe("false");

    await thickness.fill("1/");
    await page.clock.runFor(200);
    expect(await bench.complaint()).toBe("");
    await page.keyboard.press("Tab");
    expect(await bench.complaint()).toContain("thickness");
  });

  test("a fault that several fields share marks them all and names them", async () => {
    const bench = quickSums(await latewood.open({ path: "#/emc" }));
    const labels = [
      "Relative humidity",
      "Moisture content of the wood, to get the humidity instead",
    ] as const;
    await bench.write(labels[0], "");
    await bench.field(labels[0]).blur();
    for (const label of labels)
      expect(await bench.field(label).getAttribute("aria-invalid"), label).toBe("true");
    expect(await bench.field("Temperature of the air").getAttribute("aria-invalid")).toBe("false");
    expect(await bench.complaint()).toMatch(/^relative humidity · moisture content/);
  });

  test("a topic chosen by keyboard keeps the focus, and its figure is spoken", async () => {
    const bench = quickSums(await latewood.open({ path: "#/emc" }));
    const { page } = bench;
    const link = page.getByRole("link", { name: "Board feet" });
    await link.focus();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { level: 1, name: "Board feet" }).waitFor();
    expect(await link.evaluate((it) => it === document.activeElement)).toBe(true);
    expect(await page.getByRole("main", { name: "Board feet" }).count()).toBe(1);
    await expect.poll(bench.spoken).toContain("5.21 bd ft");
    const told = await page.getByRole("status").elementHandle();
    await bench.write("How many", "2");
    await expect.poll(bench.spoken).toContain("10.42 bd ft");
    expect(await told?.evaluate((it) => it.isConnected)).toBe(true);
  });

  test("a sum started afresh can be brought back until something is typed", async () => {
    const bench = quickSums(await latewood.open({ path: "#/octagon" }));
    const afresh = "Start this sum afresh";
    const back = "Bring back what was written";
    const square = bench.field("Side of the square");
    const first = await square.inputValue();
    await bench.write("Side of the square", "3.5");
    await bench.press(afresh);
    expect(await square.inputValue()).toBe(first);
    await bench.changeSide("mm");
    await bench.press(back);
    expect(await square.inputValue()).toBe("3.5 in");
    await bench.press(afresh);
    await bench.write("Side of the square", "60");
    expect(await bench.page.getByRole("button", { name: back }).count()).toBe(0);
    await bench.press(afresh);
    expect(await bench.page.getByRole("button", { name: back }).count()).toBe(1);
  });
});

describe("everybody can use it", () => {
  for (const { name, width, height } of sizes) {
    for (const theme of ["light", "dark"] as const) {
      test(`axe finds nothing on a ${name}, ${theme}`, async () => {
        const page = await latewood.open({ path: "#/emc", width, height, theme });
        const bench = quickSums(page);
        // Every topic where there is most to see; elsewhere three that hold every kind of control.
        const all = [...topics.map((t) => t.name), "cup"];
        for (const topic of name === "desktop" ? all : ["movement", "router", "cup"]) {
          await page.goto(`${latewood.url()}#/${topic}`);
          expect(await axeViolations(page), topic).toEqual([]);
        }
        await bench.write("Width of the board", "rubbish");
        await bench.field("Width of the board").blur();
        expect(await bench.complaint()).toContain("width of the board");
        expect(await axeViolations(page)).toEqual([]);
      });
    }
    test(`nothing runs off the side of a ${name}`, async () => {
      const page = await latewood.open({ path: "#/emc", width, height });
      for (const topic of topics) {
        await page.goto(`${latewood.url()}#/${topic.name}`);
        // The sheet clips what runs over, so the window's own scroll width would tell nothing.
        const over = await page.evaluate(() =>
          [...document.querySelectorAll("header *, main *")]
            .filter((e) => e instanceof HTMLElement)
            .filter((e) => e.getBoundingClientRect().right > window.innerWidth + 0.5)
            .map((e) => e.outerHTML.slice(0, 60)),
        );
        expect(over, topic.name).toEqual([]);
      }
    });
  }

  for (const { width, height } of [
    { width: 360, height: 740 },
    { width: 1440, height: 900 },
  ]) {
    test(`no lettering of a drawing leaves its plate at ${width} px, at ordinary sizes and at wild ones`, async () => {
      const page = await latewood.open({ path: "#/emc", width, height });
      const reach = async (name: string) => {
        await page.goto(`${latewood.url()}#/${name}`);
        await page.evaluate(() => document.fonts.ready);
        const bench = quickSums(page);
        expect(await bench.isOld(), name).toBe(false);
        expect(await page.locator(".plate text").count(), name).toBeGreaterThan(0);
        expect(await textsOffPlate(page), name).toEqual([]);
      };
      for (const topic of topics) await reach(topic.name);
      for (const wild of wildTexts) {
        await page.evaluate((texts) => localStorage.setItem("latewood/sums", texts), wild);
        await page.reload();
        for (const name of Object.keys(JSON.parse(wild))) await reach(name);
      }
    });
  }

  test("on a phone no field that takes the focus hides under the headline", async () => {
    const page = await latewood.open({ path: "#/emc", width: 390, height: 844 });
    for (const topic of ["cup", "tip", "finish"]) {
      await page.goto(`${latewood.url()}#/${topic}`);
      await page.locator("main h1").waitFor();
      await page.locator("main input").first().focus();
      for (let i = 0; i < 8; i++) {
        await page.keyboard.press("Tab");
        const covered = await page.evaluate(() => {
          const field = document.activeElement;
          const strip = document.querySelector(".headline");
          if (!(field instanceof HTMLInputElement) || field.type === "radio" || !strip) return 0;
          return field.getBoundingClientRect().bottom - strip.getBoundingClientRect().top;
        });
        expect(covered, topic).toBeLessThanOrEqual(0);
      }
    }
  });

  test("what can be touched is large enough for a finger", async () => {
    const page = await latewood.open({ path: "#/emc", width: 360, height: 740 });
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
