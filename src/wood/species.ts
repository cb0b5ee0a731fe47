import {
  figure,
  type MPa,
  mpa,
  type N,
  newtons,
  type Pct,
  type PerPct,
  pct,
  perPct,
  type Ratio,
  type Row,
  ratio,
  readTable,
} from "../units/index.ts";
import { derived, type Given, given, Problem, published, type Source } from "../worked/index.ts";
import { speciesRows } from "./data/species.ts";
import { handbook } from "./sources.ts";

/** One timber, every figure with its source. */
export type Species = {
  readonly key: string;
  readonly name: string;
  readonly botanical: string;
  readonly isSoftwood: boolean;
  /** oven-dry mass over green volume [1] */
  readonly basicGravity: Given<Ratio>;
  /** oven-dry mass over the volume at 12 % MC [1] */
  readonly gravity: Given<Ratio>;
  /** radial shrinkage, green to oven-dry [%] */
  readonly radialShrinkage: Given<Pct> | undefined;
  /** tangential shrinkage, green to oven-dry [%] */
  readonly tangentialShrinkage: Given<Pct> | undefined;
  /** volumetric shrinkage, green to oven-dry [%] */
  readonly volumeShrinkage: Given<Pct> | undefined;
  /** fractional change of a quartersawn width per point [per % MC] */
  readonly radial: Given<PerPct>;
  /** fractional change of a flatsawn width per point [per % MC] */
  readonly tangential: Given<PerPct>;
  /** modulus of elasticity in bending, along the grain, 12 % MC [N/mm²] */
  readonly stiffness: Given<MPa>;
  /** bending strength, 12 % MC [N/mm²] */
  readonly bendingStrength: Given<MPa>;
  /** shear strength along the grain, 12 % MC [N/mm²] */
  readonly shearStrength: Given<MPa> | undefined;
  /** crushing strength along the grain, 12 % MC [N/mm²] */
  readonly crushingAlong: Given<MPa> | undefined;
  /** stress at the limit of crushing across the grain, 12 % MC [N/mm²] */
  readonly crushingAcross: Given<MPa> | undefined;
  /** tensile strength across the grain, 12 % MC [N/mm²] */
  readonly tensionAcross: Given<MPa> | undefined;
  /** side hardness, 12 % MC [N] */
  readonly hardness: Given<N> | undefined;
};

type Known = "read" | "memory" | "derived" | "trade";

/** European rows are general knowledge of those woods; the handbook does not print them. */
const EUROPEAN = published("European timbers", "general knowledge, no table", "memory");

function sourceOf(known: Known, place: string): Source {
  switch (known) {
    case "read":
      return handbook(place);
    case "memory":
      return handbook(place, "memory");
    case "derived":
      return handbook("total shrinkage, turned by C = S/(3000 − 20·S)", "memory");
    case "trade":
      return published(
        "German timber trade",
        "movement per point, the larger of two lists",
        "secondary",
      );
  }
}

function speciesOf(row: Row): Species {
  const known = (column: string) => row[column] as Known;
  const isEuropean = row.group === "European";
  const isImported = row.group !== "hardwood" && row.group !== "softwood";
  const name = row.name ?? "";
  const entry = <V extends number>(
    column: string,
    says: string,
    mint: (n: number) => V,
    unit: Given["unit"],
    source: Source,
  ): Given<V> | undefined => {
    const value = figure(row, column);
    return value === undefined ? undefined : given(`${says}, ${name}`, mint(value), unit, source);
  };
  const from = (column: string, place: string): Source =>
    isEuropean && known(column) === "memory" ? EUROPEAN : sourceOf(known(column), place);
  const gravity = from("k_G", isImported ? "Table 5-5b" : "Table 5-3b");
  const isWorkedOut = row.G_12_is === "computed" && known("k_G") === "read";
  const gravity12 = isWorkedOut ? derived("from the printed green value, by Eq 4-11") : gravity;
  const shrinkage = from("k_S", isImported ? "Table 4-4" : "Table 4-3");
  const coefficient = from("k_C", "Table 13-5");
  const strength = from("k_mech", isImported ? "Table 5-5b" : "Table 5-3a");
  return {
    key: row.key ?? "",
    name,
    botanical: row.botanical ?? "",
    isSoftwood: row.pores === "softwood",
    basicGravity: needed(entry("G_green", "green specific gravity", ratio, "1", gravity), name),
    gravity: needed(entry("G_12", "specific gravity at 12 % MC", ratio, "1", gravity12), name),
    radialShrinkage: entry("S_R", "radial shrinkage", pct, "%", shrinkage),
    tangentialShrinkage: entry("S_T", "tangential shrinkage", pct, "%", shrinkage),
    volumeShrinkage: entry("S_V", "volume shrinkage", pct, "%", shrinkage),
    radial: needed(entry("C_R", "radial coefficient", perPct, "per % MC", coefficient), name),
    tangential: needed(
      entry("C_T", "tangential coefficient", perPct, "per % MC", coefficient),
      name,
    ),
    stiffness: needed(entry("MOE", "stiffness in bending", mpa, "N/mm²", strength), name),
    bendingStrength: needed(entry("MOR", "bending strength", mpa, "N/mm²", strength), name),
    shearStrength: entry("shear", "shear strength", mpa, "N/mm²", strength),
    crushingAlong: entry("comp_par", "crushing strength along the grain", mpa, "N/mm²", strength),
    crushingAcross: entry("comp_perp", "crushing across the grain", mpa, "N/mm²", strength),
    tensionAcross: entry("tens_perp", "tension across the grain", mpa, "N/mm²", strength),
    hardness: entry("hardness", "side hardness", newtons, "N", strength),
  };
}

