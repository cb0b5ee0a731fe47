import type { Joint } from "../piece/index.ts";
import type { Mm } from "../units/index.ts";
import type { Worked } from "../worked/index.ts";

/** A leaf's joint with what it ties. */
export type Hinged = Extract<Joint, { readonly kind: "leaf" }>;

/** How much room one place of a hinge has, and what is said where it has none. */
export type HingePlace = {
  readonly joint: Hinged;
  /** below nought where it has none [mm] */
  readonly margin: Worked<Mm>;
  readonly verdict: "fails" | "watch";
  /** a length that is the measure of it [mm] */
  readonly measure: number;
  readonly says: (show: (size: number) => string) => string;
  readonly lights?: readonly string[];
};
