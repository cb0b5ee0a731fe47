import {
  type BoardFeet,
  boardFeet,
  type Count,
  type CubicM,
  cubicM,
  inches,
  type Mm,
  mm,
  type Ratio,
  ratio,
} from "../units/index.ts";
import { derived, type Known, known, published, type Worked, work } from "../worked/index.ts";

const TALLY = published(
  "NHLA measurement of hardwood lumber",
  "as told by exporters' and importers' pages",
  "secondary",
);

/**
 * Volume of equal boards.
 *
 * @param thickness  of each, above 0 [mm]
 * @param width  of each, above 0 [mm]
 * @param length  of each, above 0 [mm]
 * @param pieces  how many [pieces]
 * @returns volume [m³]
 */
export function boardVolume(
  thickness: Known<Mm>,
  width: Known<Mm>,
  length: Known<Mm>,
  pieces: Known<Count>,
): Worked<CubicM> {
  const t = known(thickness, "thickness", "mm");
  const w = known(width, "width", "mm");
  const L = known(length, "length", "mm");
  const n = known(pieces, "how many", "pieces");
  return work({
    says: "volume as it is",
    unit: "m³",
    formula: "V = n·t·w·L / 10⁹",
    inputs: { n, t, w, L },
    value: cubicM((n.value * t.value * w.value * L.value) / 1e9),
    source: derived("arithmetic"),
  });
}

/**
 * Thickness that is paid for: rough stock under one inch counts as one inch.
 *
 * @param thickness  nominal, above 0 [mm]
 * @returns counted thickness [mm]
 * @source NHLA practice (second-hand)
 */
export function countedThickness(thickness: Known<Mm>): Worked<Mm> {
  const t = known(thickness, "nominal thickness", "mm");
  return work({
    says: "thickness that counts",
    unit: "mm",
    formula: "t_c = max(t, 25.4)",
    inputs: { t },
    value: mm(Math.max(t.value, inches(1))),
    source: TALLY,
  });
}

/**
 * Board feet of equal boards by their volume: 144 cubic inches each.
 *
 * @param thickness  counted, above 0 [mm]
 * @param width  of each, above 0 [mm]
 * @param length  of each, above 0 [mm]
 * @param pieces  how many [pieces]
 * @returns board feet [bd ft]
 */
export function boardFeetOf(
  thickness: Known<Mm>,
  width: Known<Mm>,
  length: Known<Mm>,
  pieces: Known<Count>,
): Worked<BoardFeet> {
  const t = known(thickness, "thickness", "mm");
  const w = known(width, "width", "mm");
  const L = known(length, "length", "mm");
  const n = known(pieces, "how many", "pieces");
  const cubicInches = (n.value * t.value * w.value * L.value) / 25.4 ** 3;
  return work({
    says: "board feet, by counted thickness",
    unit: "bd ft",
    formula: "BF = n·t_c·w·L / (144·25.4³)",
    inputs: { n, t_c: t, w, L },
    value: boardFeet(cubicInches / 144),
    source: derived("a board foot is 144 cubic inches"),
  });
}

/**
 * Surface measure of one board as a lumber rule reads it: width in inches times whole feet of
 * length over 12, to the nearest whole foot.
 *
 * @param width  of the board, above 0 [mm]
 * @param length  of the board; parts of a foot are dropped [mm]
 * @returns square feet of surface, whole [1]
 * @source NHLA practice (second-hand); an exact half goes up and down in turn, here up, and is noted
 */
export function surfaceMeasure(width: Known<Mm>, length: Known<Mm>): Worked<Ratio> {
  const w = known(width, "width", "mm");
  const L = known(length, "length", "mm");
  const exact = ((w.value / 25.4) * Math.floor(L.value / 304.8 + 1e-9)) / 12;
  return work({
    says: "surface measure [whole square feet]",
    unit: "1",
    formula: "SM = round((w/25.4)·floor(L/304.8 + 10⁻⁹)/12 + 10⁻⁹)",
    inputs: { w, L },
    // Six inches are a hair under six once they have been millimetres; that must not cost a foot.
    value: ratio(Math.round(exact + 1e-9)),
    source: TALLY,
    notes:
      Math.abs((exact % 1) - 0.5) < 1e-9
        ? ["an exact half: a tally takes it up and down in turn"]
        : [],
  });
}

/**
 * Board feet of equal boards as a tally counts them: surface measure times thickness.
 *
 * @param thickness  counted, above 0 [mm]
 * @param surface  surface measure of one board, whole square feet [1]
 * @param pieces  how many [pieces]
 * @returns board feet [bd ft]
 * @source NHLA practice (second-hand)
 */
export function tallyBoardFeet(
  thickness: Known<Mm>,
  surface: Known<Ratio>,
  pieces: Known<Count>,
): Worked<BoardFeet> {
  const t = known(thickness, "thickness", "mm");
  const SM = known(surface, "surface measure of one", "1");
  const n = known(pieces, "how many", "pieces");
  return work({
    says: "board feet, as a tally counts",
    unit: "bd ft",
    formula: "BF_t = n·SM·t_c/25.4",
    inputs: { n, SM, t_c: t },
    value: boardFeet((n.value * SM.value * t.value) / 25.4),
    source: TALLY,
  });
}
