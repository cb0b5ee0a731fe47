import { type Mm, mm, type SquareMm, squareMm } from "../units/index.ts";
import {
  type Caution,
  commonPractice,
  derived,
  type Known,
  known,
  Problem,
  type Worked,
  work,
} from "../worked/index.ts";

const GEOMETRY = derived("geometry of the octagon");

/** A square blank and the diagonal flats it is to be brought to. */
export type OctagonBlank = {
  /** side of the square [mm] */
  readonly square: Known<Mm>;
  /** distance to be left across the diagonal flats, at most the square [mm] */
  readonly acrossFlats: Known<Mm>;
};

function inputsOf(blank: OctagonBlank) {
  const s = known(blank.square, "side of the square", "mm");
  const A = known(blank.acrossFlats, "left across the diagonal flats", "mm");
  if (
    !(s.value > 0) ||
    !(A.value > 0) ||
    A.value > s.value + 1e-9 ||
    A.value < s.value / Math.SQRT2
  ) {
    throw new Problem(
      "octagon-blank",
      "square, diameter",
      `A ${s.value.toFixed(1)} mm square cannot leave ${A.value.toFixed(1)} mm across its diagonal flats.`,
      `Leave from ${(s.value / Math.SQRT2).toFixed(1)} to ${s.value.toFixed(1)} mm, or take a larger square.`,
    );
  }
  return { s, A };
}

/**
 * What to leave across the diagonal flats so that a turned diameter still comes out.
 *
 * @param diameter  largest turned diameter, above 0 [mm]
 * @param allowance  on the diameter for roughing, 0 or more [mm]
 * @param centreError  how far the centres may be off, 0 or more [mm]
 * @returns distance across the diagonal flats [mm]
 */
export function flatsForTurning(
  diameter: Known<Mm>,
  allowance: Known<Mm>,
  centreError: Known<Mm>,
): Worked<Mm> {
  const D = known(diameter, "largest turned diameter", "mm");
  const q = known(allowance, "allowance on the diameter", "mm");
  const e = known(centreError, "centring error", "mm");
  return work({
    says: "leave across the diagonal flats",
    unit: "mm",
    formula: "A = D + max(q, 2·e)",
    inputs: { D, q, e },
    value: mm(D.value + Math.max(q.value, 2 * e.value)),
    source: GEOMETRY,
  });
}

/**
 * Set-out on each face of the square, from its corner, where the saw line meets the face.
 *
 * @param blank  square and distance across the flats
 * @returns distance from the corner [mm]
 * @throws Problem "octagon-blank"
 */
export function octagonSetOut(blank: OctagonBlank): Worked<Mm> {
  const { s, A } = inputsOf(blank);
  return work({
    says: "mark from each corner, along the face",
    unit: "mm",
    formula: "x = s − A/√2",
    inputs: { s, A },
    value: mm(s.value - A.value / Math.SQRT2),
    source: GEOMETRY,
  });
}

/**
 * Depth taken off each corner, square to the new flat.
 *
 * @param blank  square and distance across the flats
 * @returns depth [mm]
 * @throws Problem "octagon-blank"
 */
export function cornerDepth(blank: OctagonBlank): Worked<Mm> {
  const { s, A } = inputsOf(blank);
  return work({
    says: "depth off each corner",
    unit: "mm",
    formula: "d = (s·√2 − A)/2",
    inputs: { s, A },
    value: mm((s.value * Math.SQRT2 - A.value) / 2),
    source: GEOMETRY,
  });
}

/**
 * Width of the flat that the cut leaves.
 *
 * @param depth  off the corner, from `cornerDepth` [mm]
 * @returns width of the diagonal flat [mm]
 */
export function flatWidth(depth: Known<Mm>): Worked<Mm> {
  const d = known(depth, "depth off each corner", "mm");
  return work({
    says: "width of the new flat",
    unit: "mm",
    formula: "f = 2·d",
    inputs: { d },
    value: mm(2 * d.value),
    source: GEOMETRY,
  });
}

/**
 * Widest the blank still swings on the lathe once its corners are off.
 *
 * @param square  side of the square [mm]
 * @param setOut  from `octagonSetOut` [mm]
 * @returns swing diameter [mm]
 */
export function swingAfter(square: Known<Mm>, setOut: Known<Mm>): Worked<Mm> {
  const s = known(square, "side of the square", "mm");
  const x = known(setOut, "mark from the corner", "mm");
  return work({
    says: "swing across the new corners",
    unit: "mm",
    formula: "S = 2·√((s/2)² + (s/2 − x)²)",
    inputs: { s, x },
    value: mm(2 * Math.hypot(s.value / 2, s.value / 2 - x.value)),
    source: GEOMETRY,
  });
}

/**
 * Swing of a square blank: its diagonal.
 *
 * @param square  side of the square [mm]
 * @returns swing diameter [mm]
 */
export function swingOfSquare(square: Known<Mm>): Worked<Mm> {
  const s = known(square, "side of the square", "mm");
  return work({
    says: "swing of the square",
    unit: "mm",
    formula: "S = s·√2",
    inputs: { s },
    value: mm(s.value * Math.SQRT2),
    source: GEOMETRY,
  });
}

/**
 * Area of the section that is left.
 *
 * @param square  side of the square [mm]
 * @param setOut  from `octagonSetOut` [mm]
 * @returns area [mm²]
 */
export function octagonArea(square: Known<Mm>, setOut: Known<Mm>): Worked<SquareMm> {
  const s = known(square, "side of the square", "mm");
  const x = known(setOut, "mark from the corner", "mm");
  return work({
    says: "section left",
    unit: "mm²",
    formula: "Q = s² − 2·x²",
    inputs: { s, x },
    value: squareMm(s.value ** 2 - 2 * x.value ** 2),
    source: GEOMETRY,
  });
}

/**
 * Fence to blade at the table, the part that is kept between them, blade at 45°.
 *
 * @param square  side of the square [mm]
 * @param setOut  from `octagonSetOut` [mm]
 * @returns distance [mm]
 */
export function fenceToBlade(square: Known<Mm>, setOut: Known<Mm>): Worked<Mm> {
  const s = known(square, "side of the square", "mm");
  const x = known(setOut, "mark from the corner", "mm");
  return work({
    says: "fence to a blade at 45°, at the table",
    unit: "mm",
    formula: "F = s − x",
    inputs: { s, x },
    value: mm(s.value - x.value),
    source: GEOMETRY,
  });
}

export const octagonCautions: readonly Caution[] = [
  {
    says: "Cut the corners on the band saw with the blank held in a V cradle, or plane them by hand. A stopped corner cut on a table saw is no method of first choice.",
    source: commonPractice,
  },
  {
    says: "Cover the blade but for the working part, and do not force the cut. The machine's manual comes first.",
    source: commonPractice,
  },
];
