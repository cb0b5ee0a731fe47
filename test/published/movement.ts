import { deg, inches, mcPct, mm, pct, perPct, readTable } from "../../src/units/index.ts";
import {
  coefficientAt,
  coefficientFromShrinkage,
  outOfSquare,
  shrinkageTo,
  speciesNamed,
  widthChange,
  widthChangeByShrinkage,
} from "../../src/wood/index.ts";
import { type Check, exact, series, share } from "./check.ts";
import { printedCoefficients } from "./data/coefficients.ts";

const AREA = "Movement across the grain";
const fir = speciesNamed("fir-white").tangential;

const example = series(AREA, "eq 13-2");
const examples = [
  example("white fir, 232 mm flatsawn, 8 to 11 %: change", "1.7", "mm", () => {
    return widthChange(mm(232), fir, mcPct(8), mcPct(11)).value;
  }),
  example("white fir, 232 mm flatsawn, 8 to 11 %: width then", "233.7", "mm", () => {
    return 232 + widthChange(mm(232), fir, mcPct(8), mcPct(11)).value;
  }),
  example("white fir, 9.15 in flatsawn, 8 to 11 %: change", "0.067", "in", () => {
    return widthChange(inches(9.15), fir, mcPct(8), mcPct(11)).value / 25.4;
  }),
  example("white fir, 9.15 in flatsawn, 8 to 11 %: width then", "9.217", "in", () => {
    return 9.15 + widthChange(inches(9.15), fir, mcPct(8), mcPct(11)).value / 25.4;
  }),
  example("the same board by its shrinkage of 7.0 % (Eq 13-3): change", "1.7", "mm", () => {
    return widthChangeByShrinkage(mm(232), pct(7), mcPct(8), mcPct(11)).value;
  }),
  series(AREA, "mesquite example")("mesquite, 5 in flatsawn, 6 to 9 %", "0.019", "in", () => {
    return widthChange(inches(5), perPct(0.00129), mcPct(6), mcPct(9)).value / 25.4;
  }),
  series(AREA, "timber class")("sawn timber, 13.25 in, 0.2 % a point", "-0.2385", "in", () => {
    return widthChange(inches(13.25), perPct(0.002), mcPct(19), mcPct(10)).value / 25.4;
  }),
  series(AREA, "timber class")("the same timber: depth then", "13.01", "in", () => {
    return 13.25 + widthChange(inches(13.25), perPct(0.002), mcPct(19), mcPct(10)).value / 25.4;
  }),
  series(AREA, "eq 4-9")("sugar maple, 9.9 % tangential, to 8 %", "7.26", "%", () => {
    return shrinkageTo(pct(9.9), mcPct(8)).value;
  }),
  series(AREA, "din 68100")(
    "beech panel, 600 mm, 0.41 % a point, five points",
    "12.30",
    "mm",
    () => widthChange(mm(600), perPct(0.0041), mcPct(7), mcPct(12)).value,
    share(0.005),
  ),
];

/** The two printed tables against each other: our shrinkage, our link, their coefficient. */
const linked = series(AREA, "table 13-5");
const coefficients = readTable(printedCoefficients).flatMap(({ key = "", C_R = "", C_T = "" }) => {
  const species = speciesNamed(key);
  const sides = [
    ["quartersawn", species.radialShrinkage, C_R],
    ["flatsawn", species.tangentialShrinkage, C_T],
  ] as const;
  return sides.flatMap(([cut, shrinkage, printed]): readonly Check[] => {
    if (printed === "-") return [];
    if (!shrinkage) throw new Error(`${key} has no shrinkage`);
    const name = `${species.name.toLowerCase()} ${cut}`;
    return [
      linked(`coefficient from shrinkage, ${name}`, printed, "per % MC", () => {
        return coefficientFromShrinkage(shrinkage).value;
      }),
      linked(`one point from 10 % by Eq 13-3, ${name}`, printed, "per % MC", () => {
        return widthChangeByShrinkage(mm(1), shrinkage, mcPct(10), mcPct(11)).value;
      }),
    ];
  });
});

/** Coefficients of our table against a second printing of the source, from another edition. */
const flatsawn: readonly (readonly [key: string, printed: string])[] = [
  ["purpleheart", "0.00212"],
  ["teak", "0.00186"],
  ["jarrah", "0.00396"],
  ["oak-white", "0.00365"],
  ["oak-northern-red", "0.00369"],
  ["maple-sugar", "0.00353"],
  ["birch-yellow", "0.00338"],
  ["hickory-pecan", "0.00315"],
  ["walnut-black", "0.00274"],
  ["ash-white", "0.00274"],
  ["cherry-black", "0.00248"],
  ["hickory-shagbark", "0.00411"],
  ["beech-american", "0.00431"],
  ["pine-longleaf", "0.00263"],
  ["douglas-fir-coast", "0.00267"],
];
const secondPrinting = series(AREA, "flooring association");
const southernPines = ["pine-loblolly", "pine-longleaf", "pine-shortleaf", "pine-slash"];
const tables = [
  ...flatsawn.map(([key, printed]) =>
    secondPrinting(
      `our table's flatsawn coefficient, ${speciesNamed(key).name.toLowerCase()}`,
      printed,
      "per % MC",
      () => speciesNamed(key).tangential.value,
    ),
  ),
  secondPrinting("mean of our four southern yellow pines, flatsawn", "0.00265", "per % MC", () => {
    const four = southernPines.map((key) => speciesNamed(key).tangential.value);
    return four.reduce((sum, c) => sum + c, 0) / four.length;
  }),
  ...(
    [
      ["douglas-fir-coast", "7.6"],
      ["larch-western", "9.1"],
      ["spruce-engelmann", "7.1"],
      ["hemlock-western", "7.8"],
    ] as const
  ).map(([key, printed]) =>
    series(AREA, "extension table")(
      `our table's tangential shrinkage, ${speciesNamed(key).name.toLowerCase()}`,
      printed,
      "%",
      () => speciesNamed(key).tangentialShrinkage?.value ?? Number.NaN,
    ),
  ),
];

const [R, T] = [perPct(0.0018), perPct(0.00365)];
const strain = series(AREA, "textbook");
const askew = (angle: number) => outOfSquare(R, T, deg(angle), mcPct(6), mcPct(12)).value;
/** Strain turned through an angle; coefficients of white oak. */
const rings = [
  strain("rings flat: C_T", "0.00365", "per % MC", () => coefficientAt(R, T, deg(0)).value, exact),
  strain(
    "rings upright: C_R",
    "0.0018",
    "per % MC",
    () => {
      return coefficientAt(R, T, deg(90)).value;
    },
    exact,
  ),
  strain(
    "rings at 45°: half of both",
    "0.002725",
    "per % MC",
    () => {
      return coefficientAt(R, T, deg(45)).value;
    },
    exact,
  ),
  strain(
    "rings at 30°: three quarters and one",
    "0.0031875",
    "per % MC",
    () => {
      return coefficientAt(R, T, deg(30)).value;
    },
    exact,
  ),
  strain("out of square at 45°, six points: 0.0111 rad", "0.635983", "°", () => askew(45)),
  strain("out of square at 30°, six points: 0.0111 rad · sin 60°", "0.550778", "°", () =>
    askew(30),
  ),
];

export const movementChecks: readonly Check[] = [...examples, ...coefficients, ...tables, ...rings];
