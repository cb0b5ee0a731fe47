import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { cornersOf, type Spot } from "./corners.ts";
import { type Contact, leastOverSwing, type Nearest, nearestAt, turningSwings } from "./facing.ts";
import { type RuleJoint, sizesOf } from "./rule-joint.ts";

/** Members that touch by less than this do not bind: a thousandth of a thin shaving [mm]. */
const TOUCH = 1e-6;

/** The nearest that leaf and top come to each other. */
export type Tightest = {
  /** between them, negative where they would overlap [mm] */
  readonly gap: Mm;
  /** leaf down by this [°] */
  readonly swing: Deg;
  readonly contact: Contact;
  /** place in the section, fixed top's frame, from the round-over's centre [mm] */
  readonly at: Spot;
};

const tightest = ({ gap, contact, at }: Nearest, radians: number): Tightest => ({
  gap: mm(gap),
  swing: deg((radians * 180) / Math.PI),
  contact,
  at,
});

/**
 * Least clearance between leaf and top from closed to right down, exact, in closed form: distances
 * turn only at a few swings, and only those are looked at.
 *
 * @throws Problem "rule-joint-section"
 */
export function swingClearance(joint: RuleJoint): Tightest {
  const found = leastOverSwing(sizesOf(joint));
  return tightest(found, found.radians);
}

/**
 * Where and at what swing the leaf first binds on its way down; undefined when it swings free.
 *
 * @throws Problem "rule-joint-section"
 */
export function firstContact(joint: RuleJoint): Tightest | undefined {
  const s = sizesOf(joint);
  const corners = cornersOf(s);
  const binds = (radians: number) => nearestAt(s, corners, radians).gap < -TOUCH;
  const steps = Array.from({ length: 181 }, (_, i) => (i * Math.PI) / 360);
  const swings = [...steps, ...turningSwings(s, corners)].sort((a, b) => a - b);
  const at = swings.findIndex(binds);
  if (at < 0) return undefined;
  let [free, bound] = [swings[at - 1] ?? 0, swings[at] ?? 0];
  for (let i = 0; i < 60 && at > 0; i++) {
    const half = (free + bound) / 2;
    if (binds(half)) bound = half;
    else free = half;
  }
  return tightest(nearestAt(s, corners, bound), bound);
}

/**
 * How near leaf and top are at one swing, and where.
 *
 * @param swing  leaf down by this, 0 to 90 [°]
 * @throws Problem "rule-joint-section"
 */
export function gapAtSwing(joint: RuleJoint, swing: Deg): Tightest {
  const radians = (swing * Math.PI) / 180;
  const s = sizesOf(joint);
  return tightest(nearestAt(s, cornersOf(s), radians), radians);
}
