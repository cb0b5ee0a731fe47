import { deg, mm } from "../units/index.ts";
import { letterWidths } from "./data/letter-widths.ts";
import type { Lettering, Point, Tone } from "./drawing.ts";

/** Sizes of type on paper [mm]. */
export const sizes = {
  label: mm(2.4),
  small: mm(2.9),
  body: mm(3.2),
  figure: mm(3.4),
  heading: mm(4.2),
  title: mm(6),
} as const;

/** Height of capitals and figures, in type sizes. */
export const CAPS = 0.66;

const widths = new Map(
  letterWidths.flatMap(([width, letters]) => [...letters].map((one) => [one, width] as const)),
);
/** Taken for a letter that is not in the table: wider than most. */
const UNKNOWN = 700;
/** A figure within a fraction. */
const IN_FRACTION = 367;
/** How much wider the bold weight runs, at most of its usual letters. */
const BOLD = 1.05;

/**
 * How long a line of text comes out in the sheets' own type.
 *
 * @param size  of the type [mm]
 * @returns length, seldom too short [mm]
 */
export function textLength(says: string, size: number, isBold = false): number {
  const small = new Set<number>();
  for (const found of says.matchAll(/\d+⁄\d+/g))
    for (let i = 0; i < found[0].length; i++) small.add(found.index + i);
  let sum = 0;
  let place = 0;
  for (const letter of says) {
    const width = widths.get(letter) ?? UNKNOWN;
    sum += small.has(place) && letter !== "⁄" ? IN_FRACTION : width;
    place += letter.length;
  }
  return (sum / 1000) * size * (isBold ? BOLD : 1);
}

/**
 * A text broken into lines at its spaces, but not at the thin ones before fractions; a word too long for a line is broken anywhere.
 *
 * @param size  of the type [mm]
 * @param room  length of a line [mm]
 */
export function wrapped(
  says: string,
  size: number,
  room: number,
  isBold = false,
): readonly string[] {
  const lines: string[] = [];
  let line = "";
  const isIn = (text: string) => textLength(text, size, isBold) <= room;
  for (const word of says.split(/[ \n]+/u).flatMap((one) => broken(one, isIn))) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && !isIn(longer)) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === "" ? lines : [...lines, line];
}

function broken(word: string, isIn: (text: string) => boolean): readonly string[] {
  const pieces: string[] = [];
  let piece = "";
  for (const letter of word) {
    if (piece !== "" && !isIn(piece + letter)) {
      pieces.push(piece);
      piece = "";
    }
    piece += letter;
  }
  return [...pieces, piece];
}

/**
 * The text, cut short with an ellipsis where it is longer than its room.
 *
 * @param size  of the type [mm]
 * @param room  [mm]
 */
export function shortened(says: string, size: number, room: number, isBold = false): string {
  if (textLength(says, size, isBold) <= room) return says;
  const letters = [...says];
  while (letters.length > 1 && textLength(`${letters.join("")}…`, size, isBold) > room)
    letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

type Asked = Partial<Omit<Lettering, "at" | "says" | "turn">> & { readonly turn?: number };

/** A line of text, plain and level unless something else is asked. */
export const lettering = (at: Point, says: string, asked: Asked = {}): Lettering => {
  const { shift = [0, 0], size = sizes.body, anchor = "start", isBold = false } = asked;
  const tone: Tone = asked.tone ?? "ink";
  return { at, says, shift, size, anchor, isBold, tone, turn: deg(asked.turn ?? 0) };
};
