import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  bendingStress,
  droopOfArm,
  momentUnderPoint,
  momentUnderSpread,
  sagInTheLongRun,
  sagUnderPoint,
  sagUnderSpread,
  secondMoment,
  spreadLoad,
} from "../../src/mechanics/index.ts";
import { mm, mm4, mpa, newtonMm, newtons, newtonsPerMm, ratio } from "../../src/units/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, some } from "../kit/sizes.ts";

const bar = fc.record({
  F: some.load,
  L: between(10, 4000),
  E: between(1000, 20000),
  b: between(1, 1000),
  t: between(1, 200),
});
type Bar = { F: number; L: number; E: number; b: number; t: number };

const stiffness = ({ b, t }: Bar) => secondMoment(mm(b), mm(t));

const spread = (x: Bar) =>
  sagUnderSpread(spreadLoad(newtons(x.F), mm(x.L)), mm(x.L), mpa(x.E), stiffness(x)).value;
const point = (x: Bar) => sagUnderPoint(newtons(x.F), mm(x.L), mpa(x.E), stiffness(x)).value;
const arm = (x: Bar) => droopOfArm(newtons(x.F), mm(x.L), mpa(x.E), stiffness(x)).value;

describe("a bar that bends", () => {
  test("by the power of each of its sizes", () => {
    const powers = { F: 1, L: 3, E: -1, b: -1, t: -3 } as const;
    fc.assert(
      fc.property(bar, between(1.1, 4), (x, k) => {
        for (const sag of [spread, point, arm]) {
          const once = sag(x);
          expect(once).toBeGreaterThan(0);
          for (const [name, power] of Object.entries(powers)) {
            expectNear(sag({ ...x, [name]: k * x[name as keyof Bar] }), k ** power * once);
          }
        }
        // The same weight on each length, not in all, goes by the fourth power of the span.
        const w = newtonsPerMm(x.F / 1000);
        const sag = (L: number) => sagUnderSpread(w, mm(L), mpa(x.E), stiffness(x)).value;
        expectNear(sag(k * x.L), k ** 4 * sag(x.L));
      }),
    );
  });

  test("loads add up", () => {
    fc.assert(
      fc.property(bar, some.load, (x, more) => {
        for (const sag of [spread, point, arm]) {
          expectNear(sag({ ...x, F: x.F + more }), sag(x) + sag({ ...x, F: more }));
        }
      }),
    );
  });

  test("spread, a load sags five eighths of what it does in the middle, and bends half as hard", () => {
    fc.assert(
      fc.property(bar, (x) => {
        expectNear(spread(x), (5 / 8) * point(x));
        const w = spreadLoad(newtons(x.F), mm(x.L));
        expectNear(
          momentUnderSpread(w, mm(x.L)).value,
          momentUnderPoint(newtons(x.F), mm(x.L)).value / 2,
        );
        // Half a bar on two supports is an arm that carries half the load.
        expectNear(point(x), arm({ ...x, F: x.F / 2, L: x.L / 2 }));
      }),
    );
  });

  test("agrees with adding up the curvature along it, piece by piece", () => {
    fc.assert(
      fc.property(bar, (x) => {
        const [I, pieces] = [(x.b * x.t ** 3) / 12, 4000];
        const step = x.L / 2 / pieces;
        let [bySpread, byPoint] = [0, 0];
        for (let i = 0; i < pieces; i++) {
          // From a support to the middle; the sag is the sum of curvature times distance.
          const at = (i + 0.5) * step;
          bySpread += (((x.F / x.L) * at * (x.L - at)) / 2 / (x.E * I)) * at * step;
          byPoint += (((x.F / 2) * at) / (x.E * I)) * at * step;
        }
        expectNear(spread(x), bySpread, 1e-5);
        expectNear(point(x), byPoint, 1e-5);
      }),
      { numRuns: 20 },
    );
  });

  test("two boards side by side are as stiff as both, one on edge stiffer than flat", () => {
    fc.assert(
      fc.property(bar, between(1.1, 20), (x, k) => {
        expectNear(secondMoment(mm(2 * x.b), mm(x.t)).value, 2 * stiffness(x).value);
        const [flat, edge] = [
          secondMoment(mm(k * x.t), mm(x.t)),
          secondMoment(mm(x.t), mm(k * x.t)),
        ];
        expectNear(edge.value, k ** 2 * flat.value);
      }),
    );
  });

  test("stress at the face is the moment over b·t²/6", () => {
    fc.assert(
      fc.property(bar, between(1, 1e7), (x, M) => {
        const stress = bendingStress(newtonMm(M), mm(x.t), stiffness(x)).value;
        expectNear(stress, M / ((x.b * x.t ** 2) / 6));
        expectNear(
          bendingStress(newtonMm(M), mm(x.t), mm4(2 * stiffness(x).value)).value,
          stress / 2,
        );
      }),
    );
  });

  test("years make it grow by their factor and no more", () => {
    fc.assert(
      fc.property(between(0, 50), between(1, 6), (sag, k) => {
        expectNear(sagInTheLongRun(mm(sag), ratio(k)).value, k * sag);
        expect(sagInTheLongRun(mm(sag), ratio(1)).value).toBe(sag);
      }),
    );
  });
});
