import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Point, Stroke } from "../../src/sheets/index.ts";
import { clippedOutline } from "../../src/sheets/views/clip-area.ts";
import { clippedAcross } from "../../src/sheets/views/clip-window.ts";
import { jointSection } from "../../src/sheets/views/joint-section.ts";
import { less, merged } from "../../src/sheets/views/stretches.ts";
import { demos, solids } from "../kit/sheets.ts";

const area = (outline: readonly Point[]): number =>
  outline.reduce((sum, [x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length] ?? [0, 0];
    return sum + (x * v - u * y) / 2;
  }, 0);

describe("an outline cut to a rectangle", () => {
  const square: readonly Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];

  test.each([
    [{ left: -5, bottom: -5, right: 20, top: 20 }, 100],
    [{ left: 4, bottom: -5, right: 20, top: 20 }, 60],
    [{ left: 2, bottom: 3, right: 7, top: 5 }, 10],
    [{ left: 11, bottom: 0, right: 20, top: 20 }, 0],
  ] as const)("to %o keeps %d mm²", (to, expected) => {
    expect(area(clippedOutline(square, to))).toBeCloseTo(expected, 9);
  });

  test("a triangle loses just its corner", () => {
    const triangle: readonly Point[] = [
      [0, 0],
      [10, 0],
      [0, 10],
    ];
    const kept = clippedOutline(triangle, { left: -1, bottom: -1, right: 6, top: 20 });
    expect(area(kept)).toBeCloseTo(50 - 8, 9);
  });
});

describe("a stroke cut to a stretch along the grain", () => {
  test("a line keeps what is between, a path falls into what is left of it", () => {
    expect(clippedAcross({ shape: "line", from: [0, 0], to: [10, 20] }, 2, 5)).toEqual([
      { shape: "line", from: [2, 4], to: [5, 10] },
    ]);
    const path: Stroke = {
      shape: "path",
      isClosed: true,
      points: [
        [0, 0],
        [10, 0],
        [10, 4],
        [0, 4],
      ],
    };
    expect(clippedAcross(path, -1, 6)).toEqual([
      { shape: "line", from: [0, 0], to: [6, 0] },
      {
        shape: "path",
        isClosed: false,
        points: [
          [6, 4],
          [0, 4],
          [0, 0],
        ],
      },
    ]);
    expect(clippedAcross(path, -1, 11)).toEqual([path]);
    expect(clippedAcross(path, 20, 30)).toEqual([]);
  });
});

describe("stretches of a line", () => {
  const stretch = fc
    .tuple(fc.integer({ min: 0, max: 100 }), fc.integer({ min: 1, max: 20 }))
    .map(([from, size]) => [from, from + size] as const);
  const isIn = (list: readonly (readonly [number, number])[], n: number) =>
    list.some(([from, to]) => n > from && n < to);

  test("joined, and one list without another, hold at every place between whole numbers", () => {
    fc.assert(
      fc.property(fc.array(stretch), fc.array(stretch), (a, b) => {
        const [one, other] = [merged(a, 0), merged(b, 0)];
        const rest = less(one, other, 0);
        for (let n = 0.5; n < 125; n++) {
          expect(isIn(one, n)).toBe(isIn(a, n));
          expect(isIn(rest, n)).toBe(isIn(a, n) && !isIn(b, n));
        }
        for (const [i, [from]] of one.slice(1).entries())
          expect(from).toBeGreaterThan(one[i]?.[1] ?? 0);
      }),
    );
  });

  test("a gap that is none is closed", () => {
    expect(
      merged(
        [
          [5, 6],
          [0, 4.9995],
        ],
        0.001,
      ),
    ).toEqual([[0, 6]]);
    expect(
      merged(
        [
          [5, 6],
          [0, 4.9],
        ],
        0.001,
      ),
    ).toHaveLength(2);
  });
});

describe("a leg cut through its joints", () => {
  test.each(demos.map((demo) => [demo.piece.document.name, demo.piece] as const))(
    "in %s shows the leg and both its rails, as much wood as there is",
    (_, piece) => {
      const leg = piece.parts.find(({ role }) => role === "leg");
      const drawing = leg && jointSection(piece, leg, solids, 1);
      if (!drawing) throw new Error("it has no section");
      const marks = drawing.texts.map(({ says }) => says);
      expect(marks).toContain(leg.mark);
      const rails = piece.joints
        .filter(({ kind, parts }) => kind === "mortise-and-tenon" && parts.includes(leg.key))
        .flatMap(({ parts }) =>
          piece.parts.filter(({ key }) => key !== leg.key && parts.includes(key)),
        );
      expect(marks).toEqual(expect.arrayContaining(rails.map(({ mark }) => mark)));
      // The leg's own wood there: its blank less both mortises, which meet where their tips are mitred.
      const own = drawing.hatches.find((_, i) => marks[i] === leg.mark);
      const wood = (own?.outlines ?? []).reduce((sum, one) => sum + area(one), 0);
      const mortises = leg.features.filter((f) => f.feature === "mortise");
      const holes = mortises.map((f) => (f.across[1] - f.across[0]) * f.depth);
      const whole = leg.blank.width * leg.blank.thickness;
      const apart = whole - holes.reduce((sum, one) => sum + one, 0);
      expect(wood).toBeGreaterThan(apart - 1e-4);
      expect(wood).toBeLessThan(whole - Math.max(...holes));
    },
  );

  test("a part without mortises has none", () => {
    const [demo] = demos;
    const top = demo?.piece.parts.find(({ role }) => role === "top");
    if (!demo || !top) throw new Error("there is no top");
    expect(jointSection(demo.piece, top, solids, 1)).toBeUndefined();
  });
});
