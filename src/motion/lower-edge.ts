import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { derived, given, type Known, known, Problem, type Worked, work } from "../worked/index.ts";
import { inputsOf, type RuleJoint, SECTION, type Sizes, sizesOf } from "./rule-joint.ts";

const FOUND = derived("least of start, end and the few directions at which it can turn");

/**
 * How far the fixed top's lower edge is from the pin: it swings, seen from the leaf, on that radius.
 *
 * @returns distance [mm]
 * @throws Problem "rule-joint-section"
 */
export function lowerEdgeReach(joint: RuleJoint): Worked<Mm> {
  const { R, d_x, d_y, b, u } = inputsOf(joint);
  return work({
    says: "lower edge of the fixed top from the pin",
    unit: "mm",
    formula: "r_Q = √((R − u − d_x)² + (b + d_y)²)",
    inputs: { R, u, d_x, b, d_y },
    value: mm(reachOf(sizesOf(joint))),
    source: SECTION,
  });
}

const reachOf = ({ R, u, dx, dy, b }: Sizes): number =>
  Math.sqrt((R - u - dx) ** 2 + (b + dy) ** 2);

type Place = {
  readonly beta: number;
  readonly gap: number;
  readonly facing: "wall, level" | "wall" | "cove";
};

/** Where the lower edge comes closest to the leaf, beta being its direction from the pin, in radians. */
function closest(s: Sizes): Place {
  const r = reachOf(s);
  const start = Math.atan2(-s.b - s.dy, s.R - s.u - s.dx);
  const end = start + Math.PI / 2;
  const centre = { x: s.g, y: s.k - s.c };
  const across = Math.asin(Math.max(-1, Math.min(1, (centre.y - s.dy) / r)));
  const betas = [
    0,
    start,
    across,
    Math.PI - across,
    Math.atan2(s.dy - centre.y, s.dx - centre.x),
    end,
  ];
  const places = betas
    .filter((beta) => beta >= start && beta <= end)
    .map((beta): Place => {
      const [x, y] = [s.dx + r * Math.cos(beta), s.dy + r * Math.sin(beta)];
      if (y <= centre.y + 1e-12)
        return { beta, gap: s.g + s.Rc - x, facing: beta === 0 ? "wall, level" : "wall" };
      const isPastLip = x - centre.x < s.trim;
      const gap = isPastLip
        ? Number.POSITIVE_INFINITY
        : s.Rc - Math.hypot(x - centre.x, y - centre.y);
      return { beta, gap, facing: "cove" };
    });
  const [first, ...others] = places;
  if (!first) throw new Error("the lower edge starts somewhere");
  return others.reduce((least, one) => (one.gap < least.gap - 1e-9 ? one : least), first);
}

/**
 * Least clearance of the fixed top's lower edge from the leaf through the swing, exact.
 *
 * @returns clearance [mm], negative where it rubs
 * @throws Problem "rule-joint-section"
 */
export function lowerEdgeClearance(joint: RuleJoint): Worked<Mm> {
  const { R, c, g, κ, d_x, d_y } = inputsOf(joint);
  const { beta, facing } = closest(sizesOf(joint));
  const r_Q = lowerEdgeReach(joint);
  const β = given(
    "direction of the lower edge, seen from the pin, where it is closest",
    deg((beta * 180) / Math.PI),
    "°",
    FOUND,
  );
  const says = "clearance of the fixed top's lower edge";
  const whole = { says, unit: "mm", source: SECTION } as const;
  if (facing === "wall, level")
    return work({
      ...whole,
      formula: "G = c + g − (d_x + r_Q − R)",
      inputs: { c, g, d_x, r_Q, R },
      value: mm(c.value + g.value - (d_x.value + r_Q.value - R.value)),
    });
  const radians = (β.value * Math.PI) / 180;
  const across = r_Q.value * Math.cos(radians);
  if (facing === "wall")
    return work({
      ...whole,
      formula: "G = R + c + g − d_x − r_Q·cos(β·π/180)",
      inputs: { R, c, g, d_x, r_Q, β },
      value: mm(R.value + c.value + g.value - d_x.value - across),
    });
  const x = d_x.value + across - g.value;
  const y = d_y.value + r_Q.value * Math.sin(radians) - κ.value + c.value;
  return work({
    ...whole,
    formula: "G = R + c − √((d_x + r_Q·cos(β·π/180) − g)² + (d_y + r_Q·sin(β·π/180) − κ + c)²)",
    inputs: { R, c, g, κ, d_x, d_y, r_Q, β },
    value: mm(R.value + c.value - Math.sqrt(x ** 2 + y ** 2)),
  });
}

