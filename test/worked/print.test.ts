import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deg, mm, ratio } from "../../src/units/index.ts";
import {
  commonPractice,
  type Given,
  given,
  givenByMaker,
  printText,
  stepsOf,
  toJson,
  type WorkedJson,
  work,
} from "../../src/worked/index.ts";
import { between } from "../kit/sizes.ts";
import { answer } from "./sample.ts";

describe("as text", () => {
  test("the answer first, then what it came from, each once, indented below its use", () => {
    expect(printText(answer, "inch").split("\n")).toEqual([
      '  y = 63" [1600.2 mm]  the answer'.trimStart(),
      "  y = a + 2·L",
      "  y = (-228.6) + 2·914.4",
      "  A book, p. 7, from memory",
      "  note: a first note",
      "  note: a second",
      '  a = -9" [-228.6 mm]  part of the span',
      "    a = L·q",
      "    a = 914.4·(-0.25)",
      "    arithmetic",
      '    L = 36" [914.4 mm]  span',
      "      given",
      "    q = -0.25  a share",
      "      assumed: a usual figure",
    ]);
  });

  test("the side changes what is shown, never the figures in the formula", () => {
    const [inch, metric] = [stepsOf(answer, "inch"), stepsOf(answer, "mm")];
    expect(inch.map((s) => s.filled)).toEqual(metric.map((s) => s.filled));
    expect(inch[0]?.result).toBe('63"');
    expect(metric[0]?.result).toBe("1600.2 mm");
  });

  test("a name within a name is not filled in", () => {
    const worked = work({
      says: "",
      unit: "1",
      formula: "y = M·max(M₁, M_p) + M′",
      inputs: { M: one(2), "M₁": one(3), M_p: one(4), "M′": one(5) },
      value: ratio(13),
      source: givenByMaker,
    });
    expect(stepsOf(worked, "mm")[0]?.filled).toBe("y = 2·max(3, 4) + 5");
  });
});

const one = (value: number): Given => given("one", ratio(value), "1");

describe("as data", () => {
  test("goes through JSON and back with every digit", () => {
    fc.assert(
      fc.property(between(-1e9, 1e9), between(-1e-9, 1e-9), (a, b) => {
        const inner = given("inner", mm(a), "mm");
        const worked = work({
          says: "outer",
          unit: "°",
          formula: "y = x",
          inputs: { x: inner },
          value: deg(b),
          source: commonPractice,
        });
        const back: WorkedJson = JSON.parse(JSON.stringify(toJson(worked)));
        // JSON knows no minus nought; adding nought takes the sign away.
        expect(back.value).toBe(b + 0);
        expect(back.inputs?.x?.value).toBe(a + 0);
        expect(back).toMatchObject({ says: "outer", unit: "°", symbol: "y", formula: "y = x" });
      }),
    );
  });

  test("holds the whole chain, sources said, notes only where there are any", () => {
    expect(toJson(answer)).toEqual({
      says: "the answer",
      value: 1600.2,
      unit: "mm",
      source: "A book, p. 7, from memory",
      symbol: "y",
      formula: "y = a + 2·L",
      notes: ["a first note", "a second"],
      inputs: {
        L: { says: "span", value: 914.4, unit: "mm", source: "given" },
        a: {
          says: "part of the span",
          value: -228.6,
          unit: "mm",
          source: "arithmetic",
          symbol: "a",
          formula: "a = L·q",
          inputs: {
            L: { says: "span", value: 914.4, unit: "mm", source: "given" },
            q: { says: "a share", value: -0.25, unit: "1", source: "assumed: a usual figure" },
          },
        },
      },
    });
  });
});
