import type { Face, Haunch, Key, Mortise, Tenon } from "../piece/index.ts";
import { type Mm, mm, type SquareMm, squareMm } from "../units/index.ts";

/** All that a mortise and its tenon are made to. */
export type TenonFit = {
  /** [mm] */
  readonly railWidth: Mm;
  /** [mm] */
  readonly railThickness: Mm;
  /** of the rail's show face behind the leg's outer face [mm] */
  readonly setback: Mm;
  /** of the leg, square to the rail's face [mm] */
  readonly leg: Mm;
  /** from the leg's outer face to the mortise [mm] */
  readonly wall: Mm;
  /** width of the mortise [mm] */
  readonly mortise: Mm;
  /** thickness of the tenon [mm] */
  readonly thickness: Mm;
  /** of the tenon, along its outer cheek [mm] */
  readonly length: Mm;
  /** from the rail's upper edge, flush with the leg's top, down to the tenon [mm] */
  readonly upper: Mm;
  /** from the rail's lower edge up to the tenon [mm] */
  readonly lower: Mm;
  readonly haunch: Haunch | undefined;
  readonly isMitred: boolean;
  /** mortise longer than the tenon is wide, all told [mm] */
  readonly widthClearance: Mm;
  /** mortise deeper than the tenon [mm] */
  readonly depthClearance: Mm;
};

/**
 * The tenon, in the rail's own frame: its show face is the one that looks out.
 *
 * @param fit  what it is made to
 * @param key  of the feature
 * @param end  of the rail
 */
export function tenonOf(fit: TenonFit, key: Key, end: "left" | "right"): Tenon {
  const middle = fit.wall + fit.mortise / 2 - fit.setback;
  const far = fit.railThickness - middle;
  return {
    feature: "tenon",
    key,
    end,
    length: fit.length,
    y: [fit.lower, mm(fit.railWidth - fit.upper)],
    z: [mm(far - fit.thickness / 2), mm(far + fit.thickness / 2)],
    haunch: fit.haunch,
    isMitred: fit.isMitred,
  };
}

/** Which faces of a leg's pattern the mortise has to do with. */
export type MortisePlace = {
  readonly face: Mortise["face"];
  /** the outer face that the wall is counted from */
  readonly outer: Extract<Face, "show" | "lower">;
};

/**
 * The mortise, in the leg's own frame: its left end is the leg's top.
 *
 * @param fit  what it is made to
 * @param key  of the feature
 * @param place  on the leg
 */
export function mortiseOf(fit: TenonFit, key: Key, place: MortisePlace): Mortise {
  const { wall, mortise, leg, upper, lower, railWidth, widthClearance, depthClearance } = fit;
  const near = mm(wall);
  const far = mm(wall + mortise);
  return {
    feature: "mortise",
    key,
    face: place.face,
    x: [mm(upper - widthClearance / 2), mm(railWidth - lower + widthClearance / 2)],
    across: place.outer === "show" ? [mm(leg - far), mm(leg - near)] : [near, far],
    depth: mm(fit.length + depthClearance),
    haunch: fit.haunch && {
      ...fit.haunch,
      length: mm(fit.haunch.length + depthClearance),
    },
  };
}

/** Long grain that the glue holds: both cheeks of the tenon, the mitre's loss taken off one. */
export function gluedCheeks(fit: TenonFit): SquareMm {
  const { railWidth, upper, lower, length, thickness, isMitred } = fit;
  return squareMm((railWidth - upper - lower) * (2 * length - (isMitred ? thickness : 0)));
}
