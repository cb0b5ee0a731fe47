import {
  type CubicM,
  type Kg,
  type KgPerM3,
  kg,
  kgPerM3,
  type McPct,
  mcPct,
  type Pct,
  type Ratio,
  ratio,
} from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";
import { shrinkageTo } from "./movement.ts";
import { handbook } from "./sources.ts";

function checkGravity(G: number): void {
  if (!(G > 0 && G < 1.5)) {
    throw new Problem(
      "gravity-range",
      "specific gravity",
      `${G} is not a wood's.`,
      "Use above 0 and under 1.5.",
    );
  }
}

function checkMoisture(M: number): void {
  if (!(M >= 0 && M <= 300)) {
    throw new Problem(
      "moisture-range",
      "moisture content",
      `${M} % is not a wood's.`,
      "Use 0 to 300 %.",
    );
  }
}

/**
 * Specific gravity on the volume at a moisture content, from the green one and the shrinkage.
 *
 * @param basic  oven-dry mass over green volume [1]
 * @param volumeShrinkage  green to oven-dry [%]
 * @param moisture  0 to 300 [% MC]
 * @returns oven-dry mass over the volume at that moisture [1]
 * @throws Problem "gravity-range", "moisture-range"
 * @source Wood Handbook, Eq 4-11 with Eq 4-9 (second-hand)
 */
export function gravityAt(
  basic: Known<Ratio>,
  volumeShrinkage: Known<Pct>,
  moisture: Known<McPct>,
): Worked<Ratio> {
  const G = known(basic, "green specific gravity", "1");
  checkGravity(G.value);
  checkMoisture(known(moisture, "", "% MC").value);
  const S = shrinkageTo(known(volumeShrinkage, "volume shrinkage", "%"), moisture);
  return work({
    says: "specific gravity at this moisture",
    unit: "1",
    formula: "G_M = G_b / (1 − S_M/100)",
    inputs: { G_b: G, S_M: S },
    value: ratio(G.value / (1 - S.value / 100)),
    source: handbook("Eq 4-11"),
  });
}

/**
 * The same where no shrinkage is known: the handbook's middle line S_V = 26.5·G.
 *
 * @param basic  oven-dry mass over green volume [1]
 * @param moisture  0 to 300 [% MC]
 * @returns oven-dry mass over the volume at that moisture [1]
 * @throws Problem "gravity-range", "moisture-range"
 * @source Wood Handbook, Eq 4-13 (second-hand)
 */
export function typicalGravityAt(basic: Known<Ratio>, moisture: Known<McPct>): Worked<Ratio> {
  const G = known(basic, "green specific gravity", "1");
  const M = known(moisture, "moisture content", "% MC");
  checkGravity(G.value);
  checkMoisture(M.value);
  return work({
    says: "specific gravity at this moisture",
    unit: "1",
    formula: "G_M = G_b / (1 − 0.265·G_b·max(0, 1 − M/30))",
    inputs: { G_b: G, M },
    value: ratio(G.value / (1 - 0.265 * G.value * Math.max(0, 1 - M.value / 30))),
    source: handbook("Eq 4-13"),
  });
}

/**
 * Density of wood with the water in it.
 *
 * @param gravity  oven-dry mass over the volume at this moisture, 0 to 1.5 [1]
 * @param moisture  0 to 300 [% MC]
 * @returns density [kg/m³]
 * @throws Problem "gravity-range", "moisture-range"
 * @source Wood Handbook, Eq 4-14 (second-hand)
 */
export function density(gravity: Known<Ratio>, moisture: Known<McPct>): Worked<KgPerM3> {
  const G = known(gravity, "specific gravity at this moisture", "1");
  const M = known(moisture, "moisture content", "% MC");
  checkGravity(G.value);
  checkMoisture(M.value);
  return work({
    says: "density with its water",
    unit: "kg/m³",
    formula: "ρ = 1000·G_M·(1 + M/100)",
    inputs: { G_M: G, M },
    value: kgPerM3(1000 * G.value * (1 + M.value / 100)),
    source: handbook("Eq 4-14"),
  });
}

/**
 * Mass of a volume of wood.
 *
 * @param volume  0 or more [m³]
 * @param densityOfWood  with its water [kg/m³]
 * @returns mass [kg]
 */
export function mass(volume: Known<CubicM>, densityOfWood: Known<KgPerM3>): Worked<Kg> {
  const V = known(volume, "volume", "m³");
  const D = known(densityOfWood, "density with its water", "kg/m³");
  return work({
    says: "mass",
    unit: "kg",
    formula: "m = V·ρ",
    inputs: { V, ρ: D },
    value: kg(V.value * D.value),
    source: derived("arithmetic"),
  });
}

/**
 * The most water wood of a specific gravity can hold.
 *
 * @param basic  oven-dry mass over green volume, 0 to 1.5 [1]
 * @returns moisture content [% MC]
 * @throws Problem "gravity-range"
 * @source Wood Handbook, Eq 4-3 (second-hand)
 */
export function greatestMoisture(basic: Known<Ratio>): Worked<McPct> {
  const G = known(basic, "green specific gravity", "1");
  checkGravity(G.value);
  return work({
    says: "most water it can hold",
    unit: "% MC",
    formula: "M_max = 100·(1.54 − G_b) / (1.54·G_b)",
    inputs: { G_b: G },
    value: mcPct((100 * (1.54 - G.value)) / (1.54 * G.value)),
    source: handbook("Eq 4-3"),
  });
}
