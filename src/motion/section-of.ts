import type { LeafJoint } from "../piece/index.ts";
import { pinAboveCentre } from "./leaf-hinge.ts";
import { centreHeight, type RuleJoint } from "./rule-joint.ts";

/** A leaf's joint as a rule joint's section; undefined between square edges. */
export function sectionOf(leaf: LeafJoint): RuleJoint | undefined {
  const { rule, thickness } = leaf;
  if (!rule) return undefined;
  const centre = centreHeight(thickness, rule.radius, rule.fillet);
  return {
    radius: rule.radius,
    cove: rule.cove,
    setOut: leaf.setOut,
    crownGap: rule.crownGap,
    pinOut: leaf.pinOut,
    pinUp: pinAboveCentre(leaf.pinHeight, centre),
    thickness,
    centreHeight: centre,
    bevel: rule.bevel,
  };
}
