import { describe, expect, test } from "vitest";
import { type LengthUnit, placeOf, readLength } from "../../src/units/index.ts";
import { Problem, problemAt } from "../../src/worked/index.ts";
import { isNear } from "../kit/sizes.ts";

const IN = 25.4;

/** What each notation is worth in millimetres, whichever side a bare number is on. */
const onBothSides: readonly (readonly [text: string, mm: number])[] = [
  ['1 1/4"', 31.75],
  ["1-1/4 in", 31.75],
  ["1¼″", 31.75],
  ["1 ¼ in.", 31.75],
  ["1\u20091/4\u202f″", 31.75],
  ["1\u00a01⁄4 inches", 31.75],
  ["1∕4 inch", 6.35],
  ['1¹⁄₆₄"', IN * (1 + 1 / 64)],
  ['¹⁵⁄₁₆"', (IN * 15) / 16],
  ['¹/16"', IN / 16],
  ['⅟8"', IN / 8],
  ['⅟₈"', IN / 8],
  ["5/4", 31.75],
  ["3/4", 19.05],
  ["3 / 4", 19.05],
  ["2 3/8", 60.325],
  ["¾", 19.05],
  ["2½", 63.5],
  ["⅓", IN / 3],
  ["⅔ in", (2 * IN) / 3],
  ["⅛", IN / 8],
  ["⅜", (3 * IN) / 8],
  ["⅝", (5 * IN) / 8],
  ["⅞", (7 * IN) / 8],
  [`5' 6 1/2"`, 66.5 * IN],
  [`5'6"`, 66 * IN],
  [`5'-6 1/2"`, 66.5 * IN],
  [`5' - 6"`, 66 * IN],
  ["5′ 6½″", 66.5 * IN],
  ["5’ 6”", 66 * IN],
  ["5' 6 1/2", 66.5 * IN],
  ["5'", 60 * IN],
  ["5.5 ft", 66 * IN],
  ["5 1/2'", 66 * IN],
  ["5 ft 6 in", 66 * IN],
  ["5ft6in", 66 * IN],
  ["5 FT 6 IN", 66 * IN],
  ["5 feet 0 inches", 60 * IN],
  ["1 foot", 12 * IN],
  ["6''", 6 * IN],
  [".375in", 9.525],
  ["0.375 in", 9.525],
  ["1.25″", 31.75],
  ["7 thou", 0.1778],
  ["30 mm", 30],
  ["30mm", 30],
  ["30 MM", 30],
  ["30. mm", 30],
  ["3.2cm", 32],
  ["3,2cm", 32],
  ["3,25 mm", 3.25],
  ["0,5 mm", 0.5],
  [",5 mm", 0.5],
  ["1,2345 m", 1234.5],
  ["1.2 m", 1200],
  ["1200 millimetres", 1200],
  ["2 metres", 2000],
  ["12 centimeters", 120],
  ["1.2e3 mm", 1200],
  ["1/2 mm", 0.5],
  ["-5 mm", -5],
  ["−5 mm", -5],
  ["–1 1/4 in", -31.75],
  ["+5 mm", 5],
  [`-5' 6"`, -66 * IN],
  ["0 in", 0],
  ["  30\tmm  ", 30],
  ["\ufeff30 mm", 30],
];

const perSide: readonly (readonly [text: string, inch: number, mm: number])[] = [
  ["12", 12 * IN, 12],
  ["1.5", 1.5 * IN, 1.5],
  [".5", 0.5 * IN, 0.5],
  ["-3", -3 * IN, -3],
  ["0", 0, 0],
];

function millimetres(text: string, bare: LengthUnit): number {
  const read = readLength(text, bare);
  if (!read.ok) throw new Error(`“${text}”: ${JSON.stringify(read.fault)}`);
  return read.value;
}

describe("every way a maker writes a length", () => {
  test.each(onBothSides)("%j is %f mm on both sides", (text, value) => {
    for (const bare of ["inch", "mm"] as const) {
      const read = millimetres(text, bare);
      expect(isNear(read, value, 1e-12), `${read}`).toBe(true);
    }
  });

  test.each(perSide)("%j takes the side's unit", (text, inch, mm) => {
    expect(millimetres(text, "inch")).toBeCloseTo(inch, 10);
    expect(millimetres(text, "mm")).toBeCloseTo(mm, 10);
  });

  test.each([
    ['27/64" full', (27 / 64) * IN],
    ["3/8 full", (3 / 8) * IN],
    ["3/8 in. full", (3 / 8) * IN],
    [`2' full`, 24 * IN],
  ])("%j is a little more, and scant a little less", (text, size) => {
    const more = millimetres(text, "mm");
    const less = millimetres(text.replace("full", "scant"), "mm");
    // More than the printer hides, less than half of the finest tick.
    expect(more - size).toBeGreaterThan(0.1);
    expect(more - size).toBeLessThan(IN / 128);
    expect(size - less).toBeCloseTo(more - size, 10);
  });
});

