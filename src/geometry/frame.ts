import { cross, dot, minus, plus, times, type Vec3 } from "./vec.ts";

/** A right-handed frame: where it stands, and its three unit directions, in an outer frame. */
export type Frame = {
  readonly origin: Vec3;
  readonly x: Vec3;
  readonly y: Vec3;
  readonly z: Vec3;
};

/** The frame whose third direction follows from the other two. */
export const frameOf = (origin: Vec3, x: Vec3, y: Vec3): Frame => ({
  origin,
  x,
  y,
  z: cross(x, y),
});

/** A point of the frame, as the outer frame sees it. */
export const outOf = (frame: Frame, p: Vec3): Vec3 => plus(frame.origin, turnedOut(frame, p));

/** A direction of the frame, as the outer frame sees it. */
export const turnedOut = (frame: Frame, p: Vec3): Vec3 =>
  plus(plus(times(frame.x, p[0]), times(frame.y, p[1])), times(frame.z, p[2]));

/** A point of the outer frame, as the frame sees it. */
export function into(frame: Frame, p: Vec3): Vec3 {
  const d = minus(p, frame.origin);
  return [dot(d, frame.x), dot(d, frame.y), dot(d, frame.z)];
}
