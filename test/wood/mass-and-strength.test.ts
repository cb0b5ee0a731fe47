import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cubicM, deg, kgPerM3, mcPct, mm, mpa, pct, ratio } from "../../src/units/index.ts";
import {
  allSpecies,
  density,
  gravityAt,
  greatestMoisture,
  lateralLoad,
  leadHole,
  mass,
  modulusAlong,
  modulusByShare,
  nailWithdrawal,
  screwNumbered,
  screwNumbers,
  screwWithdrawal,
  screwWithdrawalAllowed,
  shankHole,
  strengthAt,
  strengthAtAngle,
  strengthByTrend,
  turningPoint,
  typicalGravityAt,
} from "../../src/wood/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { between, isNear, some } from "../kit/sizes.ts";

const { gravity, shrinkage, strength, modulus, angle, length } = some;
const near = (a: number, b: number, part = 1e-9) =>
  expect(isNear(a, b, part), `${a}, ${b}`).toBe(true);

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
            near(g(30), b);
            near(g(120), b);
          }
          near(at(0), b / (1 - s / 100));
          const wet = (x: number) => density(ratio(b), mcPct(x)).value;
          expect(wet(m + more)).toBeGreaterThan(wet(m));
          near(wet(0), 1000 * b);
          near(wet(100), 2000 * b);
        },
      ),
    );
  });

  test("mass is volume times density", () => {
    fc.assert(
      fc.property(between(0, 3), between(50, 1300), (v, d) => {
        near(mass(cubicM(v), kgPerM3(d)).value, v * d);
        near(mass(cubicM(2 * v), kgPerM3(d)).value, 2 * v * d);
      }),
    );
  });

  test("full of water, wood weighs as much as its walls and its pores filled", () => {
    fc.assert(
      fc.property(between(0.1, 1.2), (g) => {
        // Walls of density 1.54: what is not wall is water, in one volume of green wood.
        const water = 1 - g / 1.54;
        near(greatestMoisture(ratio(g)).value, (100 * water) / g);
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
        near(at(12), p);
        near(at(turn), g);
        near(at(turn + wetter), g);
        // On a logarithmic scale it is a straight line in moisture, so half-way is the geometric mean.
        near(at(12 + (turn - 12) / 2), Math.sqrt(p * g));
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
          near(at(12), e);
          near(at(12 - 1e-9), at(12 + 1e-9), 1e-6);
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
        near(at(0), p);
        near(at(90), q);
        near(at(45), (2 * p * q) / (p + q));
        expect(at(a)).toBeGreaterThanOrEqual(Math.min(p, q) * (1 - 1e-12));
        expect(at(a)).toBeLessThanOrEqual(Math.max(p, q) * (1 + 1e-12));
        near(strengthAtAngle(q, p, deg(90 - a)).value, at(a));
      }),
    );
  });

  test("moduli by their shares", () => {
    fc.assert(
      fc.property(modulus, some.share, (e, r) => {
        near(modulusAlong(e).value, 1.1 * e);
        near(modulusByShare(e, r).value, r * e);
      }),
    );
  });

  test("the turning point is above 12 % for every timber, 25 where the table has none", () => {
    for (const { key } of allSpecies) expect(turningPoint(key).value).toBeGreaterThan(12);
    expect(turningPoint("no-such-timber").value).toBe(25);
  });
});

describe("screws and nails", () => {
  const pull = fc.record({ gravity, diameter: between(1, 12).map(mm), length });

  test("hold in proportion to length and diameter, and by their power of the density", () => {
    const kinds = [
      [screwWithdrawal, 2],
      [screwWithdrawalAllowed, 2],
      [nailWithdrawal, 2.5],
    ] as const;
    fc.assert(
      fc.property(pull, between(1.01, 2), (p, k) => {
        fc.pre(p.gravity * k < 1.5);
        for (const [hold, power] of kinds) {
          const force = hold(p).value;
          near(hold({ ...p, length: mm(k * p.length) }).value, k * force);
          near(hold({ ...p, diameter: mm(k * p.diameter) }).value, k * force);
          near(hold({ ...p, gravity: ratio(k * p.gravity) }).value, k ** power * force);
          expect(hold({ ...p, length: mm(0) }).value).toBe(0);
        }
        const allowed = screwWithdrawalAllowed(p).value;
        expect(allowed).toBeLessThan(screwWithdrawal(p).value / 4);
        expect(allowed).toBeGreaterThan(0);
      }),
    );
    const bad = { gravity: ratio(0.6), diameter: mm(4), length: mm(25) };
    for (const part of [
      { gravity: ratio(0) },
      { gravity: ratio(1.5) },
      { diameter: mm(0) },
      { length: mm(-1) },
    ]) {
      for (const [hold] of kinds) expect(() => hold({ ...bad, ...part })).toThrow(Problem);
    }
  });

  test("sideways, a screw by the square and a nail by the 1.5th power of its diameter", () => {
    let found = 0;
    for (const species of allSpecies) {
      for (const [kind, power] of [
        ["screw", 2],
        ["nail", 1.5],
      ] as const) {
        const at = (d: number) => lateralLoad(kind, species, mm(d))?.value;
        const [one, two] = [at(3), at(6)];
        if (one === undefined || two === undefined) continue;
        found++;
        near(two, 2 ** power * one);
        expect(one).toBeGreaterThan(0);
      }
    }
    expect(found).toBeGreaterThan(allSpecies.length);
  });

  test("every screw there is: root under thread, lead under shank hole, softwood under hardwood", () => {
    for (const thread of ["cut", "rolled"] as const) {
      const numbers = screwNumbers(thread);
      expect(numbers.length).toBeGreaterThan(5);
      let last = 0;
      for (const number of numbers) {
        const screw = screwNumbered(number, thread);
        expect(screw.diameter.value).toBeGreaterThan(last);
        last = screw.diameter.value;
        expect(screw.root.value).toBeLessThan(screw.body.value);
        expect(screw.root.value).toBeGreaterThan(screw.diameter.value / 2);
        expect(screw.body.value).toBeLessThanOrEqual(screw.diameter.value);
        const [soft, hard] = [true, false].map((is) => leadHole(screw.root, is).value);
        expect(soft).toBeLessThan(hard ?? 0);
        expect(hard).toBeLessThan(shankHole(screw, false).value);
        near(shankHole(screw, false).value, screw.body.value);
        near(shankHole(screw, true).value, (7 / 8) * screw.body.value);
      }
    }
    expect(() => screwNumbered("5", "rolled")).toThrow(Problem);
    expect(() => screwNumbered("toString", "cut")).toThrow(Problem);
  });
});