const long = "1".repeat(121);

/** What is refused, by which code, and the characters that are pointed at. */
const refusals: readonly (readonly [text: string, code: string, read: string])[] = [
  ["", "length-empty", ""],
  ["   ", "length-empty", "   "],
  ["\u2009", "length-empty", "\u2009"],
  [long, "length-too-long", long.slice(120)],
  ["abc", "length-not-a-number", "a"],
  ["-", "length-not-a-number", ""],
  ["--5", "length-not-a-number", "-"],
  ["$5", "length-not-a-number", "$"],
  ["/4 in", "length-not-a-number", "/"],
  ["٣ mm", "length-not-a-number", "٣"],
  ["5 parsecs", "length-unit-unknown", "parsecs"],
  ["5 m2", "length-extra", "2"],
  ["5 in wide", "length-extra", "wide"],
  ["5 mm 6", "length-extra", "6"],
  ["1.5 1/2", "length-extra", "1/2"],
  ["1 - 1/4", "length-extra", "- 1/4"],
  ["3/4/5", "length-extra", "/5"],
  ["5 in 6 ft", "length-extra", "6 ft"],
  [`5' 6" 7`, "length-extra", "7"],
  ["1 5/4 in", "length-fraction-improper", "5/4"],
  ["1-4/4", "length-fraction-improper", "4/4"],
  ["3/0", "length-fraction-zero", "3/0"],
  ["1 3/0 in", "length-fraction-zero", "3/0"],
  ["1,250 mm", "length-comma-three-digits", "1,250"],
  ["1,250", "length-comma-three-digits", "1,250"],
  ["1,250 in", "length-comma-three-digits", "1,250"],
  [",375 in", "length-comma-three-digits", ",375"],
  ["3,2", "length-comma-not-metric", ","],
  ["3,25 in", "length-comma-not-metric", ","],
  [`5' 6,5"`, "length-comma-not-metric", ","],
  ["5 ft 30 mm", "length-mixed", "30 mm"],
  [`5' 6'`, "length-mixed", "6'"],
  [`5.5' 6"`, "length-feet-not-whole", "5.5"],
  [`5 1/2' 6"`, "length-feet-not-whole", "5 1/2"],
  [`5' 14"`, "length-inches-over-twelve", `14"`],
  [`5' 12`, "length-inches-over-twelve", "12"],
  ["10001 m", "length-too-large", "10001 m"],
  ["1e400 mm", "length-too-large", "1e400 mm"],
  ["9e999", "length-too-large", "9e999"],
];

describe("what cannot be a length is refused", () => {
  test.each(refusals)("%j by %s, pointing at %j", (text, code, at) => {
    for (const bare of ["inch", "mm"] as const) {
      const read = readLength(text, bare);
      if (read.ok) expect.fail(`was read as ${read.value}`);
      const { start, end, reason, remedy } = read.fault;
      expect(read.fault.code).toBe(code);
      expect(read.fault.read).toBe(at);
      expect(text.slice(start, end)).toBe(at);
      expect(start).toBeGreaterThanOrEqual(0);
      expect(end).toBeLessThanOrEqual(text.length);
      expect(reason.length).toBeGreaterThan(8);
      expect(remedy.length).toBeGreaterThan(8);
    }
  });

  test("the place counts from one, as people do, and is said in the problem", () => {
    const read = readLength("5 parsecs", "mm");
    if (read.ok) expect.fail("was read");
    expect(placeOf(read.fault)).toBe("at character 3, “parsecs”");
    const problem = problemAt("--width", read.fault);
    expect(problem).toBeInstanceOf(Problem);
    expect(problem.place).toBe("--width, at character 3, “parsecs”");
    expect(problem.code).toBe("length-unit-unknown");
  });

  test("a long text is shortened in the place", () => {
    const fault = { code: "c", start: 4, end: 99, read: "x".repeat(95), reason: "", remedy: "" };
    expect(placeOf(fault).length).toBeLessThan(60);
    expect(placeOf({ ...fault, read: "" })).toContain("character 5");
  });
});
