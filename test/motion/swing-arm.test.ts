import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  armEnds,
  armsMeeting,
  farthestReach,
  freeAngle,
  kerfNeeded,
  reachBeyondRail,
  type SwingArm,
  screwClearance,
  stopPlay,
  washerStack,
} from "../../src/motion/index.ts";
import { deg, mm } from "../../src/units/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { between, isNear } from "../kit/sizes.ts";

const anyArm = fc
  .record({
    reach: between(100, 400),
    tail: between(100, 300),
    thickness: between(12, 40),
    offset: between(-4, 4),
    angle: between(0, 45),
  })
  .map(
    (arm): SwingArm => ({
      reach: mm(arm.reach),
      tail: mm(arm.tail),
      thickness: mm(arm.thickness),
      offset: mm(arm.offset),
      angle: deg(arm.angle),
    }),
  );

type End = (typeof armEnds)[number];
const RAD = Math.PI / 180;

/** Corners of the arm, pivot at the origin, x along the rail, y outwards: nothing but its shape. */
function corners(arm: SwingArm) {
  const [w, off] = [Number(arm.thickness), Number(arm.offset)];
  const [outer, inner, tan] = [w / 2 - off, w / 2 + off, Math.tan(Number(arm.angle) * RAD)];
  return {
    reach: [
      [Number(arm.reach) + outer * tan, outer],
      [Number(arm.reach) - inner * tan, -inner],
    ],
    tail: [
      [-Number(arm.tail) + outer * tan, outer],
      [-Number(arm.tail) - inner * tan, -inner],
    ],
  } as const;
}

/** How far beyond the cut's line an end gets as the arm turns from closed by so much, and back. */
function farthestPast(arm: SwingArm, end: End, from: number, to: number): number {
  const beta = Number(arm.angle) * RAD;
  const way = end === "reach" ? 1 : -1;
  const normal = [way * Math.cos(beta), -way * Math.sin(beta)] as const;
  const ends = corners(arm)[end];
  const line = Math.max(...ends.map(([x, y]) => x * normal[0] + y * normal[1]));
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= 4000; i++) {
    const a = from + ((to - from) * i) / 4000;
    for (const [x, y] of ends) {
      const past =
        (x * Math.cos(a) - y * Math.sin(a)) * normal[0] +
        (x * Math.sin(a) + y * Math.cos(a)) * normal[1];
      most = Math.max(most, past - line);
    }
  }
  return most;
}

describe("an arm turned out of its rail, corner by corner", () => {
  test.each(armEnds)("the cut needed at its %s is as far as a corner gets past it", (end) => {
    let angled = 0;
    fc.assert(
      fc.property(anyArm, (arm) => {
        const needed = kerfNeeded(arm, end).value;
        expect(Math.abs(farthestPast(arm, end, 0, Math.PI / 2) - needed)).toBeLessThan(1e-3);
        if (needed === 0) angled++;
      }),
      { numRuns: 200 },
    );
    expect(angled).toBeGreaterThan(5);
  });

  test.each(armEnds)("turned past closed by the play, its %s touches the cut's far side", (end) => {
    let stopped = 0;
    fc.assert(
      fc.property(anyArm, between(0.2, 2), (arm, kerf) => {
        const play = stopPlay(arm, end, mm(kerf));
        if (!play) {
          expect(farthestPast(arm, end, 0, -Math.PI / 2)).toBeLessThan(kerf + 1e-3);
          return;
        }
        stopped++;
        const at = -play.value * RAD;
        expect(Math.abs(farthestPast(arm, end, 0, at) - kerf)).toBeLessThan(1e-3);
      }),
      { numRuns: 200 },
    );
    expect(stopped).toBeGreaterThan(20);
  });

  test.each(armEnds)("from its angle on the %s needs no cut, below it some", (end) => {
    fc.assert(
      fc.property(anyArm, (arm) => {
        const free = freeAngle(arm, end).value;
        expect(kerfNeeded({ ...arm, angle: deg(free + 0.01) }, end).value).toBe(0);
        expect(kerfNeeded({ ...arm, angle: deg(free * 0.9) }, end).value).toBeGreaterThan(0);
      }),
    );
  });

  test("opposed mitres bind both ways: turned round, the end that was free is not", () => {
    const arm = { reach: mm(200), tail: mm(150), thickness: mm(22), offset: mm(0), angle: deg(30) };
    expect(farthestPast(arm, "reach", 0, Math.PI / 2)).toBeLessThan(1e-9);
    expect(farthestPast(arm, "reach", 0, -Math.PI / 2)).toBeGreaterThan(5);
    expect(stopPlay(arm, "reach", mm(1))?.value).toBeLessThan(1);
  });

  test("the longest corner reaches no less than the whole width, in inches as in millimetres", () => {
    fc.assert(
      fc.property(anyArm, (arm) => {
        const [far, full] = [farthestReach(arm).value, reachBeyondRail(arm).value];
        expect(far).toBeGreaterThanOrEqual(full - 1e-9);
        const inch = (n: unknown) => mm(Number(n) / 25.4);
        const small: SwingArm = {
          reach: inch(arm.reach),
          tail: inch(arm.tail),
          thickness: inch(arm.thickness),
          offset: inch(arm.offset),
          angle: arm.angle,
        };
        expect(isNear(25.4 * reachBeyondRail(small).value, full, 1e-9)).toBe(true);
        for (const end of armEnds) {
          const [a, b] = [kerfNeeded(arm, end).value, 25.4 * kerfNeeded(small, end).value];
          expect(Math.abs(a - b)).toBeLessThan(1e-9);
        }
      }),
    );
  });
});

