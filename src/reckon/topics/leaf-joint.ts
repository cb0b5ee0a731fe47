import { ask, choice, optionally, timber } from "../../asking/index.ts";
import {
  bevelNeeded,
  centreHeight,
  coveClearance,
  filletDepth,
  firstContact,
  gapFromAbove,
  lipOverlap,
  lipThickness,
  lowerEdgeClearance,
  pinAboveCentre,
  pinHeight,
  type RuleJoint,
  ruleJointCautions,
  type Spreads,
  safeRadius,
  seasonalClosing,
  swingsUpTo,
  tightestPlace,
  toleranceStudy,
} from "../../motion/index.ts";
import { type HingeMounting, hingeMountings } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import { type Given, Problem, type Worked } from "../../worked/index.ts";
import { MOVEMENT_SPREAD, withBoardSpread } from "../spread.ts";
import { type Result, topic } from "../topic.ts";
import { usualLength } from "../usual-length.ts";
import { judgeJoint } from "./leaf-joint-findings.ts";

/** How exactly cutters are measured and wood is planed, when the pin's own error is asked. */
const SIZE_ERROR = mm(0.03);
/** Enough for a share to two figures, and done before the next key is pressed. */
const TRIALS = 500;

/** The pin's error is asked; the leaf is set out by a spacer, half as far off. */
const spreadsOf = (pin: Given<Mm>): Spreads => ({
  "pin across": pin.value,
  "pin height": pin.value,
  "set-out": mm(pin.value / 2),
  "round-over": SIZE_ERROR,
  cove: SIZE_ERROR,
  thickness: SIZE_ERROR,
});

export const leafJoint = topic({
  name: "leaf-joint",
  title: "Rule joint of a drop leaf",
  tells:
    "whether the leaf swings free, where it binds, and what the pin, the year and errors leave",
  asks: {
    thickness: ask.length("thickness of top and leaf", {
      least: 10,
      most: 60,
      example: { inch: '3/4"', mm: "19 mm" },
    }),
    radius: ask.length("radius of the round-over", {
      least: 3,
      most: 40,
      example: { inch: '1/2"', mm: "12.7 mm" },
    }),
    hinge: ask.length("pin of the hinge over its plates' outer face", {
      least: 0.5,
      most: 20,
      example: { inch: '1/8"', mm: "3.2 mm" },
    }),
    mounting: choice("plates of the hinge", hingeMountings, "let in"),
    plate: usualLength("thickness of the plates", 0.3, 6, '1/16"', "1.5 mm"),
    fillet: optionally(
      ask.length("fillet as cut; left out, it is made to suit the pin", {
        least: 0.5,
        most: 40,
        example: { inch: '1/8"', mm: "3.2 mm" },
      }),
    ),
    cove: optionally(
      ask.length("radius of the cove, measured; left out, that of the round-over", {
        least: 3,
        most: 40,
        example: { inch: '1/2"', mm: "12.7 mm" },
      }),
    ),
    "set-out": usualLength("leaf set out at the fillet", 0, 3, '1/64"', "0.4 mm"),
    crown: usualLength("crown gap: fillet less lip", 0, 3, "0.004 in", "0.1 mm"),
    "pin-out": usualLength("pin towards the leaf", -3, 3, '1/64"', "0.4 mm"),
    bevel: usualLength("bevel of the fixed top's lower edge", 0, 10, '1/32"', "0.8 mm"),
    error: usualLength("how far a pin of yours may stray, usually", 0, 2, "0.008 in", "0.2 mm"),
    species: timber(),
    screws: usualLength(
      "middles of both plates' screws apart, across the joint",
      5,
      200,
      '2 3/8"',
      "60 mm",
    ),
    from: ask.moisture("moisture content when the hinges go on", {
      least: 4,
      most: 16,
      example: "8 %",
      fallback: "8 %",
    }),
    to: ask.moisture("highest moisture content of the year", {
      least: 4,
      most: 20,
      example: "11 %",
      fallback: "11 %",
    }),
  },
  answer(given, show) {
    const joint = jointOf(given);
    const first = firstContact(joint);
    const cove = coveClearance(joint);
    const edge = lowerEdgeClearance(joint);
    const clearance = edge.value < cove.value ? edge : cove;
    const safe = safeRadius(joint);
    const plates = { short: mm(given.screws.value / 4), long: mm((given.screws.value * 3) / 4) };
    const { tangential } = given.species;
    const closing = seasonalClosing(plates, tangential, given.from, given.to);
    const upTo = swingsUpTo(joint, plates, tangential, given.from);
    const study = toleranceStudy(joint, spreadsOf(given.error), TRIALS);
    const weighty = first ? undefined : study.errors[0];
    const bevel = bevelOf(joint);
    const gap = gapFromAbove(joint);
    const overlap = lipOverlap(joint);
    const results: readonly Result[] = [
      { name: "clearance", says: "least clearance through the swing", worked: clearance },
      ...(clearance === cove ? [{ name: "tightest", worked: tightestPlace(joint).swing }] : []),
      { name: "lower-edge", worked: edge },
      { name: "fillet", worked: filletDepth(joint.thickness, joint.radius, joint.centreHeight) },
      { name: "lip", worked: lipThickness(joint) },
      { name: "pin", worked: pinHeight(given.hinge, given.plate, given.mounting) },
      { name: "gap-down", worked: gap },
      { name: "overlap", worked: overlap },
      ...(bevel ? [{ name: "bevel-needed", worked: bevel }] : []),
      { name: "pin-may-stray", worked: safe },
      withBoardSpread("closing", closing, MOVEMENT_SPREAD),
      { name: "swings-up-to", worked: upTo },
      { name: "of-trials-bind", worked: study.binding, purpose: "about" },
    ];
    return {
      results,
      findings: judgeJoint({ joint, first, clearance, gap, overlap, upTo, study, ...given }, show),
      remarks: [
        ...(weighty
          ? [
              `Of such joints that bind, ${weighty.frees.toFixed(0)} % would swing free had only the ${weighty.error} been exact: there care pays most.`,
            ]
          : []),
        "The closing is reckoned flatsawn; quartersawn edges move about half. The plates' screws are taken as a quarter and three quarters of their distance from the pin.",
        "A built film of finish takes 0.05 to 0.1 mm (2 to 4 thou) off each face.",
      ],
      cautions: ruleJointCautions,
    };
  },
});

