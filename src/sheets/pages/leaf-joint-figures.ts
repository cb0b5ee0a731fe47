import {
  gapFromAbove,
  hangsAt,
  lipOverlap,
  safeRadius,
  sectionOf,
  swingsUpTo,
} from "../../motion/index.ts";
import type { LeafJoint, Piece } from "../../piece/index.ts";
import { type LengthUnit, type Mm, mm, printQuantity } from "../../units/index.ts";
import { drawnLength, setFractions } from "../figures.ts";
import { tightPlace } from "../views/pin-region.ts";
import { sized } from "../views/sized.ts";

/** A line of a small table; without a figure it only says something. */
export type Figure = { readonly says: string; readonly figure: string };

/** Figures under a heading. */
export type Figures = { readonly title: string; readonly rows: readonly Figure[] };

/** A leaf joint's sizes and how it swings, as the joint's own functions give them. */
export function leafJointFigures(
  piece: Piece,
  leaf: LeafJoint,
  units: LengthUnit,
): readonly Figures[] {
  const length = (n: Mm) => drawnLength(n, units, "fit");
  return [
    { title: "Joint", rows: jointRows(leaf, length) },
    { title: "Hinge", rows: hingeRows(leaf, length) },
    { title: "Swing", rows: swingRows(piece, leaf, units) },
  ];
}

type Show = (length: Mm) => string;

function jointRows(leaf: LeafJoint, length: Show): readonly Figure[] {
  const { rule, thickness, setOut } = leaf;
  const row = (says: string, size: LeafJoint["setOut"]): Figure => ({
    says,
    figure: length(sized(size)),
  });
  if (!rule)
    return [row("top and leaf, thick", thickness), row("gap between square edges", setOut)];
  const lip = mm(sized(rule.fillet) - sized(rule.crownGap));
  return [
    row("top and leaf, thick", thickness),
    row("round-over, radius", rule.radius),
    row("cove, radius", rule.cove),
    row("fillet, step over the round-over", rule.fillet),
    row("lip of the leaf", lip),
    row("crown gap, fillet less lip", rule.crownGap),
    row("leaf set out at the edge", setOut),
    row("bevel of the top’s lower edge", rule.bevel),
    { says: `cutters: ${rule.cutters}`, figure: "" },
  ];
}

const hingeRows = (leaf: LeafJoint, length: Show): readonly Figure[] => [
  { says: "pin over the underside", figure: length(sized(leaf.pinHeight)) },
  { says: "pin out from the visible edge", figure: length(sized(leaf.pinOut)) },
  {
    says: `${leaf.hinges.length} “${leaf.hinge.name}”, ${leaf.mounting === "let in" ? "plates let in flush" : "plates laid on the face"}, the long one in the leaf`,
    figure: "",
  },
];

function swingRows(piece: Piece, leaf: LeafJoint, units: LengthUnit): readonly Figure[] {
  const joint = sectionOf(leaf);
  const angle = (n: number) => `${n.toFixed(1)}°`;
  const hangs: Figure = { says: "hangs down at", figure: angle(hangsAt(leaf).value) };
  const tight = tightPlace(leaf);
  if (!joint || !tight) return [hangs];
  if (tight.isBinding)
    return [
      { says: `It binds ${tight.swing.toFixed(0)}° down, at the ${tight.contact}.`, figure: "" },
    ];
  const length: Show = (n) => drawnLength(n, units, "fit");
  return [
    { says: "least clearance", figure: length(tight.gap) },
    { says: `there: ${tight.contact}, ${leafAt(tight.swing)}`, figure: "" },
    { says: "pin may stray, whichever way", figure: length(safeRadius(joint).value) },
    { says: "gap from above, leaf down", figure: length(gapFromAbove(joint).value) },
    { says: "lip over the round-over’s foot, down", figure: length(lipOverlap(joint).value) },
    hangs,
    moisture(piece, leaf, units),
  ];
}

/**
 * How far down a leaf is, in words.
 *
 * @param swing  [°]
 */
const leafAt = (swing: number): string =>
  swing < 0.5 ? "leaf level" : `leaf ${swing.toFixed(0)}° down`;

/** Flatsawn edges move most: what they bear, others do. */
function moisture({ species, seasons }: Piece, leaf: LeafJoint, units: LengthUnit): Figure {
  const joint = sectionOf(leaf);
  if (!joint) throw new Error("square edges are not asked how they swell");
  const { short, long } = leaf.hinge;
  const screws = { short: middleOf(short.holes), long: middleOf(long.holes) };
  const upTo = swingsUpTo(joint, screws, species.tangential, seasons.made);
  return {
    says: "swings free up to, edges flatsawn",
    figure: setFractions(printQuantity(upTo.value, "% MC", units, "about")),
  };
}

const middleOf = (holes: LeafJoint["hinge"]["long"]["holes"]): Mm =>
  mm(holes.reduce((sum, { from }) => sum + from, 0) / Math.max(1, holes.length));
