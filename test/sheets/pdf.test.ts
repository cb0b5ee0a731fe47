import { describe, expect, test } from "vitest";
import { blankDrawing } from "../../src/sheets/drawing.ts";
import { papers, type Sheet, writePdf } from "../../src/sheets/index.ts";
import { STRIP } from "../../src/sheets/sheet.ts";
import { DOTS, rendered, strokesAcross, textOf, withPoppler } from "../kit/print.ts";
import { demos, fonts, planned } from "../kit/sheets.ts";

const asked = { fonts, made: new Date("2026-03-14T12:00:00Z") };

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
    const text = textOf(await writePdf(planned(inches).sheets, asked));
    expect(text).toContain(inches.piece.document.name);
    expect(text).toMatch(/29\s?1⁄4″/);
    expect(text).toContain("Holds");
  });
});
