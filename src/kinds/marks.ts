import type { Part } from "../piece/index.ts";
import type { Unmarked } from "./kind.ts";

/** A letter for each role, as chalked; a part's number counts within its letter. */
const letters: Readonly<Record<Part["role"], string>> = {
  leg: "L",
  rail: "R",
  top: "T",
  leaf: "F",
  arm: "A",
  "corner-block": "C",
  button: "B",
};

/** Gives each part its mark, in the order they stand. */
export function marked(parts: readonly Unmarked[]): readonly Part[] {
  const counts = new Map<string, number>();
  return parts.map((part) => {
    const letter = letters[part.role];
    const n = (counts.get(letter) ?? 0) + 1;
    counts.set(letter, n);
    return { ...part, mark: `${letter}${n}` };
  });
}
