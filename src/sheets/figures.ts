import { type LengthUnit, lengthParts, type Mm, type Purpose } from "../units/index.ts";

/** The sign between a fraction's figures, which makes a font set it as one. */
const FRACTION_SLASH = "\u2044";
/** Keeps a whole number clear of its fraction; any wider and they read as two figures. */
const THIN = "\u2009";

/**
 * A length as it is written on a drawing: millimetres bare, for the strip names the unit; inches
 * with their mark and a true fraction.
 *
 * @param length  any length [mm]
 */
export function drawnLength(length: Mm, units: LengthUnit, purpose: Purpose): string {
  const { negative, whole, fraction, shade } = lengthParts(length, { units, purpose });
  const over = fraction ? `${fraction[0]}${FRACTION_SLASH}${fraction[1]}` : "";
  const figure = [whole, over].filter((text) => text !== "").join(THIN);
  const sign = negative ? "−" : "";
  return `${sign}${figure}${units === "inch" ? "″" : ""}${shade ? ` ${shade}` : ""}`;
}

/** A text with its inches set as on a drawing: `1 1/4"` as `1 1⁄4″`. */
export const setFractions = (text: string): string =>
  text
    .replace(/(?:(\d+) )?(\d+)\/(\d+)(?=")/g, (_, whole: string | undefined, over, under) => {
      const fraction = `${over}${FRACTION_SLASH}${under}`;
      return whole === undefined ? fraction : `${whole}${THIN}${fraction}`;
    })
    .replace(/(?<=\d)"/g, "″");
