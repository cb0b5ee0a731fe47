import { type Mm, mm, type Pct, pct } from "../units/index.ts";
import { derived, given, type Worked, work } from "../worked/index.ts";
import { seeded } from "./chance.ts";
import { leastGap } from "./least-gap.ts";
import { type RuleJoint, type Sizes, sizesOf } from "./rule-joint.ts";

/** What a shop gets wrong when it makes the joint, by name. */
export const setOutErrors = [
  "pin across",
  "pin height",
  "round-over",
  "cove",
  "thickness",
  "set-out",
] as const;
export type SetOutError = (typeof setOutErrors)[number];

/** For each error how far it usually strays: one standard deviation [mm]. */
export type Spreads = Readonly<Record<SetOutError, Mm>>;

/** How much one error matters. */
export type ErrorWeight = {
  readonly error: SetOutError;
  /** of the trials that bind so many would swing free had this error alone been none [%] */
  readonly frees: Pct;
};

/** How a joint fares in a shop that is only so exact. */
export type ToleranceStudy = {
  /** of the trials that bind [%] */
  readonly binding: Worked<Pct>;
  /** clearance that one trial in twenty falls below [mm] */
  readonly poorest: Mm;
  /** what each error has to do with it, the weightiest first; none where no trial binds */
  readonly errors: readonly ErrorWeight[];
};

/** How far off each thing came out [mm]. */
type Errors = Readonly<Record<SetOutError, number>>;

/** A joint made with errors; each is added to what was meant [mm]. */
function madeWith(s: Sizes, off: Errors): Sizes {
  const R = s.R + off["round-over"];
  const Rc = s.Rc + off.cove;
  // The round-over is cut from the face: a thicker top leaves its centre higher over the underside,
  // and so does a smaller cutter. Pin and cove are set from the underside, where both boards meet.
  const higher = off.thickness - off["round-over"];
  return {
    ...s,
    R,
    Rc,
    c: Rc - R,
    g: s.g + off["set-out"],
    k: s.k - off.thickness,
    t: s.t + off.thickness,
    b: s.b + higher,
    dx: s.dx + off["pin across"],
    dy: s.dy + off["pin height"] - higher,
  };
}

/** How little clearance is left; a leaf that cannot close for want of set-out has none. */
const clearanceOf = (s: Sizes): number => Math.min(leastGap(s), s.g + s.trim);

/** Errors of one joint, drawn in the order in which they are listed. */
const drawn = (spreads: Spreads, bell: () => number): Errors => ({
  "pin across": bell() * spreads["pin across"],
  "pin height": bell() * spreads["pin height"],
  "round-over": bell() * spreads["round-over"],
  cove: bell() * spreads.cove,
  thickness: bell() * spreads.thickness,
  "set-out": bell() * spreads["set-out"],
});

/**
 * Makes the joint many times with errors drawn by chance, each bell-shaped with its own spread, and
 * counts how often the leaf binds. The same seed gives the same trials.
 *
 * @param spreads  of every error, 0 or more
 * @param trials  how many joints are made, 1 or more [pieces]
 * @param seed  of the draws [1]
 * @throws Problem "rule-joint-section"
 */
export function toleranceStudy(
  joint: RuleJoint,
  spreads: Spreads,
  trials = 2000,
  seed = 1,
): ToleranceStudy {
  const s = sizesOf(joint);
  const { bell } = seeded(seed);
  const gaps = new Float64Array(trials);
  const asked: Errors[] = [];
  let bound = 0;
  for (let i = 0; i < trials; i++) {
    const off = drawn(spreads, bell);
    const gap = clearanceOf(madeWith(s, off));
    gaps[i] = gap;
    if (gap >= -TOUCH) continue;
    bound++;
    if (asked.length < MOST_ASKED) asked.push(off);
  }
  return {
    binding: shareOf(bound, trials),
    poorest: mm(gaps.sort()[Math.floor(trials / 20)] ?? clearanceOf(s)),
    errors: weights(s, asked),
  };
}

/** Bound trials that are asked what they bind from: enough to tell errors apart. */
const MOST_ASKED = 100;

/** Makes the bound joints once more, each time with one error less. */
function weights(s: Sizes, bound: readonly Errors[]): readonly ErrorWeight[] {
  if (bound.length === 0) return [];
  return setOutErrors
    .map((error): ErrorWeight => {
      const isFreed = (off: Errors) => clearanceOf(madeWith(s, { ...off, [error]: 0 })) >= -TOUCH;
      return { error, frees: pct((100 * bound.filter(isFreed).length) / bound.length) };
    })
    .sort((a, b) => b.frees - a.frees);
}

const TOUCH = 1e-6;

function shareOf(bound: number, trials: number): Worked<Pct> {
  const source = derived(
    "counted in joints made with errors drawn by chance, always the same draws",
  );
  return work({
    says: "of joints made so would bind",
    unit: "%",
    formula: "p = 100·k/n",
    inputs: {
      k: given("trial joints that bind", bound, "pieces", source),
      n: given("trial joints", trials, "pieces", source),
    },
    value: pct((100 * bound) / trials),
    source: derived("definition"),
  });
}
