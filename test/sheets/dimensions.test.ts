import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Dimension, Point } from "../../src/sheets/index.ts";
import { dimensionMarks } from "../../src/sheets/writers/dimension-marks.ts";
import { hatchLines } from "../../src/sheets/writers/hatch-lines.ts";
import type { Mark } from "../../src/sheets/writers/mark.ts";
import { spreadOut } from "../../src/sheets/writers/spread-out.ts";
import { deg, mm } from "../../src/units/index.ts";
import { expectNear } from "../kit/near.ts";

/** A drawing at 1:2 whose 0, 0 lies at 10, 20 on its sheet. */
const toPaper = ([x, y]: Point): Point => [10 + x / 2, 20 + y / 2];

const straight = (more: Partial<Extract<Dimension, { dimension: "straight" }>>): Dimension => ({
  ...{ dimension: "straight", id: "d", along: "across", from: [0, 0], to: [100, 0] },
  ...{ stand: { at: 0, off: -8 }, measures: mm(100), says: "100" },
  ...more,
});

const heads = (marks: readonly Mark[]): readonly Point[] =>
  marks.flatMap((mark) => (mark.mark === "fill" ? mark.points.slice(0, 1) : []));
const texts = (marks: readonly Mark[]) =>
  marks.flatMap((mark) => (mark.mark === "text" ? [mark] : []));

describe("straight dimensions", () => {
  test("both heads point at the ends, so far from the drawing as is asked", () => {
    const marks = dimensionMarks(straight({}), toPaper);
    expect(heads(marks)).toEqual([
      [10, 12],
      [60, 12],
    ]);
    const [figure] = texts(marks);
    expect(figure).toMatchObject({ says: "100", anchor: "middle", turn: 0 });
    expect(figure?.at[0]).toBe(35);
    expect(figure?.at[1]).toBeGreaterThan(12);
  });

  test("an upright one is read from the right, to the left of its line", () => {
    const marks = dimensionMarks(
      straight({ along: "up", to: [0, 100], stand: { at: 0, off: -8 } }),
      toPaper,
    );
    expect(heads(marks)).toEqual([
      [2, 20],
      [2, 70],
    ]);
    const [figure] = texts(marks);
    expect(figure?.turn).toBe(90);
    expect(figure?.at[0]).toBeLessThan(2);
  });

  test("an aligned one runs beside the line it measures", () => {
    const marks = dimensionMarks(
      straight({ along: "aligned", to: [60, 80], stand: { at: 0, off: 5 } }),
      toPaper,
    );
    const [a, b] = heads(marks);
    if (!a || !b) throw new Error("it has no heads");
    expectNear(Math.hypot(b[0] - a[0], b[1] - a[1]), 50);
    expectNear(a[0], 10 - 5 * 0.8);
    expectNear(a[1], 20 + 5 * 0.6);
  });

  test("where there is no room between, heads and figure stand outside", () => {
    const marks = dimensionMarks(straight({ to: [6, 0], says: "6" }), toPaper);
    const [left, right] = heads(marks);
    const [figure] = texts(marks);
    expect([left, right]).toEqual([
      [10, 12],
      [13, 12],
    ]);
    expect(figure?.anchor).toBe("start");
    expect(figure?.at[0]).toBeGreaterThan(13);
  });
});

describe("running dimensions", () => {
  const stops = [30, 32, 34, 120].map((x) => ({
    ...{ at: [x, 0] as Point, measures: mm(x), says: String(x) },
  }));
  const running: Dimension = {
    ...{ dimension: "running", id: "r", along: "across", origin: [0, 0], stops },
    stand: { at: 0, off: 6 },
  };

  test("start at a ring, and say each distance from there, with nought", () => {
    const marks = dimensionMarks(running, toPaper);
    const ring = marks.find((mark) => mark.mark === "arc");
    expect(ring?.mark === "arc" && ring.centre).toEqual([10, 26]);
    expect(texts(marks).map(({ says }) => says)).toEqual(["0", "30", "32", "34", "120"]);
  });

  test("figures that would crowd are moved apart, and keep their order", () => {
    const xs = texts(dimensionMarks(running, toPaper)).map(({ at }) => at[0]);
    for (const [i, x] of xs.slice(1).entries()) expect(x - (xs[i] ?? 0)).toBeGreaterThan(3.69);
  });
});

test("a radius points from the centre to its circle", () => {
  const marks = dimensionMarks(
    {
      dimension: "radius",
      id: "q",
      centre: [0, 0],
      angle: deg(90),
      measures: mm(40),
      says: "R 40",
    },
    toPaper,
  );
  const [tip] = heads(marks);
  expectNear(tip?.[0], 10);
  expectNear(tip?.[1], 40);
  expect(texts(marks)[0]?.says).toBe("R 40");
});

describe("spreading out", () => {
  const places = fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { maxLength: 20 });

  test("keeps the order and the pitch, and the middle of the whole", () => {
    fc.assert(
      fc.property(places, (list) => {
        const wanted = [...list].sort((a, b) => a - b);
        const found = spreadOut(wanted, 4);
        expect(found).toHaveLength(wanted.length);
        for (const [i, place] of found.slice(1).entries())
          expect(place - (found[i] ?? 0)).toBeGreaterThan(4 - 1e-9);
        const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
        expect(Math.abs(sum(found) - sum(wanted))).toBeLessThan(1e-9 * (1 + wanted.length * 50));
      }),
    );
  });

  test("moves nothing that has room", () => {
    expect(spreadOut([0, 5, 20], 4)).toEqual([0, 5, 20]);
    expect(spreadOut([0, 1], 4)).toEqual([-1.5, 2.5]);
  });
});

describe("hatching", () => {
  const square = (from: number, to: number): readonly Point[] => [
    [from, from],
    [to, from],
    [to, to],
    [from, to],
  ];

  test("fills what is inside and leaves out holes, so that length times distance is the area", () => {
    const lines = hatchLines(
      { outlines: [square(0, 100), square(30, 70)], angle: deg(45), gap: mm(0.5) },
      2,
    );
    const ink = lines.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
    expect(Math.abs(ink * 1 - (100 ** 2 - 40 ** 2))).toBeLessThan(40);
    const inHole = lines.filter(([a, b]) => {
      const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      return x > 30 && x < 70 && y > 30 && y < 70;
    });
    expect(inHole).toEqual([]);
  });
});
