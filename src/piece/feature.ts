import type { Vec3 } from "../geometry/index.ts";
import type { Mm } from "../units/index.ts";
import type { Face, Key } from "./part.ts";

/** From one size to another along an axis of the part [mm]. */
type Span = readonly [Mm, Mm];

/** What is worked on a blank, in part coordinates. */
export type Feature =
  | Tenon
  | Mortise
  | Taper
  | Bevel
  | Rebate
  | Bore
  | ScrewSlot
  | RoundOver
  | Cove
  | HingeRecess
  | KnuckleGroove
  | ArmCut;

/** The wood left at an end, its shoulders cut away round about. */
export type Tenon = {
  readonly feature: "tenon";
  readonly key: Key;
  readonly end: "left" | "right";
  /** from shoulder to tip, along its outer cheek where it is mitred [mm] */
  readonly length: Mm;
  /** across the width of the part */
  readonly y: Span;
  /** through its thickness */
  readonly z: Span;
  /** a shorter step beside it, up to the upper edge */
  readonly haunch: Haunch | undefined;
  /** a tip cut at 45°, short towards the back */
  readonly isMitred: boolean;
};

export type Haunch = {
  /** how far it reaches into the other part, at its root [mm] */
  readonly length: Mm;
  /** a sloped one runs out to nothing at the edge, and does not show */
  readonly isSloped: boolean;
};

/** The hole for a tenon: a box sunk from a long face, and the haunch's socket out to the left end. */
export type Mortise = {
  readonly feature: "mortise";
  readonly key: Key;
  readonly face: Exclude<Face, "left" | "right">;
  /** along the grain */
  readonly x: Span;
  /** across the face: in z for an edge, in y for the show face or back */
  readonly across: Span;
  /** [mm] */
  readonly depth: Mm;
  readonly haunch: Haunch | undefined;
};

/** A long face planed away in a straight slope from `from` to the right end. */
export type Taper = {
  readonly feature: "taper";
  readonly key: Key;
  readonly face: Exclude<Face, "left" | "right">;
  /** where it starts, along the grain [mm] */
  readonly from: Mm;
  /** how much is gone at the right end [mm] */
  readonly depth: Mm;
};

/** An end sawn aslant: whole at one face, running in towards the other. */
export type Bevel = {
  readonly feature: "bevel";
  readonly key: Key;
  readonly end: "left" | "right";
  /** how much shorter the shorter face is at that end [mm] */
  readonly run: Mm;
  /** the face that it shortens; the show face where none is named */
  readonly shorter?: "show" | "back";
};

/** A step cut out of an end on one face. */
export type Rebate = {
  readonly feature: "rebate";
  readonly key: Key;
  readonly end: "left" | "right";
  readonly face: "show" | "back";
  /** along the grain [mm] */
  readonly length: Mm;
  /** from that face [mm] */
  readonly depth: Mm;
};

/** A round hole, perhaps wider at its mouth. */
export type Bore = {
  readonly feature: "bore";
  readonly key: Key;
  /** its mouth, on the wood's surface */
  readonly from: Vec3;
  /** unit direction into the wood */
  readonly along: Vec3;
  /** [mm] */
  readonly diameter: Mm;
  /** along its middle line, to where it ends or leaves the wood [mm] */
  readonly depth: Mm;
  readonly isThrough: boolean;
  /** a countersink, where there is one */
  readonly sink?: Sink;
};

/** A cone at a hole's mouth, for a screw's head. */
type Sink = {
  /** at the mouth [mm] */
  readonly diameter: Mm;
  /** until it is as wide as the hole [mm] */
  readonly depth: Mm;
};

/** A long hole through the width, from the lower edge, its mouth widened to sink the screw's head. */
export type ScrewSlot = {
  readonly feature: "screw-slot";
  readonly key: Key;
  /** its middle, along the grain [mm] */
  readonly x: Mm;
  /** its middle, through the thickness [mm] */
  readonly z: Mm;
  /** the way it is long */
  readonly runs: "along" | "through";
  /** how far the screw may move, end to end [mm] */
  readonly travel: Mm;
  /** of the narrow part [mm] */
  readonly diameter: Mm;
  /** of the widened mouth [mm] */
  readonly headDiameter: Mm;
  /** how deep the head is sunk [mm] */
  readonly headDepth: Mm;
};

/**
 * The round half of a rule joint along a long edge: a step down from the show face, a quarter round
 * out to the edge, and below it the edge's lower corner, perhaps bevelled.
 */
export type RoundOver = {
  readonly feature: "round-over";
  readonly key: Key;
  readonly edge: "lower" | "upper";
  /** depth of the step under the show face [mm] */
  readonly fillet: Mm;
  /** [mm] */
  readonly radius: Mm;
  /** taken off the edge's lower corner at the back, slanting up to the round's foot [mm] */
  readonly bevel: Mm;
};

/** The hollow half of a rule joint along a long edge: a lip under the show face, open to the back. */
export type Cove = {
  readonly feature: "cove";
  readonly key: Key;
  readonly edge: "lower" | "upper";
  /** [mm] */
  readonly radius: Mm;
  /** thickness of the lip at its end [mm] */
  readonly lip: Mm;
};

/** Where a hinge's plate is let into the back, flush. */
export type HingeRecess = {
  readonly feature: "hinge-recess";
  readonly key: Key;
  readonly x: Span;
  readonly y: Span;
  /** [mm] */
  readonly depth: Mm;
};

/** Room in the back for a hinge's barrel, and for the plate that turns with it. */
export type KnuckleGroove = {
  readonly feature: "knuckle-groove";
  readonly key: Key;
  readonly x: Span;
  readonly y: Span;
  /** [mm] */
  readonly depth: Mm;
};

/** The opening in a rail's upper edge that a swing arm lies in, sawn through from face to face. */
export type ArmCut = {
  readonly feature: "arm-cut";
  readonly key: Key;
  /** along the grain, at the show face */
  readonly show: Span;
  /** along the grain, at the back */
  readonly back: Span;
  /** from the upper edge [mm] */
  readonly depth: Mm;
};
