import {
  type Count,
  count,
  type Mm,
  MPA_PER_PSI,
  type MPa,
  mm,
  mpa,
  type N,
  NEWTONS_PER_POUND_FORCE,
  newtons,
} from "../units/index.ts";
import {
  type Caution,
  commonPractice,
  derived,
  type Given,
  given,
  type Known,
  known,
  Problem,
  published,
  type Worked,
  work,
} from "../worked/index.ts";

/** How hard a wood wants to be pressed: by its density. */
export type GlueWood = "softwood" | "hardwood";

const ADVICE = published(
  "Clamping pressure",
  "a glue maker's advice, quoted by trade pages",
  "secondary",
);

/** Pressure wanted in the glue line [psi], least and most. */
const pressures: Readonly<Record<GlueWood, readonly [number, number]>> = {
  softwood: [100, 150],
  hardwood: [175, 250],
};

/**
 * Pressure wanted in a glue line.
 *
 * @param wood  softwood or hardwood
 * @param end  least or most of the range
 */
export function gluePressure(wood: GlueWood, end: "least" | "most"): Given<MPa> {
  const psi = pressures[wood][end === "least" ? 0 : 1];
  return given(`pressure for ${wood}, ${end}`, mpa(psi * MPA_PER_PSI), "N/mm²", ADVICE);
}

/** Kinds of clamp whose force was measured [lbf]. */
const forces = { pipe: 1050, "parallel-jaw": 370, "I-bar": 1350 } as const;
export type ClampKind = keyof typeof forces;
export const clampKinds = Object.keys(forces) as readonly ClampKind[];

/** What one clamp of a kind gives, wound up by hand. */
export const clampForceOf = (kind: ClampKind): Given<N> =>
  given(
    `force of one ${kind} clamp`,
    newtons(forces[kind] * NEWTONS_PER_POUND_FORCE),
    "N",
    published("Fine Woodworking, Nov/Dec 2007", "clamp forces measured by R. Rabiej", "secondary"),
  );

/**
 * Length of glue line that one clamp presses: its force fans out at 45° on both sides, through the
 * pad and the board nearest it.
 *
 * @param edgeBoard  width of the outermost board, above 0 [mm]
 * @param pad  width of the pad or batten between, 0 or more [mm]
 * @param head  length of the clamp's head along the panel, 0 or more [mm]
 * @returns length pressed [mm]
 */
export function clampCoverage(edgeBoard: Known<Mm>, pad: Known<Mm>, head: Known<Mm>): Worked<Mm> {
  const w = known(edgeBoard, "width of the outermost board", "mm");
  const p = known(pad, "width of the pad", "mm");
  const h = known(head, "length of the clamp's head", "mm");
  return work({
    says: "length one clamp presses",
    unit: "mm",
    formula: "c = 2·(w + p) + h",
    inputs: { w, p, h },
    value: mm(2 * (w.value + p.value) + h.value),
    source: derived("geometry of a 45° fan, as clamp guides draw it"),
  });
}

function checkPanel(L: number, c: number): void {
  if (!(L > 0) || !(c > 0)) {
    throw new Problem(
      "clamp-panel",
      "panel and clamp",
      "Length and reach of a clamp must be above nought.",
      "Give the panel's length and a clamp that presses.",
    );
  }
}

/**
 * Clamps so that their fans meet.
 *
 * @param length  of the glue line, above 0 [mm]
 * @param coverage  from `clampCoverage`, above 0 [mm]
 * @returns clamps [pieces]
 * @throws Problem "clamp-panel"
 */
export function clampsByFan(length: Known<Mm>, coverage: Known<Mm>): Worked<Count> {
  const L = known(length, "length of the glue line", "mm");
  const c = known(coverage, "length one clamp presses", "mm");
  checkPanel(L.value, c.value);
  return work({
    says: "clamps, so that their fans meet",
    unit: "pieces",
    formula: "N = ceil(L/c − 10⁻⁹)",
    inputs: { L, c },
    value: count(Math.ceil(L.value / c.value - 1e-9)),
    source: derived("geometry of a 45° fan"),
  });
}

/**
 * Force the whole glue line wants.
 *
 * @param pressure  in the glue line [N/mm²]
 * @param thickness  of the panel [mm]
 * @param length  of the glue line [mm]
 * @returns force [N]
 */
export function clampForce(
  pressure: Known<MPa>,
  thickness: Known<Mm>,
  length: Known<Mm>,
): Worked<N> {
  const p = known(pressure, "pressure in the glue line", "N/mm²");
  const t = known(thickness, "thickness of the panel", "mm");
  const L = known(length, "length of the glue line", "mm");
  return work({
    says: "force on the whole glue line",
    unit: "N",
    formula: "F = p·t·L",
    inputs: { p, t, L },
    value: newtons(p.value * t.value * L.value),
    source: derived("statics"),
  });
}

/**
 * Clamps to give that force.
 *
 * @param force  on the glue line [N]
 * @param perClamp  what one clamp gives, above 0 [N]
 * @returns clamps [pieces]
 * @throws Problem "clamp-panel"
 */
export function clampsByForce(force: Known<N>, perClamp: Known<N>): Worked<Count> {
  const F = known(force, "force on the whole glue line", "N");
  const f = known(perClamp, "force of one clamp", "N");
  checkPanel(F.value, f.value);
  return work({
    says: "clamps, by pressure",
    unit: "pieces",
    formula: "N = ceil(F/f − 10⁻⁹)",
    inputs: { F, f },
    value: count(Math.ceil(F.value / f.value - 1e-9)),
    source: derived("statics"),
  });
}

/**
 * The larger of two counts of clamps: both reach and pressure must be had.
 *
 * @param reach  clamps so that their fans meet [pieces]
 * @param force  clamps to give the force [pieces]
 * @returns clamps [pieces]
 */
export function clampsWanted(reach: Known<Count>, force: Known<Count>): Worked<Count> {
  const a = known(reach, "clamps, so that their fans meet", "pieces");
  const b = known(force, "clamps, by pressure", "pieces");
  return work({
    says: a.value >= b.value ? "clamps: their reach decides" : "clamps: the pressure decides",
    unit: "pieces",
    formula: "N = max(a, b)",
    inputs: { a, b },
    value: count(Math.max(a.value, b.value)),
    source: derived("both must be had"),
  });
}

export const clampCautions: readonly Caution[] = [
  {
    says: "Dry fit first: a joint that closes under hand pressure needs less. Clamps in turn above and below; the glue maker's sheet comes first.",
    source: commonPractice,
  },
];
