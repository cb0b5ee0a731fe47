import { type Dimension, type DimensionName, dimensions, type UnitRow } from "./dimensions.ts";
import type { LengthUnit } from "./length.ts";
import { decimal } from "./length-print.ts";
import { type Read, readAs, refuse } from "./read.ts";
import { commaFault, LONGEST_TEXT, plain, readNumeral, skipSpaces } from "./scan.ts";

/**
 * Reads a quantity of one dimension in any of its units, into the inside unit of that dimension:
 * `40 lb` as mass gives kilograms, `70 F` gives °C, `1.5e6 psi` gives N/mm².
 *
 * @param text  what was typed, at most 120 characters
 * @param dimension  what kind of quantity is meant
 * @param bare  which side's unit a number without one takes
 * @returns the number in the dimension's inside unit, or the fault with its place and remedy
 */
export function readQuantity(
  text: string,
  dimension: DimensionName,
  bare: LengthUnit,
): Read<number> {
  const table: Dimension = dimensions[dimension];
  const examples = `Write ${table.says} such as ${table.examples.join(" or ")}.`;
  if (text.length > LONGEST_TEXT) {
    return refuse(
      `${dimension}-too-long`,
      text,
      LONGEST_TEXT,
      text.length,
      "This is too long for a quantity.",
      examples,
    );
  }
  const p = plain(text);
  const first = skipSpaces(p, 0);
  if (first >= p.length) {
    return refuse(`${dimension}-empty`, text, 0, text.length, "Nothing is written here.", examples);
  }
  const negative = p[first] === "-";
  const numeral = readNumeral(p, negative || p[first] === "+" ? first + 1 : first);
  if (!numeral.ok) {
    const { code, start, end, reason } = numeral.fault;
    return refuse(`${dimension}-${code}`, text, start, end, reason, examples);
  }
  const at = skipSpaces(p, numeral.value.end);
  const word = p.slice(at).trimEnd();
  const unit = word === "" ? bareUnit(table, bare) : unitNamed(table, word);
  if (!unit) {
    const known = [...new Set(table.units.map((u) => u.names[0]))].filter((n) => n !== "");
    return refuse(
      `${dimension}-unit-unknown`,
      text,
      at,
      p.length,
      `“${word.slice(0, 24)}” is not a unit of ${table.says} known here.`,
      known.length > 0 ? `Use ${known.join(", ")}.` : "Write the number alone.",
    );
  }
  const comma = commaFault(text, numeral.value, word !== "" && unit.metric);
  if (comma)
    return { ok: false, fault: { ...comma.fault, code: `${dimension}-${comma.fault.code}` } };
  const written = negative ? -numeral.value.value : numeral.value.value;
  const value = (written - unit.zero) * unit.size;
  if (!(Math.abs(value) <= 1e12)) {
    return refuse(
      `${dimension}-too-large`,
      text,
      first,
      p.length,
      "This is larger than anything worked here.",
      examples,
    );
  }
  return readAs(value);
}

/**
 * A quantity written in one side's own unit, in a form `readQuantity` reads back.
 *
 * @param value  in the dimension's inside unit
 * @param dimension  what kind of quantity it is
 * @param side  whose unit to write it in
 * @param digits  decimal places at most
 */
export function writeQuantity(
  value: number,
  dimension: DimensionName,
  side: LengthUnit,
  digits: number,
): string {
  const unit = rowOfSide(dimension, side);
  return `${decimal(value / unit.size + unit.zero, digits)} ${unit.names[0]}`.trim();
}

/** The unit that a number without one takes on a side, as it is written. */
export const unitOfSide = (dimension: DimensionName, side: LengthUnit): string =>
  rowOfSide(dimension, side).names[0] ?? "";

function rowOfSide(dimension: DimensionName, side: LengthUnit): UnitRow {
  const unit = bareUnit(dimensions[dimension], side);
  if (!unit) throw new Error(`${dimension} has no unit of its own on the ${side} side`);
  return unit;
}

const bareUnit = (table: Dimension, bare: LengthUnit): UnitRow | undefined =>
  table.units.find((u) => u.bare === bare || u.bare === "both");

function unitNamed(table: Dimension, word: string): UnitRow | undefined {
  const squeezed = word.replace(/\s+/g, " ");
  return (
    table.units.find((u) => u.names.includes(squeezed)) ??
    table.units.find((u) => u.names.some((n) => n.toLowerCase() === squeezed.toLowerCase()))
  );
}
