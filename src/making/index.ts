export {
  clampCautions,
  clampCoverage,
  clampForce,
  clampsByFan,
  clampsByForce,
  type GlueWood,
  gluePressure,
} from "./clamps.ts";
export {
  type FinishKind,
  finishAmount,
  finishCautions,
  finishKinds,
  panelSurface,
  spreadingRate,
} from "./finish.ts";
export {
  latheCautions,
  latheSpeed,
  slenderness,
  speedByDiameter,
  speedByStage,
  type TurningStage,
  turningStages,
} from "./lathe.ts";
export {
  cornerDepth,
  flatsForTurning,
  flatWidth,
  type OctagonBlank,
  octagonArea,
  octagonCautions,
  octagonSetOut,
  swingAfter,
  swingOfSquare,
} from "./octagon.ts";
export {
  chartedRouterSpeed,
  depthOfPass,
  rimSpeed,
  routerCautions,
  routerPasses,
  routerSpeed,
} from "./router.ts";
