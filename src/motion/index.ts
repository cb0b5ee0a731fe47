export {
  armDroop,
  armProud,
  bornePart,
  droopFromPlay,
  droopUntilTail,
  tailForce,
  type WasherStack,
  washerStack,
} from "./arm-bearing.ts";
export { type ArmsMeeting, armsMeeting, screwClearance, sweptRadius } from "./arm-meeting.ts";
export { ruleJointCautions, swingArmCautions } from "./cautions.ts";
export { firstContact, gapAtSwing, swingClearance, type Tightest } from "./contact.ts";
export type { Spot } from "./corners.ts";
export {
  clearanceNeeded,
  coveClearance,
  coveGap,
  type TightestPlace,
  tightestPlace,
} from "./cove-gap.ts";
export type { Contact } from "./facing.ts";
export {
  edgeDrift,
  floorClearance,
  hangsAt,
  type LeafShape,
  leafCentre,
  leafShapes,
  restAngle,
  sideClearance,
} from "./hanging.ts";
export { type PlateScrews, seasonalClosing, swingsUpTo, swollenJoint } from "./joint-season.ts";
export {
  gapFromAbove,
  hangsInside,
  lipOverlap,
  lipRise,
  swingPastUpright,
  undersideLimit,
  undersideMargin,
} from "./leaf-down.ts";
export {
  barrelGroove,
  firstHole,
  longestScrew,
  outerFaceDepth,
  pinAboveCentre,
  pinHeight,
  plateRecess,
  woodOverGroove,
} from "./leaf-hinge.ts";
export {
  bevelNeeded,
  highestCentre,
  lowerEdgeClearance,
  lowerEdgeReach,
  rubStarts,
} from "./lower-edge.ts";
export { type Passing, passing, type Wood } from "./passing.ts";
export {
  centreHeight,
  filletDepth,
  lipThickness,
  type RuleJoint,
  radialClearance,
} from "./rule-joint.ts";
export { type PinPlace, pinClearance, pinReach, safePinRegion, safeRadius } from "./safe-pin.ts";
export { sectionOf } from "./section-of.ts";
export { type SquareBind, squareBind, squareGapDown, squareRoom } from "./square-edges.ts";
export { type Swept, sweptJoint } from "./swept.ts";
export {
  type ArmEnd,
  armEnds,
  farthestReach,
  freeAngle,
  kerfNeeded,
  outOfLine,
  reachBeyondRail,
  type SwingArm,
  stopPlay,
  tailInside,
} from "./swing-arm.ts";
export {
  type ErrorWeight,
  type SetOutError,
  type Spreads,
  setOutErrors,
  type ToleranceStudy,
  toleranceStudy,
} from "./tolerance.ts";
