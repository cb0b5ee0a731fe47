import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  cornerDepth,
  flatsForTurning,
  flatWidth,
  octagonArea,
  octagonSetOut,
  swingAfter,
  swingOfSquare,
} from "../../src/making/index.ts";
import { mm } from "../../src/units/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, isNear, some } from "../kit/sizes.ts";

/** A square and what is left across its diagonal flats, from nearly a square on edge to regular. */
const blank = fc
  .tuple(between(5, 500), between(0.72, 1))
  .map(([s, part]) => ({ square: mm(s), acrossFlats: mm(part * s) }));

function shapeOf(b: { square: number; acrossFlats: number }) {
  const of = { square: mm(b.square), acrossFlats: mm(b.acrossFlats) };
  const mark = octagonSetOut(of).value;
  const depth = cornerDepth(of).value;
  return { s: b.square, A: b.acrossFlats, mark, depth, flat: flatWidth(mm(depth)).value };
}

describe("an octagon on a square", () => {
  test("two marks and the flat between them make up each side", () => {
    fc.assert(
      fc.property(blank, (b) => {
        const { s, A, mark, depth, flat } = shapeOf(b);
        // The new flat is the slope over two marks; the two depths are what the diagonal lost.
        expectNear(flat, mark * Math.SQRT2);
        expectNear(A + 2 * depth, s * Math.SQRT2);
        expectNear(depth * Math.SQRT2, mark);
        expect(2 * mark).toBeLessThanOrEqual(s * (1 + 1e-9));
      }),
    );
  });

  test("regular, all eight sides are equal and as many across either way", () => {
    fc.assert(
      fc.property(between(5, 500), (s) => {
        const { mark, flat } = shapeOf({ square: s, acrossFlats: s });
        expectNear(flat, s - 2 * mark);
        expectNear(flat, s * Math.tan(Math.PI / 8));
      }),
    );
  });

  test("its area is the square less four corners, and that of the polygon of its corners", () => {
    fc.assert(
      fc.property(blank, (b) => {
        const { s, mark } = shapeOf(b);
        const area = octagonArea(mm(s), mm(mark)).value;
        expectNear(area + 4 * (mark ** 2 / 2), s ** 2);
        const h = s / 2;
        const c = h - mark;
        const corners = [
          [h, -c],
          [h, c],
          [c, h],
          [-c, h],
          [-h, c],
          [-h, -c],
          [-c, -h],
          [c, -h],
        ] as const;
        let twice = 0;
        for (const [i, [x, y]] of corners.entries()) {
          const [u, v] = corners[(i + 1) % 8] ?? [0, 0];
          twice += x * v - u * y;
        }
        expectNear(area, twice / 2);
        expectNear(swingAfter(mm(s), mm(mark)).value, 2 * Math.hypot(h, c));
      }),
    );
  });

  test("its swing lies between the square's side and its diagonal, and less is left the more is cut", () => {
    fc.assert(
      fc.property(blank, between(0.9, 0.999), (b, less) => {
        const { s, mark } = shapeOf(b);
        const swing = swingAfter(mm(s), mm(mark)).value;
        expect(swing).toBeGreaterThanOrEqual(s);
        expect(swing).toBeLessThan(swingOfSquare(mm(s)).value);
        expect(
          octagonSetOut({ ...b, acrossFlats: mm(Math.max(s / Math.SQRT2, less * b.acrossFlats)) })
            .value,
        ).toBeGreaterThanOrEqual(mark);
        expectNear(swingOfSquare(mm(s)).value, Math.hypot(s, s));
      }),
    );
  });

  test("the turned diameter comes out, with its allowance, wherever the centres are", () => {
    fc.assert(
      fc.property(some.length, between(0, 10), between(0, 5), (d, allowance, off) => {
        const flats = flatsForTurning(mm(d), mm(allowance), mm(off)).value;
        expect(flats).toBeGreaterThanOrEqual(d + 2 * off - 1e-9);
        expect(flats).toBeGreaterThanOrEqual(d + allowance - 1e-9);
        expect([d + 2 * off, d + allowance].some((x) => isNear(flats, x))).toBe(true);
      }),
    );
  });

  test.each([
    [50, 51],
    [50, 35],
    [50, 0],
    [0, 0],
    [-5, 4],
  ])("%f mm cannot leave %f mm", (s, A) => {
    const bad = { square: mm(s), acrossFlats: mm(A) };
    expect(() => octagonSetOut(bad)).toThrow(Problem);
    expect(() => cornerDepth(bad)).toThrow(Problem);
  });
});
