import {
  type Deg,
  deg,
  type McPct,
  type Mm,
  mm,
  type Pct,
  type PerPct,
  pct,
  perPct,
} from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";
import { handbook } from "./sources.ts";

/** Green wood stops shrinking below about this moisture content (Wood Handbook, ch. 4). */
const FIBRE_SATURATION = 30;

/**
 * Notes on moistures in a movement; those in which wood does not move are refused.
 *
 * @param values  moisture contents, each 0 to 30 [% MC]
 * @throws Problem "moisture-range"
 */
export function checkMoistures(...values: readonly number[]): readonly string[] {
  for (const value of values) {
    if (value < 0 || value > FIBRE_SATURATION) {
      throw new Problem(
        "moisture-range",
        "moisture content",
        `${value} % is outside the range in which wood moves.`,
        "Use 0 to 30 %.",
      );
    }
  }
  return values.some((v) => v < 6 || v > 14)
    ? ["the coefficient is proved from 6 to 14 % MC; beyond that the straight line is an estimate"]
    : [];
}

/**
 * Change in a dimension across the grain between two moisture contents, by coefficient.
 *
 * @param dimension  size at `from`, 0 or more [mm]
 * @param coefficient  fractional change per point for that direction [per % MC]
 * @param from  moisture content now, 0 to 30 [% MC]
 * @param to  moisture content then, 0 to 30 [% MC]
 * @returns signed change [mm], positive when it swells
 * @throws Problem "moisture-range"
 * @source Wood Handbook, Eq 13-2 (second-hand); straight line good from 6 to 14 % MC
 */
export function widthChange(
  dimension: Known<Mm>,
  coefficient: Known<PerPct>,
  from: Known<McPct>,
  to: Known<McPct>,
): Worked<Mm> {
  const D = known(dimension, "size now", "mm");
  const C = known(coefficient, "coefficient of change", "per % MC");
  const M1 = known(from, "moisture content now", "% MC");
  const M2 = known(to, "moisture content then", "% MC");
  return work({
    says: "change in size across the grain",
    unit: "mm",
    formula: "ΔD = D·C·(M₂ − M₁)",
    inputs: { D, C, "M₁": M1, "M₂": M2 },
    value: mm(D.value * C.value * (M2.value - M1.value)),
    source: handbook("Eq 13-2"),
    notes: checkMoistures(M1.value, M2.value),
  });
}

/**
 * The same change by total shrinkage, good over the whole range below fibre saturation.
 *
 * @param dimension  size at `from`, 0 or more [mm]
 * @param shrinkage  green to oven-dry, above 0 and under 50 [%]
 * @param from  moisture content now, 0 to 30 [% MC]
 * @param to  moisture content then, 0 to 30 [% MC]
 * @returns signed change [mm], positive when it swells
 * @throws Problem "moisture-range", "shrinkage-range"
 * @source Wood Handbook, Eq 13-3; its wording read second-hand, its form from memory, agreeing with Eq 13-2
 */
export function widthChangeByShrinkage(
  dimension: Known<Mm>,
  shrinkage: Known<Pct>,
  from: Known<McPct>,
  to: Known<McPct>,
): Worked<Mm> {
  const D = known(dimension, "size now", "mm");
  const S = known(shrinkage, "shrinkage, green to oven-dry", "%");
  const M1 = known(from, "moisture content now", "% MC");
  const M2 = known(to, "moisture content then", "% MC");
  checkMoistures(M1.value, M2.value);
  checkShrinkage(S.value);
  return work({
    says: "change in size across the grain",
    unit: "mm",
    formula: "ΔD = D·(M₂ − M₁) / (30·100/S − 30 + M₁)",
    inputs: { D, S, "M₁": M1, "M₂": M2 },
    value: mm((D.value * (M2.value - M1.value)) / ((30 * 100) / S.value - 30 + M1.value)),
    source: handbook("Eq 13-3", "memory"),
  });
}

function checkShrinkage(s: number): void {
  if (!(s > 0 && s < 50)) {
    throw new Problem(
      "shrinkage-range",
      "shrinkage",
      `${s} % is not a shrinkage of wood.`,
      "Use above 0 and under 50 %.",
    );
  }
}

