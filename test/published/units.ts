import {
  type DimensionName,
  inches,
  lengthParts,
  type Purpose,
  printQuantity,
  readLength,
  readQuantity,
  type UnitName,
} from "../../src/units/index.ts";
import { type Check, exact, halfDigit, series, within } from "./check.ts";

const AREA = "Units";
const definition = series(AREA, "definition");

const read = (text: string, dimension: DimensionName | "length"): number => {
  const value =
    dimension === "length" ? readLength(text, "inch") : readQuantity(text, dimension, "inch");
  if (!value.ok) throw new Error(`${text}: ${value.fault.reason}`);
  return value.value;
};

type Size = readonly [text: string, dimension: DimensionName | "length", printed: string];

/** Exact by definition, or by dividing what is. */
const exactly: readonly (readonly [unit: string, sizes: readonly Size[]])[] = [
  [
    "mm",
    [
      ["1 in", "length", "25.4"],
      ["1 ft", "length", "304.8"],
      ["5' 6 1/2\"", "length", "1689.1"],
      ["1 thou", "length", "0.0254"],
      ["1 mm", "length", "1"],
      ["1 cm", "length", "10"],
      ["1 m", "length", "1000"],
    ],
  ],
  [
    "kg",
    [
      ["1 kg", "mass", "1"],
      ["1 g", "mass", "0.001"],
      ["1 t", "mass", "1000"],
      ["1 lb", "mass", "0.45359237"],
      ["1 oz", "mass", "0.028349523125"],
    ],
  ],
  [
    "N",
    [
      ["1 N", "load", "1"],
      ["1 kN", "load", "1000"],
      ["1 kg", "load", "9.80665"],
      ["1 lb", "load", "4.4482216152605"],
    ],
  ],
  [
    "°C",
    [
      ["0 C", "temperature", "0"],
      ["100 C", "temperature", "100"],
      ["212 F", "temperature", "100"],
      ["50 F", "temperature", "10"],
      ["-40 F", "temperature", "-40"],
    ],
  ],
  [
    "N/mm²",
    [
      ["1 MPa", "stress", "1"],
      ["1 GPa", "stress", "1000"],
      ["1 kPa", "stress", "0.001"],
      ["1 bar", "stress", "0.1"],
    ],
  ],
  [
    "m²",
    [
      ["1 m²", "area", "1"],
      ["1 cm²", "area", "0.0001"],
      ["1 mm²", "area", "0.000001"],
      ["1 sq ft", "area", "0.09290304"],
      ["1 sq in", "area", "0.00064516"],
    ],
  ],
  [
    "m³",
    [
      ["1 m³", "timber", "1"],
      ["1 bd ft", "timber", "0.002359737216"],
      ["1 cu ft", "timber", "0.028316846592"],
    ],
  ],
  [
    "l",
    [
      ["1 l", "volume", "1"],
      ["1 ml", "volume", "0.001"],
      ["1 gal", "volume", "3.785411784"],
      ["1 qt", "volume", "0.946352946"],
      ["1 pt", "volume", "0.473176473"],
      ["1 fl oz", "volume", "0.0295735295625"],
    ],
  ],
  [
    "1",
    [
      ["1 m²/l", "coverage", "1"],
      ["1 % RH", "humidity", "1"],
      ["1 % MC", "moisture", "1"],
      ["1 %", "share", "1"],
      ["1 rpm", "speed", "1"],
      ["1°", "angle", "1"],
      ["1", "number", "1"],
    ],
  ],
];

/** Rounded. */
const rounded: readonly (readonly [unit: string, ...size: Size])[] = [
  ["N/mm²", "1 psi", "stress", "0.006894757"],
  ["N", "1 lbf", "load", "4.448222"],
  ["m²/l", "1 sq ft/gal", "coverage", "0.02454239"],
  ["m²/l", "1 sq ft/qt", "coverage", "0.09816955"],
];

const sizes = [
  ...exactly.flatMap(([unit, rows]) => rows.map((size) => [unit, exact, ...size] as const)),
  ...rounded.map(([unit, ...size]) => [unit, halfDigit, ...size] as const),
].map(([unit, tolerance, text, dimension, printed]) =>
  definition(`${text} (${dimension})`, printed, unit, () => read(text, dimension), tolerance),
);

/** A printed length in inches, without its shade. */
function printedInches(inch: number, purpose: Purpose): number {
  const { whole, fraction } = lengthParts(inches(inch), { units: "inch", purpose });
  return Number(whole) + (fraction ? fraction[0] / fraction[1] : 0);
}
const textbook = series(AREA, "textbook");
const fraction = (inch: number, purpose: Purpose, printed: string) =>
  textbook(
    `${inch} in, rounded as for ${purpose}`,
    printed,
    "in",
    () => printedInches(inch, purpose),
    exact,
  );

const shown = (value: number, unit: UnitName, ending: string): number => {
  const text = printQuantity(value, unit, "inch");
  if (!text.endsWith(ending)) throw new Error(`${text} is not in ${ending}`);
  return Number(text.slice(0, -ending.length));
};

export const unitChecks: readonly Check[] = [
  ...sizes,
  fraction(0.7, "fit", "45/64"),
  fraction(0.7, "layout", "11/16"),
  fraction(1.453, "fit", "93/64"),
  fraction(1.453, "layout", "23/16"),
  fraction(22.5 / 32, "layout", "23/32"),
  definition(
    "100 board feet in m³ shown",
    "8.33",
    "cu ft",
    () => shown(0.2359737, "m³", " cu ft"),
    exact,
  ),
  definition("0.09290304 m² shown", "1", "sq ft", () => shown(0.09290304, "m²", " sq ft"), exact),
  definition("37.8 °C shown", "100.0", "°F", () => shown(37.8, "°C", " °F"), within(0.05)),
  definition("10 °C shown", "50", "°F", () => shown(10, "°C", " °F"), exact),
  definition("3.785412 l shown, in quarts", "4", "qt", () => shown(3.785412, "l", " qt"), exact),
  definition("0.45359237 kg shown", "1", "lb", () => shown(0.45359237, "kg", " lb"), exact),
  definition(
    "100 psi in N/mm² shown",
    "100",
    "psi",
    () => shown(0.6894757, "N/mm²", " psi"),
    exact,
  ),
];
