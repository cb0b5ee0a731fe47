import fc from "fast-check";
import type { RuleJoint } from "../../src/motion/index.ts";
import { type Mm, mm } from "../../src/units/index.ts";

/** Sizes spread evenly over a range, and none so near to nought that its digits are noise. */
const evenly = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 100000 }).map((n) => least + ((most - least) * n) / 100000);
const size = (least: number, most: number): fc.Arbitrary<Mm> => evenly(least, most).map(mm);

/** Any joint that has a fillet, however badly its pin is placed and its cutters are paired. */
export const anyJoint: fc.Arbitrary<RuleJoint> = fc
  .record({
    radius: size(8, 20),
    centreHeight: size(2, 6),
    fillet: size(2, 8),
    clearance: evenly(-0.1, 0.5),
    setOut: size(0, 1),
    crownGap: size(0, 1),
    pinOut: size(-0.6, 1),
    pinUp: size(-1, 0.6),
    bevel: size(0, 3),
  })
  .map(({ fillet, clearance, ...sizes }) => ({
    ...sizes,
    cove: mm(sizes.radius + clearance),
    thickness: mm(sizes.radius + sizes.centreHeight + fillet),
  }));

/** A joint as a shop makes it: cutters of a size, a little set-out, the pin nearly where it belongs. */
export const shopJoint: fc.Arbitrary<RuleJoint> = fc
  .record({
    radius: size(9, 16),
    centreHeight: size(2.5, 4),
    fillet: size(3, 8),
    clearance: evenly(-0.05, 0.1),
    setOut: size(0.2, 0.5),
    crownGap: size(0.1, 0.3),
    pinOut: size(0.1, 0.5),
    pinUp: size(-0.2, 0.1),
    bevel: size(1, 2),
  })
  .map(({ fillet, clearance, ...sizes }) => ({
    ...sizes,
    cove: mm(sizes.radius + clearance),
    thickness: mm(sizes.radius + sizes.centreHeight + fillet),
  }));

/** The section of many old tables: 19 mm top, 12.7 mm cutters, 3.2 mm fillet, pin 3.2 mm up. */
export const classicJoint: RuleJoint = {
  radius: mm(12.7),
  cove: mm(12.7),
  setOut: mm(0.4),
  crownGap: mm(0.1),
  pinOut: mm(0.4),
  pinUp: mm(0.1),
  thickness: mm(19),
  centreHeight: mm(3.1),
  bevel: mm(0.5),
};
