import { describe, expect, test } from "vitest";
import { allChecks } from "./all.ts";
import {
  halfDigit,
  judge,
  printedTolerance,
  printedValue,
  series,
  share,
  within,
} from "./check.ts";
import { sources } from "./sources.ts";

describe("published values", () => {
  test.each(allChecks.map((check) => [`${check.area}: ${check.says}`, check] as const))(
    "%s",
    (_, check) => {
      const { computed, expected, error, allowed, passes } = judge(check);
      expect(passes, `${computed} is ${error} off ${expected}; ${allowed} is allowed`).toBe(true);
    },
  );

  test("each is there once, and every source is used", () => {
    const names = allChecks.map((check) => `${check.area}: ${check.says}`);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
    const used = new Set<string>(allChecks.map((check) => check.source));
    expect(Object.keys(sources).filter((key) => !used.has(key))).toEqual([]);
  });
});

describe("judging a check", () => {
  test.each([
    ["119 500", 119500],
    ["-0.2385", -0.2385],
    ["5/384", 5 / 384],
  ])("reads %s as printed", (printed, value) => {
    expect(printedValue(printed)).toBe(value);
  });

  test.each(["", "about 3", "4/0", "1.2.3"])("refuses “%s”", (printed) => {
    expect(() => printedValue(printed)).toThrow();
  });

  test.each([
    ["43.3", 0.05],
    ["0.60", 0.005],
    ["1 500", 0.5],
  ])("allows half the last digit of %s", (printed, half) => {
    expect(printedTolerance(printed)).toBeCloseTo(half, 12);
  });

  test("a fraction has no last digit", () => {
    expect(() => printedTolerance("5/384")).toThrow();
  });

  const one = (printed: string, computed: number, tolerance = halfDigit) =>
    judge(series("area", "textbook")("a value", printed, "mm", () => computed, tolerance)).passes;

  test("the edge of a tolerance is within it, what lies past it is not", () => {
    expect([one("0.1", 0.15), one("0.1", 0.1501)]).toEqual([true, false]);
    expect([one("200", 201, share(0.005)), one("200", 201.1, share(0.005))]).toEqual([true, false]);
    expect([one("8", 7.93, within(0.07)), one("8", 7.92, within(0.07))]).toEqual([true, false]);
  });

  test("no number passes no check", () => {
    expect(one("1", Number.NaN)).toBe(false);
    expect(one("1", Number.POSITIVE_INFINITY)).toBe(false);
  });
});
