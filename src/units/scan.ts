import { type Read, readAs, refuse } from "./read.ts";

/** A number as written, and how it was written: lengths and quantities judge the rest. */
export type Numeral = {
  readonly value: number;
  readonly hasFraction: boolean;
  /** index of a decimal comma, if one was used [characters] */
  readonly comma: number | undefined;
  /** digits behind that comma [characters] */
  readonly commaDigits: number;
  readonly start: number;
  readonly end: number;
};

/** Longest text read as a quantity: anything longer is not one, and is not searched through. */
export const LONGEST_TEXT = 120;

// biome-ignore format: read as a table
const vulgar: Readonly<Record<string, readonly [number, number]>> = {
  "¼": [1, 4], "½": [1, 2], "¾": [3, 4], "⅐": [1, 7], "⅑": [1, 9], "⅒": [1, 10],
  "⅓": [1, 3], "⅔": [2, 3], "⅕": [1, 5], "⅖": [2, 5], "⅗": [3, 5], "⅘": [4, 5],
  "⅙": [1, 6], "⅚": [5, 6], "⅛": [1, 8], "⅜": [3, 8], "⅝": [5, 8], "⅞": [7, 8],
};
const raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const lowered = "₀₁₂₃₄₅₆₇₈₉";

/**
 * The same text with every look-alike replaced by its plain character, one for one, so that
 * places in the result are places in the original.
 */
export function plain(text: string): string {
  return text
    .replace(/[\u00a0\u2000-\u200b\u202f\u205f\u3000\u2060\ufeff\t\r\n]/g, " ")
    .replace(/[′‘’ʹʼ´`＇]/g, "'")
    .replace(/[″“”ʺ〃＂]/g, '"')
    .replace(/[−–—‐‑‒﹣－]/g, "-")
    .replace(/[⁄∕⧸／]/g, "/");
}

/** Index of the next character that is no space. */
export function skipSpaces(plainText: string, from: number): number {
  let at = from;
  while (plainText[at] === " ") at++;
  return at;
}

/**
 * Reads a number from `from` on: `12`, `.375`, `3,5`, `1e6`, `3/4`, `1 3/4`, `1-3/4`, `1¾`, `¹⁄₆₄`.
 *
 * @param plainText  text after `plain`
 * @param from  index to start at [characters]
 * @returns the numeral, or the fault; a comma is accepted here and judged by the caller
 */
export function readNumeral(plainText: string, from: number): Read<Numeral> {
  const start = skipSpaces(plainText, from);
  const alone = readFraction(plainText, start);
  if (alone) {
    return !alone.ok
      ? alone
      : readAs({ ...alone.value, hasFraction: true, comma: undefined, commaDigits: 0, start });
  }
  const match = /^(\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3})?/.exec(plainText.slice(start));
  if (!match) {
    const end = Math.min(plainText.length, start + 1);
    return refuse(
      "not-a-number",
      plainText,
      start,
      end,
      "There is no number here.",
      "Write a number.",
    );
  }
  const written = match[0];
  const end = start + written.length;
  const commaAt = written.indexOf(",");
  const base: Numeral = {
    value: Number(written.replace(",", ".")),
    hasFraction: false,
    comma: commaAt < 0 ? undefined : start + commaAt,
    commaDigits: commaAt < 0 ? 0 : (/^\d*/.exec(written.slice(commaAt + 1))?.[0].length ?? 0),
    start,
    end,
  };
  return /^\d+$/.test(written) ? withFraction(plainText, base) : readAs(base);
}

/** A whole number may be followed by a fraction, behind a space, a hyphen or nothing. */
function withFraction(text: string, whole: Numeral): Read<Numeral> {
  const join = text[whole.end] === "-" ? whole.end + 1 : skipSpaces(text, whole.end);
  const fraction = readFraction(text, join);
  if (!fraction) return readAs(whole);
  if (!fraction.ok) return fraction;
  if (fraction.value.value >= 1) {
    return refuse(
      "fraction-improper",
      text,
      join,
      fraction.value.end,
      "A fraction behind a whole number must be less than one.",
      "Write 2 1/4 rather than 1 5/4.",
    );
  }
  return readAs({
    ...whole,
    value: whole.value + fraction.value.value,
    hasFraction: true,
    end: fraction.value.end,
  });
}

/** A fraction at exactly `at`, or undefined when there is none. */
function readFraction(text: string, at: number): Read<{ value: number; end: number }> | undefined {
  const single = vulgar[text[at] ?? ""];
  if (single) return readAs({ value: single[0] / single[1], end: at + 1 });
  const rest = text.slice(at);
  const match =
    /^(\d+) *\/ *(\d+)/.exec(rest) ??
    /^([⁰¹²³⁴⁵⁶⁷⁸⁹]+) *\/ *([₀₁₂₃₄₅₆₇₈₉]+|\d+)/.exec(rest) ??
    /^(⅟)(\d+|[₀₁₂₃₄₅₆₇₈₉]+)/.exec(rest);
  if (!match) return undefined;
  const [all, top = "", bottom = ""] = match;
  const denominator = digits(bottom);
  if (denominator === 0) {
    return refuse(
      "fraction-zero",
      text,
      at,
      at + all.length,
      "A fraction cannot have nothing below its line.",
      "Write a fraction such as 3/4.",
    );
  }
  return readAs({ value: (top === "⅟" ? 1 : digits(top)) / denominator, end: at + all.length });
}

const digits = (written: string): number =>
  Number(
    [...written]
      .map((c) =>
        raised.includes(c) ? raised.indexOf(c) : lowered.includes(c) ? lowered.indexOf(c) : c,
      )
      .join(""),
  );

/**
 * Judges a decimal comma: it is one only before a metric unit, and never before exactly three
 * digits, where it might have been meant to part thousands.
 *
 * @param text  the text as written
 * @param numeral  the number read from it
 * @param metric  whether the unit that follows is metric
 * @returns the fault, or undefined when the comma is fine or absent
 */
export function commaFault(text: string, numeral: Numeral, metric: boolean) {
  if (numeral.comma === undefined) return undefined;
  if (numeral.commaDigits === 3) {
    return refuse(
      "comma-three-digits",
      text,
      numeral.start,
      numeral.end,
      "A comma before exactly three digits may mean thousands or a decimal.",
      "Write the thousands without a comma, or the decimal with a point.",
    );
  }
  if (!metric) {
    return refuse(
      "comma-not-metric",
      text,
      numeral.comma,
      numeral.comma + 1,
      "A comma is read as a decimal mark only before a metric unit such as mm.",
      "Write a point, or name the metric unit.",
    );
  }
  return undefined;
}
