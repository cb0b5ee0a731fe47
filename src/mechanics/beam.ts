import {
  type Mm,
  type Mm4,
  type MPa,
  mm,
  mm4,
  mpa,
  type N,
  type NMm,
  type NPerMm,
  newtonMm,
  newtonsPerMm,
  type Ratio,
} from "../units/index.ts";
import { derived, type Known, known, type Worked, work } from "../worked/index.ts";

export const BENDING = derived("textbook bending (Euler and Bernoulli)");

/**
 * Second moment of area of a rectangle about its middle, bending through its thickness.
 *
 * @param breadth  across the bending, above 0 [mm]
 * @param thickness  in the direction of bending, above 0 [mm]
 * @returns second moment [mm⁴]
 */
export function secondMoment(breadth: Known<Mm>, thickness: Known<Mm>): Worked<Mm4> {
  const b = known(breadth, "breadth", "mm");
  const t = known(thickness, "thickness", "mm");
  return work({
    says: "second moment of the section",
    unit: "mm⁴",
    formula: "I = b·t³/12",
    inputs: { b, t },
    value: mm4((b.value * t.value ** 3) / 12),
    source: BENDING,
  });
}

/**
 * A load spread evenly over a length.
 *
 * @param load  in all [N]
 * @param span  it lies on, above 0 [mm]
 * @returns load per length [N/mm]
 */
export function spreadLoad(load: Known<N>, span: Known<Mm>): Worked<NPerMm> {
  const F = known(load, "load in all", "N");
  const L = known(span, "span", "mm");
  return work({
    says: "spread load",
    unit: "N/mm",
    formula: "w = F/L",
    inputs: { F, L },
    value: newtonsPerMm(F.value / L.value),
    source: derived("arithmetic"),
  });
}

/**
 * Sag in the middle of a bar on two supports under an even load.
 *
 * @param load  per length [N/mm]
 * @param span  between supports, above 0 [mm]
 * @param modulus  along the grain, above 0 [N/mm²]
 * @param moment  of the section, above 0 [mm⁴]
 * @returns deflection, downward positive [mm]
 */
export function sagUnderSpread(
  load: Known<NPerMm>,
  span: Known<Mm>,
  modulus: Known<MPa>,
  moment: Known<Mm4>,
): Worked<Mm> {
  const w = known(load, "spread load", "N/mm");
  const L = known(span, "span", "mm");
  const E = known(modulus, "stiffness", "N/mm²");
  const I = known(moment, "second moment of the section", "mm⁴");
  return work({
    says: "sag in the middle",
    unit: "mm",
    formula: "δ = 5·w·L⁴ / (384·E·I)",
    inputs: { w, L, E, I },
    value: mm((5 * w.value * L.value ** 4) / (384 * E.value * I.value)),
    source: BENDING,
  });
}

/**
 * Sag in the middle of a bar on two supports under a load at mid span.
 *
 * @param load  at the middle [N]
 * @param span  between supports, above 0 [mm]
 * @param modulus  along the grain, above 0 [N/mm²]
 * @param moment  of the section, above 0 [mm⁴]
 * @returns deflection, downward positive [mm]
 */
export function sagUnderPoint(
  load: Known<N>,
  span: Known<Mm>,
  modulus: Known<MPa>,
  moment: Known<Mm4>,
): Worked<Mm> {
  const F = known(load, "load at the middle", "N");
  const L = known(span, "span", "mm");
  const E = known(modulus, "stiffness", "N/mm²");
  const I = known(moment, "second moment of the section", "mm⁴");
  return work({
    says: "sag in the middle",
    unit: "mm",
    formula: "δ = F·L³ / (48·E·I)",
    inputs: { F, L, E, I },
    value: mm((F.value * L.value ** 3) / (48 * E.value * I.value)),
    source: BENDING,
  });
}

/**
 * Drop of the free end of a bar held at the other.
 *
 * @param load  at the free end [N]
 * @param reach  free length, above 0 [mm]
 * @param modulus  along the grain, above 0 [N/mm²]
 * @param moment  of the section, above 0 [mm⁴]
 * @returns deflection, downward positive [mm]
 */
export function droopOfArm(
  load: Known<N>,
  reach: Known<Mm>,
  modulus: Known<MPa>,
  moment: Known<Mm4>,
): Worked<Mm> {
  const F = known(load, "load at the end", "N");
  const L = known(reach, "free length", "mm");
  const E = known(modulus, "stiffness", "N/mm²");
  const I = known(moment, "second moment of the section", "mm⁴");
  return work({
    says: "drop of the free end",
    unit: "mm",
    formula: "δ = F·L³ / (3·E·I)",
    inputs: { F, L, E, I },
    value: mm((F.value * L.value ** 3) / (3 * E.value * I.value)),
    source: BENDING,
  });
}

/**
 * Greatest bending moment of a bar on two supports under an even load.
 *
 * @param load  per length [N/mm]
 * @param span  between supports [mm]
 * @returns moment at the middle [N·mm]
 */
export function momentUnderSpread(load: Known<NPerMm>, span: Known<Mm>): Worked<NMm> {
  const w = known(load, "spread load", "N/mm");
  const L = known(span, "span", "mm");
  return work({
    says: "bending moment in the middle",
    unit: "N·mm",
    formula: "M = w·L²/8",
    inputs: { w, L },
    value: newtonMm((w.value * L.value ** 2) / 8),
    source: BENDING,
  });
}

/**
 * Greatest bending moment of a bar on two supports under a load at mid span.
 *
 * @param load  at the middle [N]
 * @param span  between supports [mm]
 * @returns moment at the middle [N·mm]
 */
export function momentUnderPoint(load: Known<N>, span: Known<Mm>): Worked<NMm> {
  const F = known(load, "load at the middle", "N");
  const L = known(span, "span", "mm");
  return work({
    says: "bending moment in the middle",
    unit: "N·mm",
    formula: "M = F·L/4",
    inputs: { F, L },
    value: newtonMm((F.value * L.value) / 4),
    source: BENDING,
  });
}

/**
 * Bending stress at the surface of a section.
 *
 * @param moment  bending moment [N·mm]
 * @param depth  of the section in the direction of bending, above 0 [mm]
 * @param secondMomentOfArea  of the section, above 0 [mm⁴]
 * @returns stress [N/mm²]
 */
export function bendingStress(
  moment: Known<NMm>,
  depth: Known<Mm>,
  secondMomentOfArea: Known<Mm4>,
): Worked<MPa> {
  const M = known(moment, "bending moment", "N·mm");
  const t = known(depth, "thickness", "mm");
  const I = known(secondMomentOfArea, "second moment of the section", "mm⁴");
  return work({
    says: "bending stress",
    unit: "N/mm²",
    formula: "σ = M·(t/2)/I",
    inputs: { M, t, I },
    value: mpa((M.value * (t.value / 2)) / I.value),
    source: BENDING,
  });
}

/**
 * A deflection after years under a load that stays.
 *
 * @param first  deflection when loaded [mm]
 * @param factor  how much it grows to, 1 or more [1]
 * @returns deflection then [mm]
 */
export function sagInTheLongRun(first: Known<Mm>, factor: Known<Ratio>): Worked<Mm> {
  const d = known(first, "sag when loaded", "mm");
  const k = known(factor, "growth under a load that stays", "1");
  return work({
    says: "sag after years",
    unit: "mm",
    formula: "δ_years = k·δ",
    inputs: { k, δ: d },
    value: mm(k.value * d.value),
    source: derived("definition of the long-term factor"),
  });
}
