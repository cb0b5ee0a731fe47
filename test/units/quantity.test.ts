import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type DimensionName, dimensions, readQuantity } from "../../src/units/index.ts";
import { between, isNear } from "../kit/sizes.ts";

/**
 * One unit of each kind in the inside unit, from the definitions: inch 25.4 mm, pound
 * 0.45359237 kg, US gallon 231 cubic inches, standard gravity 9.80665 m/s².
 */
const factors: Readonly<Record<DimensionName, Readonly<Record<string, number>>>> = {
  mass: { kg: 1, g: 0.001, t: 1000, lb: 0.45359237, oz: 0.028349523125 },
  load: { N: 1, kN: 1000, lb: 4.4482216152605, kg: 9.80665 },
  temperature: { "°C": 1, "°F": 5 / 9 },
  humidity: { "%": 1 },
  moisture: { "%": 1 },
  share: { "%": 1 },
  stress: { "N/mm²": 1, GPa: 1000, kPa: 0.001, bar: 0.1, psi: 0.00689475729316836 },
  area: { "m²": 1, "cm²": 1e-4, "mm²": 1e-6, "sq ft": 0.09290304, "sq in": 0.00064516 },
  volume: {
    l: 1,
    ml: 0.001,
    gal: 3.785411784,
    qt: 0.946352946,
    pt: 0.473176473,
    "fl oz": 0.0295735295625,
  },
  timber: { "m³": 1, "bd ft": 0.002359737216, "cu ft": 0.028316846592 },
  coverage: {
    "m²/l": 1,
    "sq ft/gal": 0.09290304 / 3.785411784,
    "sq ft/qt": 0.09290304 / 0.946352946,
  },
  speed: { rpm: 1 },
  angle: { "°": 1 },
  number: { "": 1 },
};
const zeros: Readonly<Record<string, number>> = { "°F": 32 };

const names = Object.keys(dimensions) as DimensionName[];
const everyUnit = names.flatMap((dimension) =>
  dimensions[dimension].units.flatMap((unit) =>
    unit.names.map((name) => [dimension, name, unit.names[0] ?? ""] as const),
  ),
);

function inside(text: string, dimension: DimensionName, bare: "inch" | "mm" = "mm"): number {
  const read = readQuantity(text, dimension, bare);
  if (!read.ok) throw new Error(`“${text}”: ${JSON.stringify(read.fault)}`);
  return read.value;
}

describe("a quantity in each of its units", () => {
  test("every unit of every dimension has its factor here", () => {
    for (const dimension of names) {
      const first = dimensions[dimension].units.map((u) => u.names[0]);
      expect([...first].sort()).toEqual(Object.keys(factors[dimension]).sort());
    }
  });

  test.each(everyUnit)("%s in %j", (dimension, name, first) => {
    const factor = factors[dimension][first] ?? Number.NaN;
    fc.assert(
      fc.property(between(-1e6, 1e6), fc.constantFrom("inch", "mm"), (n, bare) => {
        const expected = (n - (zeros[first] ?? 0)) * factor;
        // A unit that begins with a figure, such as 1/min, cannot be written close up.
        const closeUp = /^\d/.test(name) ? [] : [`${n}${name}`];
        for (const text of [`${n} ${name}`, ...closeUp]) {
          const read = inside(text, dimension, bare);
          expect(isNear(read, expected, 1e-12), `${text}: ${read}, not ${expected}`).toBe(true);
        }
      }),
      { numRuns: 20 },
    );
  });

  test.each<[DimensionName, string, number, number]>([
    ["mass", "10", 4.5359237, 10],
    ["load", "10", 44.482216152605, 98.0665],
    ["temperature", "50", 10, 50],
    ["temperature", "-5", (-37 * 5) / 9, -5],
    ["humidity", "45", 45, 45],
    ["stress", "1000", 6.89475729316836, 1000],
    ["area", "10", 0.9290304, 10],
    ["volume", "2", 1.892705892, 2],
    ["coverage", "400", (400 * 0.09290304) / 3.785411784, 400],
    ["speed", "18000", 18000, 18000],
    ["angle", "45", 45, 45],
    ["number", "3", 3, 3],
  ])("%s: a bare %s takes the side's unit", (dimension, text, inch, mm) => {
    expect(inside(text, dimension, "inch")).toBeCloseTo(inch, 9);
    expect(inside(text, dimension, "mm")).toBeCloseTo(mm, 9);
  });

  test.each<[DimensionName, string, number]>([
    ["temperature", "-40 F", -40],
    ["temperature", "−40 °C", -40],
    ["temperature", "212 °F", 100],
    ["mass", "2 1/2 lb", 1.133980925],
    ["mass", "½ kg", 0.5],
    ["mass", "1,5 kg", 1.5],
    ["stress", "1.5e6 psi", 10342.13593975254],
    ["humidity", "45 %RH", 45],
    ["humidity", "45 RH", 45],
    ["load", "  60   LBS ", 266.89329691563],
    ["area", "20 SQ  FT", 1.8580608],
    ["angle", "22.5 deg", 22.5],
  ])("%s: %j is %f", (dimension, text, value) => {
    expect(inside(text, dimension)).toBeCloseTo(value, 8);
  });
});

describe("what cannot be read is refused", () => {
  test.each<[DimensionName, string, string, string]>([
    ["mass", "", "mass-empty", ""],
    ["mass", "heavy", "mass-not-a-number", "h"],
    ["mass", "5 N", "mass-unit-unknown", "N"],
    ["mass", "1,234 kg", "mass-comma-three-digits", "1,234"],
    ["mass", "1,5 lb", "mass-comma-not-metric", ","],
    ["mass", "1,5", "mass-comma-not-metric", ","],
    ["load", "3/0 N", "load-fraction-zero", "3/0"],
    ["load", "1 9/8 N", "load-fraction-improper", "9/8"],
    ["load", "5 lb 3 oz", "load-unit-unknown", "lb 3 oz"],
    ["temperature", "20 K", "temperature-unit-unknown", "K"],
    ["temperature", "1e300 C", "temperature-too-large", "1e300 C"],
    ["temperature", "9e999", "temperature-too-large", "9e999"],
    ["number", "3 pieces", "number-unit-unknown", "pieces"],
    ["number", "3 toString", "number-unit-unknown", "toString"],
    ["angle", `${"4".repeat(120)}°`, "angle-too-long", "°"],
  ])("%s: %j by %s, pointing at %j", (dimension, text, code, at) => {
    const read = readQuantity(text, dimension, "mm");
    if (read.ok) expect.fail(`was read as ${read.value}`);
    expect(read.fault.code).toBe(code);
    expect(read.fault.read).toBe(at);
    expect(text.slice(read.fault.start, read.fault.end)).toBe(at);
    expect(read.fault.remedy.length).toBeGreaterThan(8);
  });

  test.each(names)("%s: its own examples are read, and stand in the remedy", (dimension) => {
    const refused = readQuantity("x", dimension, "mm");
    if (refused.ok) expect.fail("was read");
    for (const example of dimensions[dimension].examples) {
      expect(Number.isFinite(inside(example, dimension))).toBe(true);
      expect(refused.fault.remedy).toContain(example);
    }
  });
});
