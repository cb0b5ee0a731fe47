import { type Mm, mm } from "../units/index.ts";
import { derived, type Known, known, Problem, type Worked, work } from "../worked/index.ts";

/** Where every formula of the joint's section comes from. */
export const SECTION = derived("geometry of the joint's section");

/**
 * A rule joint in section. The round-over's centre is the origin: x out to the leaf, y up; the
 * fillet's wall stands at x = 0, the face at y = f + R, the underside at y = −b.
 */
export type RuleJoint = {
  /** of the round-over on the fixed top [mm] */
  readonly radius: Known<Mm>;
  /** radius of the cove in the leaf [mm] */
  readonly cove: Known<Mm>;
  /** how far leaf and cove are set out at the fillet, closed [mm] */
  readonly setOut: Known<Mm>;
  /** fillet less lip: what the lip stays off the round-over's crown, closed [mm] */
  readonly crownGap: Known<Mm>;
  /** pin out from the round-over's centre, towards the leaf [mm] */
  readonly pinOut: Known<Mm>;
  /** pin above that centre [mm] */
  readonly pinUp: Known<Mm>;
  /** of top and leaf [mm] */
  readonly thickness: Known<Mm>;
  /** height of the round-over's centre over the underside [mm] */
  readonly centreHeight: Known<Mm>;
  /** taken off the fixed top's lower edge, slanting from pin level down [mm] */
  readonly bevel: Known<Mm>;
  /** lip cut short of the upright line through the cove's centre; none when left out [mm] */
  readonly lipTrim?: Known<Mm>;
};

/** The same section as plain numbers in millimetres, under the letters of the formulas. */
export type Sizes = {
  readonly R: number;
  readonly Rc: number;
  readonly c: number;
  readonly g: number;
  readonly k: number;
  readonly dx: number;
  readonly dy: number;
  readonly t: number;
  readonly b: number;
  readonly f: number;
  readonly u: number;
  readonly trim: number;
};

/**
 * The value of an argument that may bring its reasoning along.
 *
 * @param known  a length, worked or plain [mm]
 */
const plain = (known: Known<Mm>): number => (typeof known === "object" ? known.value : known);

/**
 * A section's sizes as plain numbers, refused where they make no joint.
 *
 * @throws Problem "rule-joint-section"
 */
export function sizesOf(joint: RuleJoint): Sizes {
  const [R, Rc, t, b] = [joint.radius, joint.cove, joint.thickness, joint.centreHeight].map(
    plain,
  ) as [number, number, number, number];
  const u = plain(joint.bevel);
  const trim = joint.lipTrim === undefined ? 0 : plain(joint.lipTrim);
  const dx = plain(joint.pinOut);
  if (!(R > 0) || !(Rc > 0)) throw noJoint("radius, cove", "A radius is missing.", "Give both.");
  const f = t - R - b;
  if (!(b > 0) || !(f > 0))
    throw noJoint(
      "thickness, radius",
      `A ${R.toFixed(1)} mm radius with ${b.toFixed(1)} mm below its centre leaves no fillet in ${t.toFixed(1)} mm.`,
      "Take a smaller radius or thicker wood.",
    );
  if (u < 0 || u >= R - Math.max(0, dx))
    throw noJoint(
      "bevel",
      "The bevel takes the whole edge.",
      "Keep it well within the round-over.",
    );
  if (trim < 0 || trim >= Rc)
    throw noJoint("trim", "The lip is cut away.", "Trim less than the cove's radius.");
  return {
    R,
    Rc,
    c: Rc - R,
    g: plain(joint.setOut),
    k: plain(joint.crownGap),
    dx,
    dy: plain(joint.pinUp),
    t,
    b,
    f,
    u,
    trim,
  };
}

const noJoint = (place: string, reason: string, remedy: string) =>
  new Problem("rule-joint-section", place, reason, remedy);

/** A section's sizes as inputs of formulas, under the letters used there. */
export function inputsOf(joint: RuleJoint) {
  sizesOf(joint);
  return {
    R: known(joint.radius, "radius of the round-over", "mm"),
    c: radialClearance(joint.cove, joint.radius),
    g: known(joint.setOut, "set-out of the leaf at the fillet", "mm"),
    κ: known(joint.crownGap, "crown gap, fillet less lip", "mm"),
    d_x: known(joint.pinOut, "pin out from the round-over's centre", "mm"),
    d_y: known(joint.pinUp, "pin above the round-over's centre", "mm"),
    t: known(joint.thickness, "thickness", "mm"),
    b: known(joint.centreHeight, "round-over's centre over the underside", "mm"),
    u: known(joint.bevel, "bevel of the fixed top's lower edge", "mm"),
    τ: known(joint.lipTrim ?? mm(0), "lip cut short", "mm"),
  };
}

/**
 * Cove's radius over the round-over's: nothing for a pair of cutters of one size.
 *
 * @param cove  radius, measured [mm]
 * @param radius  of the round-over, measured [mm]
 * @returns difference, negative when the cove is the smaller [mm]
 */
export function radialClearance(cove: Known<Mm>, radius: Known<Mm>): Worked<Mm> {
  const R_c = known(cove, "radius of the cove", "mm");
  const R = known(radius, "radius of the round-over", "mm");
  return work({
    says: "cove over round-over",
    unit: "mm",
    formula: "c = R_c − R",
    inputs: { R_c, R },
    value: mm(R_c.value - R.value),
    source: SECTION,
  });
}

/**
 * Depth of the step above the round-over.
 *
 * @param thickness  of the top [mm]
 * @param radius  of the round-over [mm]
 * @param centreHeight  of the round-over's centre over the underside [mm]
 * @returns fillet [mm]
 */
export function filletDepth(
  thickness: Known<Mm>,
  radius: Known<Mm>,
  centreHeight: Known<Mm>,
): Worked<Mm> {
  const t = known(thickness, "thickness", "mm");
  const R = known(radius, "radius of the round-over", "mm");
  const b = known(centreHeight, "round-over's centre over the underside", "mm");
  return work({
    says: "fillet",
    unit: "mm",
    formula: "f = t − R − b",
    inputs: { t, R, b },
    value: mm(t.value - R.value - b.value),
    source: SECTION,
  });
}

/**
 * Where a fillet puts the round-over's centre: over the underside.
 *
 * @param thickness  of the top [mm]
 * @param radius  of the round-over [mm]
 * @param fillet  depth of the step above it [mm]
 * @returns height of the centre [mm]
 */
export function centreHeight(
  thickness: Known<Mm>,
  radius: Known<Mm>,
  fillet: Known<Mm>,
): Worked<Mm> {
  const t = known(thickness, "thickness", "mm");
  const R = known(radius, "radius of the round-over", "mm");
  const f = known(fillet, "fillet", "mm");
  return work({
    says: "round-over's centre over the underside",
    unit: "mm",
    formula: "b = t − R − f",
    inputs: { t, R, f },
    value: mm(t.value - R.value - f.value),
    source: SECTION,
  });
}

/**
 * What is left of the leaf above the cove, at its end.
 *
 * @returns thickness of the lip [mm]
 * @throws Problem "rule-joint-section"
 */
export function lipThickness(joint: RuleJoint): Worked<Mm> {
  const { κ, t, R, b } = inputsOf(joint);
  return work({
    says: "lip of the leaf at its end",
    unit: "mm",
    formula: "l = t − R − b − κ",
    inputs: { t, R, b, κ },
    value: mm(t.value - R.value - b.value - κ.value),
    source: SECTION,
  });
}
