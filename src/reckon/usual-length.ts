import { ask } from "../asking/index.ts";
import { assumed } from "../worked/index.ts";

const HABIT = assumed("usual in careful shops");

/**
 * A question for a length with a default that most makers would let stand.
 *
 * @param says  what is asked
 * @param least  the smallest that is taken [mm]
 * @param most  the largest that is taken [mm]
 * @param inch  the default as typed on the inch side
 * @param metric  the default as typed on the metric side
 */
export const usualLength = (
  says: string,
  least: number,
  most: number,
  inch: string,
  metric: string,
) =>
  ask.length(says, {
    least,
    most,
    example: { inch, mm: metric },
    fallback: { inch, mm: metric },
    fallbackSource: HABIT,
  });
