import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  mm,
  printFigure,
  printLength,
  printQuantity,
  type UnitName,
} from "../../src/units/index.ts";
import { between } from "../kit/sizes.ts";

const POUND_FORCE = 4.4482216152605;

/** A quantity, and how each side shows it. */
const shown: readonly (readonly [value: number, unit: UnitName, inch: string, mm: string])[] = [
  [31.75, "mm", '1 1/4"', "31.8 mm"],
  [645.16, "mm²", "1 sq in", "645.2 mm²"],
  [1234, "mm⁴", "0.002965 in⁴", "1234 mm⁴"],
  [1.858, "m²", "20 sq ft", "1.86 m²"],
  [0.028316846592, "m³", "1 cu ft", "0.0283 m³"],
  [0.473176473, "l", "16 fl oz", "473 ml"],
  [3.785411784, "l", "4 qt", "3.79 l"],
  [10, "m²/l", "407 sq ft/gal", "10 m²/l"],
  [8.333, "bd ft", "8.33 bd ft", "8.33 bd ft"],
  [22.6796185, "kg", "50 lb", "22.7 kg"],
  [680, "kg/m³", "42.5 lb/cu ft", "680 kg/m³"],
  [100 * POUND_FORCE, "N", "100 lb", "445 N (45.4 kg)"],
  [POUND_FORCE / 25.4, "N/mm", "1 lb/in", "0.175 N/mm"],
  [POUND_FORCE * 25.4 * 100, "N·mm", "100 in-lb", "11.3 N·m"],
  [12345, "N/mm²", "1790000 psi", "12300 N/mm²"],
  [22.456, "°", "22.46°", "22.46°"],
  [21, "°C", "69.8 °F", "21 °C"],
  [-40, "°C", "-40 °F", "-40 °C"],
  [45.04, "% RH", "45 % RH", "45 % RH"],
  [8.06, "% MC", "8.1 % MC", "8.1 % MC"],
  [12.34, "%", "12.3 %", "12.3 %"],
  [0.00365, "per % MC", "0.00365", "0.00365"],
  [0.68, "1", "0.68", "0.68"],
  [5, "pieces", "5", "5"],
  [1157.9, "rpm", "1150 rpm", "1150 rpm"],
  [10.16, "m/s", "2000 ft/min", "10.2 m/s"],
];

const units = shown.map(([, unit]) => unit);

describe("a quantity on each side", () => {
  test.each(shown)("%f %s: %j, %j", (value, unit, inch, mm) => {
    expect(printQuantity(value, unit, "inch")).toBe(inch);
    expect(printQuantity(value, unit, "mm")).toBe(mm);
  });

  test("speeds are rounded down, since they are limits", () => {
    fc.assert(
      fc.property(between(10, 40000), (speed) => {
        const printed = Number.parseFloat(printQuantity(speed, "rpm", "mm"));
        expect(printed).toBeLessThanOrEqual(speed + 1e-6);
        expect(printed).toBeGreaterThan(speed - 10.001);
      }),
    );
  });

  test.each<[number, UnitName, string]>([
    [-0.35, "°", "-0.35°"],
    [-0.5, "°C", "-0.5 °C"],
    [-0.0037, "1", "-0.0037"],
    [-0.001, "°", "0°"],
    [-0.04, "°C", "0 °C"],
    [-0.4, "kg/m³", "0 kg/m³"],
  ])("%f %s keeps its minus unless it rounds to nought: %s", (value, unit, text) => {
    expect(printQuantity(value, unit, "mm")).toBe(text);
  });

  test("any number prints as a number of its own sign, and nought has no minus", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.constantFrom("inch", "mm"),
        fc.oneof(between(-1e12, 1e12), between(-1, 1), between(-1e-7, 1e-7)),
        (unit, side, value) => {
          const text = printQuantity(value, unit, side);
          expect(text).not.toMatch(/NaN|Infinity|undefined/);
          expect(text).toMatch(/^-?\d/);
          const isNought = !/[1-9]/.test(text.replace(/ .*/, "")) && !/full|scant/.test(text);
          const freezing = unit === "°C" && side === "inch" ? -32 / 1.8 : 0;
          expect(text.startsWith("-")).toBe(!isNought && value < freezing);
        },
      ),
      { numRuns: 2000 },
    );
  });

  test("millimetres go through the printer of lengths, purpose and all", () => {
    const length = mm(22.9);
    for (const purpose of ["rough", "layout", "fit"] as const) {
      for (const side of ["inch", "mm"] as const) {
        const printed = printLength(length, { units: side, purpose });
        expect(printQuantity(length, "mm", side, purpose)).toBe(printed);
      }
    }
  });
});

describe("a figure inside a formula", () => {
  test.each([
    [0, "0"],
    [12300, "12300"],
    [1234567, "1234570"],
    [0.00365, "0.00365"],
    [1 / 3, "0.333333"],
    [-2 / 3, "-0.666667"],
    [1.5e-9, "1.50000e-9"],
    [4.16231426e9, "4.16231e+9"],
  ])("%f: %s", (value, text) => {
    expect(printFigure(value)).toBe(text);
  });

  test("is within a millionth of the value", () => {
    fc.assert(
      fc.property(between(-1e12, 1e12), between(-12, 12), (n, power) => {
        const value = n * 10 ** power;
        const off = Math.abs(Number(printFigure(value)) - value);
        expect(off).toBeLessThanOrEqual(Math.abs(value) * 5.0001e-6);
      }),
      { numRuns: 2000 },
    );
  });
});
