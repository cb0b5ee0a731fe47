import { timber } from "../asking/index.ts";
import {
  type Key,
  knownOf,
  type Part,
  type Piece,
  type PieceDocument,
  type Seasons,
  settlerFor,
  shapeKey,
} from "../piece/index.ts";
import type { Shop } from "../shop/index.ts";
import { type LengthUnit, mm, printLength } from "../units/index.ts";
import type { Species } from "../wood/index.ts";
import { Problem, problemAt } from "../worked/index.ts";
import { type Reader, seasonsOf } from "./home.ts";
import { type Bound, type Kind, type Making, Refusal, type Refused } from "./kind.ts";
import { kindNamed } from "./kinds.ts";
import { marked } from "./marks.ts";

export type PieceRead =
  | { readonly ok: true; readonly piece: Piece }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The piece that a document stands for, or every reason why there is none.
 *
 * @param document  of a sound form
 * @param shop  whose chisels and clearances it is made with
 */
export function pieceOf(document: PieceDocument, shop: Shop): PieceRead {
  const problems: Problem[] = [];
  const reader = readerOf(document.units, problems);
  const species = reader("timber", document.timber, timber());
  const seasons = seasonsOf(document, reader, problems);
  const assemblies = Object.entries(document.assemblies);
  const [first, ...others] = assemblies;
  if (others.length > 0) {
    const place = `assemblies › ${others[0]?.[0]}`;
    problems.push(
      new Problem(
        "assemblies-several",
        place,
        "So far a piece has one assembly.",
        "Make it a piece of its own.",
      ),
    );
  }
  const settled = first && settledKind(first[0], first[1].kind, problems);
  const given = first && settled ? answersOf(settled, first, reader, problems) : undefined;
  if (problems.length > 0 || !species || !seasons || !settled || !given || !first) {
    return { ok: false, problems };
  }
  return generated(document, shop, { kind: settled, assembly: first[0], given, species, seasons });
}

const readerOf =
  (units: LengthUnit, problems: Problem[]): Reader =>
  (place, text, question, isFallback = false) => {
    const read = question.read(text, units, isFallback);
    if (read.ok) return read.value;
    problems.push(problemAt(place, read.fault));
    return undefined;
  };

function settledKind(assembly: string, name: string, problems: Problem[]): Kind | undefined {
  try {
    return kindNamed(name);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    const { code, reason, remedy } = problem;
    problems.push(
      new Problem(code, `assemblies › ${assembly} › kind, ${problem.place}`, reason, remedy),
    );
    return undefined;
  }
}

/** Each question's answer, by the text written or the default; undefined when one cannot be read. */
function answersOf(
  { asks, name }: Kind,
  [assembly, texts]: readonly [string, Readonly<Record<string, string>>],
  reader: Reader,
  problems: Problem[],
): Readonly<Record<string, unknown>> | undefined {
  const before = problems.length;
  for (const word of Object.keys(texts).filter((w) => w !== "kind" && !Object.hasOwn(asks, w))) {
    problems.push(
      new Problem(
        "field-unknown",
        `assemblies › ${assembly} › ${word}`,
        `A ${name} is not asked this.`,
        `Use ${Object.keys(asks).join(", ")}.`,
      ),
    );
  }
  const answers = Object.entries(asks).map(([word, question]) => {
    const text = Object.hasOwn(texts, word) ? texts[word] : undefined;
    const fallback = typeof question.fallback === "string" ? question.fallback : "";
    const place = `assemblies › ${assembly} › ${word}`;
    return [word, reader(place, text ?? fallback, question, text === undefined)] as const;
  });
  return problems.length > before ? undefined : Object.fromEntries(answers);
}

type Read = {
  readonly kind: Kind;
  readonly assembly: string;
  readonly given: Readonly<Record<string, unknown>>;
  readonly species: Species;
  readonly seasons: Seasons;
};

function generated(document: PieceDocument, shop: Shop, read: Read): PieceRead {
  const { kind, assembly, given, species, seasons } = read;
  const settler = settlerFor(document);
  const refusals: Refused[] = [];
  const making: Making = {
    assembly,
    species,
    seasons,
    shop,
    settle: (key, says, computed, least) =>
      settler.settle(`${assembly}/${key}`, says, computed, least).inForce,
    settleKnown: (key, says, computed, least) =>
      knownOf(settler.settle(`${assembly}/${key}`, says, computed, least)),
    isOwn: (key) => tableWith(`${assembly}/${key}`, document) !== undefined,
    refuse: (refused) => void refusals.push(refused),
    isRefused: () => refusals.length > 0,
  };
  const made = kind.make(given as never, making);
  const problems = [
    ...settler.problems(),
    ...hardest(refusals).map((refused) => refusalOf(refused, assembly, document)),
  ];
  if (problems.length > 0) return { ok: false, problems };
  const wished = marked(made.parts);
  const parts = trueMirrors(wished.map((part) => asCut(part, document)));
  return {
    ok: true,
    piece: {
      document,
      units: document.units,
      species,
      seasons,
      parts,
      wished: wished.filter((part) => Object.hasOwn(document.cut, part.key)),
      joints: made.joints,
      motions: made.motions,
      values: settler.values(),
      strays: settler.strays(new Set(parts.map((part) => part.key))),
    },
  };
}

