import { type Mm, mm } from "../units/index.ts";
import { type Known, known, type Worked, work } from "../worked/index.ts";
import { PLAN } from "./swing-arm.ts";

/**
 * Circle that a tail's corner sweeps about its pivot, square-ended and pivoted in the middle.
 *
 * @param tail  from the pivot to the tail's end [mm]
 * @param thickness  of the rail [mm]
 * @returns radius [mm]
 */
export function sweptRadius(tail: Known<Mm>, thickness: Known<Mm>): Worked<Mm> {
  const a = known(tail, "pivot to the tail's end", "mm");
  const w = known(thickness, "thickness of the rail", "mm");
  return work({
    says: "tail sweeps a circle of radius",
    unit: "mm",
    formula: "r = √(a² + w²/4)",
    inputs: { a, w },
    value: mm(Math.hypot(a.value, w.value / 2)),
    source: PLAN,
  });
}

/**
 * Room between a screw's head inside the rail and what the tail sweeps: a quarter of a circle from
 * the rail inwards, for a square-ended arm pivoted in the middle.
 *
 * @param along  screw from the pivot along the rail, positive away from the tail [mm]
 * @param inside  screw from the pivot inwards [mm]
 * @param head  radius of the screw's head [mm]
 * @param tail  from the pivot to the tail's end [mm]
 * @param thickness  of the rail [mm]
 * @returns room [mm], negative when it is hit
 */
export function screwClearance(along: Mm, inside: Mm, head: Mm, tail: Mm, thickness: Mm): Mm {
  const swept = Math.hypot(tail, thickness / 2);
  const outside = Math.max(
    Math.hypot(along, inside) - swept,
    along - thickness / 2,
    -inside - thickness / 2,
  );
  return mm(Math.max(0, outside) - head);
}

/** How two arms in opposite rails get along, by their tails. */
export type ArmsMeeting = "free in any order" | "free, one after the other" | "tails meet";

/** A tail that swings inwards [mm]. */
type Tail = {
  /** from the pivot to the tail's end [mm] */
  readonly tail: Mm;
  /** of its rail [mm] */
  readonly thickness: Mm;
};

/**
 * Whether the tails of two arms in opposite rails meet when both are open.
 *
 * @param apart  between the pivots' lines, across the table [mm]
 * @param offset  between the pivots along the table [mm]
 */
export function armsMeeting(one: Tail, other: Tail, apart: Mm, offset: Mm): ArmsMeeting {
  const isLong = one.tail + other.tail > apart;
  if (isLong && Math.abs(offset) < (one.thickness + other.thickness) / 2) return "tails meet";
  const swept = [one, other].reduce((sum, a) => sum + Math.hypot(a.tail, a.thickness / 2), 0);
  return Math.hypot(apart, offset) >= swept ? "free in any order" : "free, one after the other";
}
