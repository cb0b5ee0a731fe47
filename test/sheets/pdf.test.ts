import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { blankDrawing } from "../../src/sheets/drawing.ts";
import { papers, type Sheet, writePdf } from "../../src/sheets/index.ts";
import { STRIP } from "../../src/sheets/sheet.ts";
import { demos, fonts, planned } from "../kit/sheets.ts";

/** Poppler's readers, of another make than what writes. */
const [toPicture, toText] = ["pdftoppm", "pdftotext"] as const;
/** Dots to a millimetre: a tenth of one is two of them. */
const DOTS = 20;
const asked = { fonts, made: new Date("2026-03-14T12:00:00Z") };

const has = (tool: string): boolean => {
  try {
    execFileSync(tool, ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
};
// Where it is missing the tests that need it are skipped, loudly; continuous integration must have it.
const hasPoppler = has(toPicture) && has(toText);
if (!hasPoppler && !process.env.CI)
  console.warn("pdftoppm is missing: true size on paper is NOT tested. Install poppler-utils.");
const withPoppler = test.skipIf(!hasPoppler && !process.env.CI);

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "latewood-pdf-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Picture = { readonly width: number; readonly height: number; readonly gray: Uint8Array };

/** A page rendered, and read back dot by dot. */
function rendered(pdf: Uint8Array, page: number): Picture {
  const path = join(folder, "page");
  writeFileSync(`${path}.pdf`, pdf);
  const size = ["-r", String(DOTS * 25.4), "-gray", "-aa", "no", "-aaVector", "no"];
  const which = ["-f", String(page), "-l", String(page), "-singlefile"];
  execFileSync(toPicture, [...size, ...which, `${path}.pdf`, path]);
  const bytes = readFileSync(`${path}.pgm`);
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 40).toString("latin1"));
  if (!head) throw new Error("pdftoppm wrote something else than a grey picture");
  return {
    width: Number(head[1]),
    height: Number(head[2]),
    gray: bytes.subarray(head[0].length),
  };
}

/** Middles of the dark runs along a level or upright line through the picture [mm from upper left]. */
function strokesAcross({ width, height, gray }: Picture, along: "x" | "y", at: number) {
  const fixed = Math.round(at * DOTS);
  const count = along === "x" ? width : height;
  const isDark = (i: number) =>
    (gray[along === "x" ? fixed * width + i : i * width + fixed] ?? 255) < 128;
  const middles: number[] = [];
  for (let i = 0; i < count; i++) {
    if (!isDark(i)) continue;
    const start = i;
    while (i < count && isDark(i)) i++;
    middles.push((start + i) / 2 / DOTS);
  }
  return middles;
}

const [demo] = demos;
if (!demo) throw new Error("there is no demo piece");

describe.each(["letter", "a4"] as const)("a PDF on %s", (name) => {
  const paper = papers[name];
  const squared: Sheet = {
    id: "square",
    paper,
    number: 1,
    of: 1,
    title: {
      ...{ piece: "square", client: "", shows: "", timber: "", date: "", scale: "1:1" },
      ...{ units: "mm", isDemo: true },
    },
    placed: [
      {
        at: [60, 50],
        drawing: {
          ...blankDrawing("square", "", 5),
          strokes: {
            visible: [
              {
                shape: "path",
                isClosed: true,
                points: [
                  [0, 0],
                  [500, 0],
                  [500, 500],
                  [0, 500],
                ],
              },
            ],
          },
        },
      },
    ],
  };

  withPoppler(
    "a square of 100 mm is that both ways, where it should be",
    async () => {
      const picture = rendered(await writePdf([squared], asked), 1);
      expect(Math.abs(picture.width / DOTS - paper.width)).toBeLessThan(0.1);
      expect(Math.abs(picture.height / DOTS - paper.height)).toBeLessThan(0.1);
      const [left = 0, right = 0, ...none] = strokesAcross(picture, "x", paper.height - 100);
      const [top = 0, bottom = 0] = strokesAcross(picture, "y", 100);
      expect(none).toEqual([]);
      expect(Math.abs(right - left - 100)).toBeLessThan(0.1);
      expect(Math.abs(bottom - top - 100)).toBeLessThan(0.1);
      expect(Math.abs(left - 60)).toBeLessThan(0.1);
      expect(Math.abs(paper.height - bottom - 50)).toBeLessThan(0.1);
    },
    30_000,
  );

  withPoppler(
    "the check bar of every sheet is 100 mm and 4 in",
    async () => {
      const { sheets } = planned(demo, { paper: name });
      const pdf = await writePdf(sheets, asked);
      for (const page of [1, sheets.length]) {
        const picture = rendered(pdf, page);
        const line = paper.height - 10 - STRIP / 4;
        const bar = strokesAcross(picture, "y", 50).find((y) => Math.abs(y - line) < 1) ?? 0;
        expect(bar, `no check bar on page ${page}`).toBeGreaterThan(0);
        // The border stands before the first stroke.
        const metric = strokesAcross(picture, "x", bar + 1.2).slice(1, 12);
        const inch = strokesAcross(picture, "x", bar - 1.5).slice(1, 6);
        const steps = (all: readonly number[]) => all.map((x) => x - (all[0] ?? 0));
        for (const [i, x] of steps(metric).entries())
          expect(Math.abs(x - 10 * i)).toBeLessThan(0.1);
        for (const [i, x] of steps(inch).entries())
          expect(Math.abs(x - 25.4 * i)).toBeLessThan(0.1);
        expect([metric.length, inch.length]).toEqual([11, 5]);
      }
    },
    60_000,
  );
});

describe("a PDF", () => {
  test("is the same bytes for the same sheets, and asks not to be scaled", async () => {
    const { sheets } = planned(demo);
    const [one, other] = [await writePdf(sheets, asked), await writePdf(sheets, asked)];
    expect(Buffer.compare(one, other)).toBe(0);
    const text = Buffer.from(one).toString("latin1");
    expect(text.startsWith("%PDF-1.7")).toBe(true);
    expect(text).toContain("/PrintScaling /None");
    expect(text.match(/\/Type \/Page\b/g)).toHaveLength(sheets.length);
    expect(text).toContain("/FontFile2");
    expect(text).not.toContain("/BaseFont /Helvetica");
  });

  withPoppler("its text can be read back, fractions and all", async () => {
    const inches = demos.find(({ piece }) => piece.units === "inch") ?? demo;
    const path = join(folder, "text.pdf");
    writeFileSync(path, await writePdf(planned(inches).sheets, asked));
    const text = execFileSync(toText, ["-layout", path, "-"], { encoding: "utf8" });
    expect(text).toContain(inches.piece.document.name);
    expect(text).toMatch(/29\s?1⁄4″/);
    expect(text).toContain("Holds");
  });
});
