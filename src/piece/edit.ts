import { Problem } from "../worked/index.ts";
import type { PieceDocument } from "./document.ts";
import { ordered } from "./document-text.ts";
import { shapeProblems } from "./shape.ts";

/** A value of the document. */
type Plain = string | boolean | number | readonly Plain[] | { readonly [name: string]: Plain };

/** Puts a value at a place of the document, or takes it away where `to` is absent. */
export type Change = { readonly at: readonly string[]; readonly to?: Plain };

/** A step of the maker's: plain data, one or more changes that are made and unmade together. */
export type Edit = {
  /** what it does, in words, for the history: `Thickness of the top 3/4 in` */
  readonly says: string;
  readonly changes: readonly Change[];
};

/** Places that name the file's form and are no matter of an edit. */
const FIXED = new Set(["$schema", "format", "version"]);

/**
 * Makes an edit. The inverse, made in turn, gives the same document back to the byte.
 *
 * @param document  stays as it is
 * @param edit  plain data
 * @returns the new document, and the edit that unmakes this one
 * @throws Problem "edit-place", or that of the document's shape, when it would not be a document
 */
export function applyEdit(
  document: PieceDocument,
  edit: Edit,
): { readonly document: PieceDocument; readonly inverse: Edit } {
  let now: Plain = document as unknown as Plain;
  const undone: Change[] = [];
  for (const change of edit.changes) {
    const [first] = change.at;
    if (first === undefined || FIXED.has(first)) throw noPlace(change.at);
    const was = valueAt(now, change.at);
    undone.unshift(was === undefined ? { at: change.at } : { at: change.at, to: was });
    now = put(now, change.at, change.to, change.at);
  }
  const [wrong] = shapeProblems(now);
  if (wrong) throw wrong;
  return {
    document: ordered(now as unknown as PieceDocument),
    inverse: { says: edit.says, changes: undone },
  };
}

const noPlace = (at: readonly string[]) =>
  new Problem(
    "edit-place",
    `the edit’s place “${at.join(" › ").slice(0, 80)}”`,
    "There is no such place in a piece.",
    "Name a field of the piece, such as name, or assemblies › table › length.",
  );

const isTable = (value: Plain | undefined): value is { readonly [name: string]: Plain } =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const own = (table: { readonly [name: string]: Plain }, name: string): Plain | undefined =>
  Object.hasOwn(table, name) ? table[name] : undefined;

const valueAt = (value: Plain, at: readonly string[]): Plain | undefined =>
  at.reduce<Plain | undefined>((v, name) => (isTable(v) ? own(v, name) : undefined), value);

function put(value: Plain, at: readonly string[], to: Plain | undefined, whole: typeof at): Plain {
  const [name, ...rest] = at;
  if (name === undefined) return to ?? "";
  if (!isTable(value) || name === "__proto__") throw noPlace(whole);
  const { [name]: inner, ...others } = value;
  if (rest.length === 0) return to === undefined ? others : { ...others, [name]: to };
  if (inner === undefined) throw noPlace(whole);
  return { ...others, [name]: put(inner, rest, to, whole) };
}
