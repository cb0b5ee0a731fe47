import type { Box } from "manifold-3d";
import {
  cross,
  dot,
  type Frame,
  minus,
  norm,
  outOf,
  plus,
  times,
  type Vec3,
} from "../geometry/index.ts";

/** Whether two boxes with their sides along the piece's axes share room. */
export const overlap = (a: Box, b: Box): boolean =>
  ([0, 1, 2] as const).every((i) => a.min[i] < b.max[i] && b.min[i] < a.max[i]);

/** The least box round two. */
export const boxRound = (a: Box, b: Box): Box => ({
  min: [0, 1, 2].map((i) => Math.min(a.min[i] as number, b.min[i] as number)) as Box["min"],
  max: [0, 1, 2].map((i) => Math.max(a.max[i] as number, b.max[i] as number)) as Box["max"],
});

/** A box that stands askew: its middle, and half of each side as a way [mm]. */
export type Askew = { readonly middle: Vec3; readonly halves: readonly [Vec3, Vec3, Vec3] };

/** A part's own box as it stands in the piece. */
export function askewBox({ min, max }: Box, pose: Frame): Askew {
  const half = times(minus(max, min), 0.5);
  return {
    middle: outOf(pose, times(plus(min, max), 0.5)),
    halves: [times(pose.x, half[0]), times(pose.y, half[1]), times(pose.z, half[2])],
  };
}

/** Boxes that only touch, give or take rounding, are apart [mm]. */
const TOUCH = 1e-7;

/**
 * Whether two boxes that stand askew are apart: then one of their sides' ways, or a way square to one
 * of each, shows daylight between them.
 */
export function areApart(a: Askew, b: Askew): boolean {
  const between = minus(b.middle, a.middle);
  const isDaylight = (way: Vec3): boolean => {
    const size = norm(way);
    // Two sides that run alike have no way square to both.
    if (size < 1e-6 * Math.max(norm(a.halves[0]), 1)) return false;
    const reach = [...a.halves, ...b.halves].reduce((sum, h) => sum + Math.abs(dot(h, way)), 0);
    return (Math.abs(dot(between, way)) - reach) / size > -TOUCH;
  };
  return (
    a.halves.some(isDaylight) ||
    b.halves.some(isDaylight) ||
    a.halves.some((one) => b.halves.some((other) => isDaylight(cross(one, other))))
  );
}
