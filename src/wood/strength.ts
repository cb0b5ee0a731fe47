import { type Deg, type McPct, type MPa, mcPct, mpa, type Ratio, ratio } from "../units/index.ts";
import {
  derived,
  type Given,
  given,
  type Known,
  known,
  Problem,
  type Worked,
  work,
} from "../worked/index.ts";
import { handbook } from "./sources.ts";

/** Moisture content at which strength stops changing, by species key (Table 5-13); others 25. */
const turningPoints: Readonly<Record<string, number>> = {
  "ash-white": 24,
  "birch-yellow": 27,
  "chestnut-american": 24,
  "douglas-fir-coast": 24,
  "douglas-fir-interior-north": 24,
  "douglas-fir-interior-west": 24,
  "hemlock-western": 28,
  "larch-western": 28,
  "pine-loblolly": 21,
  "pine-longleaf": 21,
  "pine-red": 24,
  "redwood-old": 21,
  "redwood-young": 21,
  "spruce-red": 27,
  "spruce-sitka": 27,
};

/** Moisture content above which strength no longer falls, for a species [% MC]. */
export const turningPoint = (speciesKey: string): Given<McPct> =>
  given(
    "moisture at which strength stops changing",
    mcPct(turningPoints[speciesKey] ?? 25),
    "% MC",
    handbook("Table 5-13"),
  );

/**
 * A strength or stiffness at another moisture content, from its values at 12 % and green.
 *
 * @param at12  the property at 12 % MC, above 0 [N/mm²]
 * @param green  the property green, above 0 [N/mm²]
 * @param turning  moisture at which it stops changing, above 12 [% MC]
 * @param moisture  0 or more; from `turning` on the green value holds [% MC]
 * @returns the property there [N/mm²]
 * @throws Problem "strength-range"
 * @source Wood Handbook, Eq 5-3 (second-hand); not for tension across the grain or impact
 */
export function strengthAt(
  at12: Known<MPa>,
  green: Known<MPa>,
  turning: Known<McPct>,
  moisture: Known<McPct>,
): Worked<MPa> {
  const P12 = known(at12, "at 12 % MC", "N/mm²");
  const Pg = known(green, "green", "N/mm²");
  const Mp = known(turning, "moisture at which it stops changing", "% MC");
  const M = known(moisture, "moisture content", "% MC");
  if (!(P12.value > 0 && Pg.value > 0 && Mp.value > 12 && M.value >= 0)) {
    throw new Problem(
      "strength-range",
      "strength and moisture",
      "The strengths must be above nought, the turning point above 12 %, the moisture not below nought.",
      "Give the values printed at 12 % and green.",
    );
  }
  return work({
    says: "the same at this moisture",
    unit: "N/mm²",
    formula: "P = P₁₂·(P₁₂/P_g)^((12 − min(M, M_p)) / (M_p − 12))",
    inputs: { "P₁₂": P12, P_g: Pg, M_p: Mp, M },
    value: mpa(
      P12.value * (P12.value / Pg.value) ** ((12 - Math.min(M.value, Mp.value)) / (Mp.value - 12)),
    ),
    source: handbook("Eq 5-3"),
  });
}

/** Change of a property from 12 % MC, at 6 % and at 20 % [%]: middle of all species. */
const trends = {
  stiffness: { dry: 9, damp: -13 },
  bending: { dry: 30, damp: -25 },
} as const;

/**
 * A property at another moisture content where its green value is not in the table: the middle
 * trend of all species, straight between its three points.
 *
 * @param at12  the property at 12 % MC, above 0 [N/mm²]
 * @param property  which trend to follow
 * @param moisture  4 to 20 [% MC]
 * @returns the property there [N/mm²]
 * @throws Problem "moisture-range"
 * @source Wood Handbook, Table 5-14, from memory
 */
export function strengthByTrend(
  at12: Known<MPa>,
  property: keyof typeof trends,
  moisture: Known<McPct>,
): Worked<MPa> {
  const P12 = known(at12, "at 12 % MC", "N/mm²");
  const M = known(moisture, "moisture content", "% MC");
  if (M.value < 4 || M.value > 20) {
    throw new Problem(
      "moisture-range",
      "moisture content",
      `${M.value} % is beyond the trend.`,
      "Use 4 to 20 %.",
    );
  }
  const trend = trends[property];
  const source = handbook("Table 5-14", "memory");
  const isDry = M.value <= 12;
  const a = given<Ratio>(
    isDry ? "gain per point below 12 %" : "loss per point above 12 %",
    ratio(isDry ? trend.dry / 600 : -trend.damp / 800),
    "1",
    source,
  );
  return work({
    says: "the same at this moisture",
    unit: "N/mm²",
    formula: "P = P₁₂·(1 + a·(12 − M))",
    inputs: { "P₁₂": P12, a, M },
    value: mpa(P12.value * (1 + a.value * (12 - M.value))),
    source,
  });
}

/**
 * Strength at an angle to the grain, between the values along and across it.
 *
 * @param along  strength along the grain, above 0 [N/mm²]
 * @param across  strength across the grain, above 0 [N/mm²]
 * @param angle  of the load to the grain, 0 to 90 [°]
 * @returns strength at that angle [N/mm²]
 * @source Hankinson's formula, Wood Handbook, Eq 8-16 (second-hand)
 */
export function strengthAtAngle(
  along: Known<MPa>,
  across: Known<MPa>,
  angle: Known<Deg>,
): Worked<MPa> {
  const P = known(along, "strength along the grain", "N/mm²");
  const Q = known(across, "strength across the grain", "N/mm²");
  const A = known(angle, "angle to the grain", "°");
  const a = (A.value * Math.PI) / 180;
  return work({
    says: "strength at this angle",
    unit: "N/mm²",
    formula: "N = P·Q / (P·sin²(θ·π/180) + Q·cos²(θ·π/180))",
    inputs: { P, Q, θ: A },
    value: mpa((P.value * Q.value) / (P.value * Math.sin(a) ** 2 + Q.value * Math.cos(a) ** 2)),
    source: handbook("Eq 8-16"),
  });
}

/**
 * Modulus along the grain from the one measured in bending, which shear has lowered.
 *
 * @param bendingModulus  printed modulus of elasticity [N/mm²]
 * @returns E along the grain [N/mm²]
 * @source Wood Handbook, Table 5-3, footnote c (second-hand): a tenth more at span over depth 14
 */
export function modulusAlong(bendingModulus: Known<MPa>): Worked<MPa> {
  const E = known(bendingModulus, "stiffness in bending", "N/mm²");
  return work({
    says: "modulus along the grain",
    unit: "N/mm²",
    formula: "E_L = 1.1·E",
    inputs: { E },
    value: mpa(1.1 * E.value),
    source: handbook("Table 5-3, footnote c"),
  });
}

/**
 * A modulus across the grain or in shear, from its printed share of the modulus along the grain.
 *
 * @param modulus  along the grain [N/mm²]
 * @param share  of it, from the table of elastic ratios [1]
 * @returns that modulus [N/mm²]
 */
export function modulusByShare(modulus: Known<MPa>, share: Known<Ratio>): Worked<MPa> {
  const E = known(modulus, "modulus along the grain", "N/mm²");
  const r = known(share, "share of it", "1");
  return work({
    says: "modulus in this direction",
    unit: "N/mm²",
    formula: "E_i = r·E_L",
    inputs: { E_L: E, r },
    value: mpa(r.value * E.value),
    source: derived("the table's definition of its ratios"),
  });
}
