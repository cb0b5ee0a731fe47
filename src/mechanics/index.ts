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
export { hingeReaction, loadOnSupport, loadPerArm } from "./hinged-bar.ts";
export { edgeDrop, edgeSagUnderPoint, edgeSagUnderSpread } from "./overhang.ts";
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
