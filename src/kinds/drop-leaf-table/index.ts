import type { Frame } from "../../geometry/index.ts";
import { type Feature, plainly } from "../../piece/index.ts";
import { deg, type Mm, mm } from "../../units/index.ts";
import { derived, type Given, given, type Worked, work } from "../../worked/index.ts";
import { type Armed, armAt } from "../arm/arm-parts.ts";
import { layArms } from "../arm/lay-arms.ts";
import { refuseArms } from "../arm/refuse-arms.ts";
import { freedWays, settleArms } from "../arm/settle-arms.ts";
import { frameUnder } from "../frame/frame-asks.ts";
import { frameParts, frameTies, settleFrame } from "../frame/framed.ts";
import { kind, type Made, type Making, nothing, type Unmarked } from "../kind.ts";
import { hungLeaf, type LeafSide, topFeatures } from "../leaf/hang.ts";
import { tongueOf } from "../leaf/plain-sizes.ts";
import { refuseLeaves } from "../leaf/refuse-leaves.ts";
import { type JointSizes, settleJoint } from "../leaf/settle-joint.ts";
import { settleLeaves } from "../leaf/settle-leaves.ts";
import { heldTop } from "../top/held.ts";
import { refuseSmallTop } from "../top/refuse-top.ts";
import { type TopAsked, topCoefficient, topJoints, topPart } from "../top/top.ts";
import { asks, type DropLeafAnswers, groups, idle } from "./asks.ts";
import { chosenThings } from "./things.ts";

/** A fixed top on the plain frame, with leaves that hang at its sides and are borne by arms. */
export const dropLeafTable = kind({
  name: "drop-leaf-table",
  title: "Drop-leaf table",
  tells: "a fixed top on four legs, with one or two leaves that hang, and rise onto swing arms",
  asks,
  groups,
  idle,
  make,
});

function make(given: DropLeafAnswers, making: Making): Made {
  const { assembly, settle, species } = making;
  const things = chosenThings(given, making);
  if (!things) return nothing;
  const sides: readonly LeafSide[] = given.leaves === "two" ? ["front", "back"] : ["front"];
  const thickness = settle(
    "top.thickness",
    "top, thickness",
    plainly("thickness of the top", given["top-thickness"].value),
  );
  const joint = settleJoint(
    {
      form: given.joint,
      ...things,
      mounting: given.mounting,
      setOut: given["set-out"].value,
      crown: given.crown.value,
      pinOut: given["pin-out"].value,
      bevel: given.bevel.value,
      thickness,
    },
    making,
  );
  const top = settleTop(given, joint, sides.length, thickness, making);
  const asked = frameUnder(given, thickness);
  const sizes = {
    length: given.length.value,
    width: given.width.value,
    height: given.height.value,
    fastening: given.fastening,
  };
  refuseLeaves(joint, given, making);
  const framed = settleFrame(asked, sizes, given["corner-blocks"] === "yes", making);
  if (!framed) return nothing;
  const arms = settleArms(
    {
      count: given.arms === "two" ? 2 : 1,
      reach: given["arm-reach"].value,
      tail: given["arm-tail"].value,
      height: given["arm-height"].value,
      angle: given["arm-ends"] === "mitred" ? given["arm-angle"].value : deg(0),
      freed: given["arm-freed"],
    },
    making,
  );
  refuseArms(arms, framed, sides, making);
  if (making.isRefused()) return nothing;
  const armed = sides.flatMap((side) =>
    layArms(side, arms, framed, making).map((place) =>
      armAt(place, arms, framed, overhangOf(given, side), making),
    ),
  );
  if (making.isRefused()) return nothing;

  const frame = topFrameOf(top, joint, sides, asked.height);
  const over = { thickness, frame, coefficient: topCoefficient(top.sawn, species) };
  const kept = keptOn(armed);
  const held = heldTop(framed, over, given.fastening, kept, making);
  const tongue = tongueOf(joint);
  const across = [tongue, top.width - (sides.length - 1) * tongue] as const;
  refuseSmallTop(held.inTop, { ...top, across }, asked, making);
  const hung = settleLeaves(
    { sides, joint, width: given.leaf.value, top, frame, framed, armed, leads: held.inTop },
    making,
  );
  const leaves = hung.map((one) => hungLeaf(joint, one, top, asked.height, assembly));
  const inTop = [
    ...hung.flatMap((one) => topFeatures(joint, one, top.length, top.width)),
    ...held.inTop,
  ];
  const { sticks, blocks } = frameParts(framed, onRails(held.onRails, armed), assembly);
  return {
    parts: [
      ...sticks.map((part) => rippedFor(part, given, armed, making)),
      topPart(top, frame, inTop, assembly),
      ...leaves.map(({ part }) => part),
      ...armed.map(({ part }) => part),
      ...blocks,
      ...held.parts,
    ],
    joints: [
      ...frameTies(framed, assembly),
      ...leaves.map((leaf) => leaf.joint),
      ...armed.map((arm) => arm.joint),
      ...held.joints,
      ...topJoints(top, assembly),
    ],
    motions: [...leaves.map(({ motion }) => motion), ...armed.map(({ motion }) => motion)],
  };
}