type Sizes = {
  readonly thickness: Given<Mm>;
  readonly radius: Given<Mm>;
  readonly hinge: Given<Mm>;
  readonly mounting: HingeMounting;
  readonly plate: Given<Mm>;
  readonly fillet: Given<Mm> | undefined;
  readonly cove: Given<Mm> | undefined;
  readonly "set-out": Given<Mm>;
  readonly crown: Given<Mm>;
  readonly "pin-out": Given<Mm>;
  readonly bevel: Given<Mm>;
};

/** The section, its fillet cut to suit the pin unless the maker says otherwise. */
function jointOf(given: Sizes): RuleJoint {
  const { thickness, radius, fillet } = given;
  const height = pinHeight(given.hinge, given.plate, given.mounting);
  const centre: Worked<Mm> = fillet ? centreHeight(thickness, radius, fillet) : height;
  if (!(centre.value > 0.2) || thickness.value - radius.value - centre.value < 0.2)
    throw new Problem(
      "rule-joint-section",
      fillet ? "thickness, radius, fillet" : "thickness, radius, hinge",
      "Radius, pin and fillet do not go into this thickness.",
      "Take thicker wood or a smaller radius, and a pin within the wood.",
    );
  const room = radius.value - Math.max(0, given["pin-out"].value);
  if (given.bevel.value >= room / 2)
    throw new Problem(
      "rule-joint-section",
      "bevel, radius",
      "The bevel takes most of the tongue.",
      "Keep it under half the radius.",
    );
  return {
    thickness,
    radius,
    cove: given.cove ?? radius,
    setOut: given["set-out"],
    crownGap: given.crown,
    pinOut: given["pin-out"],
    pinUp: pinAboveCentre(height, centre),
    centreHeight: centre,
    bevel: given.bevel,
  };
}

/** No answer where no bevel would do: the finding says so already. */
function bevelOf(joint: RuleJoint): Worked<Mm> | undefined {
  try {
    return bevelNeeded(joint);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return undefined;
  }
}
