import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  chartedRouterSpeed,
  depthOfPass,
  latheSpeed,
  passLimit,
  rimSpeed,
  routerPasses,
  routerSpeed,
  slenderness,
  speedByDiameter,
  speedByStage,
  turningStages,
} from "../../src/making/index.ts";
import { count, mm, ratio, rpm } from "../../src/units/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between } from "../kit/sizes.ts";

const swing = between(3, 1000);

describe("the lathe", () => {
  test("never goes above the rule or the chart, and slows for slender work", () => {
    fc.assert(
      fc.property(
        swing,
        fc.constantFrom(...turningStages),
        between(0.5, 12),
        between(12.01, 60),
        (d, stage, stout, slender) => {
          const speed = (s: number) => latheSpeed(mm(d), stage, ratio(s)).value;
          const fastest = speedByDiameter(mm(d), 9000).value;
          expect(speed(stout)).toBeLessThanOrEqual(fastest);
          expect(speed(stout)).toBeLessThanOrEqual(speedByStage(mm(d), stage).value);
          expect(speed(stout)).toBeGreaterThan(0);
          expectNear(speed(slender), speed(stout) / 2);
          expect(latheSpeed(mm(d), stage, ratio(slender)).notes).toHaveLength(1);
          expectNear((fastest * d) / 25.4, 9000);
        },
      ),
    );
  });

  test("goes slower the larger the work, faster the later the stage", () => {
    fc.assert(
      fc.property(swing, between(1.01, 3), (d, k) => {
        fc.pre(d * k <= 1000);
        const all = turningStages.map((stage) => latheSpeed(mm(d), stage, ratio(5)).value);
        expect([...all].sort((a, b) => a - b)).toEqual(all);
        for (const [i, stage] of turningStages.entries()) {
          expect(latheSpeed(mm(d * k), stage, ratio(5)).value).toBeLessThanOrEqual(all[i] ?? 0);
        }
      }),
    );
    for (const d of [2.9, 1001, 0]) expect(() => speedByDiameter(mm(d), 9000)).toThrow(Problem);
    expectNear(slenderness(mm(700), mm(35)).value, 20);
  });
});

describe("the router", () => {
  const cutter = between(0.5, 88.9);

  test("never runs above the chart or the machine, nor faster the larger the cutter", () => {
    fc.assert(
      fc.property(cutter, between(1.001, 3), between(1000, 40000), (d, k, top) => {
        const speed = routerSpeed(mm(d), rpm(top)).value;
        expect(speed).toBe(Math.min(top, chartedRouterSpeed(mm(d)).value));
        expect(routerSpeed(mm(d), rpm(top), "lower").value).toBeLessThanOrEqual(speed);
        if (d * k <= 88.9)
          expect(routerSpeed(mm(d * k), rpm(top)).value).toBeLessThanOrEqual(speed);
        // A whole turn of the rim, so many times a minute.
        expectNear(rimSpeed(mm(d), rpm(speed)).value * 60, (Math.PI * d * speed) / 1000);
      }),
    );
    for (const d of [0, -1, 89]) expect(() => chartedRouterSpeed(mm(d))).toThrow(Problem);
  });

  test("takes no more in a pass than the rule and half the cutter, and no more passes than due", () => {
    fc.assert(
      fc.property(between(0.1, 200), cutter, fc.boolean(), (depth, d, easy) => {
        const most = passLimit(mm(d), easy).value;
        expectNear(most, Math.min(easy ? 25.4 / 8 : 25.4 / 4, d / 2));
        const passes = routerPasses(mm(depth), mm(most)).value;
        const each = depthOfPass(mm(depth), count(passes)).value;
        expect(passes).toBeGreaterThanOrEqual(1);
        expect(passes * each).toBeGreaterThanOrEqual(depth * (1 - 1e-12));
        expect(each).toBeLessThanOrEqual(most * (1 + 1e-6));
        expect((passes - 1) * most).toBeLessThan(depth);
        expect(passLimit(mm(d), true).value).toBeLessThanOrEqual(passLimit(mm(d), false).value);
      }),
    );
    const eighth = mm(25.4 / 8);
    // A depth that is just so many passes does not take one more.
    for (const n of [1, 2, 3, 7]) expect(routerPasses(mm(n * eighth), eighth).value).toBe(n);
    for (const depth of [0, -1, 210]) {
      expect(() => routerPasses(mm(depth), eighth)).toThrow(Problem);
    }
    expect(() => routerPasses(mm(9), mm(0))).toThrow(Problem);
  });
});
