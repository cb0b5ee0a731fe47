import { type Mm, mm } from "../units/index.ts";

/** Lengths that wood screws No. 8 are sold in, and inches; common practice, no source [mm]. */
const SOLD = new Map([
  [16, "5/8"],
  [19, "3/4"],
  [25, "1"],
  [32, "1 1/4"],
  [38, "1 1/2"],
  [45, "1 3/4"],
  [50, "2"],
  [63, "2 1/2"],
  [75, "3"],
  [90, "3 1/2"],
  [100, "4"],
]);

/**
 * The longest screw that is sold and ends within the wood it is driven into.
 *
 * @param through  the wood it passes, its head sunk flush or in its hole [mm]
 * @param into  how deep it may go into the other [mm]
 * @returns length; undefined when even the shortest goes too deep [mm]
 */
export function screwLength(through: Mm, into: Mm): Mm | undefined {
  const fits = [...SOLD.keys()].filter((length) => length <= through + into).at(-1);
  return fits === undefined ? undefined : mm(fits);
}

/**
 * A length as screws are sold by it on both sides of the inch: `32 mm (1 1/4")`.
 *
 * @param length  one that is sold, of {@link screwLength} [mm]
 */
export const screwLengthSold = (length: Mm): string => `${length} mm (${SOLD.get(length)}")`;
