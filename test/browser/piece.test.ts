import { describe, expect, test } from "vitest";
import { axeViolations, startLatewood } from "../kit/browser.ts";
import { drawn, openDemo, piecePage } from "./piece-page.ts";

const latewood = startLatewood();

const sizes = [
  { name: "desktop", width: 1440, height: 900 },
  { name: "tablet", width: 1024, height: 768 },
  { name: "phone", width: 390, height: 844 },
] as const;

describe("a maker's story", () => {
  test("opens the demo, lengthens the table, thins the top, undoes both, reloads, finds it as it was", async () => {
    const bench = await openDemo(await latewood.open({ width: 1440, height: 900 }));
    const first = await bench.overAll();
    expect(first).toBe("54″ × 30″ × 29 1⁄4″");

    await bench.write("Length of the top", "5' 2 1/2\"");
    await expect.poll(bench.overAll).toBe("62 1⁄2″ × 30″ × 29 1⁄4″");
    await bench.write("Thickness of the top", "19 mm");
    await bench.kept();
    await expect
      .poll(() => bench.page.getByRole("button", { name: /^Undo/ }).getAttribute("title"))
      .toContain("thickness of the top: 19 mm");

    await bench.press(/^Undo/);
    await expect.poll(() => bench.field("Thickness of the top").inputValue()).toBe('7/8"');
    await bench.press(/^Undo/);
    await expect.poll(bench.overAll).toBe(first);
    await bench.kept();

    await bench.page.reload();
    const again = await drawn(bench.page);
    expect(await again.overAll()).toBe(first);
    expect(await again.field("Length of the top").inputValue()).toBe('54"');
    // Both can still be made again, a reload later.
    await again.press(/^Redo/);
    await expect.poll(again.overAll).toBe("62 1⁄2″ × 30″ × 29 1⁄4″");
    await again.press(/^Redo/);
    await expect.poll(() => again.field("Thickness of the top").inputValue()).toBe("19 mm");
    await again.press(/^Undo/);
    await again.press(/^Undo/);
    await expect.poll(again.overAll).toBe(first);
  });

  test("the same by keyboard alone", async () => {
    const page = await latewood.open({ width: 1440, height: 900 });
    const { keyboard } = page;
    await page
      .getByRole("link", { name: /Tallow Wharf/ })
      .first()
      .waitFor();
    const focused = () =>
      page.evaluate(() =>
        document.activeElement instanceof HTMLAnchorElement
          ? document.activeElement.textContent
          : "",
      );
    for (let i = 0; i < 30 && !(await focused())?.includes("Tallow Wharf"); i++)
      await keyboard.press("Tab");
    await keyboard.press("Enter");
    const bench = await drawn(page);
    const first = await bench.overAll();

    const tabTo = async (label: string) => {
      const wanted = await bench.field(label).getAttribute("id");
      for (let i = 0; i < 60; i++) {
        if ((await page.evaluate(() => document.activeElement?.id)) === wanted) return;
        await keyboard.press("Tab");
      }
      expect.fail(`${label} is not reached by Tab`);
    };
    // The skip link leads past the head and the stick.
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await keyboard.press("Tab");
    await keyboard.press("Enter");
    await tabTo("Length of the top");
    await keyboard.press("ControlOrMeta+A");
    await keyboard.type("5 ft");
    await keyboard.press("Enter");
    await expect.poll(bench.overAll).toBe("60″ × 30″ × 29 1⁄4″");
    await tabTo("Thickness of the top");
    await keyboard.press("ArrowDown");
    await keyboard.press("ArrowDown");
    expect(await bench.field("Thickness of the top").inputValue()).toBe('3/4"');
    await keyboard.press("Enter");
    await bench.kept();
    await keyboard.press("ControlOrMeta+Z");
    await expect.poll(() => bench.field("Thickness of the top").inputValue()).toBe('7/8"');
    await keyboard.press("ControlOrMeta+Z");
    await expect.poll(bench.overAll).toBe(first);
    await keyboard.press("ControlOrMeta+Shift+Z");
    await expect.poll(bench.overAll).toBe("60″ × 30″ × 29 1⁄4″");
    await keyboard.press("ControlOrMeta+Z");
    await expect.poll(bench.overAll).toBe(first);
    await bench.kept();
    await page.reload();
    expect(await (await drawn(page)).overAll()).toBe(first);
  });

  test("a part picked in the list is lifted, marked cut, and keeps its sizes; a wrong size says what it read", async () => {
    const bench = await openDemo(await latewood.open({ width: 1440, height: 900 }));
    const { page } = bench;
    await bench.press("Parts");
    await bench.press("R1");
    await page.getByRole("region", { name: "Part R1" }).waitFor();
    expect(await bench.liftedRows()).toContain("R1");
    await bench.press("It is cut");
    await page.getByText("It keeps the sizes it was cut to").waitFor();
    await bench.press("Sizes");
    await bench.write("Width of the rails", "3 ells");
    const note = await bench.field("Width of the rails").getAttribute("aria-describedby");
    expect(await page.locator(`[id="${note}"]`).textContent()).toContain("ells");
    expect(await bench.field("Width of the rails").getAttribute("aria-invalid")).toBe("true");
    await bench.write("Width of the rails", "4 in");
    await bench.kept();
    await page.getByRole("link", { name: /^Proof/ }).click();
    await page
      .getByText(/is cut otherwise than the design now asks/)
      .first()
      .waitFor();
    await page.getByRole("link", { name: /^Shape/ }).click();
    await bench.press(/^Undo/);
    await bench.press(/^Undo/);
    await expect.poll(() => page.getByRole("button", { name: /^Undo/ }).isDisabled()).toBe(true);
  });

  test("what cannot be made says why, and the remedy beside it makes it whole", async () => {
    const bench = await openDemo(await latewood.open({ width: 1440, height: 900 }));
    await bench.write("Length of the top", "12 in");
    await bench.page
      .getByText(/between the legs, .* are needed/)
      .first()
      .waitFor();
    await bench.press(/^Use at least/);
    await expect.poll(() => bench.page.locator(".complaints").count()).toBe(0);
    await expect.poll(() => bench.field("Length of the top").inputValue()).not.toBe("12 in");
    await bench.press(/^Undo/);
    await bench.press(/^Undo/);
    await expect.poll(bench.overAll).toBe("54″ × 30″ × 29 1⁄4″");
  });

  test("the side turns and no size changes", async () => {
    const bench = await openDemo(await latewood.open({ width: 1440, height: 900 }));
    await bench.press("mm");
    await expect.poll(bench.overAll).toBe("1371.5 mm × 762 mm × 743 mm");
    expect(await bench.field("Length of the top").inputValue()).toBe('54"');
    await bench.press(/^Undo/);
    await expect.poll(bench.overAll).toBe("54″ × 30″ × 29 1⁄4″");
  });
});

