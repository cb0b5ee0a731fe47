import type { Frame } from "../../geometry/index.ts";
import type { Part } from "../../piece/index.ts";
import type { Solids } from "../../solid/index.ts";
import type { Point, Stroke } from "../drawing.ts";
import { linesOf } from "./hidden-lines.ts";
import { type Body, sceneOf } from "./scene.ts";
import type { Lines } from "./stretches.ts";

/** The least rectangle round something drawn, in its own millimetres. */
export type Extent = {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
};

export type View = Lines & { readonly extent: Extent };

/** What is seen of bodies in a frame's x and y, the eye far along its z. */
export function viewOf(bodies: readonly Body[], camera: Frame): View {
  const lines = linesOf(sceneOf(bodies, camera));
  return { ...lines, extent: extentOf([...lines.visible, ...lines.hidden]) };
}

/** Parts where they stand in their piece. */
export const bodiesOf = (parts: readonly Part[], solids: Solids): readonly Body[] =>
  parts.map((part) => ({ solid: solids.of(part), pose: part.pose }));

/** Points that a stroke runs through; a curve's with the corners of its square. */
function pointsOf(stroke: Stroke): readonly Point[] {
  if (stroke.shape === "line") return [stroke.from, stroke.to];
  if (stroke.shape === "path") return stroke.points;
  const { centre, radius } = stroke;
  return [
    [centre[0] - radius, centre[1] - radius],
    [centre[0] + radius, centre[1] + radius],
  ];
}

/** The least rectangle round strokes; of none, a point. */
export function extentOf(strokes: readonly Stroke[]): Extent {
  const points = strokes.flatMap(pointsOf);
  if (points.length === 0) return { left: 0, bottom: 0, right: 0, top: 0 };
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    bottom = Math.min(bottom, y);
    right = Math.max(right, x);
    top = Math.max(top, y);
  }
  return { left, bottom, right, top };
}
