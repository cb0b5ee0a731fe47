import fc from "fast-check";
import type { Question } from "../../src/asking/index.ts";
import type { Answer, Topic } from "../../src/reckon/index.ts";
import type { LengthUnit, UnitName } from "../../src/units/index.ts";
import { allSpecies } from "../../src/wood/index.ts";
import type { Worked } from "../../src/worked/index.ts";

/** How each inside unit is written out, so that a text means the same on both sides. */
const written: Partial<Readonly<Record<UnitName, string>>> = {
  mm: "mm",
  "m²": "m²",
  "m²/l": "m²/l",
  "m³": "m³",
  kg: "kg",
  N: "N",
  "N/mm²": "N/mm²",
  "°": "°",
  "°C": "°C",
  "% RH": "%",
  "% MC": "%",
  "%": "%",
  "1": "",
  pieces: "",
  rpm: "rpm",
};

type Sized = Partial<Readonly<Record<UnitName, { size: number; zero?: number }>>>;

/**
 * What a bare number means on each side where it is not the inside unit, as the size of its unit in
 * that one. From the definitions of the units, not from the code under test.
 */
const inchSide: Sized = {
  mm: { size: 25.4 },
  "m²": { size: 0.3048 ** 2 },
  "m²/l": { size: 0.3048 ** 2 / 3.785411784 },
  "m³": { size: 0.3048 ** 3 / 12 },
  kg: { size: 0.45359237 },
  N: { size: 4.4482216152605 },
  "N/mm²": { size: 4.4482216152605 / 645.16 },
  "°C": { size: 5 / 9, zero: 32 },
};

const mmSide: Sized = { N: { size: 9.80665 } };

/** A value in a question's inside unit, with that unit: the same on both sides. */
export const withUnit = (value: number, unit: UnitName): string =>
  `${value} ${written[unit] ?? ""}`.trim();

/** The same value as a bare number, as it is typed on a side. */
export function bareOn(side: LengthUnit, value: number, unit: UnitName): string {
  const { size, zero = 0 } = (side === "inch" ? inchSide : mmSide)[unit] ?? { size: 1 };
  return String(value / size + zero);
}

type Range = { readonly least: number; readonly most: number; readonly whole: boolean };
const ranges = new WeakMap<Question<unknown>, Range>();

/** What a quantity question lets through, found by asking it: its bounds are not told. */
export function rangeOf(question: Question<unknown>): Range {
  const known = ranges.get(question);
  if (known) return known;
  const unit = question.unit ?? "1";
  const isIn = (value: number) => question.read(withUnit(value, unit), "mm", false).ok;
  const far = 1e7;
  const middle = [10, 1, 50, 500, 2000, 20000].find(isIn);
  if (middle === undefined) throw new Error(`no value was found for “${question.says}”`);
  const whole = !isIn(middle + 0.5) && isIn(middle + 1);
  const edge = (outside: number): number => {
    if (isIn(outside)) return outside;
    let [inside, beyond] = [middle as number, outside];
    for (let i = 0; i < 60; i++) {
      const half = whole ? Math.trunc((inside + beyond) / 2) : (inside + beyond) / 2;
      if (isIn(half)) inside = half;
      else beyond = half;
    }
    // A little within: on the very edge, two writings of one value may fall on either side of it.
    return whole ? inside : inside - Math.sign(outside) * Math.abs(inside) * 1e-5;
  };
  const range = { least: edge(-far), most: edge(far), whole };
  ranges.set(question, range);
  return range;
}

/** Values over a question's whole range: its ends, all between, and many of a shop's size. */
function valueFor(question: Question<unknown>): fc.Arbitrary<number> {
  const { least, most, whole } = rangeOf(question);
  const ends = fc.constantFrom(least, most);
  if (whole) return fc.oneof({ weight: 9, arbitrary: small(least, most) }, ends);
  const bounds = { noNaN: true, noDefaultInfinity: true } as const;
  const all = fc.double({ ...bounds, min: least, max: most });
  const usual = fc.double({ ...bounds, min: least, max: Math.min(most, Math.max(least + 1, 400)) });
  return fc.oneof({ weight: 3, arbitrary: all }, { weight: 5, arbitrary: usual }, ends);
}

const small = (least: number, most: number) =>
  fc.integer({ min: least, max: Math.min(most, least + 40) });

/** One answer to a question; a number when it asks for a quantity. */
const answerTo = (question: Question<unknown>): fc.Arbitrary<string | number> =>
  question.kind === "choice"
    ? fc.constantFrom(...question.choices)
    : question.kind === "species"
      ? fc.constantFrom(...allSpecies.map((s) => s.key))
      : valueFor(question);

type Answered = Readonly<Record<string, string | number>>;

/**
 * Answers to every question of a topic that must be answered, and to some of the others; now to
 * none of the optional ones, now to those that a fresh start answers, now to any few, which may not
 * go together.
 */
export const answersFor = (topic: Topic): fc.Arbitrary<Answered> =>
  fc.oneof(
    answersTo(topic, (name, q) => !q.optional || topic.opensWith.includes(name)),
    answersTo(topic, (_, q) => !q.optional),
    answersTo(topic, () => true),
  );

function answersTo(
  topic: Topic,
  isAsked: (name: string, question: Question<unknown>) => boolean,
): fc.Arbitrary<Answered> {
  const asked = Object.entries(topic.asks).filter(([name, q]) => isAsked(name, q));
  const answers = asked.map(([name, question]) => {
    const isOpening = !question.optional || topic.opensWith.includes(name);
    const mayBeLeft = question.fallback !== undefined || !isOpening;
    const answer = answerTo(question);
    return [name, mayBeLeft ? fc.option(answer, { nil: undefined }) : answer] as const;
  });
  return fc
    .record(Object.fromEntries(answers))
    .map((all) =>
      Object.fromEntries(
        Object.entries(all).flatMap(([name, v]) => (v === undefined ? [] : [[name, v] as const])),
      ),
    );
}

/** Those answers as texts, each quantity written by `write`. */
export const textsOf = (
  topic: Topic,
  answers: Readonly<Record<string, string | number>>,
  write: (value: number, unit: UnitName) => string,
): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(answers).map(([name, v]) => [
      name,
      typeof v === "string" ? v : write(v, topic.asks[name]?.unit ?? "1"),
    ]),
  );

/** Every worked value of an answer: figures, ends of ranges, and what the findings rest on. */
export const everyWorked = ({ results, findings }: Answer): readonly Worked[] => [
  ...results.flatMap(({ worked, low, high }) => [worked, ...[low, high].flatMap((w) => w ?? [])]),
  ...findings.flatMap(({ margin, why }) => [...why, ...(margin ? [margin] : [])]),
];
