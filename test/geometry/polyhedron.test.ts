import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  box,
  bulkOf,
  type Convex,
  clipped,
  cross,
  difference,
  dot,
  frameOf,
  into,
  minus,
  norm,
  outOf,
  prism,
  sumBulk,
  times,
  turnedOut,
  unit,
  type Vec3,
} from "../../src/geometry/index.ts";
import { isNear } from "../kit/sizes.ts";

const size = fc.double({ min: 1, max: 900, noNaN: true });
const sizes = fc.tuple(size, size, size);
const way = fc
  .tuple(
    fc.integer({ min: -9, max: 9 }),
    fc.integer({ min: -9, max: 9 }),
    fc.integer({ min: -9, max: 9 }),
  )
  .filter((v) => norm(v) > 0)
  .map((v): Vec3 => unit(v));

const centreOf = (body: Convex): Vec3 => {
  const { volume, moment } = bulkOf(body);
  return times(moment, 1 / volume);
};

describe("closed forms", () => {
  test("a box", () => {
    fc.assert(
      fc.property(sizes, ([l, w, t]) => {
        expect(isNear(bulkOf(box([l, w, t])).volume, l * w * t)).toBe(true);
        expect(norm(minus(centreOf(box([l, w, t])), [l / 2, w / 2, t / 2]))).toBeLessThan(
          1e-9 * (l + w + t),
        );
      }),
    );
  });
  test("a wedge, half of its box, its middle at two thirds", () => {
    const wedge = clipped(box([30, 10, 12]), { point: [0, 0, 0], away: unit([12, 0, -30]) });
    expect(bulkOf(wedge).volume).toBeCloseTo(1800, 9);
    expect(centreOf(wedge)[0]).toBeCloseTo(10, 9);
    expect(centreOf(wedge)[2]).toBeCloseTo(8, 9);
  });
  test("the corner cut off a box is a sixth of the box of its legs", () => {
    const rest = clipped(box([20, 20, 20]), { point: [6, 0, 0], away: unit([-1, -1, -1]) });
    expect(8000 - bulkOf(rest).volume).toBeCloseTo(6 ** 3 / 6, 9);
  });
  test("a hexagonal prism", () => {
    const base = Array.from(
      { length: 6 },
      (_, i): Vec3 => [7 * Math.cos((i * Math.PI) / 3), 7 * Math.sin((i * Math.PI) / 3), 0],
    );
    expect(bulkOf(prism(base, [0, 0, 11])).volume).toBeCloseTo(
      ((3 * Math.sqrt(3)) / 2) * 49 * 11,
      9,
    );
  });
});

test("a plane parts a body into two that make it up, volume and moment", () => {
  fc.assert(
    fc.property(sizes, way, fc.double({ min: 0, max: 1, noNaN: true }), (whole, away, at) => {
      const body = box(whole);
      const point = times(whole, at);
      const halves = [
        clipped(body, { point, away }),
        clipped(body, { point, away: times(away, -1) }),
      ];
      const sum = sumBulk(halves.map(bulkOf));
      expect(isNear(sum.volume, bulkOf(body).volume, 1e-7)).toBe(true);
      expect(norm(minus(sum.moment, bulkOf(body).moment))).toBeLessThan(
        1e-6 * norm(bulkOf(body).moment),
      );
    }),
  );
});

test("a body less another, and what both share, make up the body", () => {
  fc.assert(
    fc.property(sizes, sizes, sizes, way, (whole, other, corner, away) => {
      const body = box(whole);
      const x = away;
      const side = Math.abs(x[0]) < 0.9 ? cross(x, [1, 0, 0]) : cross(x, [0, 1, 0]);
      const frame = frameOf(minus(corner, times(other, 0.5)), x, unit(side));
      const corners = box(other).map((face) => face.map((p) => outOf(frame, p)));
      const pieces = difference(body, corners);
      const shared = corners.length > 0 ? sharedVolume(body, corners) : 0;
      const rest = sumBulk(pieces.map(bulkOf)).volume;
      expect(Math.abs(rest + shared - bulkOf(body).volume)).toBeLessThan(
        1e-6 * bulkOf(body).volume,
      );
    }),
    { numRuns: 300 },
  );
});

/** By clipping the body with every face of the other: another way than `difference` counts. */
function sharedVolume(body: Convex, other: Convex): number {
  const inside = other.reduce((rest, face) => {
    const [a, b, c] = face as [Vec3, Vec3, Vec3];
    return clipped(rest, { point: a, away: unit(cross(minus(b, a), minus(c, a))) });
  }, body);
  return bulkOf(inside).volume;
}

test("a frame leads out and back in, and keeps lengths and right hands", () => {
  fc.assert(
    fc.property(way, sizes, sizes, (x, origin, p) => {
      const side = unit(Math.abs(x[0]) < 0.9 ? cross(x, [1, 0, 0]) : cross(x, [0, 1, 0]));
      const frame = frameOf(origin, x, side);
      expect(norm(minus(into(frame, outOf(frame, p)), p))).toBeLessThan(
        1e-9 * (norm(p) + norm(origin)),
      );
      expect(isNear(norm(turnedOut(frame, p)), norm(p), 1e-9)).toBe(true);
      expect(dot(cross(frame.x, frame.y), frame.z)).toBeCloseTo(1, 9);
    }),
  );
});
