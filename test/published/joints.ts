import {
  buttedTenon,
  gluedCheeks,
  mitredTenon,
  outerWall,
  type TenonFit,
} from "../../src/joinery/index.ts";
import { inches, type Mm, mm, readTable } from "../../src/units/index.ts";
import { type Check, series, within } from "./check.ts";

const AREA = "Mortises in a leg";
const reference = series(AREA, "mortise cases");
const maker = series(AREA, "meeting tenons");

/** Lengths in mm; the tenon as thick as its mortise is wide, and no deeper mortise than tenon. */
const rows = readTable(`
leg   | back  | rail   | tenon | wall | gap | o     | butt   | outer  | mean   | depth | shared | wanted | legbutt | legouter | legmean
45    | 3     | 20     | 8     | 0    | 1   | 9     | 28     | 35.293 | 31.293 | 28    | 0      | 30     | 47      | 39.707   | 43.707
50    | 5     | 22     | 9     | 1    | 1   | 11.5  | 28.5   | 37.793 | 33.293 | 38    | 72.25  | 30     | 51.5    | 42.207   | 46.707
44.45 | 3.175 | 22.225 | 9.525 | 0    | 1   | 9.525 | 25.4   | 34.218 | 29.455 | 28    | 6.76   | 28     | 47.05   | 38.232   | 42.995
70    | 6     | 28     | 12    | 3    | 2   | 14    | 41     | 54.586 | 48.586 | 45    | 1      | 45     | 74      | 60.414   | 66.414
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
  const outer = (leg: Mm) => mitredTenon(leg, wall, at("gap"), mm(0)).value;
  const mean = (leg: Mm) => gluedCheeks(fitOf(outer(leg), at("tenon"))) / 2;
  const butted = (leg: Mm, between: Mm) =>
    buttedTenon(leg, wall, at("tenon"), between, mm(0)).value;
  const name = `leg ${row.leg} mm, tenon ${row.tenon} mm`;
  const one = (what: string, column: string, compute: () => number) =>
    reference(`${name}: ${what}`, row[column] ?? "", "mm", compute);
  /** The least leg is printed to a thousandth, and takes the tenon that was wanted just so. */
  const inLeast = (what: string, column: string, length: (leg: Mm) => number) =>
    reference(
      `${name}: ${what} in the least leg, ${row[column]} mm`,
      row.wanted ?? "",
      "mm",
      () => length(at(column)),
      within(0.0005),
    );
  return [
    one("wood outside the mortise", "o", () => wall.value),
    one("longest with a square end", "butt", () => butted(at("leg"), at("wall"))),
    one("mitred, outer cheek", "outer", () => outer(at("leg"))),
    one("mitred, mean of both cheeks", "mean", () => mean(at("leg"))),
    reference(
      `${name}: area that two mortises ${row.depth} mm deep have in common, seen from above`,
      row.shared ?? "",
      "mm²",
      () => Math.max(0, at("depth") - butted(at("leg"), mm(0))) ** 2,
      within(1e-6),
    ),
    inLeast("longest with a square end", "legbutt", (leg) => butted(leg, at("wall"))),
    inLeast("mitred, outer cheek", "legouter", outer),
    inLeast("mitred, mean of both cheeks", "legmean", mean),
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
