import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deg, mcPct, mm, pct, perPct } from "../../src/units/index.ts";
import {
  coefficientAt,
  coefficientFromShrinkage,
  outOfSquare,
  shrinkageTo,
  widthChange,
  widthChangeByShrinkage,
} from "../../src/wood/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { between, isNear, some } from "../kit/sizes.ts";

const { length, coefficient, moisture, shrinkage, angle } = some;

describe("movement by coefficient", () => {
  test("there and back is the same the other way round; no change, no movement", () => {
    fc.assert(
      fc.property(length, coefficient, moisture, moisture, (w, c, a, b) => {
        expect(widthChange(w, c, a, b).value).toBe(-widthChange(w, c, b, a).value + 0);
        expect(widthChange(w, c, a, a).value).toBe(0);
      }),
    );
  });

  test("is as many times as great as the width, the coefficient, the points", () => {
    fc.assert(
      fc.property(length, coefficient, between(0, 10), between(0.01, 10), (w, c, a, more) => {
        const [from, to, twice] = [mcPct(a), mcPct(a + more), mcPct(a + 2 * more)];
        const once = widthChange(w, c, from, to).value;
        expect(once).toBeGreaterThanOrEqual(0);
        for (const other of [
          widthChange(mm(2 * w), c, from, to),
          widthChange(w, perPct(2 * c), from, to),
          widthChange(w, c, from, twice),
        ]) {
          expect(isNear(other.value, 2 * once, 1e-9) || Math.abs(other.value) < 1e-9).toBe(true);
        }
      }),
    );
  });

  test("outside what is proved there is a note, outside what wood does a refusal", () => {
    const at = (a: number, b: number) => widthChange(mm(100), perPct(0.003), mcPct(a), mcPct(b));
    expect(at(6, 14).notes).toEqual([]);
    expect(at(5.9, 14).notes).toHaveLength(1);
    expect(at(6, 14.1).notes).toHaveLength(1);
    for (const [a, b] of [
      [-0.1, 8],
      [8, 30.1],
      [31, 8],
    ] as const) {
      expect(() => at(a, b)).toThrow(Problem);
      const [s, c] = [pct(8), perPct(0.003)];
      expect(() => widthChangeByShrinkage(mm(100), s, mcPct(a), mcPct(b))).toThrow(Problem);
      expect(() => outOfSquare(c, c, deg(45), mcPct(a), mcPct(b))).toThrow(Problem);
    }
  });
});

describe("movement by total shrinkage", () => {
  test("agrees with the coefficient's form about 10 % MC", () => {
    fc.assert(
      fc.property(length, shrinkage, between(-0.01, 0.01), (w, s, change) => {
        const to = mcPct(10 + change);
        const byLine = widthChange(w, coefficientFromShrinkage(s), mcPct(10), to).value;
        const whole = widthChangeByShrinkage(w, s, mcPct(10), to).value;
        expect(isNear(byLine, whole, 1e-9)).toBe(true);
      }),
    );
  });

  test("from green to dry takes off the whole shrinkage, and there and back is where it was", () => {
    fc.assert(
      fc.property(length, shrinkage, moisture, moisture, (w, s, a, b) => {
        const dry = widthChangeByShrinkage(w, s, mcPct(30), mcPct(0)).value;
        expect(isNear(dry, (-w * s) / 100, 1e-9)).toBe(true);
        const then = w + widthChangeByShrinkage(w, s, a, b).value;
        expect(isNear(then + widthChangeByShrinkage(mm(then), s, b, a).value, w, 1e-9)).toBe(true);
      }),
    );
  });

  test("only what can be a shrinkage", () => {
    for (const s of [0, -1, 50, 80]) {
      expect(() => coefficientFromShrinkage(pct(s))).toThrow(Problem);
      expect(() => widthChangeByShrinkage(mm(9), pct(s), mcPct(8), mcPct(9))).toThrow(Problem);
    }
  });

  test("shrinkage from green grows from nought at 30 % to the whole at 0", () => {
    fc.assert(
      fc.property(
        shrinkage,
        between(0, 29),
        between(0.01, 1),
        between(30, 200),
        (s, m, more, wet) => {
          const left = (x: number) => shrinkageTo(s, mcPct(x)).value;
          expect(left(m)).toBeGreaterThan(left(m + more));
          expect([left(wet), left(0)]).toEqual([0, s]);
          expect(isNear(left(15), s / 2)).toBe(true);
        },
      ),
    );
  });

  test("the coefficient grows with the shrinkage, and at small ones is a thirtieth of it", () => {
    fc.assert(
      fc.property(between(0.001, 40), between(0.01, 5), (s, more) => {
        const c = (x: number) => coefficientFromShrinkage(pct(x)).value;
        expect(c(s + more)).toBeGreaterThan(c(s));
        expect(c(1e-6) / 1e-6).toBeCloseTo(1 / 3000, 9);
      }),
    );
  });
});

describe("rings askew", () => {
  test("the coefficient lies between the radial and the tangential one", () => {
    fc.assert(
      fc.property(coefficient, coefficient, angle, (r, t, a) => {
        const c = coefficientAt(r, t, a).value;
        expect(c).toBeGreaterThanOrEqual(Math.min(r, t) * (1 - 1e-12));
        expect(c).toBeLessThanOrEqual(Math.max(r, t) * (1 + 1e-12));
        expect(isNear(coefficientAt(r, t, deg(0)).value, t)).toBe(true);
        expect(isNear(coefficientAt(r, t, deg(90)).value, r)).toBe(true);
        expect(isNear(coefficientAt(r, t, deg(45)).value, (r + t) / 2)).toBe(true);
        // Two faces at right angles share both coefficients between them.
        const other = coefficientAt(r, t, deg(90 - a)).value;
        expect(isNear(c + other, r + t, 1e-12)).toBe(true);
      }),
    );
  });

  test("a square stays square flat and quartered, and leaves it most at 45°", () => {
    fc.assert(
      fc.property(coefficient, coefficient, angle, moisture, moisture, (r, t, a, m1, m2) => {
        const off = (at: number) => outOfSquare(r, t, deg(at), m1, m2).value;
        const most = Math.abs(off(45));
        expect(off(0)).toBeCloseTo(0, 12);
        expect(off(90)).toBeCloseTo(0, 12);
        expect(Math.abs(off(a))).toBeLessThanOrEqual(most + 1e-12);
        expect(off(90 - a)).toBeCloseTo(off(a), 9);
        expect(outOfSquare(r, t, a, m2, m1).value).toBeCloseTo(-off(a), 12);
        // In radians it is the difference of the two movements per unit of width.
        expect(most).toBeCloseTo((Math.abs((t - r) * (m2 - m1)) * 180) / Math.PI, 9);
      }),
    );
  });
});
