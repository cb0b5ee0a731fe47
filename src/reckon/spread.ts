import { type Ratio, ratio } from "../units/index.ts";
import { handbook } from "../wood/index.ts";
import { assumed, derived, type Given, given, type Worked, work } from "../worked/index.ts";
import type { Result } from "./topic.ts";

const spread = (says: string, value: number, source: Given["source"]): Given<Ratio> =>
  given(says, ratio(value), "1", source);

/** How much boards of one timber differ: coefficients of variation, one of them either way. */
const VARIATION = handbook("Table 5-6, coefficients of variation", "memory");
export const MOVEMENT_SPREAD = spread(
  "spread of movement between boards of one timber",
  0.15,
  assumed("coefficient of variation 15 %"),
);
export const MASS_SPREAD = spread("spread of weight between boards of one timber", 0.1, VARIATION);
export const STIFFNESS_SPREAD = spread(
  "spread of stiffness between boards of one timber",
  0.22,
  VARIATION,
);

/** Ring cup of a single board, by a Monte Carlo run over coefficients, moisture and pith. */
export const CUP_SPREAD = spread(
  "spread of ring cup, times or divided by",
  1.7,
  derived("80 % band of 300 draws over coefficients, moisture and pith distance"),
);

/**
 * A result with the range that two boards in three lie in, one coefficient of variation either way.
 *
 * @param name  of the result
 * @param worked  its likely value
 * @param share  of it that boards differ by, 0 to 1 [1]
 */
export function withBoardSpread(name: string, worked: Worked, share: Given<Ratio>): Result {
  const end = (factor: string, by: number): Worked =>
    endOf(worked, `y = x·(1 ${factor} s)`, { s: share }, worked.value * by);
  return withEnds(name, worked, end("−", 1 - share.value), end("+", 1 + share.value));
}

/**
 * A result that varies inversely with what spreads, as a sag does with stiffness.
 *
 * @param name  of the result
 * @param worked  its likely value
 * @param share  of the cause that boards differ by, 0 to under 1 [1]
 */
export function withInverseSpread(name: string, worked: Worked, share: Given<Ratio>): Result {
  const end = (factor: string, by: number): Worked =>
    endOf(worked, `y = x/(1 ${factor} s)`, { s: share }, worked.value / by);
  return withEnds(name, worked, end("+", 1 + share.value), end("−", 1 - share.value));
}

/**
 * A result that may be so many times larger or smaller.
 *
 * @param name  of the result
 * @param worked  its likely value
 * @param factor  to multiply and to divide by, above 1 [1]
 */
export function withFactorSpread(name: string, worked: Worked, factor: Given<Ratio>): Result {
  return withEnds(
    name,
    worked,
    endOf(worked, "y = x/f", { f: factor }, worked.value / factor.value),
    endOf(worked, "y = x·f", { f: factor }, worked.value * factor.value),
  );
}

function endOf(
  worked: Worked,
  formula: string,
  by: Readonly<Record<string, Given<Ratio>>>,
  value: number,
): Worked {
  const source = Object.values(by)[0]?.source ?? worked.source;
  const says = "end of the likely range";
  return work({ says, unit: worked.unit, formula, inputs: { x: worked, ...by }, value, source });
}

/** The lower value first, whatever the sign. */
const withEnds = (name: string, worked: Worked, a: Worked, b: Worked): Result =>
  a.value <= b.value
    ? { name, worked, low: a, high: b, purpose: "about" }
    : { name, worked, low: b, high: a, purpose: "about" };
