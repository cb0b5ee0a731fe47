import { type Count, type Mm, type N, type NPerMm, newtons } from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";

const STATICS = derived("statics of a bar on a hinge and a support");

/**
 * The width of a bar and the place of its support; a support off the bar is refused.
 *
 * @param width  from the hinge to the free edge [mm]
 * @param support  from the hinge to the support, above 0, at most `width` [mm]
 * @throws Problem "support-off-bar"
 */
export function placed(width: Known<Mm>, support: Known<Mm>) {
  const W = known(width, "from the hinge to the free edge", "mm");
  const a = known(support, "from the hinge to the support", "mm");
  if (!(a.value > 0 && a.value <= W.value)) {
    throw new Problem(
      "support-off-bar",
      "place of the support",
      "The support must stand between the hinge and the free edge.",
      "Give its distance from the hinge: above nought, at most the whole width.",
    );
  }
  return { W, a };
}

/**
 * Load on the support of a hinged bar.
 *
 * @param spread  load per length from the hinge to the edge [N/mm]
 * @param edge  load at the free edge [N]
 * @param width  from the hinge to the free edge [mm]
 * @param support  from the hinge to the support, above 0, at most `width` [mm]
 * @returns load on it in all, downward positive [N]
 * @throws Problem "support-off-bar"
 */
export function loadOnSupport(
  spread: Known<NPerMm>,
  edge: Known<N>,
  width: Known<Mm>,
  support: Known<Mm>,
): Worked<N> {
  const w = known(spread, "spread load", "N/mm");
  const P = known(edge, "load at the free edge", "N");
  const { W, a } = placed(width, support);
  return work({
    says: "load on the support",
    unit: "N",
    formula: "R_a = (w·W²/2 + P·W) / a",
    inputs: { w, P, W, a },
    value: newtons(((w.value * W.value ** 2) / 2 + P.value * W.value) / a.value),
    source: STATICS,
  });
}

/**
 * What the hinge of a borne bar bears, all its hinges together.
 *
 * @param spread  load per length from the hinge to the edge [N/mm]
 * @param edge  load at the free edge [N]
 * @param width  from the hinge to the free edge [mm]
 * @param support  from the hinge to the support, above 0, at most `width` [mm]
 * @returns upward push of the hinge; negative when the bar lifts there and pulls at its screws [N]
 * @throws Problem "support-off-bar"
 */
export function hingeReaction(
  spread: Known<NPerMm>,
  edge: Known<N>,
  width: Known<Mm>,
  support: Known<Mm>,
): Worked<N> {
  const w = known(spread, "spread load", "N/mm");
  const P = known(edge, "load at the free edge", "N");
  const { W } = placed(width, support);
  const R = loadOnSupport(w, P, W, support);
  return work({
    says: "borne by the hinge",
    unit: "N",
    formula: "R₀ = w·W + P − R_a",
    inputs: { w, W, P, R_a: R },
    value: newtons(w.value * W.value + P.value - R.value),
    source: STATICS,
  });
}

/**
 * What each of several like arms bears.
 *
 * @param load  on all of them [N]
 * @param arms  that share it evenly, 1 or more [pieces]
 * @returns load on one [N]
 */
export function loadPerArm(load: Known<N>, arms: Known<Count>): Worked<N> {
  const R = known(load, "load on the support", "N");
  const n = known(arms, "arms", "pieces");
  return work({
    says: "load on each arm",
    unit: "N",
    formula: "F = R/n",
    inputs: { R, n },
    value: newtons(R.value / n.value),
    source: derived("arithmetic"),
  });
}