describe("manners", () => {
  test("no frame is drawn while nothing moves, and one when something does", async () => {
    const bench = await openDemo(await latewood.open({ width: 1024, height: 768 }));
    await bench.page.waitForTimeout(500);
    const before = await bench.frames();
    await bench.page.waitForTimeout(1500);
    expect(await bench.frames()).toBe(before);
    await bench.page.getByRole("button", { name: "Front", exact: true }).click();
    await expect.poll(bench.frames).toBeGreaterThan(before);
  });

  test("a piece with markup for a name shows it as it is written", async () => {
    const page = await latewood.open();
    await page.getByLabel("What it is called").fill('<img src=x onerror=alert(1)> & "co"');
    await page.getByRole("button", { name: "Begin a plain table" }).click();
    const bench = await drawn(page);
    expect(await bench.field("Name of the piece").inputValue()).toContain("<img");
    expect(await page.locator("main img, header img").count()).toBe(0);
    await page.goto(`${latewood.url()}#/pieces`);
    await page
      .getByRole("link", { name: /<img src=x/ })
      .first()
      .waitFor();
    await page.getByRole("button", { name: /^Put away <img/ }).click();
    await expect.poll(() => page.getByRole("link", { name: /<img src=x/ }).count()).toBe(0);
  });

  test("a piece that is not there is told, with a way on", async () => {
    const page = await latewood.open({ path: "#/piece/nobody/shape", quiet: /404/ });
    await page.getByRole("heading", { name: "This piece cannot be opened" }).waitFor();
    await page.getByRole("link", { name: "All pieces" }).click();
    await page.getByRole("heading", { level: 1, name: "Pieces" }).waitFor();
  });

  test("two pages at one piece: the second one's edits reach the store too", async () => {
    const page = await latewood.open({ width: 1440, height: 900 });
    await page.getByRole("button", { name: "Begin a plain table" }).click();
    const one = await drawn(page);
    const other = piecePage(
      await latewood.open({ width: 1440, height: 900, path: new URL(page.url()).hash }),
    );
    await drawn(other.page);
    await one.write("Client", "One");
    await one.kept();
    await other.write("Height", "30 in");
    await other.kept();
    await page.reload();
    await drawn(page);
    expect(await one.field("Height").inputValue()).toBe("30 in");
    expect(await one.field("Client").inputValue()).toBe("One");
  });
});

describe("everybody can use it", () => {
  for (const { name, width, height } of sizes) {
    for (const theme of ["light", "dark"] as const) {
      test(`axe finds nothing on a ${name}, ${theme}`, async () => {
        const page = await latewood.open({ width, height, theme });
        await page
          .getByRole("link", { name: /Tallow Wharf/ })
          .first()
          .waitFor();
        expect(await axeViolations(page), "pieces").toEqual([]);
        const bench = await openDemo(page);
        expect(await axeViolations(page), "sizes").toEqual([]);
        await bench.press("Parts");
        await bench.press("L2");
        expect(await axeViolations(page), "parts").toEqual([]);
        await page.getByRole("link", { name: /^Proof/ }).click();
        await page.getByText("Working").first().click();
        expect(await axeViolations(page), "proof").toEqual([]);
      });
    }
    test(`nothing runs off the side of a ${name}, and a finger finds every button`, async () => {
      const page = await latewood.open({ width, height });
      const bench = await openDemo(page);
      for (const view of ["Sizes", "Parts"]) {
        await bench.press(view);
        const { over, small } = await page.evaluate(() => {
          const all = [...document.querySelectorAll<HTMLElement>("header *, main *, nav *")];
          const isClipped = (e: HTMLElement) => e.closest(".spoken, .stick, .skip") !== null;
          return {
            over: all
              .filter(
                (e) => !isClipped(e) && e.getBoundingClientRect().right > window.innerWidth + 0.5,
              )
              .map((e) => e.outerHTML.slice(0, 80)),
            small: [
              ...document.querySelectorAll<HTMLElement>("button, main input, main select, nav a"),
            ]
              .filter((e) => !e.closest(".spoken, .skip") && e.getBoundingClientRect().height > 0)
              .map((e) =>
                e instanceof HTMLInputElement && e.type === "radio" ? e.parentElement : e,
              )
              .filter((e) => e !== null && e.getBoundingClientRect().height < 43.5)
              .map((e) => e?.outerHTML.slice(0, 80)),
          };
        });
        expect(over, view).toEqual([]);
        expect(small, view).toEqual([]);
      }
    });
  }
});
