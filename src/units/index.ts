export * from "./brands.ts";
export {
  type DimensionName,
  dimensions,
  MPA_PER_PSI,
  NEWTONS_PER_POUND_FORCE,
  STANDARD_GRAVITY,
} from "./dimensions.ts";
export { type LengthUnit, readLength } from "./length.ts";
export {
  type LengthStyle,
  lengthParts,
  type Purpose,
  printLength,
} from "./length-print.ts";
export { printFigure, printQuantity } from "./print.ts";
export { readQuantity, unitOfSide, writeQuantity } from "./quantity.ts";
export { type Fault, placeOf, type Read, readAs, refuse } from "./read.ts";
export { figure, type Row, readTable } from "./table.ts";
