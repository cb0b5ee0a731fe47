import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";

/** Where an arm's formulas come from. */
export const PLAN = derived("geometry of the arm seen from above");

/**
 * An arm cut out of its rail, seen from above: it turns on a pivot, one end out under the leaf, its
 * tail in. Both ends are cut parallel, at an angle from square, the longer side of the reaching end
 * on the outer face.
 */
export type SwingArm = {
  /** from the pivot to the end that swings out [mm] */
  readonly reach: Known<Mm>;
  /** from the pivot to the end that swings in [mm] */
  readonly tail: Known<Mm>;
  /** thickness of the rail, seen from above [mm] */
  readonly thickness: Known<Mm>;
  /** pivot off the rail's middle, towards its outer face [mm] */
  readonly offset: Known<Mm>;
  /** of the ends, from square [°] */
  readonly angle: Known<Deg>;
};

/** The end that swings out under the leaf, or the tail that swings in. */
export const armEnds = ["reach", "tail"] as const;
export type ArmEnd = (typeof armEnds)[number];

/** A formula says β·π/180: the same product, in another order, may differ in its last digit. */
const RADIAN = Math.PI / 180;

/** An arm's inputs; refused where its end would be cut past its pivot. */
function inputsOf(arm: SwingArm, end: ArmEnd) {
  const a =
    end === "reach"
      ? known(arm.reach, "pivot to the end that swings out", "mm")
      : known(arm.tail, "pivot to the tail's end", "mm");
  const w = known(arm.thickness, "thickness of the rail", "mm");
  const η = known(arm.offset, "pivot off the middle, outwards", "mm");
  const β = known(arm.angle, "angle of the ends from square", "°");
  if (!(w.value > 0) || Math.abs(η.value) >= w.value / 2)
    throw new Problem(
      "arm-pivot",
      "offset, thickness",
      "The pivot lies outside the rail.",
      "Keep its offset under half the rail's thickness.",
    );
  if (β.value < 0 || β.value > 60)
    throw new Problem("arm-angle", "angle", "No arm is cut so.", "Use 0 to 60° from square.");
  const tan = Math.tan(β.value * RADIAN);
  if (a.value <= (w.value / 2 + Math.abs(η.value)) * Math.max(1, tan))
    throw new Problem(
      "arm-too-short",
      end === "reach" ? "reach" : "tail",
      "So short an end is cut away by its own angle.",
      "Make it longer than the rail is thick.",
    );
  // The corner that swings past the cut: of the reaching end the inner, of the tail the outer one.
  const isInner = end === "reach";
  return {
    inputs: { a, w, η, β },
    shorter: { says: isInner ? "w/2 + η" : "w/2 − η", y: w.value / 2 + way(isInner) * η.value },
    longer: { says: isInner ? "w/2 − η" : "w/2 + η", y: w.value / 2 - way(isInner) * η.value },
    tan,
  };
}

const way = (isInner: boolean): number => (isInner ? 1 : -1);

/**
 * How wide a cut an end needs to turn out of its rail, square to the cut.
 *
 * @returns width, 0 when the angle frees it [mm]
 * @throws Problem "arm-pivot", "arm-angle", "arm-too-short"
 */
export function kerfNeeded(arm: SwingArm, end: ArmEnd): Worked<Mm> {
  const { inputs, shorter, tan } = inputsOf(arm, end);
  const { a, w, η, β } = inputs;
  const along = a.value - shorter.y * tan;
  const tanText = "sin(β·π/180)/cos(β·π/180)";
  const δ = work<Deg>({
    says: "direction of its leading corner from the pivot",
    unit: "°",
    symbol: "δ",
    formula: `δ = 180/π·arctan((${shorter.says})/(a − (${shorter.says})·${tanText}))`,
    inputs: { a, w, η, β },
    value: deg(Math.atan(shorter.y / along) / RADIAN),
    source: PLAN,
  });
  const r = work<Mm>({
    says: "its leading corner from the pivot",
    unit: "mm",
    formula: `r = √((a − (${shorter.says})·${tanText})² + (${shorter.says})²)`,
    inputs: { a, w, η, β },
    value: mm(Math.hypot(along, shorter.y)),
    source: PLAN,
  });
  const past = Math.max(0, δ.value - β.value) * RADIAN;
  return work({
    says: end === "reach" ? "cut needed at the end that swings out" : "cut needed at the tail",
    unit: "mm",
    formula: "k = 2·r·sin(max(0, δ − β)/2·π/180)²",
    inputs: { r, δ, β },
    value: mm(2 * r.value * Math.sin(past / 2) ** 2),
    source: PLAN,
  });
}

/**
 * Least angle of the ends at which they turn without any room.
 *
 * @returns angle from square [°]
 * @throws Problem "arm-pivot", "arm-angle", "arm-too-short"
 */
export function freeAngle(arm: SwingArm, end: ArmEnd): Worked<Deg> {
  const { inputs, shorter } = inputsOf({ ...arm, angle: deg(0) }, end);
  const { a, w, η } = inputs;
  const q = (2 * shorter.y) / a.value;
  if (q >= 1)
    throw new Problem(
      "arm-too-short",
      end === "reach" ? "reach" : "tail",
      "No angle frees so short an end.",
      "Make it longer than twice the rail's thickness.",
    );
  const text = `(2·(${shorter.says})/a)`;
  return work({
    says: "ends turn without room from this angle on",
    unit: "°",
    formula: `β = 90/π·arctan(${text}/√(1 − ${text}²))`,
    inputs: { a, w, η },
    value: deg((90 / Math.PI) * Math.atan(q / Math.sqrt(1 - q * q))),
    source: PLAN,
  });
}

