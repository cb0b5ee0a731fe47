import { type Mm, mm } from "../units/index.ts";

/** Lengths that wood screws No. 8 are sold in; common practice, no source [mm]. */
const SOLD = [16, 19, 25, 32, 38, 45, 50, 63, 75, 90, 100];

/**
 * The longest screw that is sold and ends within the wood it is driven into.
 *
 * @param through  the wood it passes, its head sunk flush or in its hole [mm]
 * @param into  how deep it may go into the other [mm]
 * @returns length; undefined when even the shortest goes too deep [mm]
 */
export function screwLength(through: Mm, into: Mm): Mm | undefined {
  const fits = SOLD.filter((length) => length <= through + into).at(-1);
  return fits === undefined ? undefined : mm(fits);
}
