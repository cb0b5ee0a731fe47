import {
  buttedTenon,
  gluedCheeks,
  mitredTenon,
  outerWall,
  type TenonFit,
} from "../../src/joinery/index.ts";
import { inches, mm, readTable } from "../../src/units/index.ts";
import { type Check, series } from "./check.ts";

const AREA = "Mortises in a leg";
const reference = series(AREA, "mortise cases");
const maker = series(AREA, "meeting tenons");

/** Lengths in mm; the tenon as thick as its mortise is wide, and no deeper mortise than tenon. */
const rows = readTable(`
leg   | back  | rail   | tenon | wall | gap | o     | butt   | outer  | mean
45    | 3     | 20     | 8     | 0    | 1   | 9     | 28     | 35.293 | 31.293
50    | 5     | 22     | 9     | 1    | 1   | 11.5  | 28.5   | 37.793 | 33.293
44.45 | 3.175 | 22.225 | 9.525 | 0    | 1   | 9.525 | 25.4   | 34.218 | 29.455
70    | 6     | 28     | 12    | 3    | 2   | 14    | 41     | 54.586 | 48.586
`);

/** A joint whose tenon is 1 mm wide: its glued cheeks together are then its two lengths. */
const fitOf = (length: number, thickness: number): TenonFit => ({
  railWidth: mm(1),
  railThickness: mm(20),
  setback: mm(0),
  leg: mm(45),
  wall: mm(9),
  mortise: mm(thickness),
  thickness: mm(thickness),
  length: mm(length),
  upper: mm(0),
  lower: mm(0),
  haunch: undefined,
  isMitred: true,
  widthClearance: mm(0),
  depthClearance: mm(0),
});

const cases = rows.flatMap((row) => {
  const at = (column: string) => mm(Number(row[column]));
  const wall = outerWall(at("back"), at("rail"), at("tenon"));
  const outer = mitredTenon(at("leg"), wall, at("gap"), mm(0));
  const name = `leg ${row.leg} mm, tenon ${row.tenon} mm`;
  const one = (what: string, column: string, compute: () => number) =>
    reference(`${name}: ${what}`, row[column] ?? "", "mm", compute);
  return [
    one("wood outside the mortise", "o", () => wall.value),
    one(
      "longest with a square end",
      "butt",
      () => buttedTenon(at("leg"), wall, at("tenon"), at("wall"), mm(0)).value,
    ),
    one("mitred, outer cheek", "outer", () => outer.value),
    one(
      "mitred, mean of both cheeks",
      "mean",
      () => gluedCheeks(fitOf(outer.value, at("tenon"))) / 2,
    ),
  ];
});

const wall = outerWall(inches(1 / 8), inches(7 / 8), inches(3 / 8));

export const jointChecks: readonly Check[] = [
  ...cases,
  maker(
    "2 in leg, 7/8 in rail: wood outside a 3/8 in mortise",
    "0.375",
    "in",
    () => wall.value / 25.4,
  ),
  maker(
    "the same: longest tenon with a square end",
    "1.250",
    "in",
    () => buttedTenon(inches(2), wall, inches(3 / 8), mm(0), mm(0)).value / 25.4,
  ),
  maker(
    "the same: outer cheek, mitred without a gap",
    "1.625",
    "in",
    () => mitredTenon(inches(2), wall, mm(0), mm(0)).value / 25.4,
  ),
];
