import { describe, expect, test } from "vitest";
import { pct } from "../../src/units/index.ts";
import {
  assumed,
  cite,
  commonPractice,
  derived,
  givenByMaker,
  isUnproven,
  isWorked,
  known,
  Problem,
  published,
  wholeChain,
  work,
} from "../../src/worked/index.ts";
import { answer, middle, part, span } from "./sample.ts";

describe("worked values", () => {
  test("a chain has each link once, the answer first", () => {
    expect(wholeChain(answer)).toEqual([answer, middle, span, part]);
    expect(wholeChain(answer).map(isWorked)).toEqual([true, true, false, false]);
  });

  test("an argument is taken as it is, or as given by the maker", () => {
    expect(known(span, "other words", "mm")).toBe(span);
    expect(known(pct(5), "waste", "%")).toEqual({
      says: "waste",
      value: 5,
      unit: "%",
      source: { kind: "given" },
    });
  });

  test("what did not come out as a number is a fault of the code", () => {
    const spec = {
      says: "x",
      unit: "mm",
      formula: "x = 0/0",
      inputs: {},
      source: commonPractice,
    } as const;
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => work({ ...spec, value })).toThrow("x = 0/0");
      expect(() => work({ ...spec, value })).not.toThrow(Problem);
    }
  });
});

describe("sources", () => {
  test.each([
    [published("Wood Handbook", "Eq 4-5", "primary"), "Wood Handbook, Eq 4-5", false],
    [
      published("Wood Handbook", "Eq 4-5", "secondary"),
      "Wood Handbook, Eq 4-5, read second-hand",
      false,
    ],
    [published("Wood Handbook", "Eq 4-5", "memory"), "Wood Handbook, Eq 4-5, from memory", true],
    [derived("statics"), "statics", false],
    [commonPractice, "common practice, no source", true],
    [givenByMaker, "given", false],
    [assumed("a guess"), "assumed: a guess", true],
  ])("%j is said as %s", (source, words, unproven) => {
    expect(cite(source)).toBe(words);
    expect(isUnproven(source)).toBe(unproven);
  });
});

test("a problem keeps its parts and says them all", () => {
  const problem = new Problem("too-deep", "leg A", "It leaves 2 mm.", "Use 24 mm.");
  expect(problem).toMatchObject({
    code: "too-deep",
    place: "leg A",
    reason: "It leaves 2 mm.",
    remedy: "Use 24 mm.",
    name: "Problem",
  });
  expect(problem.message).toBe("leg A: It leaves 2 mm. Use 24 mm.");
  expect(problem).toBeInstanceOf(Error);
});
