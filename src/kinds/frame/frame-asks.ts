import { type Answers, ask, choice } from "../../asking/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import type { Given } from "../../worked/index.ts";
import type { IsAnswered } from "../kind.ts";
import type { FrameAsked } from "./frame.ts";

/**
 * A length with its bounds, its default, and what a fresh piece says on each side.
 *
 * @param least  [mm]
 * @param most  [mm]
 */
export const size = (says: string, least: number, most: number, mm: string, inch: string) =>
  ask.length(says, { least, most, fallback: mm, example: { inch, mm } });

/** What any frame of four legs and four rails is asked; common practice, no source. */
export const frameAsks = {
  leg: size("side of a leg", 25, 150, "50 mm", '2"'),
  "leg-form": choice("legs", ["square", "tapered"], "tapered"),
  foot: size("side of a tapered leg’s foot", 12, 140, "30 mm", '1 1/4"'),
  "taper-start": size("taper starts below the rail by", 0, 400, "25 mm", '1"'),
  "rail-width": size("width of the rails", 40, 250, "95 mm", '3 3/4"'),
  "rail-thickness": size("thickness of the rails", 12, 60, "22 mm", '7/8"'),
  setback: size("rails set back behind the legs’ faces", 0, 40, "3 mm", '1/8"'),
  tips: choice("where two tenons meet in a leg their tips are", ["butted", "mitred"], "mitred"),
  haunch: choice("haunch of the tenons", ["none", "square", "sloped"], "sloped"),
  "corner-blocks": choice("corner blocks", ["yes", "no"], "no"),
};

/** A square leg has no foot to be asked about. */
export const idleOfFrame = (is: IsAnswered): readonly ("foot" | "taper-start")[] =>
  is("leg-form", "square") ? ["foot", "taper-start"] : [];

/** What a table answers of its sizes over all, and how far its top goes beyond its frame. */
type OverAll = Readonly<
  Record<"length" | "width" | "height" | "end-overhang" | "side-overhang", Given<Mm>>
>;

/**
 * The frame that stands under a top.
 *
 * @param thickness  of the top [mm]
 */
export const frameUnder = (
  given: Answers<typeof frameAsks> & OverAll,
  thickness: Mm,
): FrameAsked => ({
  length: mm(given.length.value - 2 * given["end-overhang"].value),
  width: mm(given.width.value - 2 * given["side-overhang"].value),
  height: mm(given.height.value - thickness),
  leg: given.leg.value,
  legForm: given["leg-form"],
  foot: given.foot.value,
  taperBelow: given["taper-start"].value,
  railWidth: given["rail-width"].value,
  railThickness: given["rail-thickness"].value,
  setback: given.setback.value,
  tips: given.tips,
  haunch: given.haunch,
});
