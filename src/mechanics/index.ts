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
  FIRM_LEAN,
  footHolding,
  LIGHT_LEAN,
  type Stance,
  tippingLoad,
  tippingLoadAt,
  tippingPush,
} from "./tipping.ts";
