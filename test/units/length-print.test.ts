import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  inches,
  type LengthStyle,
  lengthParts,
  type Mm,
  mm,
  printLength,
  readLength,
} from "../../src/units/index.ts";
import { between } from "../kit/sizes.ts";

const style: fc.Arbitrary<LengthStyle> = fc.record({
  units: fc.constantFrom("inch", "mm"),
  purpose: fc.constantFrom("rough", "layout", "fit", "about", "bit", "clearance"),
  feet: fc.boolean(),
});

const numbers = fc.oneof(
  between(-3, 3),
  between(-400, 400),
  between(-20000, 20000),
  between(-9e6, 9e6),
  // Where rounding turns over: whole and half ticks of every ruler, and their neighbours.
  fc
    .tuple(fc.integer({ min: -3000, max: 3000 }), fc.constantFrom(-1e-9, 0, 1e-9, 0.1, -0.1))
    .map(([ticks, off]) => (ticks * 25.4) / 128 + off),
  fc.integer({ min: -40000, max: 40000 }).map((twentieths) => twentieths / 20),
  fc.integer({ min: -4000, max: 4000 }).map((halfThous) => halfThous * 0.0127),
);

const readBack = (text: string, units: LengthStyle["units"]): Mm => {
  const read = readLength(text, units);
  if (!read.ok) throw new Error(`${text}: ${JSON.stringify(read.fault)}`);
  return read.value;
};

describe("what was printed reads back", () => {
  test("to a value that prints the same", () => {
    fc.assert(
      fc.property(numbers, style, fc.constantFrom("inch", "mm"), (n, how, bare) => {
        const printed = printLength(mm(n), how);
        expect(printLength(readBack(printed, bare), how)).toBe(printed);
      }),
      { numRuns: 20000 },
    );
  });

  test("to within half of the step it was printed in, or one step up for what must pass", () => {
    const half = {
      inch: {
        rough: 32,
        layout: 64,
        fit: 128,
        about: 32,
        enough: 16,
        safe: 16,
        bit: 128,
        clearance: 64,
      },
      mm: {
        rough: 0.5,
        layout: 0.25,
        fit: 0.05,
        about: 0.5,
        enough: 1,
        safe: 1,
        bit: 0.05,
        clearance: 0.1,
      },
    };
    fc.assert(
      fc.property(numbers, style, (n, how) => {
        const purpose = how.purpose ?? "fit";
        const step = how.units === "mm" ? half.mm[purpose] : 25.4 / half.inch[purpose];
        const off = Math.abs(readBack(printLength(mm(n), how), how.units)) - Math.abs(n);
        expect(Math.abs(off)).toBeLessThanOrEqual(step + 1e-6);
        if (purpose === "clearance" || purpose === "enough") expect(off).toBeGreaterThan(-1e-6);
        if (purpose === "safe") expect(off).toBeLessThan(1e-6);
      }),
      { numRuns: 5000 },
    );
  });

  test("a minus turns the text and nothing else", () => {
    fc.assert(
      fc.property(numbers, style, (n, how) => {
        const [plus, minus] = [
          printLength(mm(Math.abs(n)), how),
          printLength(mm(-Math.abs(n)), how),
        ];
        expect([`-${plus}`, plus]).toContain(minus);
        if (minus === plus) expect(plus).toMatch(/^0( mm|")$/);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("as a rule and a caliper read it", () => {
  test.each<[number, LengthStyle, string]>([
    [31.75, { units: "inch" }, '1 1/4"'],
    [31.75, { units: "mm" }, "31.8 mm"],
    [25.4 / 2, { units: "inch" }, '1/2"'],
    [25.4 * 33.5, { units: "inch" }, '33 1/2"'],
    [25.4 * 33.5, { units: "inch", feet: true }, `2' 9 1/2"`],
    [25.4 * 24, { units: "inch", feet: true }, "2'"],
    [25.4 * 24.5, { units: "inch", feet: true }, `2' 1/2"`],
    [25.4 * 11, { units: "inch", feet: true }, '11"'],
    [-25.4 * 33.5, { units: "inch", feet: true }, `-2' 9 1/2"`],
    [0, { units: "inch" }, '0"'],
    [-0.00001, { units: "inch" }, '0"'],
    [-0.01, { units: "mm" }, "0 mm"],
    [0.1778, { units: "inch" }, '0.007"'],
    [25.4 / 64, { units: "inch" }, '1/64"'],
    [0.0155 * 25.4, { units: "inch" }, '1/64"'],
    [0.0154 * 25.4, { units: "inch" }, '0.015"'],
    [19, { units: "inch" }, '3/4"'],
    [19, { units: "mm" }, "19 mm"],
    [10.84, { units: "inch" }, '27/64" full'],
    [10.6, { units: "inch" }, '27/64" scant'],
    [10.84, { units: "inch", purpose: "layout" }, '7/16" scant'],
    [22.9, { units: "inch", purpose: "rough" }, '7/8" full'],
    [22.9, { units: "mm", purpose: "rough" }, "23 mm"],
    [22.8, { units: "mm", purpose: "layout" }, "23 mm"],
    [22.7, { units: "mm", purpose: "layout" }, "22.5 mm"],
    [0.05, { units: "mm" }, "0.1 mm"],
  ])("%f mm, %j: %s", (n, how, text) => {
    expect(printLength(mm(n), how)).toBe(text);
  });

  test("no fraction is left unreduced, none reaches one", () => {
    fc.assert(
      fc.property(numbers, style, (n, how) => {
        const { fraction, unit } = lengthParts(mm(n), how);
        if (!fraction) return;
        const [top, bottom] = fraction;
        expect(unit).toBe("″");
        expect(top % 2).toBe(1);
        expect(top).toBeLessThan(bottom);
        expect([2, 4, 8, 16, 32, 64]).toContain(bottom);
      }),
    );
  });

  test("full and scant stand where more than a tenth of a millimetre is hidden, and only there", () => {
    fc.assert(
      fc.property(between(1, 5000), fc.constantFrom("rough", "layout", "fit"), (n, purpose) => {
        const { whole, fraction, shade } = lengthParts(mm(n), { units: "inch", purpose });
        const shown = inches(Number(whole) + (fraction ? fraction[0] / fraction[1] : 0));
        const hidden = n - shown;
        const due = Math.abs(hidden) <= 0.1 ? undefined : hidden > 0 ? "full" : "scant";
        expect(shade).toBe(due);
      }),
      { numRuns: 2000 },
    );
  });

  test("the parts are what the text is made of", () => {
    expect(lengthParts(inches(-33.5), { units: "inch", feet: true })).toEqual({
      negative: true,
      feet: 2,
      whole: "9",
      fraction: [1, 2],
      unit: "″",
      shade: undefined,
    });
    expect(lengthParts(mm(12.34), { units: "mm" })).toEqual({
      negative: false,
      feet: undefined,
      whole: "12.3",
      fraction: undefined,
      unit: "mm",
      shade: undefined,
    });
    expect(lengthParts(inches(0.75), { units: "inch" })).toMatchObject({
      whole: "",
      fraction: [3, 4],
    });
  });
});