function needed<T>(value: T | undefined, name: string): T {
  if (value === undefined) throw new Error(`the species table lacks a needed figure for ${name}`);
  return value;
}

/** Every species of the table, in its order. */
export const allSpecies: readonly Species[] = readTable(speciesRows).map(speciesOf);

const everyName = allSpecies.flatMap((s) =>
  [s.name, s.botanical, s.key].map((n) => [wordsOf(n), s] as const),
);

/** Names that one species alone has; old and young redwood share a botanical one, for instance. */
const byName: ReadonlyMap<string, Species> = new Map(
  everyName.filter(([name, s]) => everyName.every(([n, other]) => n !== name || other === s)),
);

/** What the trade calls the commonest of a group; common practice, no source. */
const tradeNames: ReadonlyMap<string, string> = new Map([
  ["red oak", "oak-northern-red"],
  ["hard maple", "maple-sugar"],
  ["rock maple", "maple-sugar"],
  ["soft maple", "maple-red"],
  ["poplar", "yellow-poplar"],
  ["douglas fir", "douglas-fir-coast"],
  ["white pine", "pine-eastern-white"],
]);

/** Letters and digits only, lower case, so that `White Oak` and `white-oak` are one. */
function wordsOf(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\d]+/gu, " ")
    .trim();
}

/**
 * A species by key, common or botanical name, in any order of its words: `white oak`, `oak-white`.
 * Trade names of a group mean its commonest. Where a name fits several, or none, the Problem lists
 * the nearest.
 *
 * @param text  what was typed
 * @throws Problem "species-unknown"
 */
export function speciesNamed(text: string): Species {
  const words = wordsOf(text.slice(0, 80));
  const exact = byName.get(words) ?? byName.get(wordsOf(tradeNames.get(words) ?? ""));
  if (exact) return exact;
  const asked = words.split(" ").filter((w) => w !== "");
  const fits =
    asked.length === 0 ? [] : allSpecies.filter((s) => asked.every((w) => speaksOf(s, w)));
  const whole = fits.filter((s) => wordsOf(s.key).split(" ").length === asked.length);
  const only = fits.length === 1 ? fits[0] : whole.length === 1 ? whole[0] : undefined;
  if (only) return only;
  const near = fits.length > 0 ? fits : allSpecies.filter((s) => asked.some((w) => speaksOf(s, w)));
  const names = near.slice(0, 8).map((s) => s.name.toLowerCase());
  const more = near.length > names.length ? `; and ${near.length - names.length} more` : "";
  throw new Problem(
    "species-unknown",
    `“${text.slice(0, 40)}”`,
    fits.length > 1
      ? "More than one timber has this name."
      : "No timber of this name is in the table.",
    `Use ${names.length > 0 ? names.join("; ") + more : "a name such as white oak, black cherry, black walnut"}.`,
  );
}

const speaksOf = (s: Species, word: string): boolean =>
  word.length > 1 && wordsOf(`${s.key} ${s.name} ${s.botanical}`).split(" ").includes(word);
