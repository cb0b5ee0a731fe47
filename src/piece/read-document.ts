import { Problem } from "../worked/index.ts";
import type { PieceDocument } from "./document.ts";
import { ordered } from "./document-text.ts";
import { migrated } from "./migrate.ts";
import { shapeProblems } from "./shape.ts";

/** No piece comes near this [characters]; a file above it is not one. */
export const LONGEST_DOCUMENT = 4_000_000;

export type DocumentRead =
  | { readonly ok: true; readonly document: PieceDocument }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a piece's file: its form alone, every fault of it gathered; what the texts say is for the
 * kinds to read.
 *
 * @param text  the whole file
 */
export function readDocument(text: string): DocumentRead {
  try {
    const raw = migrated(parsed(text));
    const problems = shapeProblems(raw);
    if (problems.length > 0) return { ok: false, problems };
    return { ok: true, document: ordered(raw as unknown as PieceDocument) };
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return { ok: false, problems: [problem] };
  }
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  const place = "the file";
  if (text.length > LONGEST_DOCUMENT) {
    throw new Problem(
      "document-too-large",
      place,
      `It is ${(text.length / 1e6).toFixed(0)} million characters long.`,
      "A piece is a few thousand; check that this is the right file.",
    );
  }
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    throw new Problem(
      "not-json",
      placeOfFault(text),
      "From here on it is not JSON.",
      "Mend the text there, or take the file from a backup; it was left as it is.",
    );
  }
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    throw new Problem(
      "not-a-piece",
      place,
      "It is JSON, but no object in braces.",
      'Begin with {"format": "latewood-piece", …}.',
    );
  }
  return value as Readonly<Record<string, unknown>>;
}

/** Line and character where a text stops being JSON. */
function placeOfFault(text: string): string {
  const at = firstFault(text);
  const before = text.slice(0, at).split("\n");
  const line = `line ${before.length}, character ${(before.at(-1)?.length ?? 0) + 1}`;
  return at >= text.trimEnd().length ? `${line}, where the file ends` : line;
}

/**
 * Engines tell a fault's position each in its own way, or not at all. But all tell a text that only
 * breaks off from one that is wrong: so the longest beginning that only breaks off is looked for, by
 * halving.
 */
function firstFault(text: string): number {
  let [good, bad] = [0, text.length + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (breaksOff(text.slice(0, middle))) good = middle;
    else bad = middle;
  }
  return good;
}

function breaksOff(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    const told = /position (\d+)/.exec(fault.message)?.[1];
    return Number(told) === text.length || /\bend\b|EOF|unterminated/i.test(fault.message);
  }
}