test.each<[string, Partial<SwingArm>]>([
  ["a pivot outside the rail", { offset: mm(12) }],
  ["ends cut past the pivot", { reach: mm(10) }],
  ["ends past any saw", { angle: deg(70) }],
])("%s is refused", (_, wrong) => {
  const arm = { reach: mm(200), tail: mm(100), thickness: mm(22), offset: mm(0), angle: deg(0) };
  expect(() => kerfNeeded({ ...arm, ...wrong }, "reach")).toThrow(Problem);
});

describe("what arms meet, and what lifts them", () => {
  test("a screw is hit where the tail's rectangle passes over its head", () => {
    fc.assert(
      fc.property(between(-200, 80), between(12, 200), (along, inside) => {
        const [tail, w, head] = [120, 20, 4];
        const clear = screwClearance(mm(along), mm(inside), mm(head), mm(tail), mm(w));
        let least = Number.POSITIVE_INFINITY;
        for (let a = 0; a <= 90; a += 0.1) {
          // The screw as the arm sees it: the tail lies along −x, and turns inwards.
          const [cos, sin] = [Math.cos(a * RAD), Math.sin(a * RAD)];
          const [x, y] = [along * cos - inside * sin, along * sin + inside * cos];
          const [dx, dy] = [Math.max(0, -tail - x, x), Math.max(0, Math.abs(y) - w / 2)];
          least = Math.min(least, Math.hypot(dx, dy));
        }
        // Told on the safe side: never more room than there is.
        expect(clear).toBeLessThanOrEqual(least - head + 0.02);
      }),
    );
  });

  test("tails that are longer together than the rails are apart meet unless they stand apart", () => {
    const arm = { tail: mm(150), thickness: mm(20) };
    const pair = (apart: number, offset: number) => armsMeeting(arm, arm, mm(apart), mm(offset));
    expect(pair(400, 0)).toBe("free in any order");
    expect(pair(280, 25)).toBe("free, one after the other");
    expect(pair(280, 10)).toBe("tails meet");
  });

  test("washers never stand proud, and no fewer would lift as high", () => {
    const sizes = [0.5, 0.8, 1, 1.6].map(mm);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 500 }), (hundredths) => {
        const { washers, lift, short } = washerStack(mm(hundredths / 100), sizes);
        expect(lift).toBeLessThanOrEqual(hundredths / 100 + 1e-9);
        expect(washers.reduce((sum, t) => sum + t, 0)).toBeCloseTo(lift, 9);
        expect(lift + short).toBeCloseTo(hundredths / 100, 9);
        if (hundredths >= 100) expect(short).toBeLessThan(0.3);
      }),
    );
    expect(washerStack(mm(3.2), sizes).washers).toEqual([1.6, 1.6]);
    expect(washerStack(mm(0.3), sizes)).toEqual({ washers: [], lift: 0, short: 0.3 });
  });
});
