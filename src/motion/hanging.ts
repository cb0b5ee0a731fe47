import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { derived, type Known, known, type Worked, work } from "../worked/index.ts";
import { inputsOf, type RuleJoint, SECTION } from "./rule-joint.ts";

const BALANCE = derived("the leaf's weight hangs under its pin");

/** A leaf's outline, as far as its middle is concerned. */
export const leafShapes = ["rectangle", "half ellipse"] as const;
export type LeafShape = (typeof leafShapes)[number];

/**
 * How far out from the fillet the leaf's weight lies.
 *
 * @param width  of the leaf [mm]
 * @returns distance [mm]
 */
export function leafCentre(width: Known<Mm>, shape: LeafShape): Worked<Mm> {
  const W = known(width, "width of the leaf", "mm");
  const isRound = shape === "half ellipse";
  return work({
    says: "middle of the leaf's weight from the fillet",
    unit: "mm",
    formula: isRound ? "x = 4·W/(3·π)" : "x = W/2",
    inputs: { W },
    value: mm(isRound ? (4 * W.value) / (3 * Math.PI) : W.value / 2),
    source: derived("middle of the area"),
  });
}

/**
 * How a leaf hangs of itself: past upright, for its weight lies above the pin when it is level.
 *
 * @param centre  from `leafCentre` [mm]
 * @returns swing at rest [°]
 * @throws Problem "rule-joint-section"
 */
export function restAngle(joint: RuleJoint, centre: Known<Mm>): Worked<Deg> {
  const { t, b, d_x, d_y } = inputsOf(joint);
  const x = known(centre, "middle of the leaf's weight from the fillet", "mm");
  const up = t.value / 2 - b.value - d_y.value;
  return work({
    says: "leaf hangs at rest",
    unit: "°",
    formula: "θ = 90 + 180/π·arctan((t/2 − b − d_y)/(x − d_x))",
    inputs: { t, b, d_x, d_y, x },
    value: deg(90 + (180 / Math.PI) * Math.atan(up / (x.value - d_x.value))),
    source: BALANCE,
  });
}

/**
 * How much further in a freely hanging leaf's edge is than a plumb one's.
 *
 * @param centre  from `leafCentre` [mm]
 * @param width  of the leaf [mm]
 * @returns drift [mm]
 * @throws Problem "rule-joint-section"
 */
export function edgeDrift(joint: RuleJoint, centre: Known<Mm>, width: Known<Mm>): Worked<Mm> {
  const { t, b, d_x, d_y } = inputsOf(joint);
  const x = known(centre, "middle of the leaf's weight from the fillet", "mm");
  const W = known(width, "width of the leaf", "mm");
  const slope = (t.value / 2 - b.value - d_y.value) / (x.value - d_x.value);
  return work({
    says: "leaf's edge further in than plumb",
    unit: "mm",
    formula: "e = (t/2 − b − d_y)/(x − d_x)·(W − d_x)",
    inputs: { t, b, d_x, d_y, x, W },
    value: mm(slope * (W.value - d_x.value)),
    source: BALANCE,
  });
}

/**
 * Room between leaf and floor when the leaf hangs down.
 *
 * @param height  of the table's top face over the floor [mm]
 * @param width  of the leaf [mm]
 * @returns clearance [mm], negative when the leaf would stand on the floor
 * @throws Problem "rule-joint-section"
 */
export function floorClearance(joint: RuleJoint, height: Known<Mm>, width: Known<Mm>): Worked<Mm> {
  const { t, b, d_x, d_y } = inputsOf(joint);
  const H = known(height, "height of the top", "mm");
  const W = known(width, "width of the leaf", "mm");
  return work({
    says: "leaf over the floor",
    unit: "mm",
    formula: "a = H − (t − b) + d_x + d_y − W",
    inputs: { H, t, b, d_x, d_y, W },
    value: mm(H.value - (t.value - b.value) + d_x.value + d_y.value - W.value),
    source: SECTION,
  });
}

/**
 * Room between the hanging leaf and what stands under the top: rail, leg or foot.
 *
 * @param overhang  from that face out to the fillet [mm]
 * @param inside  from `hangsInside` [mm]
 * @param drift  from `edgeDrift`, or 0 for a leaf held plumb [mm]
 * @returns clearance [mm], negative when the leaf leans on it
 */
export function sideClearance(
  overhang: Known<Mm>,
  inside: Known<Mm>,
  drift: Known<Mm>,
): Worked<Mm> {
  const v = known(overhang, "from what stands below out to the fillet", "mm");
  const q = known(inside, "leaf's under face inside the fillet line", "mm");
  const e = known(drift, "leaf's edge further in than plumb", "mm");
  return work({
    says: "leaf from what stands under the top",
    unit: "mm",
    formula: "a = v − q − e",
    inputs: { v, q, e },
    value: mm(v.value - q.value - e.value),
    source: SECTION,
  });
}
