import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { type Known, known, type Worked, work } from "../worked/index.ts";
import { inputsOf, type RuleJoint, SECTION } from "./rule-joint.ts";

/**
 * Gap seen from above between leaf and round-over when the leaf hangs down.
 *
 * @returns gap [mm]
 * @throws Problem "rule-joint-section"
 */
export function gapFromAbove(joint: RuleJoint): Worked<Mm> {
  const { R, c, κ, d_x, d_y, τ } = inputsOf(joint);
  const says = "gap seen from above, leaf down";
  if (τ.value === 0)
    return work({
      says,
      unit: "mm",
      formula: "G = κ + d_x − d_y",
      inputs: { κ, d_x, d_y },
      value: mm(κ.value + d_x.value - d_y.value),
      source: SECTION,
    });
  const Rc = R.value + c.value;
  return work({
    says,
    unit: "mm",
    formula: "G = κ − c + √((R + c)² − τ²) − R + d_x − d_y",
    inputs: { κ, c, R, τ, d_x, d_y },
    value: mm(
      κ.value - c.value + Math.sqrt(Rc ** 2 - τ.value ** 2) - R.value + d_x.value - d_y.value,
    ),
    source: SECTION,
  });
}

/**
 * How far the lip's end stands above the foot of the round-over when the leaf hangs down; under −b
 * one sees through to the hinge.
 *
 * @returns overlap [mm], negative when the lip's end has passed the foot
 * @throws Problem "rule-joint-section"
 */
export function lipOverlap(joint: RuleJoint): Worked<Mm> {
  const { g, d_x, d_y, τ } = inputsOf(joint);
  const isTrimmed = τ.value !== 0;
  return work({
    says: "lip's end over the foot of the round-over, leaf down",
    unit: "mm",
    formula: isTrimmed ? "o = d_x + d_y − g − τ" : "o = d_x + d_y − g",
    inputs: isTrimmed ? { d_x, d_y, g, τ } : { d_x, d_y, g },
    value: mm(d_x.value + d_y.value - g.value - τ.value),
    source: SECTION,
  });
}

/**
 * How far the lip's upper corner rises above the face as the leaf starts down.
 *
 * @returns rise, 0 unless the pin stands further out than the lip's end [mm]
 * @throws Problem "rule-joint-section"
 */
export function lipRise(joint: RuleJoint): Worked<Mm> {
  const { g, d_x, d_y, t, b, τ } = inputsOf(joint);
  const p = Math.max(0, d_x.value - g.value - τ.value);
  const q = work({
    says: "face over the pin",
    unit: "mm",
    formula: "q = t − b − d_y",
    inputs: { t, b, d_y },
    value: mm(t.value - b.value - d_y.value),
    source: SECTION,
  });
  // The root less q, written so that nearly equal figures are not taken from each other.
  return work({
    says: "lip rises above the face on its way",
    unit: "mm",
    formula: "h = max(0, d_x − g − τ)²/(√(max(0, d_x − g − τ)² + q²) + q)",
    inputs: { d_x, g, τ, q },
    value: mm(p ** 2 / (Math.sqrt(p ** 2 + q.value ** 2) + q.value)),
    source: SECTION,
  });
}

/**
 * Where the leaf's under face hangs when it is down: this far out from the fillet's wall.
 *
 * @returns distance, negative when it hangs further in [mm]
 * @throws Problem "rule-joint-section"
 */
export function hangsInside(joint: RuleJoint): Worked<Mm> {
  const { b, d_x, d_y } = inputsOf(joint);
  return work({
    says: "leaf's under face inside the fillet line, leaf down",
    unit: "mm",
    formula: "q = b − d_x + d_y",
    inputs: { b, d_x, d_y },
    value: mm(b.value - d_x.value + d_y.value),
    source: SECTION,
  });
}

/**
 * Room between the leaf's lower corner and the top's underside when the leaf is down.
 *
 * @returns margin [mm], negative when they meet before
 * @throws Problem "rule-joint-section"
 */
export function undersideMargin(joint: RuleJoint): Worked<Mm> {
  const { R, c, g, b, d_x, d_y } = inputsOf(joint);
  return work({
    says: "leaf's lower corner under the top, leaf down",
    unit: "mm",
    formula: "m = R + c + g − b − d_x − d_y",
    inputs: { R, c, g, b, d_x, d_y },
    value: mm(R.value + c.value + g.value - b.value - d_x.value - d_y.value),
    source: SECTION,
  });
}

/**
 * Swing at which the leaf's lower corner meets the underside of the top.
 *
 * @returns leaf down by this [°]
 * @throws Problem "rule-joint-section"
 */
export function undersideLimit(joint: RuleJoint): Worked<Deg> | undefined {
  const { R, c, g, b, d_x, d_y } = inputsOf(joint);
  const under = b.value + d_y.value;
  if (!(under > 0)) return undefined;
  const out = R.value + c.value + g.value - d_x.value;
  return work({
    says: "leaf's lower corner meets the underside",
    unit: "°",
    formula: "θ = 360/π·arctan((R + c + g − d_x)/(b + d_y))",
    inputs: { R, c, g, d_x, b, d_y },
    value: deg((360 / Math.PI) * Math.atan(out / under)),
    source: SECTION,
  });
}

/**
 * How far past upright the leaf swings before its lip meets the fixed top's square edge, pin at the
 * common centre.
 *
 * @param radius  of the round-over [mm]
 * @param cove  radius of the cove, no smaller [mm]
 * @returns further swing, 0 where the cove is no larger [°]
 */
export function swingPastUpright(radius: Known<Mm>, cove: Known<Mm>): Worked<Deg> {
  const R = known(radius, "radius of the round-over", "mm");
  const R_c = known(cove, "radius of the cove", "mm");
  const more = Math.max(0, R_c.value ** 2 - R.value ** 2);
  return work({
    says: "swings past upright before the lip stops it",
    unit: "°",
    formula: "θ = 180/π·arctan(√(max(0, R_c² − R²))/R)",
    inputs: { R, R_c },
    value: deg((180 / Math.PI) * Math.atan(Math.sqrt(more) / R.value)),
    source: SECTION,
  });
}