/** A rail that an arm's strip is ripped off and glued to again loses a saw's cut by it. */
function rippedFor(
  part: Unmarked,
  given: DropLeafAnswers,
  armed: readonly Armed[],
  { shop }: Making,
): Unmarked {
  const isRipped =
    given["arm-freed"] === freedWays[0] && armed.some((arm) => arm.part.outOf === part.key);
  return isRipped ? { ...part, sawnWider: shop.ripKerf } : part;
}

/** The fixed top with its tongues, which go on under the leaves. */
function settleTop(
  given: DropLeafAnswers,
  joint: JointSizes,
  leaves: number,
  thickness: Mm,
  { settle }: Making,
): TopAsked {
  return {
    length: settle("top.length", "top, length", plainly("length of the top", given.length.value)),
    width: settle(
      "top.width",
      "top, width with its tongues",
      widthWithTongues(given.width, joint, leaves),
    ),
    thickness,
    widest: given["widest-strip"].value,
    sawn: given.sawn,
    hearts: given.hearts,
  };
}

function widthWithTongues(width: Given<Mm>, { rule }: JointSizes, leaves: number): Worked<Mm> {
  if (!rule) return plainly("width of the fixed top", width.value);
  const R = rule.radius;
  const n = given("leaves", leaves, "pieces");
  const w = given("width of the fixed top, from joint to joint", width.value, "mm");
  return work({
    says: "width of the fixed top with its tongues",
    unit: "mm",
    formula: "b = w + n·R",
    inputs: { w, n, R: typeof R === "object" ? R : given("radius of the round-over", R, "mm") },
    value: mm(width.value + leaves * (typeof R === "object" ? R.value : R)),
    source: derived("a round-over’s tongue is as wide as its radius"),
  });
}

/** Its visible width lies over the frame's middle; with one leaf a tongue stands out on its side alone. */
function topFrameOf(
  { length, width }: TopAsked,
  joint: JointSizes,
  sides: readonly LeafSide[],
  underside: Mm,
): Frame {
  const tongue = tongueOf(joint);
  const visible = width - sides.length * tongue;
  return {
    origin: [-length / 2, -visible / 2 - tongue, underside],
    x: [1, 0, 0],
    y: [0, 1, 0],
    z: [0, 0, 1],
  };
}

/** From a long rail's face out to the leaf's joint. */
function overhangOf(answers: DropLeafAnswers, side: LeafSide): Worked<Mm> {
  const v = given("fixed top beyond the legs", answers["side-overhang"].value, "mm");
  const s = given("rails set back behind the legs’ faces", answers.setback.value, "mm");
  return work({
    says: `${side} rail’s face to the leaf’s joint`,
    unit: "mm",
    formula: "o = v + s",
    inputs: { v, s },
    value: mm(v.value + s.value),
    source: derived("geometry of the frame"),
  });
}

/** Room round an arm's opening that fastenings keep out of [mm]. */
const ROUND_ARM = 12;

const keptOn = (armed: readonly Armed[]) => {
  const on = (side: LeafSide) =>
    armed
      .filter(({ place }) => place.side === side)
      .map(({ place: { opening } }) => [opening[0] - ROUND_ARM, opening[1] + ROUND_ARM] as const);
  return { front: on("front"), back: on("back"), left: [], right: [] };
};

function onRails(
  held: Readonly<Record<"front" | "back" | "left" | "right", readonly Feature[]>>,
  armed: readonly Armed[],
) {
  const arms = (side: LeafSide) =>
    armed.filter(({ place }) => place.side === side).flatMap(({ onRail }) => onRail);
  return {
    ...held,
    front: [...arms("front"), ...held.front],
    back: [...arms("back"), ...held.back],
  };
}
