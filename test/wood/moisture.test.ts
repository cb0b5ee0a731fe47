import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { celsius, mcPct, rhPct } from "../../src/units/index.ts";
import { equilibriumMoisture, humidityFor } from "../../src/wood/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { between, isNear, some } from "../kit/sizes.ts";

const settles = (t: number, rh: number) => equilibriumMoisture(celsius(t), rhPct(rh)).value;
const air = (t: number, mc: number) => humidityFor(celsius(t), mcPct(mc)).value;
const humidity = between(0, 99.5);

describe("the moisture that wood settles at", () => {
  test("rises with humidity", () => {
    fc.assert(
      fc.property(some.temperature, humidity, between(0.01, 40), (t, rh, more) => {
        fc.pre(rh + more < 99.9);
        expect(settles(t, rh + more)).toBeGreaterThan(settles(t, rh));
      }),
    );
  });

  test("falls with warmth at a humidity of rooms", () => {
    fc.assert(
      fc.property(between(15, 90), between(1, 9), between(15, 85), (t, more, rh) => {
        expect(settles(t + more, rh)).toBeLessThan(settles(t, rh));
      }),
    );
  });

  test("is nought in dry air, and near what wood can hold in wet", () => {
    fc.assert(
      fc.property(some.temperature, (t) => {
        expect(settles(t, 0)).toBe(0);
        expect(settles(t, 99)).toBeGreaterThan(14);
        expect(settles(t, 99)).toBeLessThan(31);
      }),
    );
  });

  test("turned round gives the humidity again", () => {
    fc.assert(
      fc.property(some.temperature, between(0.01, 98.9), (t, rh) => {
        expect(Math.abs(air(t, settles(t, rh)) - rh)).toBeLessThan(1e-6);
      }),
    );
    fc.assert(
      fc.property(some.temperature, between(0.01, 14), (t, mc) => {
        expect(Math.abs(settles(t, air(t, mc)) - mc)).toBeLessThan(1e-6);
      }),
    );
  });

  test("the air that keeps it rises with it", () => {
    fc.assert(
      fc.property(some.temperature, between(0, 12), between(0.01, 2), (t, mc, more) => {
        expect(air(t, mc + more)).toBeGreaterThan(air(t, mc));
      }),
    );
    expect(air(21, 0)).toBeCloseTo(0, 9);
  });

  test("agrees with another way of solving: by false position on the equation itself", () => {
    fc.assert(
      fc.property(between(0, 60), between(2, 18), (t, mc) => {
        let [low, high] = [0, 99.5];
        for (let i = 0; i < 200 && high - low > 1e-9; i++) {
          const share = (mc - settles(t, low)) / (settles(t, high) - settles(t, low));
          const guess = low + (high - low) * Math.min(0.999, Math.max(0.001, share));
          if (settles(t, guess) < mc) low = guess;
          else high = guess;
        }
        fc.pre(high < 99);
        expect(isNear(air(t, mc), high, 1e-6)).toBe(true);
      }),
      { numRuns: 50 },
    );
  });

  test.each<[() => unknown, string]>([
    [() => settles(-20.1, 40), "temperature-range"],
    [() => settles(99.1, 40), "temperature-range"],
    [() => air(100, 8), "temperature-range"],
    [() => settles(20, -0.1), "humidity-range"],
    [() => settles(20, 100), "humidity-range"],
    [() => air(20, -0.1), "moisture-range"],
    [() => air(20, 40), "moisture-range"],
  ])("%s is refused: %s", (call, code) => {
    let thrown: unknown;
    try {
      call();
    } catch (problem) {
      thrown = problem;
    }
    expect(thrown).toBeInstanceOf(Problem);
    expect((thrown as Problem).code).toBe(code);
  });

  test("what is stretched is noted, and only that", () => {
    const notes = (t: number, rh: number) => equilibriumMoisture(celsius(t), rhPct(rh)).notes;
    expect(notes(20, 50)).toEqual([]);
    expect(notes(-5, 50)).toHaveLength(1);
    expect(notes(20, 95)).toHaveLength(1);
    expect(notes(-5, 95)).toHaveLength(2);
    expect(humidityFor(celsius(-5), mcPct(8)).notes).toHaveLength(1);
  });
});
