export {
  boardFeetOf,
  boardVolume,
  countedThickness,
  surfaceMeasure,
  tallyBoardFeet,
} from "./board-measure.ts";
