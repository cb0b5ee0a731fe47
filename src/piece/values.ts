import { type Mm, mm, readLength } from "../units/index.ts";
import {
  derived,
  type Given,
  given,
  givenByMaker,
  Problem,
  problemAt,
  type Worked,
} from "../worked/index.ts";
import type { PieceDocument } from "./document.ts";
import type { Key } from "./part.ts";

/** What stands of a value: what was worked out, the maker's own, what was measured, what is cut. */
type Stands = "computed" | "override" | "measured" | "cut";

/** A dimension that may be overridden, measured, or fixed because the wood is cut. */
export type Value = {
  /** `table/tenons/long.thickness` */
  readonly key: Key;
  readonly says: string;
  /** what everything after it is made to [mm] */
  readonly inForce: Mm;
  readonly stands: Stands;
  /** the figure that stands while nothing else is said, with its reasoning [mm] */
  readonly computed: Worked<Mm>;
  /** what would be in force if nothing were cut yet: the design's own wish [mm] */
  readonly wished: Mm;
};

/** Entries of the document whose key no longer names anything; kept, and shown. */
export type Stray = {
  readonly table: "overrides" | "measured" | "cut";
  readonly key: Key;
  readonly text: string;
};

/** Settles values in turn, and remembers all that was settled. */
export type Settler = {
  /** what is in force: cut before measured before the maker's own before computed */
  readonly settle: (key: Key, says: string, computed: Worked<Mm>, least?: number) => Value;
  readonly values: () => readonly Value[];
  readonly problems: () => readonly Problem[];
  /** entries that no settled value and no part took up */
  readonly strays: (partKeys: ReadonlySet<Key>) => readonly Stray[];
};

/** No size of wood is under this; a clearance or a shoulder may be nought [mm]. */
const LEAST_SIZE = 1;
const MOST_SIZE = 10_000;

/**
 * What a document says of values, ready to be asked while its piece is generated.
 *
 * @param document  overrides, measurements, and what is cut
 */
export function settlerFor(document: PieceDocument): Settler {
  const values = new Map<Key, Value>();
  const problems: Problem[] = [];
  const cut = new Map(Object.values(document.cut).flatMap(({ values: v }) => Object.entries(v)));
  const read = (
    table: string,
    key: Key,
    text: string | undefined,
    least: number,
  ): Mm | undefined => {
    if (text === undefined) return undefined;
    const place = `${table} › ${key}`;
    const length = readLength(text, document.units);
    if (!length.ok) problems.push(problemAt(place, length.fault));
    else if (length.value < least || length.value > MOST_SIZE) {
      const remedy = `Use ${least} mm to 10 m, or take it away to have the computed one back.`;
      problems.push(new Problem("out-of-range", place, `“${text}” is no size of a part.`, remedy));
    } else return length.value;
    return undefined;
  };
  const own = (table: Readonly<Record<string, string>>, key: Key) =>
    Object.hasOwn(table, key) ? table[key] : undefined;
  return {
    settle(key, says, computed, least = LEAST_SIZE) {
      if (values.has(key)) throw new Error(`the value ${key} is settled twice`);
      const override = read("overrides", key, own(document.overrides, key), least);
      const measured = read("measured", key, own(document.measured, key), least);
      const fixed = read("cut", key, cut.get(key), least);
      const wished = measured ?? override ?? computed.value;
      const stands: Stands =
        fixed !== undefined
          ? "cut"
          : measured !== undefined
            ? "measured"
            : override !== undefined
              ? "override"
              : "computed";
      const inForce = fixed ?? wished;
      const value: Value = { key, says, inForce, stands, computed, wished };
      values.set(key, value);
      return value;
    },
    values: () => [...values.values()],
    problems: () => problems,
    strays: (partKeys) => [
      ...strayIn("overrides", document.overrides, (key) => values.has(key)),
      ...strayIn("measured", document.measured, (key) => values.has(key)),
      ...Object.entries(document.cut).flatMap(([part, { values: texts }]) => [
        ...(partKeys.has(part) ? [] : [{ table: "cut" as const, key: part, text: "as it is cut" }]),
        ...Object.entries(texts).flatMap(([key, text]) =>
          values.has(key) || !partKeys.has(part) ? [] : [{ table: "cut" as const, key, text }],
        ),
      ]),
    ],
  };
}

/** A value with its reasoning: the sum it came from, or who gave it. */
export const knownOf = ({ says, inForce, stands, computed }: Value): Given<Mm> | Worked<Mm> =>
  stands === "computed"
    ? computed
    : given(
        says,
        inForce,
        "mm",
        stands === "override" ? givenByMaker : derived(stands === "cut" ? "as cut" : "measured"),
      );

const strayIn = (
  table: "overrides" | "measured",
  texts: Readonly<Record<Key, string>>,
  isKnown: (key: Key) => boolean,
): readonly Stray[] =>
  Object.entries(texts).flatMap(([key, text]) => (isKnown(key) ? [] : [{ table, key, text }]));

/**
 * A size that the maker's answer gives as it is.
 *
 * @param says  what it is
 * @param size  0 or more [mm]
 */
export const plainly = (says: string, size: Mm): Worked<Mm> => ({
  says,
  unit: "mm",
  value: size,
  symbol: "d",
  formula: "d = a",
  inputs: { a: given(says, mm(size), "mm") },
  source: givenByMaker,
  notes: [],
});
