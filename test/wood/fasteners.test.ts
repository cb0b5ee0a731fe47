import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mm, ratio } from "../../src/units/index.ts";
import {
  allSpecies,
  lateralLoad,
  leadHole,
  nailWithdrawal,
  screwNumbered,
  screwNumbers,
  screwWithdrawal,
  screwWithdrawalAllowed,
  shankHole,
} from "../../src/wood/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, some } from "../kit/sizes.ts";

const { gravity, length } = some;

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
          expectNear(hold({ ...p, length: mm(k * p.length) }).value, k * force);
          expectNear(hold({ ...p, diameter: mm(k * p.diameter) }).value, k * force);
          expectNear(hold({ ...p, gravity: ratio(k * p.gravity) }).value, k ** power * force);
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
        ["lag", 2],
        ["nail", 1.5],
      ] as const) {
        const at = (d: number) => lateralLoad(kind, species, mm(d))?.value;
        const [one, two] = [at(3), at(6)];
        if (one === undefined || two === undefined) continue;
        found++;
        expectNear(two, 2 ** power * one);
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
        expect(screw.root.value).toBeGreaterThan(screw.diameter.value / 2);
        expect(screw.root.value).toBeLessThan(screw.diameter.value);
        const [soft, hard] = [true, false].map((is) => leadHole(screw.root, is).value);
        expect(soft).toBeLessThan(hard ?? 0);
        expect(hard).toBeLessThan(shankHole(screw, false).value);
        // A full shank may bite a soft upper piece a little; a thread wider than it may not.
        const tight = thread === "cut" ? 7 / 8 : 1;
        expectNear(shankHole(screw, false).value, screw.diameter.value);
        expectNear(shankHole(screw, true).value, tight * screw.diameter.value);
      }
    }
    expect(() => screwNumbered("5", "rolled")).toThrow(Problem);
    expect(() => screwNumbered("toString", "cut")).toThrow(Problem);
  });
});
