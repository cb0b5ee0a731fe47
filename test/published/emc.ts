import {
  type Celsius,
  celsius,
  mcPct,
  readQuantity,
  readTable,
  rhPct,
} from "../../src/units/index.ts";
import { equilibriumMoisture, humidityFor } from "../../src/wood/index.ts";
import { type Check, exact, series, within } from "./check.ts";
import { emcCells } from "./data/emc-cells.ts";

const AREA = "Moisture and air";
/** The equation was fitted to the table, not the table to it: a little over half a digit. */
const ONE_CELL = 0.07;

/** A temperature of the table, read as a maker would type it. */
function fahrenheit(degrees: string): Celsius {
  const read = readQuantity(`${degrees} F`, "temperature", "inch");
  if (!read.ok) throw new Error(read.fault.reason);
  return celsius(read.value);
}

type Cell = { readonly degrees: string; readonly humidity: number; readonly printed: string };

const cells: readonly Cell[] = readTable(emcCells).flatMap(({ T_F: degrees = "", ...row }) =>
  Object.entries(row)
    .filter(([, printed]) => printed !== "-")
    .map(([humidity, printed]) => ({ degrees, humidity: Number(humidity), printed })),
);

const cell = series(AREA, "table 4-2");
const forward = cells.map(({ degrees, humidity, printed }) =>
  cell(
    `air of ${degrees} °F and ${humidity} % RH`,
    printed,
    "% MC",
    () => equilibriumMoisture(fahrenheit(degrees), rhPct(humidity)).value,
    within(ONE_CELL),
  ),
);

/**
 * The table read backwards. What one cell may be off in moisture is turned into humidity by the
 * table's own slope, taken from the cells five per cent to either side.
 */
const at70 = new Map(cells.filter((c) => c.degrees === "70").map((c) => [c.humidity, c.printed]));
const back = [10, 20, 30, 40, 50, 60, 70, 80].map((humidity) => {
  const printedAt = (h: number) => Number(at70.get(h));
  const slope = (printedAt(humidity + 5) - printedAt(humidity - 5)) / 10;
  return cell(
    `air of 70 °F that holds wood at ${at70.get(humidity)} % MC`,
    String(humidity),
    "% RH",
    () => humidityFor(fahrenheit("70"), mcPct(printedAt(humidity))).value,
    within(ONE_CELL / slope),
  );
});

const quotedCell = series(AREA, "table 4-2 quoted");
const quoted = [
  [30, "6.2"],
  [40, "7.7"],
  [50, "9.2"],
  [60, "11.0"],
  [65, "12.0"],
].map(([humidity, printed]) =>
  quotedCell(
    `air of 21 °C and ${humidity} % RH`,
    String(printed),
    "% MC",
    () => equilibriumMoisture(celsius(21), rhPct(Number(humidity))).value,
    within(ONE_CELL),
  ),
);

const worked = series(AREA, "eq 4-5 by hand");
const constants = (
  [
    ["W", "363.25"],
    ["K", "0.812087"],
    ["K₁", "6.1459"],
    ["K₂", "2.2877"],
  ] as const
).map(([name, printed]) =>
  worked(
    `constant ${name} of Eq 4-5`,
    printed,
    "1",
    () => equilibriumMoisture(celsius(10), rhPct(50)).inputs[name]?.value ?? Number.NaN,
    exact,
  ),
);

export const emcChecks: readonly Check[] = [...forward, ...back, ...quoted, ...constants];
