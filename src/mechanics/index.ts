export {
  bendingStress,
  droopOfArm,
  momentUnderPoint,
  momentUnderSpread,
  sagInTheLongRun,
  sagUnderPoint,
  sagUnderSpread,
  secondMoment,
  spreadLoad,
} from "./beam.ts";
export {
  edgeReach,
  footHolding,
  type Stance,
  tippingLoad,
  tippingLoadAt,
  tippingPush,
} from "./tipping.ts";
