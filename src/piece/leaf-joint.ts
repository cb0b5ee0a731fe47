import type { Frame } from "../geometry/index.ts";
import type { LeafHinge } from "../shop/index.ts";
import type { Deg, Mm } from "../units/index.ts";
import type { Known } from "../worked/index.ts";
import type { Key } from "./part.ts";

/** How a hinge lies: its plates let in flush with the underside, or laid on it. */
export const hingeMountings = ["let in", "on the face"] as const;
export type HingeMounting = (typeof hingeMountings)[number];

/**
 * How a leaf hangs on the fixed top. All sizes are those in force, with their reasoning. The section
 * is seen across the hinge line with the leaf level: x out to the leaf from the fixed top's visible
 * edge, y up from the underside.
 */
export type LeafJoint = {
  readonly top: Key;
  readonly leaf: Key;
  /** the motion that turns the leaf */
  readonly motion: Key;
  /** in the piece: its origin on the middle of that edge's line, z along the line */
  readonly section: Frame;
  /** the mouldings of a rule joint; none when both edges are square */
  readonly rule?: {
    /** of the round-over on the fixed top [mm] */
    readonly radius: Known<Mm>;
    /** radius of the cove in the leaf [mm] */
    readonly cove: Known<Mm>;
    /** step over the round-over [mm] */
    readonly fillet: Known<Mm>;
    /** fillet less lip [mm] */
    readonly crownGap: Known<Mm>;
    /** of the fixed top's lower edge [mm] */
    readonly bevel: Known<Mm>;
    /** the cutters' name in the shop */
    readonly cutters: string;
  };
  /** of top and leaf at the joint [mm] */
  readonly thickness: Known<Mm>;
  /** of the leaf, from its lip's end or its edge [mm] */
  readonly leafWidth: Known<Mm>;
  /** gap at the visible edge, closed [mm] */
  readonly setOut: Known<Mm>;
  /** pin out from the visible edge [mm] */
  readonly pinOut: Known<Mm>;
  /** pin over the underside, below nought when it lies under it [mm] */
  readonly pinHeight: Known<Mm>;
  readonly hinge: LeafHinge;
  readonly mounting: HingeMounting;
  /** middles of the hinges along the section's z [mm] */
  readonly hinges: readonly Mm[];
};

/** How an arm turns in its rail. Seen from above: x along the rail from the pivot to the reaching end. */
export type ArmPivot = {
  readonly arm: Key;
  readonly rail: Key;
  /** the motion that turns the arm */
  readonly motion: Key;
  /** the motion of the leaf that it bears */
  readonly bears: Key;
  /** from the pivot to the end that swings out [mm] */
  readonly reach: Known<Mm>;
  /** from the pivot to the end that swings in [mm] */
  readonly tail: Known<Mm>;
  /** of rail and arm, seen from above [mm] */
  readonly thickness: Known<Mm>;
  /** of the arm [mm] */
  readonly height: Known<Mm>;
  /** pivot off the middle, towards the outer face [mm] */
  readonly offset: Known<Mm>;
  /** of both ends from square, parallel [°] */
  readonly angle: Known<Deg>;
  /** of the cuts at its ends [mm] */
  readonly kerf: Known<Mm>;
  /** depth of the opening it lies in, from the rail's upper edge [mm] */
  readonly opening: Known<Mm>;
  /** under the arm [mm] */
  readonly washers: readonly Mm[];
  /** of the pivot's screw [mm] */
  readonly screw: Known<Mm>;
  /** of its clearing hole through the arm [mm] */
  readonly hole: Known<Mm>;
  /** from the rail's face out to the leaf's joint [mm] */
  readonly overhang: Known<Mm>;
};
