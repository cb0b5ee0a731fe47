import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Stance, tippingLoad, tippingLoadAt, tippingPush } from "../../src/mechanics/index.ts";
import { kg, mm } from "../../src/units/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, some } from "../kit/sizes.ts";

const at = (x: number, y: number) => ({ x: mm(x), y: mm(y) });
type Spot = readonly [x: number, y: number];

const table = fc.record({ a: between(100, 800), b: between(100, 800), mass: some.mass });
const four = (a: number, b: number): readonly Spot[] => [
  [-a, -b],
  [a, -b],
  [a, b],
  [-a, b],
];

const stance = (feet: readonly Spot[], mass: number, centre: Spot = [0, 0]): Stance => ({
  feet: feet.map(([x, y]) => at(x, y)),
  mass: kg(mass),
  centre: at(...centre),
});
const tips = (s: Stance, [x, y]: Spot) => tippingLoadAt(s, at(x, y))?.value;

describe("a load that tips", () => {
  test("balances the weight on its lever", () => {
    fc.assert(
      fc.property(some.mass, some.length, some.length, (m, a, b) => {
        const load = tippingLoad(m, a, b).value;
        expectNear(load * b, m * 9.80665 * a);
        expectNear(tippingPush(m, a, b).value, load);
      }),
    );
  });

  test("goes to nought the farther out it is, and past all bounds at the foot line", () => {
    fc.assert(
      fc.property(table, between(1, 500), between(1.1, 9), ({ a, b, mass }, out, k) => {
        const s = stance(four(a, b), mass);
        const load = (x: number) => tips(s, [a + x, 0]) ?? Number.NaN;
        expectNear(load(k * out), load(out) / k);
        expect(load(1e12)).toBeLessThan(1e-2);
        expect(load(1e-6)).toBeGreaterThan(1e5);
      }),
    );
  });

  test("is the same mirrored, turned half round, and moved with the whole table", () => {
    fc.assert(
      fc.property(table, between(-900, 900), between(-900, 900), ({ a, b, mass }, x, y) => {
        const centre: Spot = [a / 3, -b / 4];
        const s = stance(four(a, b), mass, centre);
        const load = tips(s, [x, y]);
        for (const [p, q] of [
          [-1, 1],
          [1, -1],
          [-1, -1],
        ] as const) {
          const mirrored = stance(four(a, b), mass, [p * centre[0], q * centre[1]]);
          const same = tips(mirrored, [p * x, q * y]);
          if (load === undefined) expect(same).toBeUndefined();
          else expectNear(same, load);
        }
        const moved = stance(
          four(a, b).map(([u, v]) => [u + 500, v - 300]),
          mass,
          [centre[0] + 500, centre[1] - 300],
        );
        const there = tips(moved, [x + 500, y - 300]);
        if (load === undefined) expect(there).toBeUndefined();
        else expectNear(there, load, 1e-6);
      }),
    );
  });

  test("within the feet there is none, and feet within the others change nothing", () => {
    fc.assert(
      fc.property(
        table,
        between(-0.99, 0.99),
        between(-0.99, 0.99),
        between(1.05, 3),
        ({ a, b, mass }, u, v, out) => {
          const s = stance(four(a, b), mass);
          expect(tips(s, [u * a, v * b])).toBeUndefined();
          const more = stance([...four(a, b), [u * a, v * b], [0, 0]], mass);
          expectNear(tips(more, [out * a, v * b]), tips(s, [out * a, v * b]));
          // In whatever order they are told.
          const shuffled = stance([...four(a, b)].reverse(), mass);
          expectNear(tips(shuffled, [out * a, v * b]), tips(s, [out * a, v * b]));
        },
      ),
    );
  });

  test("at a corner is what the weaker of its two edges bears", () => {
    fc.assert(
      fc.property(table, between(1, 500), between(1, 500), ({ a, b, mass }, x, y) => {
        const s = stance(four(a, b), mass);
        const [side, end] = [tips(s, [a + x, 0]) ?? 0, tips(s, [0, b + y]) ?? 0];
        expectNear(tips(s, [a + x, b + y]), Math.min(side, end));
      }),
    );
  });

  test("three feet tip more easily than four on the same square", () => {
    fc.assert(
      fc.property(table, ({ a, b, mass }) => {
        const whole = stance(four(a, b), mass, [-a / 9, -b / 9]);
        const three = stance(
          four(a, b).filter((_, i) => i !== 2),
          mass,
          [-a / 9, -b / 9],
        );
        const corner: Spot = [1.2 * a, 1.2 * b];
        expect(tips(three, corner) ?? 0).toBeLessThan(tips(whole, corner) ?? 0);
      }),
    );
  });

  test("a piece whose weight is outside its feet falls by itself", () => {
    fc.assert(
      fc.property(table, between(1, 3), ({ a, b, mass }, out) => {
        expect(() => tips(stance(four(a, b), mass, [out * a, 0]), [2 * a, 0])).toThrow(Problem);
        expect(() => tips(stance(four(a, b), mass, [0, -out * b]), [2 * a, 0])).toThrow(Problem);
      }),
    );
  });
});