/**
 * Bevel of the fixed top's lower edge that frees it from the leaf's wall, for a pin at the height of
 * the round-over's centre or below; one above it wants a little more.
 *
 * @returns width of the bevel, 0 when none is needed [mm]
 * @throws Problem "rule-joint-section", "no-bevel-frees" when even a whole bevel would rub
 */
export function bevelNeeded(joint: RuleJoint): Worked<Mm> {
  const { R, c, g, d_x, d_y, b } = inputsOf(joint);
  const open = R.value + c.value + g.value - d_x.value;
  const deep = b.value + d_y.value;
  const left = open ** 2 - deep ** 2;
  if (!(open > 0) || left < 0)
    throw new Problem(
      "no-bevel-frees",
      "fillet, pin",
      "The pin stands so high that no bevel of the lower edge frees the leaf.",
      "Set the pin lower, or take a larger radius.",
    );
  return work({
    says: "bevel that frees the lower edge",
    unit: "mm",
    formula: "u = max(0, R − d_x − √((R + c + g − d_x)² − (b + d_y)²))",
    inputs: { R, c, g, d_x, d_y, b },
    value: mm(Math.max(0, R.value - d_x.value - Math.sqrt(left))),
    source: SECTION,
  });
}

/**
 * Swing at which the lower edge starts to rub, for a pin at the height of the round-over's centre or
 * below; undefined when it does not.
 *
 * @returns leaf down by this [°]
 * @throws Problem "rule-joint-section"
 */
export function rubStarts(joint: RuleJoint): Worked<Deg> | undefined {
  const { R, c, g, d_x, d_y, b, u } = inputsOf(joint);
  const r_Q = lowerEdgeReach(joint);
  const a = R.value + c.value + g.value - d_x.value;
  if (!(r_Q.value > a) || !(a > 0)) return undefined;
  const radians =
    Math.atan((b.value + d_y.value) / (R.value - u.value - d_x.value)) -
    Math.atan(Math.sqrt(r_Q.value ** 2 - a * a) / a);
  return work({
    says: "lower edge starts to rub",
    unit: "°",
    formula:
      "θ = 180/π·(arctan((b + d_y)/(R − u − d_x)) − arctan(√(r_Q² − (R + c + g − d_x)²)/(R + c + g − d_x)))",
    inputs: { R, c, g, d_x, d_y, b, u, r_Q },
    value: deg((radians * 180) / Math.PI),
    source: SECTION,
  });
}

/**
 * Highest round-over's centre over the underside whose square lower edge still passes, the pin at
 * that centre.
 *
 * @param cove  radius of the cove [mm]
 * @param clearance  cove over round-over, with the set-out, 0 or more [mm]
 * @returns height [mm]
 */
export function highestCentre(cove: Known<Mm>, clearance: Known<Mm>): Worked<Mm> {
  const R_c = known(cove, "radius of the cove", "mm");
  const c = known(clearance, "clearance, set-out included", "mm");
  return work({
    says: "highest centre with a square lower edge",
    unit: "mm",
    formula: "b_max = √(max(0, 2·(R_c − c)·c + c²))",
    inputs: { R_c, c },
    value: mm(Math.sqrt(Math.max(0, 2 * (R_c.value - c.value) * c.value + c.value ** 2))),
    source: SECTION,
  });
}
