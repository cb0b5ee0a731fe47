import type { Mm } from "../units/index.ts";

/** A hole for a screw in a hinge's plate. */
export type Hole = {
  /** out from the pin [mm] */
  readonly from: Mm;
  /** along the pin, from the hinge's middle [mm] */
  readonly along: Mm;
};

/** One of a hinge's plates. */
type Plate = {
  /** from the pin to its end [mm] */
  readonly reach: Mm;
  readonly holes: readonly Hole[];
};

/** A hinge for a leaf, as it was measured in the hand. */
export type LeafHinge = {
  readonly name: string;
  /** along the pin [mm] */
  readonly length: Mm;
  /** radius of its barrel [mm] */
  readonly barrel: Mm;
  /** pin over the outer, countersunk face of the plates, towards the wood; 0 when it lies in it [mm] */
  readonly pinOverFace: Mm;
  /** thickness of the plates [mm] */
  readonly plate: Mm;
  /** screwed to the fixed top */
  readonly short: Plate;
  /** screwed to the leaf */
  readonly long: Plate;
  /** length of the screws, from the plates' outer face [mm] */
  readonly screwLength: Mm;
  /** diameter of their lead holes [mm] */
  readonly lead: Mm;
};

/** A pair of cutters that make the two halves of a rule joint, as they were measured. */
export type JointCutters = {
  readonly name: string;
  /** radius of the round-over [mm] */
  readonly roundOver: Mm;
  /** radius of the cove [mm] */
  readonly cove: Mm;
  /** straight part of the round-over cutter over its quarter, for the fillet [mm] */
  readonly straight: Mm;
  /** cutting length of the cove cutter [mm] */
  readonly coveLength: Mm;
};
