import { type Mm, mm } from "../../units/index.ts";

/** From a leaf's end to its outer hinges: this share of its length, but no more than so much; common practice. */
const END_SHARE = 0.15;
const MOST_END = 150;
/** One hinge to so much of a leaf's length, and two at least; common practice [mm]. */
const LENGTH_EACH = 450;
/** Between a hinge and whatever it must keep clear of [mm]. */
const AIR = 4;

/** A stretch along the hinge line that hinges keep out of [mm]. */
export type Stretch = readonly [from: number, to: number];

/**
 * Middles of a leaf's hinges along its line, from the leaf's middle: evenly, each moved as little as
 * it takes to keep clear of arms and screws. Where there is no clear place it stays, and is told.
 *
 * @param length  of the leaf [mm]
 * @param hinge  length of a hinge along the line [mm]
 * @param taken  stretches to keep out of
 */
export function hingePlaces(length: Mm, hinge: Mm, taken: readonly Stretch[]): readonly Mm[] {
  const count = Math.max(2, Math.ceil((length - 1e-6) / LENGTH_EACH));
  const end = Math.min(MOST_END, END_SHARE * length);
  const half = hinge / 2 + AIR;
  const placed: number[] = [];
  for (let i = 0; i < count; i++) {
    const wished = -length / 2 + end + ((length - 2 * end) * i) / (count - 1);
    const others = placed.map((at): Stretch => [at - half, at + half]);
    const isClear = (at: number) =>
      Math.abs(at) + half <= length / 2 &&
      [...taken, ...others].every(([from, to]) => at + half <= from || at - half >= to);
    // Beside what is in the way, on either side.
    const beside = taken.flatMap(([from, to]) => [from - half, to + half]);
    const clear = [wished, ...beside].filter(isClear);
    const nearest = clear.sort((a, b) => Math.abs(a - wished) - Math.abs(b - wished))[0];
    placed.push(nearest ?? wished);
  }
  return placed.map(mm);
}