/**
 * How far an arm whose ends stop it turns the wrong way before they do, the cut being so wide.
 *
 * @param kerf  width of the cut, square to it [mm]
 * @returns turn [°]; undefined where this end does not stop it
 * @throws Problem "arm-pivot", "arm-angle", "arm-too-short"
 */
export function stopPlay(arm: SwingArm, end: ArmEnd, kerf: Known<Mm>): Worked<Deg> | undefined {
  const { inputs, longer } = inputsOf(arm, end);
  const { a, w, η, β } = inputs;
  const k = known(kerf, "width of the cut", "mm");
  const [sin, cos] = [Math.sin(β.value * RADIAN), Math.cos(β.value * RADIAN)];
  const x = work({
    says: "its longer corner from the pivot, along the rail",
    unit: "mm",
    formula: `x = a + (${longer.says})·sin(β·π/180)/cos(β·π/180)`,
    inputs: { a, w, η, β },
    value: mm(a.value + (longer.y * sin) / cos),
    source: PLAN,
  });
  const y = work({
    says: "the same, across the rail",
    unit: "mm",
    formula: `y = ${longer.says}`,
    inputs: { w, η },
    value: mm(longer.y),
    source: PLAN,
  });
  const n = work({
    says: "far side of the cut from the pivot, square to it",
    unit: "mm",
    formula: "n = a·cos(β·π/180) + k",
    inputs: { a, β, k },
    value: mm(a.value * cos + k.value),
    source: PLAN,
  });
  const beyond = x.value ** 2 + y.value ** 2 - n.value ** 2;
  if (beyond < 0) return undefined;
  const stands = Math.atan(y.value / x.value) - Math.atan(Math.sqrt(beyond) / n.value);
  return work({
    says: "turns past closed before its ends stop it",
    unit: "°",
    formula: "θ = β + 180/π·(arctan(y/x) − arctan(√(x² + y² − n²)/n))",
    inputs: { β, x, y, n },
    value: deg(β.value + (180 / Math.PI) * stands),
    source: PLAN,
  });
}

/**
 * How far out of line the closed arm's end may stand.
 *
 * @param reach  from the pivot to the end [mm]
 * @param play  from `stopPlay` [°]
 * @returns step at the rail's face [mm]
 */
export function outOfLine(reach: Known<Mm>, play: Known<Deg>): Worked<Mm> {
  const a = known(reach, "pivot to the end that swings out", "mm");
  const θ = known(play, "turns past closed", "°");
  return work({
    says: "closed arm out of line at its end",
    unit: "mm",
    formula: "e = a·sin(θ·π/180)",
    inputs: { a, θ },
    value: mm(a.value * Math.sin(θ.value * RADIAN)),
    source: PLAN,
  });
}

/**
 * How far the open arm reaches beyond the rail, over its whole width.
 *
 * @returns distance [mm]
 * @throws Problem "arm-pivot", "arm-angle", "arm-too-short"
 */
export function reachBeyondRail(arm: SwingArm): Worked<Mm> {
  const { inputs, shorter, longer, tan } = inputsOf(arm, "reach");
  const { a, w, η, β } = inputs;
  return work({
    says: "arm beyond the rail, over its whole width",
    unit: "mm",
    formula: "o = a − (w/2 + η)·sin(β·π/180)/cos(β·π/180) − (w/2 − η)",
    inputs: { a, w, η, β },
    value: mm(a.value - shorter.y * tan - longer.y),
    source: PLAN,
  });
}

/**
 * How far the open arm's longest corner reaches beyond the rail.
 *
 * @returns distance [mm]
 * @throws Problem "arm-pivot", "arm-angle", "arm-too-short"
 */
export function farthestReach(arm: SwingArm): Worked<Mm> {
  const { inputs, longer, tan } = inputsOf(arm, "reach");
  const { a, w, η, β } = inputs;
  return work({
    says: "arm's longest corner beyond the rail",
    unit: "mm",
    formula: "o = a + (w/2 − η)·sin(β·π/180)/cos(β·π/180) − (w/2 − η)",
    inputs: { a, w, η, β },
    value: mm(a.value + longer.y * tan - longer.y),
    source: PLAN,
  });
}

/**
 * How far the open arm's tail stands inside the rail.
 *
 * @returns distance [mm]
 * @throws Problem "arm-pivot", "arm-angle", "arm-too-short"
 */
export function tailInside(arm: SwingArm): Worked<Mm> {
  const { inputs, longer, tan } = inputsOf(arm, "tail");
  const { a, w, η, β } = inputs;
  return work({
    says: "open arm's tail inside the rail",
    unit: "mm",
    formula: "i = a + (w/2 + η)·sin(β·π/180)/cos(β·π/180) − (w/2 + η)",
    inputs: { a, w, η, β },
    value: mm(a.value + longer.y * tan - longer.y),
    source: PLAN,
  });
}
