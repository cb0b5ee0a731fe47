import {
  droopOfArm,
  edgeDrop,
  edgeSagUnderPoint,
  edgeSagUnderSpread,
  LIGHT_LEAN,
  loadOnSupport,
  loadPerArm,
  secondMoment,
  spreadLoad,
} from "../mechanics/index.ts";
import { reachBeyondRail } from "../motion/index.ts";
import type { Piece, Weighing } from "../piece/index.ts";
import { count, type Mm, mm, type N, newtons, ratio, STANDARD_GRAVITY } from "../units/index.ts";
import { stiffnessAcross } from "../wood/index.ts";
import {
  assumed,
  commonPractice,
  derived,
  type Finding,
  type Given,
  given,
  known,
  type Worked,
  work,
} from "../worked/index.ts";
import { type Arm, armsOf, swingArmOf } from "./arms-of.ts";
import { told } from "./told.ts";

/** A leaf that sinks no more than this at its edge is not noticed; common practice. */
const OF_ITSELF = given("most that a leaf may sink of itself", mm(1), "mm", commonPractice);
const LEANED_ON = given("most that it may sink when leaned on", mm(4), "mm", commonPractice);
const LEAN = given(
  "a light lean on the leaf’s edge",
  LIGHT_LEAN,
  "N",
  assumed("somebody leans on it"),
);
const NONE = given("no load on the edge", newtons(0), "N", derived("the leaf’s own weight alone"));
const GRAVITY = given(
  "standard gravity [m/s²]",
  ratio(STANDARD_GRAVITY),
  "1",
  derived("standard gravity, by definition"),
);

/** How far a raised leaf's edge sinks on its arms: of its own weight, and when it is leaned on. */
export function leavesSag(piece: Piece, weighing: Weighing): readonly Finding[] {
  const arms = armsOf(piece);
  const leaves = [...new Set(arms.map(({ leaf }) => leaf))];
  const judged = leaves.flatMap((leaf) => {
    const own = arms.filter((arm) => arm.leaf === leaf);
    const sag = sagOf(piece, weighing, own);
    return sag ? [sag] : [];
  });
  const worst = [...judged].sort((a, b) => b.leaned.value - a.leaned.value)[0];
  if (!worst) return [];
  const lights = leaves.map(({ leaf }) => leaf).concat(arms.map(({ part }) => part.key));
  const past = Math.max(worst.alone.value / OF_ITSELF.value, worst.leaned.value / LEANED_ON.value);
  return [
    told({
      ...{ id: "leaf/sag", group: "Strength", verdict: past > 1 ? "watch" : "ok", lights },
      says:
        past > 1
          ? "A raised leaf gives at its edge: higher arms, longer ones, or a thicker leaf hold it better."
          : "The leaves stand stiff on their arms, so far as a light lean goes.",
      margin: leftOf(worst.leaned),
      why: [worst.leaned, worst.alone],
      severity: past > 1 ? past : 0,
    }),
  ];
}

const leftOf = (sag: Worked<Mm>): Worked<Mm> =>
  work({
    says: "leaf’s sinking under a light lean, to the most it may",
    unit: "mm",
    formula: "m = g − δ",
    inputs: { g: LEANED_ON, δ: sag },
    value: mm(LEANED_ON.value - sag.value),
    source: derived("arithmetic"),
  });

/** One leaf on its arms; undefined where they do not reach under it. */
function sagOf({ species, parts }: Piece, weighing: Weighing, arms: readonly Arm[]) {
  const [arm] = arms;
  const leaf = parts.find(({ key }) => key === arm?.leaf.leaf);
  const mass = weighing.parts[leaf?.key ?? ""]?.mass;
  if (!arm || !leaf || !mass) return undefined;
  const beyond = reachBeyondRail(swingArmOf(arm.pivot));
  const v = known(arm.pivot.overhang, "from the rail's face to the joint", "mm");
  const W = known(arm.leaf.leafWidth, "width of the leaf", "mm");
  if (beyond.value - v.value <= 0) return undefined;
  const support = work({
    says: "leaf is borne so far from its hinge",
    unit: "mm",
    formula: "a = min(W, o − v)",
    inputs: { W, o: beyond, v },
    value: mm(Math.min(W.value, beyond.value - v.value)),
    source: derived("geometry of the arm under its leaf"),
  });
  const weight = work<N>({
    says: "weight of the leaf",
    unit: "N",
    formula: "F = m·g",
    inputs: { m: mass, g: GRAVITY },
    value: newtons(mass.value * STANDARD_GRAVITY),
    source: derived("definition"),
  });
  const w = spreadLoad(weight, W);
  const across = stiffnessAcross(species, leaf.sawn);
  const slab = secondMoment(
    given("length of the leaf", leaf.blank.length, "mm"),
    arm.leaf.thickness,
  );
  const stick = secondMoment(arm.pivot.thickness, arm.pivot.height);
  const free = given("arm beyond its rail", beyond.value, "mm", derived("its reach"));
  const edgeAt = (P: Given<N>): Worked<Mm> => {
    const each = loadPerArm(
      loadOnSupport(w, P, W, support),
      given("arms", count(arms.length), "pieces"),
    );
    const ofArms = edgeDrop(droopOfArm(each, free, species.stiffness, stick), W, support);
    const own = edgeSagUnderSpread(w, W, support, across, slab);
    const more = edgeSagUnderPoint(P, W, support, across, slab);
    return work({
      says:
        P.value > 0
          ? "leaf’s edge sinks under a light lean"
          : "leaf’s edge sinks of its own weight",
      unit: "mm",
      formula: "δ = max(0, p + q + r)",
      inputs: { p: own, q: more, r: ofArms },
      value: mm(Math.max(0, own.value + more.value + ofArms.value)),
      source: derived("leaf and arms bend one upon the other"),
      notes: ["the leaf is taken as borne along its whole length"],
    });
  };
  return { alone: edgeAt(NONE), leaned: edgeAt(LEAN) };
}
