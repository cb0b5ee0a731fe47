import type { Vec3 } from "../geometry/index.ts";

/**
 * Three numbers that belong together out of a flat list of such: a corner, a direction.
 *
 * @param number  which one, from 0 [1]
 */
export function cornerAt(list: Float64Array, number: number): Vec3 {
  const [x, y, z] = [list[3 * number], list[3 * number + 1], list[3 * number + 2]];
  if (x === undefined || y === undefined || z === undefined)
    throw new Error(`no corner ${number} in a list of ${list.length / 3}`);
  return [x, y, z];
}
