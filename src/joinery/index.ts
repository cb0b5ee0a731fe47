export { gluedCheeks, type MortisePlace, mortiseOf, type TenonFit, tenonOf } from "./fit-tenon.ts";
export { screwLength, screwLengthSold } from "./screw-length.ts";
export {
  betweenLegs,
  buttedTenon,
  haunchLength,
  mitredTenon,
  mortiseWidth,
  outerWall,
  tenonThickness,
  upperShoulder,
} from "./tenon-sizes.ts";
export {
  buttonGap,
  fasteningPlaces,
  seasonalMove,
  slotDepth,
  slotTravel,
  tongueLength,
} from "./top-fastening.ts";
