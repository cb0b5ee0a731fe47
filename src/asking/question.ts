import {
  type Celsius,
  type Count,
  type Coverage,
  type CubicM,
  celsius,
  count,
  coverage,
  cubicM,
  type Deg,
  type DimensionName,
  deg,
  type Kg,
  kg,
  type LengthUnit,
  type McPct,
  type Mm,
  type MPa,
  mcPct,
  mm,
  mpa,
  type N,
  newtons,
  type Pct,
  pct,
  printLength,
  printQuantity,
  type Ratio,
  type Read,
  type RhPct,
  type Rpm,
  ratio,
  readAs,
  readLength,
  readQuantity,
  refuse,
  rhPct,
  rpm,
  type SquareM,
  squareM,
  type UnitName,
  unitOfSide,
  writeQuantity,
} from "../units/index.ts";
import { allSpecies, type Species, speciesNamed } from "../wood/index.ts";
import { assumed, type Given, given, givenByMaker, Problem, type Source } from "../worked/index.ts";
import { stepped } from "./step.ts";

/** The same text on both sides of the inch, or one for each. */
type BySide = string | { readonly inch: string; readonly mm: string };

/** The text that stands on one side. */
export const onSide = (text: BySide, units: LengthUnit): string =>
  typeof text === "string" ? text : text[units];

/** The shop's lists of named things. */
export type ShopList = "jointCutters" | "leafHinges";

/** Something a topic asks: how it is said, read, bounded, and what stands for it when left out. */
export type Question<V> = {
  readonly kind: "quantity" | "choice" | "species" | "thing";
  readonly says: string;
  /** inside unit of a quantity */
  readonly unit: UnitName | undefined;
  readonly choices: readonly string[];
  /** which list of the shop's the answer names a thing of */
  readonly from?: ShopList;
  /** what stands in when nothing is written; undefined: it must be answered */
  readonly fallback: BySide | undefined;
  /** whether nothing at all is an answer */
  readonly optional: boolean;
  /** a text that answers it, shown in help and on a fresh screen */
  readonly example: BySide;
  readonly read: (text: string, units: LengthUnit, isFallback: boolean) => Read<V>;
  /** the text some steps up or down, undefined where steps make no sense or it cannot be read */
  readonly step: (text: string, units: LengthUnit, steps: number) => string | undefined;
  /** the text with its unit written out, where the other side would read it otherwise */
  readonly pin: (text: string, units: LengthUnit) => string;
};

// biome-ignore lint/suspicious/noExplicitAny: a list of questions holds answers of every type
export type Asks = Readonly<Record<string, Question<any>>>;

/** What a topic's function gets: each question's value under its name. */
export type Answers<A extends Asks> = {
  readonly [K in keyof A]: A[K] extends Question<infer V> ? V : never;
};

type Bounds = {
  /** least value that is let through, in the inside unit */
  readonly least?: number;
  /** greatest value that is let through, in the inside unit */
  readonly most?: number;
  readonly whole?: boolean;
  readonly example: BySide;
  readonly fallback?: BySide;
  /** where the fallback comes from, if it is more than a usual figure */
  readonly fallbackSource?: Source;
  /** what may stand before the figure and means nothing, such as No. */
  readonly prefix?: RegExp;
};

const USUAL = assumed("usual");

/** The text with a meaningless prefix blanked, so that places in it stay what they are. */
const withoutPrefix = (text: string, { prefix }: Bounds): string =>
  prefix ? text.replace(prefix, (p) => " ".repeat(p.length)) : text;

/** Lengths have a reader of their own; every other quantity has a table of units. */
type Kind = DimensionName | "length";

const readKind = (text: string, kind: Kind, units: LengthUnit): Read<number> =>
  kind === "length" ? readLength(text, units) : readQuantity(text, kind, units);

const writeKind = (value: number, kind: Kind, units: LengthUnit): string =>
  kind === "length" ? printLength(mm(value), { units }) : writeQuantity(value, kind, units, 4);

const ownUnit = (kind: Kind, units: LengthUnit): string =>
  kind === "length" ? (units === "inch" ? "in" : "mm") : unitOfSide(kind, units);

/** Builds the quantity questions: one maker for each inside unit. */
const quantity =
  <V extends number>(kind: Kind, unit: UnitName, mint: (n: number) => V) =>
  (says: string, bounds: Bounds): Question<Given<V>> => ({
    kind: "quantity",
    says,
    unit,
    choices: [],
    fallback: bounds.fallback,
    optional: false,
    example: bounds.example,
    read(text, units, isFallback) {
      const read = readKind(withoutPrefix(text, bounds), kind, units);
      if (!read.ok) {
        const { code, start, end, reason } = read.fault;
        const remedy = code.endsWith("-unit-unknown")
          ? read.fault.remedy
          : `Write it such as ${onSide(bounds.example, units)}.`;
        return refuse(code, text, start, end, reason, remedy);
      }
      const fault = boundsFault(text, read.value, unit, bounds, units);
      if (fault) return fault;
      const source = isFallback ? (bounds.fallbackSource ?? USUAL) : givenByMaker;
      return readAs(given(says, mint(read.value), unit, source));
    },
    step(text, units, steps) {
      const next = stepped(text, kind === "length", units, steps);
      if (next === undefined) return undefined;
      const read = readKind(next, kind, units);
      return read.ok && !boundsFault(next, read.value, unit, bounds, units) ? next : text;
    },
    pin(text, units) {
      const other = units === "inch" ? "mm" : "inch";
      const here = readKind(text, kind, units);
      const reads = (written: string) => {
        const there = readKind(written, kind, other);
        return here.ok && there.ok && there.value === here.value;
      };
      if (!here.ok || reads(text)) return text;
      const named = `${text.trim()} ${ownUnit(kind, units)}`;
      return reads(named) ? named : writeKind(here.value, kind, units);
    },
  });

