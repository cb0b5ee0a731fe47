import { inches, type Mm, type Ratio, type Rpm, ratio, rpm } from "../units/index.ts";
import {
  type Caution,
  commonPractice,
  derived,
  type Given,
  given,
  type Known,
  known,
  Problem,
  published,
  type Worked,
  work,
} from "../worked/index.ts";

/** Stages of turning between centres, in order. */
export type TurningStage = "roughing" | "shaping" | "sanding";
export const turningStages: readonly TurningStage[] = ["roughing", "shaping", "sanding"];

const CHART = published(
  "Table of lathe speeds by diameter and stage",
  "Table 12-1 of a lathe guide",
  "secondary",
);
const RULE = published(
  "Turners' rule, diameter in inches × rpm",
  "a turners' association forum",
  "secondary",
);

/** Rows of the chart: swing up to [in], then rpm by stage. */
const chart = [
  { upTo: 2, roughing: 950, shaping: 1300, sanding: 2050 },
  { upTo: 4, roughing: 850, shaping: 1150, sanding: 1900 },
  { upTo: 6, roughing: 750, shaping: 1050, sanding: 1600 },
  { upTo: Number.POSITIVE_INFINITY, roughing: 700, shaping: 750, sanding: 850 },
] as const;

/** Above this length over diameter a spindle whips. */
const SLENDER = 12;

function checkDiameter(D: number): void {
  if (!(D >= 3 && D <= 1000)) {
    throw new Problem(
      "turning-diameter",
      "diameter",
      `${D.toFixed(1)} mm cannot be judged.`,
      "Use 3 to 1000 mm.",
    );
  }
}

/**
 * Speed by the diameter rule: diameter in inches times rpm is 6000 (careful) to 9000 (never above).
 *
 * @param swing  largest diameter that turns, 3 to 1000 [mm]
 * @param product  inches times rpm, 6000 or 9000 [1]
 * @returns speed [rpm]
 * @throws Problem "turning-diameter"
 */
export function speedByDiameter(swing: Known<Mm>, product: 6000 | 9000): Worked<Rpm> {
  const D = known(swing, "swing of the work", "mm");
  checkDiameter(D.value);
  const k = given<Ratio>(
    product === 6000 ? "lower end of the diameter rule" : "upper end of the diameter rule",
    ratio(product),
    "1",
    RULE,
  );
  return work({
    says: "speed by the diameter rule",
    unit: "rpm",
    formula: "n = k·25.4/D",
    inputs: { k, D },
    value: rpm((k.value * 25.4) / D.value),
    source: RULE,
  });
}

/**
 * Speed printed for a stage of turning.
 *
 * @param swing  largest diameter that turns, 3 to 1000 [mm]
 * @param stage  roughing, shaping or sanding
 * @returns speed [rpm]
 * @throws Problem "turning-diameter"
 */
export function speedByStage(swing: Known<Mm>, stage: TurningStage): Given<Rpm> {
  const D = known(swing, "swing of the work", "mm");
  checkDiameter(D.value);
  const row = chart.find((r) => D.value <= inches(Math.min(r.upTo, 1e6)) + 1e-9) ?? chart[3];
  return given(`charted speed for ${stage}`, rpm(row[stage]), "rpm", CHART);
}

/**
 * How slender the work is.
 *
 * @param length  between centres, above 0 [mm]
 * @param diameter  thinnest finished, above 0 [mm]
 * @returns length over diameter [1]
 */
export function slenderness(length: Known<Mm>, diameter: Known<Mm>): Worked<Ratio> {
  const L = known(length, "length between centres", "mm");
  const D = known(diameter, "thinnest diameter", "mm");
  return work({
    says: "length over diameter",
    unit: "1",
    formula: "λ = L/D",
    inputs: { L, D },
    value: ratio(L.value / D.value),
    source: derived("arithmetic"),
  });
}

/**
 * Speed to start from at a stage: the lower of rule and chart, halved for slender work.
 *
 * @param swing  largest diameter that turns, 3 to 1000 [mm]
 * @param stage  roughing takes the lower end of the diameter rule, the others the upper
 * @param slender  length over diameter of the work; over 12 halves the speed [1]
 * @returns speed not to exceed [rpm]
 * @throws Problem "turning-diameter"
 */
export function latheSpeed(
  swing: Known<Mm>,
  stage: TurningStage,
  slender: Known<Ratio>,
): Worked<Rpm> {
  const byRule = speedByDiameter(swing, stage === "roughing" ? 6000 : 9000);
  const byChart = speedByStage(swing, stage);
  const L = known(slender, "length over diameter", "1");
  const half = given<Ratio>(
    L.value > SLENDER ? "halved: slender work whips" : "not slender: whole",
    ratio(L.value > SLENDER ? 0.5 : 1),
    "1",
    commonPractice,
  );
  return work({
    says: `${stage}, no faster than`,
    unit: "rpm",
    formula: "n_max = h·min(n, c)",
    inputs: { h: half, n: byRule, c: byChart },
    value: rpm(half.value * Math.min(byRule.value, byChart.value)),
    source: commonPractice,
    notes: L.value > SLENDER ? ["over 12 diameters long: use a steady"] : [],
  });
}

export const latheCautions: readonly Caution[] = [
  {
    says: "Start at the lowest speed, turn the work over by hand first, stand out of its plane, and wear a face shield.",
    source: commonPractice,
  },
  {
    says: "Rough, cracked, glued up or off balance: well below the roughing figure; a large blank out of balance starts at 100 to 500 rpm.",
    source: published("Wood turning speeds", "a turning guide", "secondary"),
  },
  {
    says: "A glued-up or split blank must be fully cured. Take the rest away before sanding. No gloves, loose sleeves or rings. The lathe's manual comes first.",
    source: commonPractice,
  },
];
