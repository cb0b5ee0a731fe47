import { type Mm, type Mm4, type MPa, mm, type N, type NPerMm } from "../units/index.ts";
import { derived, type Known, known, type Worked, work } from "../worked/index.ts";
import { BENDING } from "./beam.ts";
import { placed } from "./hinged-bar.ts";

/*
 * A bar hinged at one side and borne some way out, with a free edge beyond: a table's leaf on an
 * arm. Bending alone: shear adds the share 0.3·(E/G)·t²/(a·o) to the sag under a load at the edge,
 * a few hundredths in a leaf of ordinary size.
 */

function beyondSupport(width: Known<Mm>, support: Known<Mm>) {
  const { W, a } = placed(width, support);
  const o = work({
    says: "free beyond the support",
    unit: "mm",
    formula: "o = W − a",
    inputs: { W, a },
    value: mm(W.value - a.value),
    source: derived("arithmetic"),
  });
  return { a, o };
}

/**
 * Sag of the free edge of a hinged, borne bar under an even load, its own weight for instance.
 *
 * @param load  per length from the hinge to the edge [N/mm]
 * @param width  from the hinge to the free edge [mm]
 * @param support  from the hinge to the support, above 0, at most `width` [mm]
 * @param modulus  in the direction that bends, above 0: across the grain where the grain runs along the hinge [N/mm²]
 * @param moment  of the section, above 0 [mm⁴]
 * @returns deflection, downward positive; negative where the part within sags and tips the edge up [mm]
 * @throws Problem "support-off-bar"
 */
export function edgeSagUnderSpread(
  load: Known<NPerMm>,
  width: Known<Mm>,
  support: Known<Mm>,
  modulus: Known<MPa>,
  moment: Known<Mm4>,
): Worked<Mm> {
  const w = known(load, "spread load", "N/mm");
  const { a, o } = beyondSupport(width, support);
  const E = known(modulus, "stiffness", "N/mm²");
  const I = known(moment, "second moment of the section", "mm⁴");
  const powers = 3 * o.value ** 3 + 4 * a.value * o.value ** 2 - a.value ** 3;
  return work({
    says: "sag of the free edge under the spread load",
    unit: "mm",
    formula: "δ = w·o·(3·o³ + 4·a·o² − a³) / (24·E·I)",
    inputs: { w, o, a, E, I },
    value: mm((w.value * o.value * powers) / (24 * E.value * I.value)),
    source: BENDING,
  });
}

/**
 * Sag of the free edge of a hinged, borne bar under a load at that edge.
 *
 * @param load  at the free edge [N]
 * @param width  from the hinge to the free edge [mm]
 * @param support  from the hinge to the support, above 0, at most `width` [mm]
 * @param modulus  in the direction that bends, above 0: across the grain where the grain runs along the hinge [N/mm²]
 * @param moment  of the section, above 0 [mm⁴]
 * @returns deflection, downward positive [mm]
 * @throws Problem "support-off-bar"
 */
export function edgeSagUnderPoint(
  load: Known<N>,
  width: Known<Mm>,
  support: Known<Mm>,
  modulus: Known<MPa>,
  moment: Known<Mm4>,
): Worked<Mm> {
  const P = known(load, "load at the free edge", "N");
  const { a, o } = beyondSupport(width, support);
  const E = known(modulus, "stiffness", "N/mm²");
  const I = known(moment, "second moment of the section", "mm⁴");
  return work({
    says: "sag of the free edge under the load there",
    unit: "mm",
    formula: "δ = P·o²·(a + o) / (3·E·I)",
    inputs: { P, o, a, E, I },
    value: mm((P.value * o.value ** 2 * (a.value + o.value)) / (3 * E.value * I.value)),
    source: BENDING,
  });
}

/**
 * How far the free edge sinks because its support gives way: the bar turns about its hinge.
 *
 * @param drop  of the support [mm]
 * @param width  from the hinge to the free edge [mm]
 * @param support  from the hinge to the support, above 0, at most `width` [mm]
 * @returns drop of the edge, downward positive [mm]
 * @throws Problem "support-off-bar"
 */
export function edgeDrop(drop: Known<Mm>, width: Known<Mm>, support: Known<Mm>): Worked<Mm> {
  const y = known(drop, "drop of the support", "mm");
  const { W, a } = placed(width, support);
  return work({
    says: "drop of the free edge with its support",
    unit: "mm",
    formula: "δ = y·W/a",
    inputs: { y, W, a },
    value: mm((y.value * W.value) / a.value),
    source: derived("geometry of a bar that turns about its hinge"),
  });
}
