import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicM, deg, kgPerM3, mcPct, mpa, pct, ratio } from "../../src/units/index.ts";
import {
  allSpecies,
  density,
  gravityAt,
  greatestMoisture,
  mass,
  modulusAlong,
  modulusByShare,
  strengthAt,
  strengthAtAngle,
  strengthByTrend,
  turningPoint,
  typicalGravityAt,
} from "../../src/wood/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, some } from "../kit/sizes.ts";

const { shrinkage, strength, modulus, angle } = some;

describe("density and mass", () => {
  test("gravity falls from dry to green and then stays; density rises with the water in it", () => {
    fc.assert(
      fc.property(
        between(0.1, 0.8),
        shrinkage,
        between(0, 28),
        between(0.01, 2),
        (b, s, m, more) => {
          const at = (x: number) => gravityAt(ratio(b), s, mcPct(x)).value;
          const typical = (x: number) => typicalGravityAt(ratio(b), mcPct(x)).value;
          for (const g of [at, typical]) {
            expect(g(m + more)).toBeLessThan(g(m));
            expectNear(g(30), b);
            expectNear(g(120), b);
          }
          expectNear(at(0), b / (1 - s / 100));
          const wet = (x: number) => density(ratio(b), mcPct(x)).value;
          expect(wet(m + more)).toBeGreaterThan(wet(m));
          expectNear(wet(0), 1000 * b);
          expectNear(wet(100), 2000 * b);
        },
      ),
    );
  });

  test("mass is volume times density", () => {
    fc.assert(
      fc.property(between(0, 3), between(50, 1300), (v, d) => {
        expectNear(mass(cubicM(v), kgPerM3(d)).value, v * d);
        expectNear(mass(cubicM(2 * v), kgPerM3(d)).value, 2 * v * d);
      }),
    );
  });

  test("full of water, wood weighs as much as its walls and its pores filled", () => {
    fc.assert(
      fc.property(between(0.1, 1.2), (g) => {
        // Walls of density 1.54: what is not wall is water, in one volume of green wood.
        const water = 1 - g / 1.54;
        expectNear(greatestMoisture(ratio(g)).value, (100 * water) / g);
      }),
    );
  });

  test("what is no wood is refused", () => {
    for (const g of [0, -0.1, 1.5, 3]) {
      expect(() => density(ratio(g), mcPct(8))).toThrow(Problem);
      expect(() => greatestMoisture(ratio(g))).toThrow(Problem);
      expect(() => gravityAt(ratio(g), pct(12), mcPct(8))).toThrow(Problem);
      expect(() => typicalGravityAt(ratio(g), mcPct(8))).toThrow(Problem);
    }
    for (const m of [-1, 301]) expect(() => density(ratio(0.6), mcPct(m))).toThrow(Problem);
  });
});

describe("strength", () => {
  test("is the printed value at 12 % and the green one from the turning point on", () => {
    fc.assert(
      fc.property(strength, strength, between(20, 30), between(0, 60), (p, g, turn, wetter) => {
        const at = (m: number) => strengthAt(p, g, mcPct(turn), mcPct(m)).value;
        expectNear(at(12), p);
        expectNear(at(turn), g);
        expectNear(at(turn + wetter), g);
        // On a logarithmic scale it is a straight line in moisture, so half-way is the geometric mean.
        expectNear(at(12 + (turn - 12) / 2), Math.sqrt(p * g));
        const [drier, damper] = [at(8), at(16)];
        if (p > 1.001 * g) expect(drier).toBeGreaterThan(damper);
      }),
    );
    for (const [p, g, turn, m] of [
      [0, 50, 25, 8],
      [90, 0, 25, 8],
      [90, 50, 12, 8],
      [90, 50, 25, -1],
    ] as const) {
      expect(() => strengthAt(mpa(p), mpa(g), mcPct(turn), mcPct(m))).toThrow(Problem);
    }
  });

  test("by the trend it is the printed value at 12 %, unbroken there, and falls with moisture", () => {
    fc.assert(
      fc.property(
        modulus,
        fc.constantFrom("stiffness", "bending"),
        between(4, 19),
        (e, kind, m) => {
          const at = (x: number) => strengthByTrend(e, kind, mcPct(x)).value;
          expectNear(at(12), e);
          expectNear(at(12 - 1e-9), at(12 + 1e-9), 1e-6);
          expect(at(m + 0.5)).toBeLessThan(at(m));
        },
      ),
    );
    for (const m of [3.9, 20.1]) {
      expect(() => strengthByTrend(mpa(1e4), "stiffness", mcPct(m))).toThrow(Problem);
    }
  });

  test("at an angle it goes from the one along to the one across, between them", () => {
    fc.assert(
      fc.property(strength, strength, angle, (p, q, a) => {
        const at = (x: number) => strengthAtAngle(p, q, deg(x)).value;
        expectNear(at(0), p);
        expectNear(at(90), q);
        expectNear(at(45), (2 * p * q) / (p + q));
        expect(at(a)).toBeGreaterThanOrEqual(Math.min(p, q) * (1 - 1e-12));
        expect(at(a)).toBeLessThanOrEqual(Math.max(p, q) * (1 + 1e-12));
        expectNear(strengthAtAngle(q, p, deg(90 - a)).value, at(a));
      }),
    );
  });

  test("moduli by their shares", () => {
    fc.assert(
      fc.property(modulus, some.share, (e, r) => {
        expectNear(modulusAlong(e).value, 1.1 * e);
        expectNear(modulusByShare(e, r).value, r * e);
      }),
    );
  });

  test("the turning point is above 12 % for every timber, 25 where the table has none", () => {
    for (const { key } of allSpecies) expect(turningPoint(key).value).toBeGreaterThan(12);
    expect(turningPoint("no-such-timber").value).toBe(25);
  });
});
