import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  boardFeetOf,
  boardVolume,
  countedThickness,
  surfaceMeasure,
  tallyBoardFeet,
} from "../../src/stock/index.ts";
import { count, inches, mm, ratio } from "../../src/units/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, some } from "../kit/sizes.ts";

const { length, pieces } = some;

describe("board feet", () => {
  test("are a twelfth of thickness, width in inches and length in feet", () => {
    fc.assert(
      fc.property(between(1, 8), between(1, 30), between(0.5, 20), pieces, (t, w, feet, n) => {
        const measured = boardFeetOf(inches(t), inches(w), inches(12 * feet), n).value;
        expectNear(measured, (n * t * w * feet) / 12);
        // And by volume: 144 cubic inches each.
        const volume = boardVolume(inches(t), inches(w), inches(12 * feet), n).value;
        expectNear(measured, volume / (144 * 0.0254 ** 3));
      }),
    );
  });

  test("grow with each size and the number", () => {
    fc.assert(
      fc.property(length, length, length, pieces, between(1.01, 3), (t, w, l, n, k) => {
        for (const measure of [boardFeetOf, boardVolume]) {
          const once = measure(t, w, l, n).value;
          expectNear(measure(mm(k * t), w, l, n).value, k * once);
          expectNear(measure(t, mm(k * w), l, n).value, k * once);
          expectNear(measure(t, w, mm(k * l), n).value, k * once);
          expectNear(measure(t, w, l, count(2 * n)).value, 2 * once);
        }
      }),
    );
  });

  test("thickness under one inch counts as one, above it as it is", () => {
    fc.assert(
      fc.property(between(1, 150), (t) => {
        const counted = countedThickness(mm(t)).value;
        expect(counted).toBe(Math.max(25.4, t));
        expect(countedThickness(mm(counted)).value).toBe(counted);
      }),
    );
  });
});

describe("a tally", () => {
  test("is whole feet of surface, never falls with size, and drops parts of a foot of length", () => {
    fc.assert(
      fc.property(
        between(2, 30),
        between(0.2, 20),
        between(0, 0.99),
        between(0, 5),
        (w, feet, part, wider) => {
          const surface = (wide: number, long: number) =>
            surfaceMeasure(inches(wide), inches(12 * long)).value;
          const measured = surface(w, feet);
          expect(Number.isInteger(measured)).toBe(true);
          expect(surface(w + wider, feet)).toBeGreaterThanOrEqual(measured);
          const whole = Math.floor(feet);
          expect(surface(w, whole + part)).toBe(surface(w, whole));
          expect(Math.abs(surface(w, whole) - (w * whole) / 12)).toBeLessThanOrEqual(0.5 + 1e-9);
        },
      ),
    );
  });

  test("notes an exact half, and only that", () => {
    const notes = (w: number, feet: number) => surfaceMeasure(inches(w), inches(12 * feet)).notes;
    expect(notes(6, 9)).toHaveLength(1);
    expect(notes(6, 8)).toEqual([]);
    expect(notes(6.25, 9)).toEqual([]);
    expect(surfaceMeasure(inches(6), inches(108)).value).toBe(5);
  });

  test("is surface times thickness in inches", () => {
    fc.assert(
      fc.property(between(1, 4), fc.integer({ min: 0, max: 60 }), pieces, (t, surface, n) => {
        expectNear(tallyBoardFeet(inches(t), ratio(surface), n).value, n * surface * t);
      }),
    );
  });
});