/**
 * Coefficient of change that belongs to a total shrinkage: Eq 13-3 for one point, at 10 % MC.
 *
 * @param shrinkage  green to oven-dry, above 0 and under 50 [%]
 * @returns fractional change per point [per % MC]
 * @throws Problem "shrinkage-range"
 * @source Wood Handbook, Tables 4-3 and 13-5 linked (second-hand)
 */
export function coefficientFromShrinkage(shrinkage: Known<Pct>): Worked<PerPct> {
  const S = known(shrinkage, "shrinkage, green to oven-dry", "%");
  checkShrinkage(S.value);
  return work({
    says: "coefficient of change",
    unit: "per % MC",
    formula: "C = S / (3000 − 20·S)",
    inputs: { S },
    value: perPct(S.value / (3000 - 20 * S.value)),
    source: handbook("Tables 4-3 and 13-5, linked"),
  });
}

/**
 * Shrinkage from green to a moisture content below fibre saturation.
 *
 * @param shrinkage  green to oven-dry [%]
 * @param moisture  0 or more; none is left from 30 on [% MC]
 * @returns shrinkage from green [%]
 * @source Wood Handbook, Eq 4-9 (second-hand)
 */
export function shrinkageTo(shrinkage: Known<Pct>, moisture: Known<McPct>): Worked<Pct> {
  const S = known(shrinkage, "shrinkage, green to oven-dry", "%");
  const M = known(moisture, "moisture content", "% MC");
  return work({
    says: "shrinkage from green",
    unit: "%",
    formula: "S_M = S·max(0, 1 − M/30)",
    inputs: { S, M },
    value: pct(S.value * Math.max(0, 1 - M.value / FIBRE_SATURATION)),
    source: handbook("Eq 4-9"),
  });
}

/**
 * Coefficient across the width of a board whose rings stand at an angle to its face.
 *
 * @param radial  coefficient [per % MC]
 * @param tangential  coefficient [per % MC]
 * @param ringAngle  between the width and the rings' tangent: 0 flatsawn, 90 quartersawn [°]
 * @returns fractional change per point [per % MC]
 */
export function coefficientAt(
  radial: Known<PerPct>,
  tangential: Known<PerPct>,
  ringAngle: Known<Deg>,
): Worked<PerPct> {
  const R = known(radial, "radial coefficient", "per % MC");
  const T = known(tangential, "tangential coefficient", "per % MC");
  const A = known(ringAngle, "angle of the rings to the face", "°");
  const a = (A.value * Math.PI) / 180;
  return work({
    says: "coefficient across this board",
    unit: "per % MC",
    formula: "C = C_T·cos²(θ·π/180) + C_R·sin²(θ·π/180)",
    inputs: { C_T: T, C_R: R, θ: A },
    value: perPct(T.value * Math.cos(a) ** 2 + R.value * Math.sin(a) ** 2),
    source: derived("geometry of small strains"),
  });
}

/**
 * How far a square section goes out of square when its rings run askew.
 *
 * @param radial  coefficient [per % MC]
 * @param tangential  coefficient [per % MC]
 * @param ringAngle  rings against one side, 0 to 90 [°]
 * @param from  moisture content when squared, 0 to 30 [% MC]
 * @param to  moisture content then, 0 to 30 [% MC]
 * @returns change of the corner's angle, negative when it dries [°]
 * @throws Problem "moisture-range"
 */
export function outOfSquare(
  radial: Known<PerPct>,
  tangential: Known<PerPct>,
  ringAngle: Known<Deg>,
  from: Known<McPct>,
  to: Known<McPct>,
): Worked<Deg> {
  const R = known(radial, "radial coefficient", "per % MC");
  const T = known(tangential, "tangential coefficient", "per % MC");
  const A = known(ringAngle, "angle of the rings to the side", "°");
  const M1 = known(from, "moisture content now", "% MC");
  const M2 = known(to, "moisture content then", "% MC");
  const radians =
    (T.value - R.value) * (M2.value - M1.value) * Math.sin((2 * A.value * Math.PI) / 180);
  return work({
    says: "out of square",
    unit: "°",
    formula: "γ = 180/π·(C_T − C_R)·(M₂ − M₁)·sin(2·θ·π/180)",
    inputs: { C_T: T, C_R: R, θ: A, "M₁": M1, "M₂": M2 },
    value: deg((radians * 180) / Math.PI),
    source: derived("geometry of small strains"),
    notes: checkMoistures(M1.value, M2.value),
  });
}
