/** A point or direction in space: right, away, up of whatever frame it is said to be in [mm]. */
export type Vec3 = readonly [number, number, number];

/** Their sum. */
export const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
/** What leads from the second to the first. */
export const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
/** So many times as long. */
export const times = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k];
/** Their inner product: how far one reaches along the other, times its length. */
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
/** Their outer product: square to both, right-handed. */
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
/** Its length. */
export const norm = (a: Vec3): number => Math.hypot(a[0], a[1], a[2]);

/** The same direction, of length 1. */
export function unit(a: Vec3): Vec3 {
  const size = norm(a);
  if (!(size > 0)) throw new Error("a direction needs a length");
  return times(a, 1 / size);
}

/**
 * A direction turned right-handed about an axis.
 *
 * @param axis  of length 1
 * @param radians  by how much [rad]
 */
export function turnedAbout(axis: Vec3, v: Vec3, radians: number): Vec3 {
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const along = times(axis, dot(axis, v) * (1 - cos));
  return plus(plus(times(v, cos), times(cross(axis, v), sin)), along);
}
