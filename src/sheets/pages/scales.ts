import type { LengthUnit } from "../../units/index.ts";

/** Scales that a rule of the shop reads; ISO 5455's by tens, and inch rules' by twos. */
const scales: Readonly<Record<LengthUnit, readonly number[]>> = {
  mm: [1, 2, 2.5, 4, 5, 8, 10, 15, 20, 25, 30, 40, 50, 75, 100],
  inch: [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96],
};

/**
 * The largest scale at which something comes out no longer than its room.
 *
 * @param fits  whether it does at a scale
 * @returns how many millimetres one on paper stands for
 */
export function scaleFor(units: LengthUnit, fits: (scale: number) => boolean): number {
  const all = scales[units];
  const found = all.find(fits) ?? all.at(-1);
  if (found === undefined) throw new Error("there are no scales");
  return found;
}

/** Scales of what is drawn larger than it is, the largest first; ISO 5455 has most of them, from memory. */
const enlarged: readonly number[] = [1 / 10, 1 / 8, 1 / 5, 1 / 4, 1 / 3, 1 / 2, 1];

/**
 * The largest enlargement at which something comes out no longer than its room; true size where none fits.
 *
 * @param fits  whether it does at a scale
 * @returns how many millimetres one on paper stands for, 1 or less
 */
export const enlargedFor = (fits: (scale: number) => boolean): number => enlarged.find(fits) ?? 1;

/**
 * A scale in words.
 *
 * @param scale  how many millimetres one on paper stands for [1]
 */
export const scaleText = (scale: number): string =>
  scale < 1 ? `${Math.round(1 / scale)}:1` : `1:${scale}`;