function boundsFault(
  text: string,
  value: number,
  unit: UnitName,
  bounds: Bounds,
  units: LengthUnit,
) {
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY, whole } = bounds;
  const show = (n: number) =>
    unit === "mm"
      ? printLength(mm(n), { units, purpose: "about", feet: true })
      : printQuantity(n, unit, units);
  const range = Number.isFinite(most)
    ? `Use ${show(least)} to ${show(most)}.`
    : `Use ${show(least)} or more.`;
  // A bound is shown rounded; what is shown must be let through, so a hundredth of it is no matter.
  const slack = (bound: number) => (whole ? 0 : Math.abs(bound) * 0.01);
  if (value < least - slack(least) || value > most + slack(most)) {
    return refuse(
      "out-of-range",
      text,
      0,
      text.length,
      `${show(value)} is outside what is worked here.`,
      range,
    );
  }
  if (whole && Math.abs(value - Math.round(value)) > 1e-9) {
    return refuse("not-whole", text, 0, text.length, "This must be a whole number.", range);
  }
  return undefined;
}

export const ask = {
  length: quantity<Mm>("length", "mm", mm),
  mass: quantity<Kg>("mass", "kg", kg),
  load: quantity<N>("load", "N", newtons),
  temperature: quantity<Celsius>("temperature", "°C", celsius),
  humidity: quantity<RhPct>("humidity", "% RH", rhPct),
  moisture: quantity<McPct>("moisture", "% MC", mcPct),
  share: quantity<Pct>("share", "%", pct),
  stress: quantity<MPa>("stress", "N/mm²", mpa),
  timber: quantity<CubicM>("timber", "m³", cubicM),
  area: quantity<SquareM>("area", "m²", squareM),
  coverage: quantity<Coverage>("coverage", "m²/l", coverage),
  speed: quantity<Rpm>("speed", "rpm", rpm),
  angle: quantity<Deg>("angle", "°", deg),
  pieces: quantity<Count>("number", "pieces", count),
  number: quantity<Ratio>("number", "1", ratio),
};

/** Words have no steps, and mean the same on both sides. */
const asWritten = { step: () => undefined, pin: (text: string) => text };

/** The same question, but nothing is an answer too. */
export const optionally = <V>(question: Question<V>): Question<V | undefined> => ({
  ...question,
  optional: true,
});

/** One of a few words. */
export function choice<C extends string>(
  says: string,
  choices: readonly C[],
  fallback?: C,
): Question<C> {
  return {
    kind: "choice",
    says,
    unit: undefined,
    choices,
    fallback,
    optional: false,
    example: fallback ?? choices[0] ?? "",
    ...asWritten,
    read(text) {
      const letters = (word: string) => word.toLowerCase().replace(/[^\p{L}\d]/gu, "");
      const found = choices.find((c) => letters(c) === letters(text));
      return found !== undefined
        ? readAs(found)
        : refuse(
            "not-a-choice",
            text,
            0,
            text.length,
            "This is not one of the choices.",
            `Use ${choices.join(", ")}.`,
          );
    },
  };
}

/** Something that the shop has, by its name there: whether it is there, only the shop can tell. */
export const thing = (says: string, from: ShopList, fallback: string): Question<string> => ({
  kind: "thing",
  says,
  unit: undefined,
  choices: [],
  from,
  fallback,
  optional: false,
  example: fallback,
  ...asWritten,
  read(text) {
    const name = text.trim();
    return name !== ""
      ? readAs(name)
      : refuse(
          "thing-unnamed",
          text,
          0,
          text.length,
          "Nothing is named here.",
          `Name one of the shop’s, such as ${fallback}.`,
        );
  },
});

/** A timber of the table, by any of its names. */
export const timber = (says = "timber"): Question<Species> => ({
  kind: "species",
  says,
  unit: undefined,
  choices: [],
  fallback: undefined,
  optional: false,
  example: "white oak",
  ...asWritten,
  read(text) {
    try {
      return readAs(speciesNamed(text));
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      return refuse(problem.code, text, 0, text.length, problem.reason, problem.remedy);
    }
  },
});

/** Every timber by its common name, grouped as a list shows them. */
export const timberGroups = [
  { label: "Hardwoods", names: allSpecies.filter((s) => !s.isSoftwood).map((s) => s.name) },
  { label: "Softwoods", names: allSpecies.filter((s) => s.isSoftwood).map((s) => s.name) },
].map((group) => ({ ...group, names: group.names.sort((a, b) => a.localeCompare(b, "en")) }));

/** The common name of a timber, however it was written; undefined when it is not in the table. */
export function timberNamed(text: string): string | undefined {
  const read = timber().read(text, "mm", false);
  return read.ok ? read.value.name : undefined;
}
