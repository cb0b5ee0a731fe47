import {
  boardFeetOf,
  boardVolume,
  countedThickness,
  surfaceMeasure,
  tallyBoardFeet,
} from "../../src/stock/index.ts";
import { count, inches, mm, ratio } from "../../src/units/index.ts";
import { type Check, exact, halfDigit, series } from "./check.ts";

const AREA = "Board measure";
const rules = series(AREA, "lumber rules");
const byHand = series(AREA, "lumber rules by hand");

const FOOT = 12;
const measure = (widthIn: number, lengthIn: number) =>
  surfaceMeasure(inches(widthIn), inches(lengthIn));
const volume = (thickIn: number, widthIn: number, lengthIn: number) =>
  boardFeetOf(inches(thickIn), inches(widthIn), inches(lengthIn), count(1)).value;

export const boardChecks: readonly Check[] = [
  rules("surface measure, 6 1/4 in × 8 ft", "4", "ft²", () => measure(6.25, 8 * FOOT).value, exact),
  rules(
    "2 in × 6 1/4 in × 8 ft, by surface measure",
    "8",
    "bd ft",
    () => tallyBoardFeet(inches(2), measure(6.25, 8 * FOOT), count(1)).value,
    exact,
  ),
  rules("surface measure, 6 1/2 in × 8 ft", "4", "ft²", () => measure(6.5, 8 * FOOT).value, exact),
  rules("surface measure, 8 in × 12 ft", "8", "ft²", () => measure(8, 12 * FOOT).value, exact),
  rules("surface measure, 10 in × 13 ft", "11", "ft²", () => measure(10, 13 * FOOT).value, exact),
  rules("1 × 9 × 96 in", "6", "bd ft", () => volume(1, 9, 96), exact),
  rules("1 1/2 × 9 × 96 in", "9", "bd ft", () => volume(1.5, 9, 96), exact),
  rules("5/4 × 6 × 72 in", "3.75", "bd ft", () => volume(1.25, 6, 72), exact),
  rules("2 × 10 in × 14 ft", "23.33", "bd ft", () => volume(2, 10, 14 * FOOT), halfDigit),
  rules(
    "three boards of 1 × 9 × 96 in",
    "18",
    "bd ft",
    () => {
      return boardFeetOf(inches(1), inches(9), inches(96), count(3)).value;
    },
    exact,
  ),
  rules(
    "3/4 in counts as an inch",
    "1",
    "in",
    () => {
      return countedThickness(inches(0.75)).value / 25.4;
    },
    exact,
  ),
  byHand(
    "5/4 counts as it is",
    "1.25",
    "in",
    () => {
      return countedThickness(inches(1.25)).value / 25.4;
    },
    exact,
  ),
  byHand(
    "8 in × 12 ft 11 in: parts of a foot dropped",
    "8",
    "ft²",
    () => {
      return measure(8, 12 * FOOT + 11).value;
    },
    exact,
  ),
  byHand(
    "6.8 in × 8 ft: 4.53, to the nearest whole",
    "5",
    "ft²",
    () => {
      return measure(6.8, 8 * FOOT).value;
    },
    exact,
  ),
  byHand(
    "6.7 in × 8 ft: 4.47, to the nearest whole",
    "4",
    "ft²",
    () => {
      return measure(6.7, 8 * FOOT).value;
    },
    exact,
  ),
  series(AREA, "definition")("a board foot: 144 cubic inches", "0.002359737", "m³", () => {
    return boardVolume(inches(1), inches(12), inches(12), count(1)).value;
  }),
  series(AREA, "textbook")(
    "two boards of 20 × 100 × 1000 mm",
    "0.004",
    "m³",
    () => {
      return boardVolume(mm(20), mm(100), mm(1000), count(2)).value;
    },
    exact,
  ),
  series(AREA, "textbook")(
    "5 ft² of 1 in, two boards",
    "10",
    "bd ft",
    () => {
      return tallyBoardFeet(inches(1), ratio(5), count(2)).value;
    },
    exact,
  ),
];
