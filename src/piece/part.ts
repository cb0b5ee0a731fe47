import type { Frame, Vec3 } from "../geometry/index.ts";
import type { Mm } from "../units/index.ts";
import type { Feature } from "./feature.ts";

/** Role words joined by strokes, stable when dimensions change: `table/leg/front-left`. */
export type Key = string;

/**
 * The six faces of a blank, in part coordinates: x along the grain from the left end, y across the
 * width from the lower edge, z through the thickness from the back to the show face.
 */
export const faces = ["left", "right", "lower", "upper", "back", "show"] as const;
export type Face = (typeof faces)[number];

/** Finished size of the wood before its features are cut, tenons included. */
export type Blank = {
  /** along the grain [mm] */
  readonly length: Mm;
  /** across the grain, in the show face [mm] */
  readonly width: Mm;
  /** from back to show face [mm] */
  readonly thickness: Mm;
};

export type Sawn = "flat" | "rift" | "quarter";

/** One board of a glued-up panel, or the whole of a part that is one stick. */
export type Strip = {
  /** from the part's lower edge [mm] */
  readonly from: Mm;
  /** [mm] */
  readonly width: Mm;
  /** which face was nearer the pith; of a quartered one, which looks left when its end is seen */
  readonly heart: "up" | "down";
  /** where the pith ran, in the part's y and z, often outside the wood [mm] */
  readonly pith: readonly [number, number];
};

/** Parts that were marked together with one triangle across them, so that none is turned over. */
type Triangle = {
  readonly set: Key;
  /** place in the set, from 1, as the triangle's lines tell [pieces] */
  readonly place: number;
  readonly of: number;
};

/** A piece of wood of the piece. */
export type Part = {
  readonly key: Key;
  /** short letter and number, chalked on the wood */
  readonly mark: string;
  readonly name: string;
  readonly role: "leg" | "rail" | "top" | "leaf" | "arm" | "corner-block" | "button";
  readonly blank: Blank;
  /** the part whose blank it is sawn out of, where it has no board of its own */
  readonly outOf?: Key;
  /** added to its rough width, for a cut along it that is glued up again [mm] */
  readonly sawnWider?: Mm;
  readonly features: readonly Feature[];
  /**
   * Whether the wood is the mirror of what blank and features say: y counted from the upper edge.
   * So a mirrored part is a true mirror of its twin, and shares its dimensions.
   */
  readonly isMirrored: boolean;
  /** the part it is the mirror of */
  readonly mirrorOf?: Key;
  /** its frame in the piece: x to the right, y away, z up, the floor at 0; motions all at 0 */
  readonly pose: Frame;
  /** where all its dimensions start: one face, one edge square to it */
  readonly reference: { readonly face: Face; readonly edge: Face };
  readonly shows: readonly Face[];
  readonly sawn: Sawn;
  readonly triangle?: Triangle;
  /** one for a stick; a panel's boards from the lower edge up */
  readonly strips: readonly Strip[];
};

/** A point of the wood in its blank's frame, from one of the dimensioned, unmirrored pattern. */
export const mirrored = (part: Pick<Part, "isMirrored" | "blank">, [x, y, z]: Vec3): Vec3 => [
  x,
  part.isMirrored ? part.blank.width - y : y,
  z,
];
