import { mm } from "../units/index.ts";
import { type Frame, into } from "./frame.ts";
import { convexHull } from "./plan.ts";
import type { Convex } from "./polyhedron.ts";

/** A place in a plane [mm]. */
export type Flat = readonly [x: number, y: number];
/** A convex outline in a plane, counter-clockwise. */
export type Outline = readonly Flat[];

/** What bodies cover seen along a frame's z, in its x and y; and from where to where along it [mm]. */
export type Shadow = {
  readonly outline: Outline;
  readonly from: number;
  readonly to: number;
};

/** The convex shadow of bodies in a frame; undefined where there is nothing. */
export function shadowOf(bodies: readonly Convex[], frame: Frame): Shadow | undefined {
  const corners = bodies.flat(2).map((corner) => into(frame, corner));
  if (corners.length === 0) return undefined;
  const hull = convexHull(corners.map(([x, y]) => ({ x: mm(x), y: mm(y) })));
  const depths = corners.map(([, , z]) => z);
  return {
    outline: hull.map(({ x, y }): Flat => [x, y]),
    from: Math.min(...depths),
    to: Math.max(...depths),
  };
}

/**
 * An outline turned counter-clockwise about the origin.
 *
 * @param radians  by how much [rad]
 */
export function turnedOutline(outline: Outline, radians: number): Outline {
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return outline.map(([x, y]): Flat => [x * cos - y * sin, x * sin + y * cos]);
}

/** How far two outlines are apart, and where the first comes nearest to the second. */
export type Apart = {
  /** below nought by how deep they overlap [mm] */
  readonly gap: number;
  readonly at: Flat;
};

/**
 * How far two convex outlines are apart: exactly where they are, and by the shortest way out where
 * they overlap. Outlines at least so far apart need not be told exactly, but no farther than they are.
 *
 * @param enough  [mm]
 */
export function apart(a: Outline, b: Outline, enough: number = Number.POSITIVE_INFINITY): Apart {
  const own = widest(a, b);
  const other = widest(b, a);
  const best = own.gap >= other.gap ? own : other;
  if (best.gap <= 0 || best.gap >= enough) return best;
  // Beyond an edge the nearest corner may lie past its end: then two corners are nearest.
  let nearest: Apart = { gap: Number.POSITIVE_INFINITY, at: best.at };
  for (const p of a) {
    const gap = distanceTo(b, p);
    if (gap < nearest.gap) nearest = { gap, at: p };
  }
  for (const p of b) {
    const gap = distanceTo(a, p);
    if (gap < nearest.gap) nearest = { gap, at: p };
  }
  return nearest;
}

/** The edge of one outline beyond which the other lies farthest, or is least deep. */
function widest(a: Outline, b: Outline): Apart {
  let best: Apart = { gap: Number.NEGATIVE_INFINITY, at: [0, 0] };
  for (let i = 0; i < a.length; i++) {
    const [p, q] = [a[i], a[(i + 1) % a.length]];
    if (!p || !q) continue;
    const [ex, ey] = [q[0] - p[0], q[1] - p[1]];
    const size = Math.hypot(ex, ey);
    if (size < 1e-9) continue;
    let [least, at]: [number, Flat] = [Number.POSITIVE_INFINITY, p];
    for (const r of b) {
      const out = ((r[0] - p[0]) * ey - (r[1] - p[1]) * ex) / size;
      if (out < least) [least, at] = [out, r];
    }
    if (least > best.gap) best = { gap: least, at };
  }
  return best;
}

/** From a place outside of an outline to its nearest edge [mm]. */
function distanceTo(outline: Outline, [x, y]: Flat): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < outline.length; i++) {
    const [p, q] = [outline[i], outline[(i + 1) % outline.length]];
    if (!p || !q) continue;
    const [ex, ey] = [q[0] - p[0], q[1] - p[1]];
    const long = ex * ex + ey * ey;
    const along = long > 0 ? ((x - p[0]) * ex + (y - p[1]) * ey) / long : 0;
    const held = Math.max(0, Math.min(1, along));
    least = Math.min(least, Math.hypot(x - p[0] - held * ex, y - p[1] - held * ey));
  }
  return least;
}
