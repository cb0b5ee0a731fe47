import { MM_PER_INCH, type Mm } from "./brands.ts";
import type { LengthUnit } from "./length.ts";

/**
 * What a printed length is for; it sets how finely it is rounded. `about` is for what is known only
 * roughly, `enough` the same rounded up, for what is bought, `safe` rounded down, for what is trusted;
 * `bit` is the nearest size of a drill, `clearance` the next one that lets it pass.
 */
export type Purpose =
  | "rough"
  | "layout"
  | "fit"
  | "about"
  | "enough"
  | "safe"
  | "bit"
  | "clearance";

export type LengthStyle = {
  readonly units: LengthUnit;
  readonly purpose?: Purpose;
  /** feet and inches from one foot up */
  readonly feet?: boolean;
};

/** A length taken apart for setting: text joins it, the screen sets a true fraction. */
export type LengthParts = {
  readonly negative: boolean;
  readonly feet: number | undefined;
  /** whole inches, or the decimal figure in mm or thousandths; empty when only a fraction stands */
  readonly whole: string;
  readonly fraction: readonly [number, number] | undefined;
  readonly unit: "″" | "mm";
  readonly shade: "full" | "scant" | undefined;
};

type Rounding = {
  /** parts of an inch, and of what it is under two inches and under a sixteenth */
  readonly inch: (size: number) => number;
  readonly metric: (size: number) => number;
  readonly round: (n: number) => number;
  /** whether "full" and "scant" are said */
  readonly isShaded: boolean;
};
const HIDDEN_MM = 0.1;

/** Nearest whole number, halves away from zero; a hair of slack so that 0.05/0.1 counts as a half. */
const nearest = (n: number): number => Math.floor(n + 0.5 + 1e-9);

const upward = (n: number): number => Math.ceil(n - 1e-9);
const downward = (n: number): number => Math.floor(n + 1e-9);
const always = (n: number) => () => n;

const about: Rounding = {
  inch: (size) => (size < MM_PER_INCH / 8 ? 64 : size < 2 * MM_PER_INCH ? 32 : 16),
  metric: (size) => (size < 5 ? 0.1 : size < 50 ? 0.5 : 1),
  round: nearest,
  isShaded: false,
};

const roundings: Readonly<Record<Purpose, Rounding>> = {
  rough: { inch: always(16), metric: always(1), round: nearest, isShaded: true },
  layout: { inch: always(32), metric: always(0.5), round: nearest, isShaded: true },
  fit: { inch: always(64), metric: always(0.1), round: nearest, isShaded: true },
  about,
  enough: { ...about, round: upward },
  safe: { ...about, round: downward },
  bit: { inch: always(64), metric: always(0.1), round: nearest, isShaded: false },
  clearance: { inch: always(64), metric: always(0.1), round: upward, isShaded: false },
};

/**
 * Takes a length apart as it would be written: nearest 1/64″ (layout 1/32, rough 1/16), reduced,
 * halves away from zero, "full" or "scant" where the rounding hides more than 0.1 mm; millimetres
 * to 0.1 (layout 0.5, rough 1). Under 1/64″ a fit is given in thousandths of an inch. Other
 * purposes round as `Purpose` says, and never say full or scant.
 *
 * @param length  any length [mm]
 * @param style  the units, the purpose, feet or not
 */
export function lengthParts(length: Mm, style: LengthStyle): LengthParts {
  const purpose = style.purpose ?? "fit";
  const size = Math.abs(length);
  const parts =
    style.units === "mm" ? metricParts(size, purpose) : inchParts(size, purpose, style.feet);
  const isZero = parts.whole === "0" && !parts.fraction && !parts.shade && !parts.feet;
  return { ...parts, negative: length < 0 && !isZero };
}

type Unsigned = Omit<LengthParts, "negative">;

function metricParts(size: number, purpose: Purpose): Unsigned {
  const { metric, round } = roundings[purpose];
  const step = metric(size);
  const whole = decimal(round(size / step) * step, 1);
  return { feet: undefined, whole, fraction: undefined, unit: "mm", shade: undefined };
}

function inchParts(size: number, purpose: Purpose, feet = false): Unsigned {
  const { inch, round, isShaded } = roundings[purpose];
  const denominator = inch(size);
  // Judged once rounded: 0.016 would read back as more than 1/64 and then print as that.
  const thousandths = round((size / MM_PER_INCH) * 1000);
  if ((purpose === "fit" || purpose === "about") && thousandths < 1000 / 64) {
    const whole = decimal(thousandths / 1000, 3);
    return { feet: undefined, whole, fraction: undefined, unit: "″", shade: undefined };
  }
  const ticks = round((size / MM_PER_INCH) * denominator);
  const hidden = isShaded ? size - (ticks / denominator) * MM_PER_INCH : 0;
  const shade = Math.abs(hidden) <= HIDDEN_MM ? undefined : hidden > 0 ? "full" : "scant";
  const wholeInches = Math.floor(ticks / denominator);
  const over = ticks - wholeInches * denominator;
  const common = greatestCommon(over, denominator);
  const useFeet = feet && wholeInches >= 12;
  const inchesLeft = useFeet ? wholeInches % 12 : wholeInches;
  return {
    feet: useFeet ? Math.floor(wholeInches / 12) : undefined,
    whole: inchesLeft === 0 && over > 0 ? "" : String(inchesLeft),
    fraction: over > 0 ? [over / common, denominator / common] : undefined,
    unit: "″",
    shade,
  };
}

/** `digits` places at most, trailing noughts dropped. */
export const decimal = (n: number, digits: number): string => String(Number(n.toFixed(digits)));

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

/**
 * A length as plain text, in a form `readLength` reads back: `1 1/4"`, `5' 6 1/2"`, `27/64" full`,
 * `31.8 mm`.
 *
 * @param length  any length [mm]
 * @param style  the units, the purpose, feet or not
 */
export function printLength(length: Mm, style: LengthStyle): string {
  const { negative, feet, whole, fraction, unit, shade } = lengthParts(length, style);
  const ink = [
    feet === undefined ? "" : `${feet}'`,
    feet !== undefined && whole === "0" && !fraction ? "" : whole,
    fraction ? `${fraction[0]}/${fraction[1]}` : "",
  ].filter((t) => t !== "");
  const bareFeet = feet !== undefined && ink.length === 1;
  const mark = unit === "mm" ? " mm" : bareFeet ? "" : '"';
  return `${negative ? "-" : ""}${ink.join(" ")}${mark}${shade ? ` ${shade}` : ""}`;
}
