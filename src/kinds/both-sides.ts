import { type Mm, printLength } from "../units/index.ts";

/**
 * A bought thing's size as it is asked for on both sides of the inch: `6.35 mm (1/4")`.
 *
 * @param size  [mm]
 */
export const bothSides = (size: Mm): string =>
  `${Number(size.toFixed(2))} mm (${printLength(size, { units: "inch", purpose: "about" })})`;
