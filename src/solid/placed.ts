import type { Mat4 } from "manifold-3d";
import { dot, type Frame, into, type Vec3 } from "../geometry/index.ts";

/** A frame as the kernel and glTF take it: column by column. */
export const matrixOf = ({ origin, x, y, z }: Frame): Mat4 =>
  [
    ...[x[0], x[1], x[2], 0],
    ...[y[0], y[1], y[2], 0],
    ...[z[0], z[1], z[2], 0],
    ...[origin[0], origin[1], origin[2], 1],
  ] as Mat4;

/** One frame as another sees it, both said in the same outer frame. */
export function seenFrom(eye: Frame, frame: Frame): Frame {
  const turned = (v: Vec3): Vec3 => [dot(v, eye.x), dot(v, eye.y), dot(v, eye.z)];
  return {
    origin: into(eye, frame.origin),
    x: turned(frame.x),
    y: turned(frame.y),
    z: turned(frame.z),
  };
}
