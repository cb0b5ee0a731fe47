import { type Ratio, ratio } from "../units/index.ts";
import {
  assumed,
  derived,
  type Given,
  given,
  type Source,
  type Worked,
  work,
} from "../worked/index.ts";
import type { Result } from "./topic.ts";

/** How much boards of one timber differ in movement: a coefficient of variation, assumed. */
const BOARD_SPREAD = given<Ratio>(
  "spread between boards of one timber",
  ratio(0.15),
  "1",
  assumed("coefficient of variation 15 %"),
);

/** Ring cup of a single board, by a Monte Carlo run over coefficients, moisture and pith. */
export const CUP_SPREAD = given<Ratio>(
  "spread of ring cup, times or divided by",
  ratio(1.7),
  "1",
  derived("80 % band of 300 draws over coefficients, moisture and pith distance"),
);

/** A result with the range that boards of one timber spread over, both ways. */
export function withBoardSpread<V extends number>(name: string, worked: Worked<V>): Result {
  return {
    name,
    worked,
    low: scaled(worked, "(1 − s)", 1 - BOARD_SPREAD.value, "the least of most boards"),
    high: scaled(worked, "(1 + s)", 1 + BOARD_SPREAD.value, "the most of most boards"),
  };
}

function scaled(worked: Worked, factor: string, by: number, says: string): Worked {
  return work({
    says,
    unit: worked.unit,
    formula: `y = x·${factor}`,
    inputs: { x: worked, s: BOARD_SPREAD },
    value: worked.value * by,
    source: BOARD_SPREAD.source,
  });
}

/**
 * A result that may be so many times larger or smaller.
 *
 * @param name  of the result
 * @param worked  its likely value
 * @param factor  to multiply and to divide by, above 1 [1]
 */
export function withFactorSpread(name: string, worked: Worked, factor: Given<Ratio>): Result {
  const end = (says: string, formula: string, value: number, source: Source): Worked =>
    work({ says, unit: worked.unit, formula, inputs: { x: worked, f: factor }, value, source });
  return {
    name,
    worked,
    low: end("low end of the likely range", "y = x/f", worked.value / factor.value, factor.source),
    high: end(
      "high end of the likely range",
      "y = x·f",
      worked.value * factor.value,
      factor.source,
    ),
  };
}
