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
export { type Stance, tippingLoad, tippingLoadAt, tippingPush } from "./tipping.ts";
