import {
  cornerDepth,
  fenceToBlade,
  flatsForTurning,
  flatWidth,
  octagonArea,
  octagonSetOut,
  speedByDiameter,
  swingAfter,
  swingOfSquare,
} from "../../src/making/index.ts";
import { mm, readTable } from "../../src/units/index.ts";
import { type Check, exact, series } from "./check.ts";

const AREA = "Octagon and turning";
const reference = series(AREA, "turning cases");

/** Lengths in mm. `x` to `flat`: the regular octagon; then the one that leaves the allowance. */
const rows = readTable(`
square | turned | more   | off | x_reg  | flat_reg | depth_reg | x      | depth  | flat   | swing  | across | fence  | area   | low_sq | high_sq | low_oct | high_oct | low_end | high_end
45     | 42     | 2      | 0.5 | 13.18  | 18.64    | 9.3198    | 13.887 | 9.8198 | 19.64  | 48.184 | 44     | 31.113 | 1639.3 | 2394.7 | 3592.1  | 3162.9  | 4744.3   | 3628.6  | 5442.9
44.45  | 41.275 | 1.5875 | 0.4 | 13.019 | 18.412   | 9.2059    | 14.142 | 9.9996 | 19.999 | 47.299 | 42.862 | 30.308 | 1575.8 | 2424.4 | 3636.5  | 3222.1  | 4833.1   | 3692.3  | 5538.5
76.2   | 70     | 4      | 1   | 22.318 | 31.563   | 15.782    | 23.874 | 16.882 | 33.763 | 81.338 | 74     | 52.326 | 4666.5 | 1414.2 | 2121.3  | 1873.7  | 2810.5   | 2177.1  | 3265.7
57     | 40     | 3      | 1   | 16.695 | 23.61    | 11.805    | 26.594 | 18.805 | 37.61  | 57.127 | 43     | 30.406 | 1834.5 | 1890.6 | 2835.9  | 2667.7  | 4001.6   | 3810    | 5715
`);

const cases = rows.flatMap((row) => {
  const at = (column: string) => mm(Number(row[column]));
  const square = at("square");
  const across = flatsForTurning(at("turned"), at("more"), at("off"));
  const blank = { square, acrossFlats: across };
  const regular = { square, acrossFlats: square };
  const setOut = octagonSetOut(blank);
  const swing = swingAfter(square, setOut);
  const diagonal = swingOfSquare(square);
  const name = `${row.square} mm square for ${row.turned} mm`;
  const one = (what: string, column: string, unit: string, compute: () => number) =>
    reference(`${name}: ${what}`, row[column] ?? "", unit, compute);
  return [
    one("mark, regular octagon", "x_reg", "mm", () => octagonSetOut(regular).value),
    one("flat, regular octagon", "flat_reg", "mm", () => flatWidth(cornerDepth(regular)).value),
    one("depth, regular octagon", "depth_reg", "mm", () => cornerDepth(regular).value),
    one("across the flats", "across", "mm", () => across.value),
    one("mark", "x", "mm", () => setOut.value),
    one("depth", "depth", "mm", () => cornerDepth(blank).value),
    one("flat", "flat", "mm", () => flatWidth(cornerDepth(blank)).value),
    one("fence to blade", "fence", "mm", () => fenceToBlade(square, setOut).value),
    one("swing then", "swing", "mm", () => swing.value),
    one("section then", "area", "mm²", () => octagonArea(square, setOut).value),
    one("rpm, square, low", "low_sq", "rpm", () => speedByDiameter(diagonal, 6000).value),
    one("rpm, square, high", "high_sq", "rpm", () => speedByDiameter(diagonal, 9000).value),
    one("rpm, octagon, low", "low_oct", "rpm", () => speedByDiameter(swing, 6000).value),
    one("rpm, octagon, high", "high_oct", "rpm", () => speedByDiameter(swing, 9000).value),
    one("rpm, turned, low", "low_end", "rpm", () => speedByDiameter(at("turned"), 6000).value),
    one("rpm, turned, high", "high_end", "rpm", () => speedByDiameter(at("turned"), 9000).value),
  ];
});

export const octagonChecks: readonly Check[] = [
  ...cases,
  series(AREA, "textbook")(
    "40 mm on centres 1 mm off needs twice the error",
    "42",
    "mm",
    () => flatsForTurning(mm(40), mm(0), mm(1)).value,
    exact,
  ),
];
