import { type McPct, type Mm, mcPct, mm, type PerPct, type Ratio } from "../units/index.ts";
import { derived, given, type Known, known, type Worked, work } from "../worked/index.ts";
import { leastGap } from "./least-gap.ts";
import { type RuleJoint, SECTION, type Sizes, sizesOf } from "./rule-joint.ts";

/** How the steel holds the two members: only wood between the plates' screws works the joint. */
export type PlateScrews = {
  /** middle of the short plate's screws from the pin [mm] */
  readonly short: Known<Mm>;
  /** middle of the long plate's screws from the pin [mm] */
  readonly long: Known<Mm>;
};

/**
 * By how much the joint closes at the fillet when the wood swells between the plates' screws.
 *
 * @param screws  of both plates, from the pin
 * @param coefficient  fractional change across the grain [per % MC]
 * @param from  moisture at which the hinges went on [% MC]
 * @param to  moisture then [% MC]
 * @returns closing [mm], negative when it opens
 */
export function seasonalClosing(
  screws: PlateScrews,
  coefficient: Known<PerPct>,
  from: Known<McPct>,
  to: Known<McPct>,
): Worked<Mm> {
  const { s, S, C } = screwsOf(screws, coefficient);
  const M1 = known(from, "moisture when fitted", "% MC");
  const M2 = known(to, "moisture then", "% MC");
  return work({
    says: "joint closes at the fillet",
    unit: "mm",
    formula: "Δ = (s + S)·C·(M₂ − M₁)",
    inputs: { s, S, C, "M₁": M1, "M₂": M2 },
    value: mm((s.value + S.value) * C.value * (M2.value - M1.value)),
    source: derived("wood between the screws moves, steel does not"),
  });
}

const screwsOf = (screws: PlateScrews, coefficient: Known<PerPct>) => ({
  s: known(screws.short, "middle of the short plate's screws from the pin", "mm"),
  S: known(screws.long, "middle of the long plate's screws from the pin", "mm"),
  C: known(coefficient, "coefficient of change", "per % MC"),
});

const strained = (s: Sizes, short: number, long: number, strain: number): Sizes => ({
  ...s,
  dx: s.dx - short * strain,
  g: s.g - (short + long) * strain,
});

/**
 * The joint after the wood has swollen by a strain: set-out and pin, as the round-over sees them.
 *
 * @param screws  of both plates, from the pin
 * @param strain  of the wood across the grain, positive when it swells [1]
 * @throws Problem "rule-joint-section"
 */
export function swollenJoint(joint: RuleJoint, screws: PlateScrews, strain: Ratio): RuleJoint {
  const { short, long } = lengthsOf(screws);
  const { dx, g } = strained(sizesOf(joint), short, long, strain);
  return { ...joint, pinOut: mm(dx), setOut: mm(g) };
}

const lengthsOf = (screws: PlateScrews) => ({
  short: known(screws.short, "", "mm").value,
  long: known(screws.long, "", "mm").value,
});

/** Wetter than about this wood swells no more [% MC]. */
const FIBRE_SATURATION = 30;

/** Strains past which no wood goes between dry and wet. */
const MOST_STRAIN = 0.12;

/** Largest swelling at which the leaf still swings and still closes; nought when it binds as made. */
function bearableStrain(s: Sizes, short: number, long: number): number {
  const isFree = (strain: number) => {
    const then = strained(s, short, long, strain);
    return then.g + then.trim >= -1e-6 && leastGap(then) >= -1e-6;
  };
  if (!isFree(0)) return 0;
  let [free, bound] = [0, MOST_STRAIN];
  // By steps first: what binds and frees again further on does not count as free.
  for (let strain = 0; strain <= MOST_STRAIN; strain += 0.001) {
    if (!isFree(strain)) {
      bound = strain;
      break;
    }
    free = strain;
  }
  for (let i = 0; i < 50; i++) {
    const half = (free + bound) / 2;
    if (isFree(half)) free = half;
    else bound = half;
  }
  return free;
}

/**
 * Moisture up to which the leaf swings free and closes, when it was fitted at another.
 *
 * @param screws  of both plates, from the pin
 * @param coefficient  fractional change across the grain, above 0 [per % MC]
 * @param from  moisture at which the hinges went on [% MC]
 * @returns moisture, 30 at most: wetter than that wood swells no more [% MC]
 * @throws Problem "rule-joint-section"
 */
export function swingsUpTo(
  joint: RuleJoint,
  screws: PlateScrews,
  coefficient: Known<PerPct>,
  from: Known<McPct>,
): Worked<McPct> {
  const { s, S, C } = screwsOf(screws, coefficient);
  const M1 = known(from, "moisture when fitted", "% MC");
  const most = bearableStrain(sizesOf(joint), s.value, S.value) * (s.value + S.value);
  const q = given(
    "closing at the fillet that it bears",
    mm(most),
    "mm",
    derived("found by closing the section until the leaf binds"),
  );
  return work({
    says: "swings free up to a moisture of",
    unit: "% MC",
    formula: "M₂ = min(30, M₁ + q/((s + S)·C))",
    inputs: { "M₁": M1, q, s, S, C },
    value: mcPct(Math.min(FIBRE_SATURATION, M1.value + most / ((s.value + S.value) * C.value))),
    source: SECTION,
  });
}
