import { MM_PER_INCH, type Mm, mm } from "./brands.ts";
import { type Read, readAs, refuse } from "./read.ts";
import { commaFault, LONGEST_TEXT, type Numeral, plain, readNumeral, skipSpaces } from "./scan.ts";

/** The unit a number takes when none is written: the piece's own. */
export type LengthUnit = "inch" | "mm";

type Unit = { readonly name: string; readonly mm: number; readonly metric: boolean };

const inch: Unit = { name: "in", mm: MM_PER_INCH, metric: false };
const foot: Unit = { name: "ft", mm: 304.8, metric: false };
const millimetre: Unit = { name: "mm", mm: 1, metric: true };

const unitWords: ReadonlyMap<string, Unit> = new Map([
  ...["in", "in.", "inch", "inches", '"', "''"].map((w) => [w, inch] as const),
  ...["ft", "ft.", "foot", "feet", "'"].map((w) => [w, foot] as const),
  ...["mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters"].map(
    (w) => [w, millimetre] as const,
  ),
  ...["cm", "cm.", "centimetre", "centimetres", "centimeter", "centimeters"].map(
    (w) => [w, { name: "cm", mm: 10, metric: true }] as const,
  ),
  ...["m", "m.", "metre", "metres", "meter", "meters"].map(
    (w) => [w, { name: "m", mm: 1000, metric: true }] as const,
  ),
  ...["thou", "thous"].map(
    (w) => [w, { name: "thou", mm: MM_PER_INCH / 1000, metric: false }] as const,
  ),
]);

const LONGEST_MM = 1e7;
/** What "full" and "scant" add or take away when read back: more than 0.1 mm, under half of 1/64″. */
const SHADE_MM = 0.15;

const EXAMPLES = `Write a length such as 1 1/4 in, 5' 6 1/2", 30 mm or 1.2 m.`;

/**
 * Reads a length in any of a maker's notations: `1 1/4"`, `1-1/4 in`, `1¼″`, `5' 6 1/2"`,
 * `5 ft 6 in`, `.375in`, `30 mm`, `3,2cm`, `1.2 m`, `3/8 full`.
 *
 * A bare fraction is inches; a bare number takes `bare`. A comma is a decimal mark only before
 * mm, cm or m, and refused before exactly three digits.
 *
 * @param text  what was typed, at most 120 characters
 * @param bare  unit of a number without one
 * @returns millimetres, of either sign, or the fault with its place and remedy
 */
export function readLength(text: string, bare: LengthUnit): Read<Mm> {
  if (text.length > LONGEST_TEXT) {
    return refuse(
      "length-too-long",
      text,
      LONGEST_TEXT,
      text.length,
      "This is too long for a length.",
      EXAMPLES,
    );
  }
  const p = plain(text);
  const first = skipSpaces(p, 0);
  if (first >= p.length) {
    return refuse("length-empty", text, 0, text.length, "Nothing is written here.", EXAMPLES);
  }
  const negative = p[first] === "-";
  const size = readSize(text, p, negative || p[first] === "+" ? first + 1 : first, bare);
  if (!size.ok) return size;
  const shade = readShade(p, size.value.end);
  const rest = skipSpaces(p, shade.end);
  if (rest < p.length) {
    return refuse(
      "length-extra",
      text,
      rest,
      p.length,
      "The length is complete before this.",
      EXAMPLES,
    );
  }
  const value = size.value.mm + shade.mm;
  if (!(value <= LONGEST_MM)) {
    return refuse(
      "length-too-large",
      text,
      first,
      p.length,
      "This is longer than 10 km.",
      EXAMPLES,
    );
  }
  return readAs(mm(negative ? -value : value));
}

type Size = { readonly mm: number; readonly end: number };

/** Everything but the sign and the shade: one term, or feet and inches. */
function readSize(text: string, p: string, from: number, bare: LengthUnit): Read<Size> {
  const term = readTerm(text, p, from, bare);
  if (!term.ok) return term;
  const { numeral, unit, end } = term.value;
  const size = { mm: numeral.value * unit.mm, end };
  if (unit !== foot) return readAs(size);
  const next = skipJoin(p, end);
  if (!startsNumber(p, next)) return readAs(size);
  const second = readTerm(text, p, next, "inch");
  if (!second.ok) return second;
  const behind = second.value;
  const fault = inchesFault(text, numeral, behind);
  if (fault) return fault;
  return readAs({ mm: size.mm + behind.numeral.value * inch.mm, end: behind.end });
}

function inchesFault(text: string, feet: Numeral, behind: Term) {
  const { numeral, unit, end } = behind;
  if (unit !== inch) {
    return refuse(
      "length-mixed",
      text,
      numeral.start,
      end,
      `Feet can be followed only by inches, not ${unit.name}.`,
      `Write 5' 6 1/2" or 1676 mm.`,
    );
  }
  if (!Number.isInteger(feet.value)) {
    return refuse(
      "length-feet-not-whole",
      text,
      feet.start,
      feet.end,
      "Feet followed by inches must be a whole number.",
      `Write 5' 6" or 5.5 ft.`,
    );
  }
  if (numeral.value >= 12) {
    return refuse(
      "length-inches-over-twelve",
      text,
      numeral.start,
      end,
      "Inches behind feet must be under 12.",
      `Write 6' 2" rather than 5' 14", or the whole in inches.`,
    );
  }
  return undefined;
}

type Term = { readonly numeral: Numeral; readonly unit: Unit; readonly end: number };

/** A number with its unit, or with the unit it takes when none is written. */
function readTerm(text: string, p: string, from: number, bare: LengthUnit): Read<Term> {
  const numeral = readNumeral(p, from);
  if (!numeral.ok) {
    const { code, start, end, reason } = numeral.fault;
    return refuse(`length-${code}`, text, start, end, reason, EXAMPLES);
  }
  const word = unitWordAt(p, skipSpaces(p, numeral.value.end));
  const named = word && unitWords.get(word.text);
  if (word && !named && !isShade(word.text)) {
    return refuse(
      "length-unit-unknown",
      text,
      word.start,
      word.end,
      `“${word.text}” is not a unit of length known here.`,
      "Use in, ft, mm, cm or m.",
    );
  }
  const unit = named ?? (numeral.value.hasFraction || bare === "inch" ? inch : millimetre);
  const comma = commaFault(text, numeral.value, named?.metric ?? false);
  if (comma) return { ok: false, fault: { ...comma.fault, code: `length-${comma.fault.code}` } };
  return readAs({
    numeral: numeral.value,
    unit,
    end: named && word ? word.end : numeral.value.end,
  });
}

function unitWordAt(p: string, start: number) {
  const text = /^(?:''|["']|[^\W\d_]+\.?)/u.exec(p.slice(start).toLowerCase())?.[0];
  return text === undefined ? undefined : { text, start, end: start + text.length };
}

/** Feet and inches may be joined by a space, a hyphen, or both. */
function skipJoin(p: string, from: number): number {
  const at = skipSpaces(p, from);
  return p[at] === "-" ? skipSpaces(p, at + 1) : at;
}

const startsNumber = (p: string, at: number) => /[\d.¼½¾⅐-⅞⁰¹²³⁴-⁹]/.test(p[at] ?? "");

const isShade = (word: string) => word === "full" || word === "scant";

function readShade(p: string, from: number): Size {
  const word = unitWordAt(p, skipSpaces(p, from));
  if (!word || !isShade(word.text)) return { mm: 0, end: from };
  return { mm: word.text === "full" ? SHADE_MM : -SHADE_MM, end: word.end };
}
