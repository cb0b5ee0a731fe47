import { type Mm, mm } from "../units/index.ts";
import { commonPractice, given, type Known, known, type Worked, work } from "../worked/index.ts";
import { layout } from "./sources.ts";

/** What rounding may add or take; of two chisels equally near the narrower stands [mm]. */
const SLACK = 1e-6;

/**
 * Width of the mortise: the shop's chisel nearest to two fifths of the rail, between the third of
 * equal members and the half that a thicker leg allows.
 *
 * @param railThickness  above 0 [mm]
 * @param chisels  widths the shop can cut, one at least [mm]
 * @returns width of the mortise [mm]
 */
export function mortiseWidth(railThickness: Known<Mm>, chisels: readonly Mm[]): Worked<Mm> {
  const t = known(railThickness, "thickness of the rail", "mm");
  const off = (size: Mm) => Math.abs(size - 0.4 * t.value);
  const fitting = chisels.filter((c) => c <= t.value / 2 + SLACK);
  const pool = fitting.length > 0 ? fitting : chisels;
  const nearest = pool.reduce((best, c) => (off(c) < off(best) - SLACK ? c : best));
  return work({
    says: "width of the mortise, by the shop’s chisels",
    unit: "mm",
    formula: "w = c",
    inputs: {
      c: given("the shop’s chisel nearest to 2/5 of the rail, at most its half", nearest, "mm"),
    },
    value: nearest,
    source: commonPractice,
    notes: ["a third to a half of the rail’s thickness"],
  });
}

/**
 * Thickness of the tenon for a mortise.
 *
 * @param mortise  width of the mortise [mm]
 * @param clearance  all told; the glue’s room [mm]
 * @returns thickness [mm]
 */
export function tenonThickness(mortise: Known<Mm>, clearance: Known<Mm>): Worked<Mm> {
  const w = known(mortise, "width of the mortise", "mm");
  const c = known(clearance, "clearance at the cheeks, both together", "mm");
  return work({
    says: "thickness of the tenon",
    unit: "mm",
    formula: "t = w − c",
    inputs: { w, c },
    value: mm(w.value - c.value),
    source: layout,
  });
}

/**
 * From the leg's outer face to the outer cheek of the mortise, the tenon in the middle of the rail.
 *
 * @param setback  of the rail's face behind the leg's [mm]
 * @param railThickness  above 0 [mm]
 * @param mortise  width of the mortise [mm]
 * @returns the outer wall [mm]
 */
export function outerWall(
  setback: Known<Mm>,
  railThickness: Known<Mm>,
  mortise: Known<Mm>,
): Worked<Mm> {
  const b = known(setback, "rail set back behind the leg’s face", "mm");
  const t = known(railThickness, "thickness of the rail", "mm");
  const w = known(mortise, "width of the mortise", "mm");
  return work({
    says: "wood outside the mortise",
    unit: "mm",
    formula: "o = b + (t − w)/2",
    inputs: { b, t, w },
    value: mm(b.value + (t.value - w.value) / 2),
    source: layout,
  });
}

/**
 * Longest tenon whose square-ended mortise stays clear of the one from the other side.
 *
 * @param leg  thickness of the leg along the tenon [mm]
 * @param otherWall  from the leg's outer face to the other mortise [mm]
 * @param otherMortise  width of the other mortise [mm]
 * @param between  wood to be left between the two [mm]
 * @param over  mortise deeper than the tenon is long [mm]
 * @returns length [mm]
 */
export function buttedTenon(
  leg: Known<Mm>,
  otherWall: Known<Mm>,
  otherMortise: Known<Mm>,
  between: Known<Mm>,
  over: Known<Mm>,
): Worked<Mm> {
  const s = known(leg, "thickness of the leg", "mm");
  const o = known(otherWall, "wood outside the other mortise", "mm");
  const w = known(otherMortise, "width of the other mortise", "mm");
  const e = known(between, "wood left between the mortises", "mm");
  const d = known(over, "mortise deeper than the tenon", "mm");
  return work({
    says: "length of the tenon, stopping short of the other mortise",
    unit: "mm",
    formula: "m = s − o − w − e − d",
    inputs: { s, o, w, e, d },
    value: mm(s.value - o.value - w.value - e.value - d.value),
    source: layout,
  });
}

/**
 * Longest tenon, along its outer cheek, whose mitred tip meets the other's.
 *
 * @param leg  thickness of the leg along the tenon [mm]
 * @param otherWall  from the leg's outer face to the other mortise [mm]
 * @param gap  between the two tips, square to the mitre [mm]
 * @param play  between the outer cheeks of tenon and mortise, by which the mitre lies farther in [mm]
 * @returns length of the outer cheek [mm]
 */
export function mitredTenon(
  leg: Known<Mm>,
  otherWall: Known<Mm>,
  gap: Known<Mm>,
  play: Known<Mm>,
): Worked<Mm> {
  const s = known(leg, "thickness of the leg", "mm");
  const o = known(otherWall, "wood outside the other mortise", "mm");
  const q = known(gap, "gap between the mitred tips", "mm");
  const e = known(play, "clearance at the outer cheek", "mm");
  return work({
    says: "length of the tenon’s outer cheek, mitred to meet the other",
    unit: "mm",
    formula: "m = s − o − q/√2 − e",
    inputs: { s, o, q, e },
    value: mm(s.value - o.value - q.value / Math.SQRT2 - e.value),
    source: layout,
  });
}

/**
 * How far below the leg's top the tenon starts: a quarter of the rail, within what keeps the top of
 * the leg from splitting out.
 *
 * @param railWidth  above 0 [mm]
 * @returns upper shoulder, or width of the haunch [mm]
 */
export function upperShoulder(railWidth: Known<Mm>): Worked<Mm> {
  const R = known(railWidth, "width of the rail", "mm");
  return work({
    says: "from the rail’s upper edge down to the tenon",
    unit: "mm",
    formula: "h = max(12, min(25, R/4))",
    inputs: { R },
    value: mm(Math.max(12, Math.min(25, R.value / 4))),
    source: commonPractice,
  });
}

/**
 * How far a haunch reaches into the leg: enough to keep the rail from twisting.
 *
 * @param tenon  length of the tenon [mm]
 * @returns length of the haunch [mm]
 */
export function haunchLength(tenon: Known<Mm>): Worked<Mm> {
  const m = known(tenon, "length of the tenon", "mm");
  return work({
    says: "length of the haunch",
    unit: "mm",
    formula: "k = min(10, m/3)",
    inputs: { m },
    value: mm(Math.min(10, m.value / 3)),
    source: commonPractice,
  });
}

/**
 * From one shoulder of a rail to the other.
 *
 * @param over  outside the legs [mm]
 * @param one  leg [mm]
 * @param other  leg [mm]
 * @returns what the legs leave between them [mm]
 */
export function betweenLegs(over: Known<Mm>, one: Known<Mm>, other: Known<Mm>): Worked<Mm> {
  const a = known(over, "over the legs", "mm");
  const s = known(one, "one leg", "mm");
  const s2 = known(other, "the other leg", "mm");
  return work({
    says: "between the legs",
    unit: "mm",
    formula: "b = a − s − s′",
    inputs: { a, s, "s′": s2 },
    value: mm(a.value - s.value - s2.value),
    source: layout,
  });
}
