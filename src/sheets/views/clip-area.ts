import type { Point } from "../drawing.ts";
import type { Extent } from "./view.ts";

/** A side of a rectangle: which coordinate it holds, where, and on which side the inside lies. */
type Side = { readonly axis: 0 | 1; readonly at: number; readonly isLow: boolean };

const sidesOf = ({ left, bottom, right, top }: Extent): readonly Side[] => [
  { axis: 0, at: left, isLow: true },
  { axis: 0, at: right, isLow: false },
  { axis: 1, at: bottom, isLow: true },
  { axis: 1, at: top, isLow: false },
];

/** What of a closed outline lies in a rectangle; no points when nothing does. One side after another. */
export const clippedOutline = (outline: readonly Point[], area: Extent): readonly Point[] =>
  sidesOf(area).reduce(clippedBy, outline);

function clippedBy(outline: readonly Point[], { axis, at, isLow }: Side): readonly Point[] {
  const inside = (p: Point) => (isLow ? p[axis] >= at : p[axis] <= at);
  return outline.flatMap((p, i): readonly Point[] => {
    const q = outline[(i + 1) % outline.length] ?? p;
    const kept = inside(p) ? [p] : [];
    if (inside(p) === inside(q)) return kept;
    const t = (at - p[axis]) / (q[axis] - p[axis]);
    const other = p[axis === 0 ? 1 : 0] + t * (q[axis === 0 ? 1 : 0] - p[axis === 0 ? 1 : 0]);
    return [...kept, axis === 0 ? [at, other] : [other, at]];
  });
}

/** Whether two points lie on one and the same side of a rectangle, so that nothing ends there. */
export const isOnSide = (p: Point, q: Point, area: Extent): boolean =>
  sidesOf(area).some(({ axis, at }) => p[axis] === at && q[axis] === at);
