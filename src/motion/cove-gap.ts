import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import {
  derived,
  type Given,
  given,
  type Known,
  known,
  type Worked,
  work,
} from "../worked/index.ts";
import { inputsOf, type RuleJoint, SECTION, type Sizes, sizesOf } from "./rule-joint.ts";

const RIGHT = Math.PI / 2;
const FOUND = derived("least of the few angles at which the gap can turn");

/**
 * Gap between cove and round-over, to first order: a point of the round-over at φ faces the cove at
 * ψ when the leaf is down by ψ − φ.
 *
 * @param phi  direction on the round-over, 0 level to 90 at its crown [°]
 * @param psi  direction in the leaf, from φ to 90 [°]
 * @returns gap [mm], negative where they overlap
 * @throws Problem "rule-joint-section"
 */
export function coveGap(joint: RuleJoint, phi: Known<Deg>, psi: Known<Deg>): Worked<Mm> {
  const { c, g, κ, d_x, d_y } = inputsOf(joint);
  const φ = known(phi, "direction on the round-over", "°");
  const ψ = known(psi, "direction in the leaf", "°");
  return work({
    says: "gap between cove and round-over",
    unit: "mm",
    formula:
      "G = c + g·cos(ψ·π/180) + (κ − c)·sin(ψ·π/180) + d_x·(cos(φ·π/180) − cos(ψ·π/180)) + d_y·(sin(φ·π/180) − sin(ψ·π/180))",
    inputs: { c, g, κ, d_x, d_y, φ, ψ },
    value: mm(gapOf(sizesOf(joint), (φ.value * Math.PI) / 180, (ψ.value * Math.PI) / 180)),
    source: SECTION,
    notes: [
      "to first order: within a few hundredths of a millimetre for a pin within a millimetre",
    ],
  });
}

const gapOf = ({ c, g, k, dx, dy }: Sizes, phi: number, psi: number): number =>
  c +
  g * Math.cos(psi) +
  (k - c) * Math.sin(psi) +
  dx * (Math.cos(phi) - Math.cos(psi)) +
  dy * (Math.sin(phi) - Math.sin(psi));

/** Where the first-order gap is least over the swing: φ and ψ in radians. */
function tightestAngles(s: Sizes): { readonly phi: number; readonly psi: number } {
  const end = Math.acos(s.trim / s.Rc);
  const round = (a: number) => a - 2 * Math.PI * Math.floor(a / (2 * Math.PI));
  const away = round(Math.atan2(s.dy, s.dx) + Math.PI);
  const towards = round(Math.atan2(s.dy - (s.k - s.c), s.dx - s.g));
  const both = round(Math.atan2(s.k - s.c, s.g) + Math.PI);
  const inRange = (a: number) => a >= 0 && a <= end;
  const phis = [0, end, away, both].filter(inRange);
  const psis = [end, 0, towards, both].filter(inRange);
  const pairs = phis.flatMap((phi) =>
    psis.filter((psi) => psi >= phi - 1e-12).map((psi) => ({ phi, psi })),
  );
  // Only by more than a hair, so that equal gaps are not told apart by rounding.
  return pairs.reduce(
    (least, one) =>
      gapOf(s, one.phi, one.psi) < gapOf(s, least.phi, least.psi) - 1e-9 ? one : least,
    { phi: 0, psi: 0 },
  );
}

/** An angle found is told to so many parts of a degree: the rest would be noise. */
const PARTS = 1e4;
const found = (says: string, radians: number): Given<Deg> => {
  const value = Math.round(((radians * 180) / Math.PI) * PARTS) / PARTS;
  return given(says, deg(value), "°", FOUND);
};

/** Where cove and round-over come closest over the swing, to first order. */
export type TightestPlace = {
  /** on the round-over, 0 at its foot, 90 at its crown [°] */
  readonly onRoundOver: Given<Deg>;
  /** in the leaf, the same way [°] */
  readonly inLeaf: Given<Deg>;
  /** leaf down by this [°] */
  readonly swing: Worked<Deg>;
};

/**
 * Where cove and round-over come closest over the swing, to first order.
 *
 * @throws Problem "rule-joint-section"
 */
export function tightestPlace(joint: RuleJoint): TightestPlace {
  const { phi, psi } = tightestAngles(sizesOf(joint));
  const φ = found("tightest direction on the round-over", phi);
  const ψ = found("tightest direction in the leaf", psi);
  const swing = work({
    says: "tightest with the leaf down by",
    unit: "°",
    formula: "θ = ψ − φ",
    inputs: { ψ, φ },
    value: deg(ψ.value - φ.value),
    source: SECTION,
  });
  return { onRoundOver: φ, inLeaf: ψ, swing };
}

/**
 * Least gap between cove and round-over over the whole swing, to first order.
 *
 * @returns gap [mm], negative where they would overlap
 * @throws Problem "rule-joint-section"
 */
export function coveClearance(joint: RuleJoint): Worked<Mm> {
  const { onRoundOver, inLeaf } = tightestPlace(joint);
  return coveGap(joint, onRoundOver, inLeaf);
}

/**
 * Radial clearance that a pin off the common centre uses up over the swing, exact, for a cove whose
 * centre is the round-over's: no set-out, and a crown gap as large as the clearance.
 *
 * @param radius  of the round-over [mm]
 * @param pinOut  pin towards the leaf [mm]
 * @param pinUp  pin above the centre [mm]
 * @returns clearance needed, 0 or more [mm]
 */
export function clearanceNeeded(
  radius: Known<Mm>,
  pinOut: Known<Mm>,
  pinUp: Known<Mm>,
): Worked<Mm> {
  const R = known(radius, "radius of the round-over", "mm");
  const d_x = known(pinOut, "pin out from the round-over's centre", "mm");
  const d_y = known(pinUp, "pin above the round-over's centre", "mm");
  const { formula, value } = needed(R.value, d_x.value, d_y.value);
  return work({
    says: "clearance that the pin's place uses up",
    unit: "mm",
    formula,
    inputs: Object.fromEntries(
      Object.entries({ R, d_x, d_y }).filter(([name]) => formula.includes(name)),
    ),
    value: mm(value),
    source: SECTION,
  });
}

function needed(R: number, x: number, y: number): { formula: string; value: number } {
  const apart = Math.sqrt(x ** 2 + y ** 2);
  const atTip = {
    formula: "c_n = √((R + d_y − d_x)² + (d_x + d_y)²) − R",
    value: Math.sqrt((R + y - x) ** 2 + (x + y) ** 2) - R,
  };
  if (x >= 0 && y <= 0) return { formula: "c_n = max(0, min(d_y, −d_x))", value: 0 };
  if (x >= 0) {
    const isReached = Math.atan2(y, x) + Math.atan2(y, R - x) <= RIGHT;
    return isReached
      ? {
          formula: "c_n = √(d_x² + d_y²) + √((R − d_x)² + d_y²) − R",
          value: apart + Math.sqrt((R - x) ** 2 + y ** 2) - R,
        }
      : atTip;
  }
  if (y >= 0) return x + y >= 0 ? atTip : { formula: "c_n = d_y − d_x", value: y - x };
  return {
    formula: "c_n = √((R + √(d_x² + d_y²))² − d_x²) + d_y − R",
    value: Math.sqrt((R + apart) ** 2 - x ** 2) + y - R,
  };
}
