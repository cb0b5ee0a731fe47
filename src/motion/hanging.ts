import type { LeafJoint } from "../piece/index.ts";
import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { derived, given, type Known, known, type Worked, work } from "../worked/index.ts";
import { cornersOf } from "./corners.ts";
import { nearestAt } from "./facing.ts";
import { inputsOf, type RuleJoint, SECTION, sizesOf } from "./rule-joint.ts";
import { sectionOf } from "./section-of.ts";

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

/** Members that touch by less than this do not stop a leaf [mm]. */
const TOUCH = 1e-6;

/** Where past upright the lip meets the fixed top, if it does before the leaf hangs freely. */
function stoppedAt(joint: RuleJoint, free: number): number | undefined {
  const s = sizesOf(joint);
  const corners = cornersOf(s);
  const binds = (at: number) => nearestAt(s, corners, (at * Math.PI) / 180).gap < -TOUCH;
  if (free <= 90 || binds(90) || !binds(free)) return undefined;
  let [good, bad] = [90, free];
  for (let i = 0; i < 40; i++) {
    const half = (good + bad) / 2;
    if (binds(half)) bad = half;
    else good = half;
  }
  return good;
}

/**
 * Where a leaf comes to rest: hanging freely past upright, or before that with its lip against the
 * fixed top.
 *
 * @returns swing at rest [°]
 */
export function hangsAt(leaf: LeafJoint): Worked<Deg> {
  const t = known(leaf.thickness, "thickness", "mm");
  const h = known(leaf.pinHeight, "pin over the underside", "mm");
  const g = known(leaf.setOut, "leaf set out at the edge", "mm");
  const W = known(leaf.leafWidth, "width of the leaf", "mm");
  const d_x = known(leaf.pinOut, "pin out from the visible edge", "mm");
  const out = g.value + W.value / 2 - d_x.value;
  const free = work({
    says: "leaf hangs freely at",
    unit: "°",
    symbol: "θ_f",
    formula: "θ_f = 90 + 180/π·arctan((t/2 − h)/(g + W/2 − d_x))",
    inputs: { t, h, g, W, d_x },
    value: deg(90 + (180 / Math.PI) * Math.atan((t.value / 2 - h.value) / out)),
    source: BALANCE,
  });
  const joint = sectionOf(leaf);
  const stop = joint && stoppedAt(joint, free.value);
  if (stop === undefined) return free;
  const θ_s = given(
    "lip meets the fixed top at",
    deg(stop),
    "°",
    derived("found by swinging the section"),
  );
  return work({
    says: "leaf comes to rest at",
    unit: "°",
    formula: "θ = min(θ_f, θ_s)",
    inputs: { θ_f: free, θ_s },
    value: deg(Math.min(free.value, stop)),
    source: BALANCE,
  });
}
