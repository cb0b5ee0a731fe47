export { type BoardSection, boardCup, faceWidthChange, pithBelow, ringRadius } from "./cup.ts";
export { type ElasticRatios, elasticRatios } from "./elastic.ts";
export { equilibriumMoisture, humidityFor } from "./emc.ts";
export {
  lateralLoad,
  leadHole,
  nailSized,
  nailWithdrawal,
  type Screw,
  screwNumbered,
  screwNumbers,
  screwWithdrawal,
  screwWithdrawalAllowed,
  shankHole,
  type Thread,
} from "./fasteners.ts";
export { density, gravityAt, greatestMoisture, mass, typicalGravityAt } from "./mass.ts";
export {
  coefficientAt,
  coefficientFromShrinkage,
  outOfSquare,
  shrinkageTo,
  widthChange,
  widthChangeByShrinkage,
} from "./movement.ts";
export { handbook } from "./sources.ts";
export { allSpecies, type Species, speciesNamed } from "./species.ts";
export { stiffnessAcross } from "./stiffness-across.ts";
export {
  modulusAlong,
  modulusByShare,
  strengthAt,
  strengthAtAngle,
  strengthByTrend,
  turningPoint,
} from "./strength.ts";
