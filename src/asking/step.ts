import { inches, type LengthUnit, mm, printLength, readLength } from "../units/index.ts";

/** A figure, what stands before it, its power of ten, and what is behind: `- 12.5 GPa`, `1.5e6 psi`. */
const WRITTEN = /^(\s*[-+−]?\s*)(\d+(?:[.,]\d+)?|[.,]\d+)(e[+-]?\d+)?(.*)$/is;

/**
 * A text some steps up or down, kept in the unit it was written in: `30 kg` goes to `31 kg`,
 * `8 ft` to `8' 1/16"`, `0.1 m³` to `0.11 m³`.
 *
 * @param text  what stands in the field
 * @param isLength  lengths step by what their unit is marked in; others by their size
 * @param units  side of a number without a unit
 * @param steps  how many, down when negative [1]
 * @returns the new text, or undefined where there is no figure to step
 */
export function stepped(
  text: string,
  isLength: boolean,
  units: LengthUnit,
  steps: number,
): string | undefined {
  if (isLength && isInInches(text, units)) return steppedInches(text, units, steps);
  const match = WRITTEN.exec(text);
  if (!match) return undefined;
  const [, before = "", figure = "", power = "", behind = ""] = match;
  const now = Number(figure.replace(",", ".")) * (/[-−]/.test(before) ? -1 : 1);
  const one = power ? 0.1 : isLength ? metricStep(behind, now) : stepBySize(now);
  const next = (nextMark(now / one, steps) * one).toFixed(6);
  const written = String(Number(next));
  return `${figure.includes(",") ? written.replace(".", ",") : written}${power}${behind}`;
}

/** From between two marks the next one is one step away; from on a mark, a whole one. */
const nextMark = (at: number, steps: number): number =>
  (steps > 0 ? Math.floor(at + 1e-9) : Math.ceil(at - 1e-9)) + steps;

const isInInches = (text: string, units: LengthUnit): boolean =>
  /["'″′/¼-¾⅐-⅞]|in|ft|feet|foot|thou/i.test(text) || (units === "inch" && !/m\s*$/i.test(text));

/** A sixteenth, or a sixty-fourth below a quarter of an inch, from the next such mark on. */
function steppedInches(text: string, units: LengthUnit, steps: number): string | undefined {
  const read = readLength(text, units);
  if (!read.ok) return undefined;
  const parts = Math.abs(read.value) < inches(0.25) ? 64 : 16;
  const next = inches(nextMark((read.value / inches(1)) * parts, steps) / parts);
  return printLength(mm(next), { units: "inch", feet: /['′]|ft|feet|foot/i.test(text) });
}

/** A millimetre, or what comes near it in the unit written; finer below 5 mm. */
function metricStep(unit: string, now: number): number {
  if (/^\s*cm/i.test(unit)) return 0.1;
  if (/^\s*m(?!m)/i.test(unit)) return 0.01;
  return Math.abs(now) < 5 ? 0.1 : 1;
}

/** One between 1 and 100; a tenth or a hundredth of the size's power of ten otherwise. */
function stepBySize(now: number): number {
  const size = Math.abs(now);
  if (size === 0 || (size >= 1 && size < 200)) return 1;
  return 10 ** (Math.floor(Math.log10(size)) - 1);
}
