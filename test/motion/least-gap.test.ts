import fc from "fast-check";
import { expect, test } from "vitest";
import { swingClearance } from "../../src/motion/index.ts";
import { leastGap } from "../../src/motion/least-gap.ts";
import { type RuleJoint, sizesOf } from "../../src/motion/rule-joint.ts";
import { mm } from "../../src/units/index.ts";
import { anyJoint, shopJoint } from "../kit/rule-joints.ts";

const agree = (joint: RuleJoint): number => {
  const quick = leastGap(sizesOf(joint));
  const exact = swingClearance(joint).gap;
  if (Math.abs(exact) > 1e-7) expect(quick < 0).toBe(exact < 0);
  // How deep members are in each other is told by one of two faces at an edge; that they are, by both.
  if (exact >= 0) expect(Math.abs(quick - exact)).toBeLessThan(1e-7);
  return exact;
};

test("the least gap by lengths is that by angles: whether joints bind, and by how much", () => {
  let [free, bound] = [0, 0];
  const runs = { numRuns: 5000 };
  const count = (gap: number) => (gap < 0 ? bound++ : free++);
  fc.assert(
    fc.property(anyJoint, (joint) => void count(agree(joint))),
    runs,
  );
  fc.assert(
    fc.property(shopJoint, (joint) => void count(agree(joint))),
    runs,
  );
  fc.assert(
    fc.property(anyJoint, (joint) => void count(agree({ ...joint, lipTrim: mm(0.7) }))),
    runs,
  );
  expect(Math.min(free, bound)).toBeGreaterThan(500);
});