/** A part with the shape it is cut to, where it is cut. */
function asCut(part: Part, { cut }: PieceDocument): Part {
  const made = Object.hasOwn(cut, part.key) ? cut[part.key] : undefined;
  if (!made) return part;
  const { length, width, thickness, features } = made;
  return { ...part, blank: { length, width, thickness }, features };
}

/** Parts that were changed by themselves are no longer anybody's mirror. */
function trueMirrors(parts: readonly Part[]): readonly Part[] {
  const pattern = (part: Part) => shapeKey({ ...part, isMirrored: false });
  return parts.map((part) => {
    const { mirrorOf, ...rest } = part;
    const twin = parts.find((one) => one.key === mirrorOf);
    return twin && pattern(twin) === pattern(part) ? part : rest;
  });
}

/** The refusal in the maker's own units, and the one change that puts it right. */
function refusalOf(refused: Refused, assembly: string, document: PieceDocument): Refusal {
  const { code, question, values = [] } = refused;
  const show = (size: number) => printLength(mm(size), { units: document.units, purpose: "about" });
  const reason = typeof refused.reason === "string" ? refused.reason : refused.reason(show);
  const own = values
    .map((value) => ({ ...value, key: `${assembly}/${value.key}` }))
    .flatMap((value) => (tableWith(value.key, document) ? [value] : []))[0];
  const table = own && tableWith(own.key, document);
  if (own && table?.name === "cut") {
    const place = `cut › ${table.part} › ${own.key}`;
    const remedy = `Take ${table.part} out of what is cut, and cut it anew.`;
    return new Refusal(code, place, reason, remedy, { at: ["cut", table.part] });
  }
  const at = own && table ? [table.name, own.key] : ["assemblies", assembly, question];
  const bound: Bound = own ?? refused;
  const place = at.join(" › ");
  if ("use" in bound) {
    return new Refusal(code, place, reason, `Use ${bound.use}.`, { at, to: bound.use });
  }
  const text = rounded(bound, document.units, own ? FINE : PLAIN);
  const remedy = `Use at ${"atLeast" in bound ? "least" : "most"} ${text}.`;
  return new Refusal(code, place, reason, remedy, { at, to: text });
}

/** Steps that a remedy comes in [mm]: for an answer, and for a value, which may have little room. */
const PLAIN = { inch: 25.4 / 16, mm: 0.5 };
const FINE = { inch: 25.4 / 64, mm: 0.1 };

/** As it is typed, rounded to the side that mends. */
function rounded(
  bound: Extract<Bound, { atLeast: number } | { atMost: number }>,
  units: LengthUnit,
  steps: Readonly<Record<LengthUnit, number>>,
): string {
  const step = steps[units];
  const ticks =
    "atLeast" in bound
      ? Math.ceil(bound.atLeast / step - 1e-9)
      : Math.floor(bound.atMost / step + 1e-9);
  return printLength(mm(ticks * step), { units });
}

type Given =
  | { readonly name: "overrides" | "measured" }
  | { readonly name: "cut"; readonly part: Key };

/** Where a document gives a value of its own, what counts before the rest first. */
function tableWith(key: Key, { cut, measured, overrides }: PieceDocument): Given | undefined {
  const part = Object.keys(cut).find((one) => Object.hasOwn(cut[one]?.values ?? {}, key));
  if (part !== undefined) return { name: "cut", part };
  if (Object.hasOwn(measured, key)) return { name: "measured" };
  return Object.hasOwn(overrides, key) ? { name: "overrides" } : undefined;
}

/** One refusal for each code and question: the one that asks most. */
function hardest(refusals: readonly Refused[]): readonly Refused[] {
  const asksMore = (a: Refused, b: Refused) =>
    ("atLeast" in a && "atLeast" in b && a.atLeast > b.atLeast) ||
    ("atMost" in a && "atMost" in b && a.atMost < b.atMost);
  const kept = new Map<string, Refused>();
  for (const refused of refusals) {
    const name = `${refused.code} ${refused.question}`;
    const other = kept.get(name);
    if (!other || asksMore(refused, other)) kept.set(name, refused);
  }
  return [...kept.values()];
}
