import type { SquareMm } from "../units/index.ts";
import type { ArmPivot, LeafJoint } from "./leaf-joint.ts";
import type { Key } from "./part.ts";

/** What ties parts together, and by which of their features. */
export type Joint = {
  readonly key: Key;
  readonly says: string;
  readonly parts: readonly Key[];
  /** features of those parts, each as part key and feature key */
  readonly features: readonly (readonly [part: Key, feature: Key])[];
  /** long grain to long grain that glue holds, where glue is used [mm²] */
  readonly glued?: SquareMm;
  /** bought things it takes, in words: `1 wood screw No. 8 × 32 mm (1 1/4")` */
  readonly takes: readonly string[];
} & (
  | {
      readonly kind: "mortise-and-tenon" | "screwed-slot" | "button" | "corner-block" | "edge-glue";
    }
  | { readonly kind: "leaf"; readonly leaf: LeafJoint }
  | { readonly kind: "pivot"; readonly pivot: ArmPivot }
);
