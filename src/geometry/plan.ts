import type { Mm } from "../units/index.ts";

/** A point of the piece seen from above. */
export type PlanPoint = {
  /** to the right [mm] */
  readonly x: Mm;
  /** away from the viewer [mm] */
  readonly y: Mm;
};

/** Twice the signed area of a, b, c: above nought when they turn to the left. */
const turn = (a: PlanPoint, b: PlanPoint, c: PlanPoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/**
 * Convex outline of points, counter-clockwise, corners only; monotone chain.
 *
 * @param points  at least three, not all on one line
 */
export function convexHull(points: readonly PlanPoint[]): readonly PlanPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const lower = chain(sorted);
  const upper = chain(sorted.reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

function chain(points: readonly PlanPoint[]): readonly PlanPoint[] {
  const kept: PlanPoint[] = [];
  for (const point of points) {
    for (;;) {
      const [a, b] = kept.slice(-2);
      if (!a || !b || turn(a, b, point) > 0) break;
      kept.pop();
    }
    kept.push(point);
  }
  return kept;
}

/**
 * How far a point lies to the left of the line from a to b: inside, for an edge of a hull.
 *
 * @returns signed distance in millimetres
 */
export const distanceInside = (a: PlanPoint, b: PlanPoint, point: PlanPoint): number =>
  turn(a, b, point) / Math.hypot(b.x - a.x, b.y - a.y);
