import { type Deg, type Mm, mm } from "../units/index.ts";
import { derived, given, type Worked, work } from "../worked/index.ts";
import { leastOverSwing } from "./facing.ts";
import { leastGap } from "./least-gap.ts";
import { type RuleJoint, SECTION, type Sizes, sizesOf } from "./rule-joint.ts";

/** How far out the pin's places are tried [mm]. */
const PIN_WINDOW = 3;
const STEP = 0.1;
/** What touches is still safe [mm]. */
const TOUCH = 1e-6;

/**
 * Least clearance over the swing with the pin somewhere else.
 *
 * @param pinOut  pin out from the round-over's centre [mm]
 * @param pinUp  pin above it [mm]
 * @returns clearance [mm], negative where the leaf binds
 * @throws Problem "rule-joint-section"
 */
export const pinClearance = (joint: RuleJoint, pinOut: Mm, pinUp: Mm): Mm =>
  mm(leastOverSwing(sizesOf({ ...joint, pinOut, pinUp })).gap);

/** A search by halving knows no more digits than this: the rest would be noise [mm]. */
const FOUND_TO = 1e-6;

/** How far the pin may go one way before the leaf binds, from its planned place. */
function reach(s: Sizes, radians: number, most: number, from = 0): number {
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const binds = (r: number) => leastGap({ ...s, dx: s.dx + r * cos, dy: s.dy + r * sin }) < -TOUCH;
  let bound = from;
  while (!binds(bound)) {
    if (bound >= most) return most;
    bound = Math.min(most, bound + STEP);
  }
  if (bound <= from) return from;
  let free = Math.max(from, bound - STEP);
  for (let i = 0; i < 26; i++) {
    const half = (free + bound) / 2;
    if (binds(half)) bound = half;
    else free = half;
  }
  return free;
}

/**
 * How far the pin may stray one way from its planned place before the leaf binds.
 *
 * @param direction  0 towards the leaf, 90 up [°]
 * @param most  farthest that is tried [mm]
 * @returns distance, 0 when it binds as planned [mm]
 * @throws Problem "rule-joint-section"
 */
export const pinReach = (joint: RuleJoint, direction: Deg, most: Mm = mm(PIN_WINDOW)): Mm =>
  mm(reach(sizesOf(joint), (direction * Math.PI) / 180, most));

/** A corner of the region in which the pin may stand, from the round-over's centre. */
export type PinPlace = {
  /** towards the leaf [mm] */
  readonly pinOut: Mm;
  /** up [mm] */
  readonly pinUp: Mm;
};

/**
 * The region round the planned pin within which the leaf swings free, as a polygon seen from there.
 *
 * @param rays  how many corners, 3 or more [1]
 * @throws Problem "rule-joint-section"
 */
export function safePinRegion(joint: RuleJoint, rays = 36): readonly PinPlace[] {
  const s = sizesOf(joint);
  return Array.from({ length: rays }, (_, i) => {
    const radians = (2 * Math.PI * i) / rays;
    const r = reach(s, radians, PIN_WINDOW);
    return {
      pinOut: mm(s.dx + r * Math.cos(radians)),
      pinUp: mm(s.dy + r * Math.sin(radians)),
    };
  });
}

/**
 * How far the pin may be off, whichever way, before the leaf binds: the largest circle about its
 * planned place that stays clear.
 *
 * @returns radius, 0 when it binds as planned, at most the window tried [mm]
 * @throws Problem "rule-joint-section"
 */
export function safeRadius(joint: RuleJoint): Worked<Mm> {
  const s = sizesOf(joint);
  const count = 36;
  const one = (2 * Math.PI) / count;
  let [worst, least] = [0, Number.POSITIVE_INFINITY];
  for (let i = 0; i < count; i++) {
    // No further than the least so far: only a ray that binds sooner is followed to its edge.
    const r = reach(s, i * one, Math.min(PIN_WINDOW, least));
    if (r < least - 1e-9) [worst, least] = [i * one, r];
  }
  const narrowed = narrowest(
    (a) => reach(s, a, least + STEP, least * 0.8),
    worst - one,
    worst + one,
  );
  const radians = narrowed.r < least ? narrowed.at : worst;
  const r = Math.round(Math.min(least, narrowed.r) / FOUND_TO) * FOUND_TO;
  const source = derived("nearest place that binds, found by trying all round");
  const x = given("worst way: towards the leaf", mm(r * Math.cos(radians)), "mm", source);
  const y = given("worst way: up", mm(r * Math.sin(radians)), "mm", source);
  return work({
    says: "pin may be off by",
    unit: "mm",
    formula: "r = √(x² + y²)",
    inputs: { x, y },
    value: mm(r),
    source: SECTION,
    notes: r >= PIN_WINDOW ? ["no further was tried"] : [],
  });
}

/** Least of a function between two places, narrowed in the golden way: each step asks only once. */
function narrowest(f: (a: number) => number, from: number, to: number) {
  const golden = (Math.sqrt(5) - 1) / 2;
  const inner = (at: number) => ({ at, r: f(at) });
  let [a, b] = [from, to];
  let [left, right] = [inner(b - golden * (b - a)), inner(a + golden * (b - a))];
  for (let i = 0; i < 14; i++) {
    if (left.r < right.r) {
      [b, right] = [right.at, left];
      left = inner(b - golden * (b - a));
    } else {
      [a, left] = [left.at, right];
      right = inner(a + golden * (b - a));
    }
  }
  return left.r < right.r ? left : right;
}
