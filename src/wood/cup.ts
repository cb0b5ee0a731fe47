import { type McPct, type Mm, mm, type PerPct } from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";
import { checkMoistures } from "./movement.ts";

/** One flatsawn board, free to move, its pith on the centre line. */
export type BoardSection = {
  /** of the board, above 0 [mm] */
  readonly width: Known<Mm>;
  /** from the pith to the face asked about, above 0 [mm] */
  readonly pithDistance: Known<Mm>;
  /** coefficient [per % MC] */
  readonly radial: Known<PerPct>;
  /** coefficient [per % MC] */
  readonly tangential: Known<PerPct>;
  /** moisture content when it was flat [% MC] */
  readonly from: Known<McPct>;
  /** moisture content then [% MC] */
  readonly to: Known<McPct>;
};

const FREE_BOARD = derived(
  "geometry: the exact shape of a board that swells freely about one pith",
);

function inputsOf(board: BoardSection) {
  const W = known(board.width, "width of the board", "mm");
  const Y = known(board.pithDistance, "from the pith to this face", "mm");
  if (!(W.value > 0) || !(Y.value > 0)) {
    throw new Problem(
      "board-section",
      "width and distance from the pith",
      "Both must be above nought: a board that holds the pith checks rather than cups.",
      "Give the width, and the distance from the pith to the face.",
    );
  }
  return {
    W,
    Y,
    C_R: known(board.radial, "radial coefficient", "per % MC"),
    C_T: known(board.tangential, "tangential coefficient", "per % MC"),
    M1: known(board.from, "moisture content when flat", "% MC"),
    M2: known(board.to, "moisture content then", "% MC"),
  };
}

/**
 * Cup of one face of a board: corners against the middle. A uniform change of moisture bends a
 * board without any stress, so neither stiffness nor thickness enters but through `pithDistance`.
 *
 * @param board  the section and its moistures
 * @returns cup [mm], positive when the face away from the heart goes hollow, as it does in drying
 * @throws Problem "board-section", "moisture-range"
 */
export function boardCup(board: BoardSection): Worked<Mm> {
  const { W, Y, C_R, C_T, M1, M2 } = inputsOf(board);
  const notes = checkMoistures(M1.value, M2.value);
  return work({
    says: "cup of this face",
    unit: "mm",
    formula: "δ = (C_T − C_R)·(M₁ − M₂)·(W/2)·arctan(W / (2·Y))",
    inputs: { C_T, C_R, "M₁": M1, "M₂": M2, W, Y },
    value: mm(
      (C_T.value - C_R.value) *
        (M1.value - M2.value) *
        (W.value / 2) *
        Math.atan(W.value / (2 * Y.value)),
    ),
    source: FREE_BOARD,
    notes,
  });
}

/**
 * Change in the width of one face of the same board.
 *
 * @param board  the section and its moistures
 * @returns signed change [mm], positive when it swells
 * @throws Problem "board-section", "moisture-range"
 */
export function faceWidthChange(board: BoardSection): Worked<Mm> {
  const { W, Y, C_R, C_T, M1, M2 } = inputsOf(board);
  const notes = checkMoistures(M1.value, M2.value);
  return work({
    says: "change in width of this face",
    unit: "mm",
    formula: "ΔW = (C_R·W + 2·(C_T − C_R)·Y·arctan(W / (2·Y)))·(M₂ − M₁)",
    inputs: { C_R, C_T, W, Y, "M₁": M1, "M₂": M2 },
    value: mm(
      (C_R.value * W.value +
        2 * (C_T.value - C_R.value) * Y.value * Math.atan(W.value / (2 * Y.value))) *
        (M2.value - M1.value),
    ),
    source: FREE_BOARD,
    notes,
  });
}

/**
 * Radius of a growth ring from an arc measured on the end grain: how far away the pith was.
 *
 * @param chord  straight across the arc, above 0 [mm]
 * @param rise  of the arc over that chord, above 0 [mm]
 * @returns radius [mm]
 * @throws Problem "ring-arc"
 */
export function ringRadius(chord: Known<Mm>, rise: Known<Mm>): Worked<Mm> {
  const c = known(chord, "chord of a ring on the end grain", "mm");
  const s = known(rise, "rise of the ring over its chord", "mm");
  if (!(c.value > 0) || !(s.value > 0)) {
    throw new Problem(
      "ring-arc",
      "chord, rise",
      "Chord and rise must be above nought.",
      "Measure an arc of one ring.",
    );
  }
  return work({
    says: "distance from the pith to that ring",
    unit: "mm",
    formula: "R = c²/(8·s) + s/2",
    inputs: { c, s },
    value: mm(c.value ** 2 / (8 * s.value) + s.value / 2),
    source: derived("geometry of a circle"),
  });
}

/**
 * Distance from the pith to the heart face, from a ring that runs out at that face: its radius less
 * its rise over the chord between its two ends.
 *
 * @param chord  between the ring's ends on the heart face, above 0 [mm]
 * @param rise  of the ring over that chord, above 0 and under half the chord [mm]
 * @returns distance [mm]
 * @throws Problem "ring-arc"
 */
export function pithBelow(chord: Known<Mm>, rise: Known<Mm>): Worked<Mm> {
  const c = known(chord, "chord of a ring on the heart face", "mm");
  const s = known(rise, "rise of the ring over its chord", "mm");
  const R = ringRadius(c, s);
  if (s.value >= c.value / 2) {
    throw new Problem(
      "ring-arc",
      "chord, rise",
      "A ring that rises by half its chord or more has the pith in the board.",
      "Measure a ring that runs out at the heart face on both sides of the middle.",
    );
  }
  return work({
    says: "from the pith to the heart face",
    unit: "mm",
    formula: "p = R − s",
    inputs: { R, s },
    value: mm(R.value - s.value),
    source: derived("geometry of a circle"),
  });
}
