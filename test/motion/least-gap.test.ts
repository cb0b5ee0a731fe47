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

test("a pin set far off gives a figure all the same", () => {
  fc.assert(
    fc.property(
      anyJoint,
      fc.double({ min: -5, max: 5, noNaN: true }),
      fc.double({ min: -5, max: 5, noNaN: true }),
      (joint, out, up) => {
        const s = { ...sizesOf(joint), dx: out, dy: up };
        expect(Number.isNaN(leastGap(s))).toBe(false);
        // Its reach, and a corner's height under the pin, as near as may be the same.
        expect(Number.isNaN(leastGap({ ...s, u: 4e-12, k: up - s.R - s.b + s.c }))).toBe(false);
      },
    ),
    { numRuns: 3000 },
  );
});

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
