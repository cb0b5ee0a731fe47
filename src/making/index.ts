export {
  type ClampKind,
  clampCautions,
  clampCoverage,
  clampForce,
  clampForceOf,
  clampKinds,
  clampsByFan,
  clampsByForce,
  clampsWanted,
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
  fenceToBlade,
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
  passLimit,
  rimSpeed,
  routerCautions,
  routerPasses,
  routerSpeed,
} from "./router.ts";
