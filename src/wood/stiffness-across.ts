import { type MPa, mpa, type Ratio, ratio } from "../units/index.ts";
import { assumed, derived, type Given, given, type Worked, work } from "../worked/index.ts";
import { elasticRatios } from "./elastic.ts";
import { allSpecies, type Species } from "./species.ts";
import { modulusAlong, modulusByShare } from "./strength.ts";

const says = {
  E_T: "stiffness along the rings over that along the grain",
  E_R: "stiffness across the rings over that along the grain",
  G_RT: "shear stiffness, radius and ring",
  mu_RT: "Poisson's ratio RT",
} as const;

/** A timber's printed ratio; where none is printed, the mean of its kind in the table. */
function ratioOf(species: Species, which: keyof typeof says): Given<Ratio> {
  const printed = elasticRatios(species.key)?.[which];
  if (printed) return printed;
  const like = allSpecies
    .filter(({ isSoftwood }) => isSoftwood === species.isSoftwood)
    .flatMap(({ key }) => elasticRatios(key)?.[which]?.value ?? []);
  const mean = like.reduce((sum, value) => sum + value, 0) / like.length;
  const kind = species.isSoftwood ? "softwoods" : "hardwoods";
  const why = `mean of ${like.length} ${kind} in the Wood Handbook's Tables 5-1 and 5-2; our own estimate, not published`;
  return given(says[which], ratio(mean), "1", assumed(why));
}

const ESTIMATE =
  "a ratio that the handbook does not print for this timber is the mean of its kind: our own estimate, not published";
const estimateIn = (...ratios: readonly Given[]): readonly string[] =>
  ratios.some(({ source }) => source.kind === "assumed") ? [ESTIMATE] : [];

/**
 * Stiffness of a board bent across its grain, at about 12 % MC: a leaf whose grain runs along its
 * hinge, say. Bent so, the board's faces are stretched along its width. In a flatsawn board the
 * width runs along the rings, so the tangential modulus E_T applies; in a quartersawn one it runs
 * across them, and the radial E_R does. In a rift board the rings stand aslant and shear comes in:
 * the least of the two and of what they and the shear stiffness make at 45° is taken. In softwoods
 * that may be a quarter of either.
 *
 * The ratios are shares of the modulus along the grain, a tenth above the printed bending one.
 *
 * @param species  the timber
 * @param sawn  how the rings lie in the board
 * @returns modulus across the grain [N/mm²]
 * @source Wood Handbook, Tables 5-1 and 5-2 (second-hand or from memory, by species); where it has
 * none, the mean of its hardwoods or softwoods, our own estimate
 */
export function stiffnessAcross(species: Species, sawn: "flat" | "rift" | "quarter"): Worked<MPa> {
  const along = modulusAlong(species.stiffness);
  if (sawn === "rift") return stiffnessAslant(species, along);
  const share = ratioOf(species, sawn === "flat" ? "E_T" : "E_R");
  return {
    ...modulusByShare(along, share),
    says: "stiffness across the grain",
    notes: estimateIn(share),
  };
}

function stiffnessAslant(species: Species, along: Worked<MPa>): Worked<MPa> {
  const [t, r] = [ratioOf(species, "E_T"), ratioOf(species, "E_R")];
  const [g, mu] = [ratioOf(species, "G_RT"), ratioOf(species, "mu_RT")];
  const at45 = 4 / (1 / t.value + 1 / r.value + 1 / g.value - (2 * mu.value) / r.value);
  return work({
    says: "stiffness across the grain",
    unit: "N/mm²",
    formula: "E_i = E_L·min(r_T, r_R, 4 / (1/r_T + 1/r_R + 1/g − 2·μ/r_R))",
    inputs: { E_L: along, r_T: t, r_R: r, g, μ: mu },
    value: mpa(along.value * Math.min(t.value, r.value, at45)),
    source: derived("elasticity of a body with three axes, two of them turned by 45°"),
    notes: [
      "rings at 45°, and never stiffer than along or across them: a board sawn nearer either is stiffer",
      ...estimateIn(t, r, g, mu),
    ],
  });
}
