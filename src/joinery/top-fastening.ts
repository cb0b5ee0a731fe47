import { type McPct, type Mm, mm, type PerPct } from "../units/index.ts";
import { commonPractice, derived, type Known, known, type Worked, work } from "../worked/index.ts";

/** What rounding may add to a length, which must not make one fastening more of it [mm]. */
const SLACK = 1e-6;

/**
 * How far a place on the top moves across the grain from where it was made, at most: in the driest
 * or the dampest season, whichever is farther off.
 *
 * @param fromFixed  to the line that is held fast, 0 or more [mm]
 * @param coefficient  of the top, across its width [per % MC]
 * @param driest  of the wood in its home [% MC]
 * @param dampest  of the wood in its home [% MC]
 * @param made  of the wood when the holes are bored [% MC]
 * @returns movement to one side [mm]
 */
export function seasonalMove(
  fromFixed: Known<Mm>,
  coefficient: Known<PerPct>,
  driest: Known<McPct>,
  dampest: Known<McPct>,
  made: Known<McPct>,
): Worked<Mm> {
  const d = known(fromFixed, "from the fixed line", "mm");
  const C = known(coefficient, "coefficient of change across the top", "per % MC");
  const M1 = known(driest, "moisture in the driest season", "% MC");
  const M2 = known(dampest, "moisture in the dampest season", "% MC");
  const M = known(made, "moisture when made", "% MC");
  const points = Math.max(M2.value - M.value, M.value - M1.value, 0);
  return work({
    says: "movement of the top there, at most",
    unit: "mm",
    formula: "Δ = d·C·max(M₂ − M, M − M₁, 0)",
    inputs: { d, C, M, "M₁": M1, "M₂": M2 },
    value: mm(d.value * C.value * points),
    source: derived("Wood Handbook, Eq 13-2, for the farther season"),
  });
}

/**
 * How long a slot must let a screw travel, end to end: the movement to both sides and a margin.
 *
 * @param move  movement to one side, 0 or more [mm]
 * @returns travel [mm]
 */
export function slotTravel(move: Known<Mm>): Worked<Mm> {
  const D = known(move, "movement to one side", "mm");
  return work({
    says: "travel of the screw in its slot",
    unit: "mm",
    formula: "v = 2·Δ + 1.6",
    inputs: { Δ: D },
    value: mm(2 * D.value + 1.6),
    source: commonPractice,
    notes: ["1.6 mm over what the seasons ask"],
  });
}

/**
 * Length of a button's tongue: it must still hold when the top has shrunk, and the button must not
 * strike the rail when it has swollen.
 *
 * @param move  movement to one side, 0 or more [mm]
 * @returns length of the tongue [mm]
 */
export function tongueLength(move: Known<Mm>): Worked<Mm> {
  const D = known(move, "movement to one side", "mm");
  return work({
    says: "length of a button’s tongue",
    unit: "mm",
    formula: "l = 2·Δ + 7",
    inputs: { Δ: D },
    value: mm(2 * D.value + 7),
    source: commonPractice,
    notes: ["6 mm stay in the rail when the top is narrowest, 1 mm is left when it is widest"],
  });
}

/**
 * Gap to be left between a button and the rail when the top goes on.
 *
 * @param move  movement to one side, 0 or more [mm]
 * @returns gap [mm]
 */
export function buttonGap(move: Known<Mm>): Worked<Mm> {
  const D = known(move, "movement to one side", "mm");
  return work({
    says: "gap between button and rail when made",
    unit: "mm",
    formula: "g = Δ + 1",
    inputs: { Δ: D },
    value: mm(D.value + 1),
    source: commonPractice,
  });
}

/**
 * Depth of a button's slot in the rail: what the tongue reaches when the top is widest, and a little.
 *
 * @param tongue  length of the tongue [mm]
 * @param gap  between button and rail when made [mm]
 * @param move  of the top there, to one side [mm]
 */
export function slotDepth(tongue: Known<Mm>, gap: Known<Mm>, move: Known<Mm>): Worked<Mm> {
  const l = known(tongue, "length of the tongue", "mm");
  const g = known(gap, "gap between button and rail when made", "mm");
  const D = known(move, "movement to one side", "mm");
  return work({
    says: "depth of the slot in the rail",
    unit: "mm",
    formula: "p = l − g + Δ + 1",
    inputs: { l, g, Δ: D },
    value: mm(l.value - g.value + D.value + 1),
    source: commonPractice,
  });
}

/**
 * Places along a rail for the top's fastenings: one near each end and the rest evenly between.
 *
 * @param length  of the rail between its shoulders [mm]
 * @param fromEnds  kept clear at each end [mm]
 * @param most  from one to the next, at most [mm]
 * @param hasMiddle  whether one must stand in the middle
 * @returns distances from the left shoulder; none when the rail is too short for one [mm]
 */
export function fasteningPlaces(
  length: Mm,
  fromEnds: Mm,
  most: Mm,
  hasMiddle: boolean,
): readonly Mm[] {
  const run = length - 2 * fromEnds;
  if (run < -SLACK) return [];
  if (run < 120 - SLACK) return [mm(length / 2)];
  const gaps = hasMiddle
    ? 2 * Math.ceil((run - SLACK) / 2 / most)
    : Math.ceil((run - SLACK) / most);
  return Array.from({ length: gaps + 1 }, (_, i) => mm(fromEnds + (run * i) / gaps));
}
