export {
  boardFeetOf,
  boardVolume,
  countedThickness,
  surfaceMeasure,
  tallyBoardFeet,
} from "./board-measure.ts";
export { type CutList, type CutRow, cutList, type Size } from "./takeoff/cut-list.ts";
export { type Quarter, quarterFor, quarters } from "./takeoff/thickness.ts";
