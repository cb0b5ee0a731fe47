import type { Feature, Part, Piece, Value } from "../piece/index.ts";
import { mm } from "../units/index.ts";
import { derived, type Finding, given, type Worked, work } from "../worked/index.ts";

/** What a hand can fit: a difference up to this is no matter [mm]. */
const NO_MATTER = 0.2;

/** Where the wood is cut otherwise than the design now asks: the wood stays, and is told. */
export const cutKept = (piece: Piece): readonly Finding[] =>
  piece.wished.flatMap((wished): readonly Finding[] => {
    const part = piece.parts.find(({ key }) => key === wished.key);
    const keys = Object.keys(piece.document.cut[wished.key]?.values ?? {});
    if (!part) return [];
    const off = piece.values
      .filter((value) => value.stands === "cut" && keys.includes(value.key))
      .map((value) => ({ value, worked: offOf(value) }))
      .filter(({ worked }) => Math.abs(worked.value) > NO_MATTER)
      .sort((a, b) => Math.abs(b.worked.value) - Math.abs(a.worked.value));
    const features = otherFeatures(part, wished);
    const [most] = off;
    // A stick that is only too large loses wood more easily than it gains any.
    const isTrimmed =
      features.length === 0 &&
      off.every(({ value, worked }) => isOfWood(value) && worked.value > 0);
    if (!most && features.length === 0) return [];
    return [
      {
        id: `cut/${part.key}`,
        group: "Joinery",
        verdict: isTrimmed ? "watch" : "fails",
        says: `${part.mark} ${part.name} is cut otherwise than the design now asks: ${said(off, features)}. ${isTrimmed ? "It can be trimmed, or the design put back." : "Put the design back, or cut the part anew."}`,
        ...(most ? { margin: most.worked } : {}),
        why: off.map(({ worked }) => worked),
        lights: [part.key],
      },
    ];
  });

const isOfWood = ({ key }: Value): boolean => /\.(length|width|thickness|between)$/.test(key);

type Off = readonly { readonly value: Value; readonly worked: Worked }[];

/** The sizes that are off, or where all are right the features; the longest list says little. */
function said(off: Off, features: readonly string[]): string {
  const sizes = off.map(
    ({ value, worked }) => `${value.says} is ${worked.value > 0 ? "larger" : "smaller"}`,
  );
  const all = [...sizes, ...features];
  const more = all.length - 4;
  return more > 0 ? `${all.slice(0, 4).join("; ")}; and ${more} more` : all.join("; ");
}

const offOf = ({ says, inForce, wished }: Value): Worked =>
  work({
    says: `${says}: cut, against what the design now asks`,
    unit: "mm",
    formula: "a = c − w",
    inputs: {
      c: given("as it is cut", inForce, "mm"),
      w: given("what the design now asks", wished, "mm", derived("the design")),
    },
    value: mm(inForce - wished),
    source: derived("arithmetic"),
  });

/** Features that the design has no more, has besides, or would have otherwise. */
function otherFeatures(part: Part, wished: Part): readonly string[] {
  const named = (of: Part) => new Map(of.features.map((feature) => [feature.key, feature]));
  const [is, asked] = [named(part), named(wished)];
  return [...new Set([...is.keys(), ...asked.keys()])].flatMap((key) => {
    const [a, b] = [is.get(key), asked.get(key)];
    const name = words(a ?? b);
    if (!a) return [`no ${name} is cut`];
    if (!b) return [`${name} is not asked for`];
    return isAlike(a, b) ? [] : [`${name} is otherwise`];
  });
}

const words = (feature: Feature | undefined): string => feature?.key.replace(/-/g, " ") ?? "";

/** Whether two features are the same but for what a hand can fit. */
function isAlike(a: unknown, b: unknown): boolean {
  if (typeof a === "number" && typeof b === "number") return Math.abs(a - b) <= NO_MATTER;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return a === b;
  const [as, bs] = [a, b] as readonly Readonly<Record<string, unknown>>[];
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => isAlike(as?.[name], bs?.[name]));
}

/** Entries of the document that name nothing of the piece any more. */
export const straysKept = ({ strays }: Piece): readonly Finding[] =>
  strays.map(
    ({ table, key, text }): Finding => ({
      id: `stray/${table}/${key}`,
      group: "Joinery",
      verdict: "watch",
      says: `${key} is kept (${text}), but names nothing of the piece now.`,
      why: [],
      lights: [],
    }),
  );
