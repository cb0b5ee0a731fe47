import fc from "fast-check";
import { kindNamed } from "../../src/kinds/index.ts";
import { FORMAT, type PieceDocument, VERSION } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { type LengthUnit, mm, printLength } from "../../src/units/index.ts";
import { allSpecies } from "../../src/wood/index.ts";

/** Sizes a maker might ask for, and a little beyond [mm]. */
const ranges: Readonly<Record<string, readonly [least: number, most: number]>> = {
  length: [600, 2600],
  width: [480, 1050],
  height: [380, 950],
  "top-thickness": [15, 40],
  "end-overhang": [0, 130],
  "side-overhang": [0, 90],
  "widest-strip": [60, 300],
  leg: [38, 90],
  foot: [18, 42],
  "taper-start": [0, 60],
  "rail-width": [55, 115],
  "rail-thickness": [18, 34],
  setback: [0, 12],
};

/** A length in this side's own notation; on the inch side a whole number of 32nds. */
export const written = (least: number, most: number, units: LengthUnit): fc.Arbitrary<string> =>
  units === "mm"
    ? fc.integer({ min: least * 2, max: most * 2 }).map((n) => `${n / 2} mm`)
    : fc
        .integer({ min: Math.ceil((least / 25.4) * 32), max: Math.floor((most / 25.4) * 32) })
        .map((n) => printLength(mm((n / 32) * 25.4), { units }));

const table = kindNamed("plain-table");

/** Answers to a plain table's questions; each may also be left to its default. */
function assemblyOn(units: LengthUnit): fc.Arbitrary<Record<string, string>> {
  const answers = Object.entries(table.asks).map(([name, question]) => {
    const range = ranges[name];
    const text = range
      ? written(range[0], range[1], units)
      : // Screws ask for narrow tops and thick rails, and are refused most often.
        name === "fastening"
        ? fc.constantFrom(...Array.from({ length: 5 }, () => "buttons"), "screws in slots")
        : fc.constantFrom(...question.choices);
    return [name, text] as const;
  });
  return fc.record(Object.fromEntries(answers), { requiredKeys: answers.map(([name]) => name) });
}

const percent = (least: number, most: number) =>
  fc.integer({ min: least, max: most }).map((n) => `${n} %`);

/** Values that a maker might give: of all joints alike, of one, of one part. */
const ownKeys = {
  overrides: {
    "table/tenons/end.length": [12, 40],
    "table/tenons/long.mortise": [6, 14],
    "table/tenons/long.upper": [0, 30],
    "table/joint/front-left/long.length": [12, 60],
    "table/joint/front-left/long.wall": [0, 25],
    "table/joint/back-right/end.thickness": [4, 16],
    "table/joint/back-right/end.haunch": [3, 40],
    "table/fastening/front-1.depth": [4, 25],
    "table/fastening/front-1.travel": [0, 12],
  },
  measured: {
    "table/rail/left.thickness": [17, 36],
    "table/rail/front.width": [50, 130],
    "table/leg/front-left.width": [30, 90],
  },
} as const;

/** Mostly none, now and then one of them. */
export const someOf = (
  keys: Readonly<Record<string, readonly [least: number, most: number]>>,
  units: LengthUnit,
): fc.Arbitrary<Readonly<Record<string, string>>> =>
  fc.oneof(
    { weight: 5, arbitrary: fc.constant({}) },
    {
      weight: 1,
      arbitrary: fc
        .constantFrom(...Object.entries(keys))
        .chain(([key, [least, most]]) =>
          written(least, most, units).map((text) => ({ [key]: text })),
        ),
    },
  );

/** What tells the documents of one kind from those of another. */
export type OfKind = {
  readonly kind: string;
  readonly answers: (units: LengthUnit) => fc.Arbitrary<Readonly<Record<string, string>>>;
  readonly overrides: (units: LengthUnit) => fc.Arbitrary<Readonly<Record<string, string>>>;
  readonly measured: (units: LengthUnit) => fc.Arbitrary<Readonly<Record<string, string>>>;
};

/** Documents of one kind, on both sides of the inch, in every timber. */
export const documentsOf = ({ kind, answers, overrides, measured }: OfKind) =>
  fc.constantFrom<LengthUnit>("inch", "mm").chain((units) =>
    fc.record<PieceDocument>({
      format: fc.constant(FORMAT),
      version: fc.constant(VERSION),
      name: fc.constantFrom("Table", "Bord № 2", "<b>table</b> & “co”"),
      client: fc.constant(""),
      note: fc.constant(""),
      demo: fc.constant(true),
      units: fc.constant(units),
      timber: fc.constantFrom(...allSpecies.map((s) => s.name)),
      home: fc.record({
        warmth: fc.constantFrom("18 C", "20 C", "72 F"),
        driest: percent(25, 45),
        dampest: percent(50, 70),
        made: percent(7, 10),
      }),
      assemblies: answers(units).map((texts) => ({ table: { ...texts, kind } })),
      overrides: overrides(units),
      measured: measured(units),
      cut: fc.constant({}),
    }),
  );

/** Documents of plain tables of every kind the questions allow. */
export const tableDocument: fc.Arbitrary<PieceDocument> = documentsOf({
  kind: table.name,
  answers: assemblyOn,
  overrides: (units) => someOf(ownKeys.overrides, units),
  measured: (units) => someOf(ownKeys.measured, units),
});

/** Everything that a kind's tables may be told to have one of: its choices, and the shop's things. */
export const optionsOf = (kind: string): readonly string[] =>
  Object.entries(kindNamed(kind).asks).flatMap(([name, { choices, from }]) =>
    (from ? demoShop[from].map((thing) => thing.name) : choices).map((word) => `${name}: ${word}`),
  );

/** The words chosen in a document, for counting how often each came. */
export const choicesOf = ({ assemblies: { table: texts } }: PieceDocument): readonly string[] =>
  Object.entries(kindNamed(texts?.kind ?? "").asks).flatMap(([name, { kind }]) =>
    kind === "choice" || kind === "thing" ? [`${name}: ${texts?.[name]}`] : [],
  );
