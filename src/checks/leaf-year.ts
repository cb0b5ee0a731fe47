import { seasonalClosing, swingsUpTo } from "../motion/index.ts";
import type { Piece, Sawn } from "../piece/index.ts";
import { type Deg, deg, type Mm, mm, type PerPct, printQuantity } from "../units/index.ts";
import { coefficientAt } from "../wood/index.ts";
import {
  assumed,
  derived,
  type Finding,
  given,
  known,
  type Worked,
  work,
} from "../worked/index.ts";
import { type Alike, waits } from "./leaf-alike.ts";
import { fullFrom, plateScrews, woodedHoles } from "./leaf-plates.ts";
import { told } from "./told.ts";

/** A long plate whose first screw stands further past the cove lets needless wood work the joint [mm]. */
const FAR_SCREW = 12;
const DRY = "% MC";

/** Whether a leaf still swings in the damp season, and how far its joint opens in the dry one. */
export function leafYear(alike: Alike, piece: Piece): readonly Finding[] {
  const { leaf, section, first, bind, id, lights, show } = alike;
  const group = "Seasons";
  if (first || bind)
    return [waits(alike, "year", group, "It binds as made: the year is not judged.")];
  const { made, dampest, driest } = piece.seasons;
  const screws = plateScrews(leaf);
  const C = coefficientOf(alike, piece);
  const closing = seasonalClosing(screws, C, made, dampest);
  const opening = seasonalClosing(screws, C, made, driest);
  const upTo = section && swingsUpTo(section, screws, C, made);
  const margin = upTo ? overDampest(upTo, dampest) : gapLeft(alike, closing);
  const isTight = margin.value < 0;
  const moisture = (value: number) => printQuantity(value, DRY, piece.units);
  const limit = upTo
    ? `It swings free up to ${moisture(upTo.value)}`
    : "Its gap closes before the dampest season";
  const fitted = `Fitted at ${moisture(made.value)}`;
  const opens =
    opening.value < -0.05
      ? ` In the dry season the joint stands ${show(-opening.value)} further open.`
      : "";
  const range = Math.max(0.1, dampest.value - made.value);
  return [
    told({
      ...{ id: id("year"), group, margin, lights },
      verdict: isTight ? "watch" : "ok",
      severity: isTight ? 1 - margin.value / (upTo ? range : Math.max(0.1, closing.value)) : 0,
      says: isTight
        ? `${fitted}, the leaf rubs in the damp season. ${limit}; the home goes to ${moisture(dampest.value)}. Fit it in the damp season, take quartersawn edges, or set it out a little more.${nearer(alike)}${opens}`
        : `${fitted}, the leaf swings through the damp season, which goes to ${moisture(dampest.value)}.${opens}`,
      why: [margin, closing, opening],
    }),
  ];
}

/** Rings to the face, by how the wood is sawn. */
const ringAngles: Readonly<Record<Sawn, Deg>> = { flat: deg(0), rift: deg(45), quarter: deg(90) };

const coefficientOf = ({ part }: Alike, { species }: Piece): Worked<PerPct> =>
  coefficientAt(
    species.radial,
    species.tangential,
    given(
      "angle of the rings to the face",
      ringAngles[part.sawn],
      "°",
      assumed(`${part.sawn}sawn strips`),
    ),
  );

const overDampest = (upTo: Worked, dampest: Worked): Worked =>
  work({
    says: "moisture that the joint bears, over the year’s dampest",
    unit: DRY,
    formula: "a = M − M_d",
    inputs: { M: upTo, M_d: dampest },
    value: upTo.value - dampest.value,
    source: derived("arithmetic"),
  });

/** Between square edges the leaf only has to come up level. */
function gapLeft({ leaf }: Alike, closing: Worked<Mm>): Worked<Mm> {
  const g = known(leaf.setOut, "leaf set out at the edge", "mm");
  return work({
    says: "gap left in the damp season",
    unit: "mm",
    formula: "a = g − Δ",
    inputs: { g, Δ: closing },
    value: mm(g.value - closing.value),
    source: derived("arithmetic"),
  });
}

/** Said only where the year tells: the wood between the plates' screws works the joint, and no other. */
function nearer({ leaf, show }: Alike): string {
  const nearest = Math.min(...woodedHoles(leaf).map(({ from }) => from));
  const past = nearest - fullFrom(leaf);
  return Number.isFinite(past) && past > FAR_SCREW
    ? ` The long plate’s first screw stands ${show(past)} past the ${leaf.rule ? "cove" : "edge"}: a hinge with a nearer one lets less wood work.`
    : "";
}
