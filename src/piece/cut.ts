import type { Frame, Plane, Vec3 } from "../geometry/index.ts";

/**
 * What can be taken off a blank, in part coordinates. A closed set: solids, views, collisions and
 * volumes read only these, so a new feature needs no change there.
 */
export type Cut = HalfSpaceCut | PrismCut | BoreCut | SweepCut | QuarterCut;

/** Everything on the side that the plane's direction points to: a sawn or planed face. */
export type HalfSpaceCut = { readonly cut: "half-space" } & Plane;

/** A convex outline in the frame's x-y plane, counter-clockwise, sunk along its z from 0 to `depth` [mm]. */
export type PrismCut = {
  readonly cut: "prism";
  readonly frame: Frame;
  readonly outline: readonly (readonly [number, number])[];
  readonly depth: number;
};

/**
 * A round hole with a flat bottom, from a point along a unit direction; radius and depth [mm]. With
 * a radius of its own at its end it is a cone cut short.
 */
export type BoreCut = {
  readonly cut: "bore";
  readonly from: Vec3;
  readonly along: Vec3;
  readonly radius: number;
  readonly endRadius?: number;
  readonly depth: number;
};

/** A bore moved straight from one point to another: what a cutter leaves in a slot [mm]. */
export type SweepCut = {
  readonly cut: "sweep";
  readonly from: Vec3;
  readonly to: Vec3;
  readonly along: Vec3;
  readonly radius: number;
  readonly depth: number;
};

/**
 * A moulding of a quarter round, run along the frame's z over `depth`; the frame's x and y point from
 * the round's centre to its two ends [mm]. It leaves the wood inside the round, and takes what lies
 * beyond it in the frame's first quarter; or it leaves the wood outside, and takes the round and what
 * lies behind it. Either way it goes on by so much along x and y, past the wood.
 */
export type QuarterCut = {
  readonly cut: "quarter";
  readonly frame: Frame;
  readonly radius: number;
  readonly leaves: "inside" | "outside";
  readonly past: readonly [x: number, y: number];
  readonly depth: number;
};
