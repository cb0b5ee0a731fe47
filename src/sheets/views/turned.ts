import { deg } from "../../units/index.ts";
import type { Point, Stroke } from "../drawing.ts";

/** How something drawn is turned about a point, as a leaf goes down: clockwise. */
export type Turn = {
  readonly about: Point;
  /** [°] */
  readonly by: number;
};

/** A point turned. */
export function turnedPoint([x, y]: Point, { about, by }: Turn): Point {
  const angle = (by * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [dx, dy] = [x - about[0], y - about[1]];
  return [about[0] + dx * c + dy * s, about[1] - dx * s + dy * c];
}

/** A line or curve turned. */
export function turnedStroke(stroke: Stroke, turn: Turn): Stroke {
  switch (stroke.shape) {
    case "line":
      return {
        ...stroke,
        from: turnedPoint(stroke.from, turn),
        to: turnedPoint(stroke.to, turn),
      };
    case "path":
      return { ...stroke, points: stroke.points.map((p) => turnedPoint(p, turn)) };
    case "arc":
      return {
        ...stroke,
        centre: turnedPoint(stroke.centre, turn),
        from: deg(stroke.from - turn.by),
        to: deg(stroke.to - turn.by),
      };
  }
}
