import type { Vec3 } from "../../geometry/index.ts";

/** A corner of a frame, seen from above with the front below. */
export type Corner = {
  readonly name: "front-left" | "front-right" | "back-left" | "back-right";
  readonly says: string;
  /** towards the inside, along the length and across it */
  readonly inX: 1 | -1;
  readonly inY: 1 | -1;
};

export const corners: readonly Corner[] = [
  { name: "front-left", says: "front left", inX: 1, inY: 1 },
  { name: "front-right", says: "front right", inX: -1, inY: 1 },
  { name: "back-right", says: "back right", inX: -1, inY: -1 },
  { name: "back-left", says: "back left", inX: 1, inY: -1 },
];

export type Side = "front" | "back" | "left" | "right";

/** The rails that meet in a corner: the long one first. */
export const railsAt = ({ inX, inY }: Corner): readonly [Side, Side] => [
  inY > 0 ? "front" : "back",
  inX > 0 ? "left" : "right",
];

/** Out of the frame, square to a side. */
export const outward: Readonly<Record<Side, Vec3>> = {
  front: [0, -1, 0],
  back: [0, 1, 0],
  left: [-1, 0, 0],
  right: [1, 0, 0],
};
/** Along a side, from its left end as it is seen from outside. */
export const alongSide: Readonly<Record<Side, Vec3>> = {
  front: [1, 0, 0],
  back: [-1, 0, 0],
  left: [0, -1, 0],
  right: [0, 1, 0],
};

/** The corner at a side's left end and at its right, as it is seen from outside. */
export const endsOf: Readonly<Record<Side, readonly [Corner["name"], Corner["name"]]>> = {
  front: ["front-left", "front-right"],
  right: ["front-right", "back-right"],
  back: ["back-right", "back-left"],
  left: ["back-left", "front-left"],
};

/** Whether a side's rail is one of the long ones or of the end ones. */
export const wayOf = (side: Side): "long" | "end" =>
  side === "front" || side === "back" ? "long" : "end";
