import type { Stroke } from "../drawing.ts";

/** A straight piece of a line in a view [mm]. */
export type Segment = readonly [x0: number, y0: number, x1: number, y1: number];

/** What of a scene is seen, and what is behind something. */
export type Lines = { readonly visible: readonly Stroke[]; readonly hidden: readonly Stroke[] };

/** From one place to another along a line. */
export type Stretch = readonly [from: number, to: number];

/**
 * Stretches in their order, those that overlap or all but touch made one.
 *
 * @param gap  what is no gap, in the stretches' own unit [1]
 */
export function merged(stretches: readonly Stretch[], gap: number): readonly Stretch[] {
  const whole: [number, number][] = [];
  for (const [from, to] of [...stretches].sort((a, b) => a[0] - b[0])) {
    const last = whole.at(-1);
    if (last && from <= last[1] + gap) last[1] = Math.max(last[1], to);
    else whole.push([from, to]);
  }
  return whole;
}

/**
 * Stretches without what others cover; both in order, none overlapping its fellows.
 *
 * @param gap  less than this is not worth keeping, in the stretches' own unit [1]
 */
export function less(
  stretches: readonly Stretch[],
  others: readonly Stretch[],
  gap: number,
): readonly Stretch[] {
  return stretches.flatMap(([from, to]) => {
    const left: Stretch[] = [];
    let at = from;
    for (const [a, b] of others) {
      if (b <= at || a >= to) continue;
      if (a - at > gap) left.push([at, a]);
      at = Math.max(at, b);
    }
    return to - at > gap ? [...left, [at, to] as const] : left;
  });
}
