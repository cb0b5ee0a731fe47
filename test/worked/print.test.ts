import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deg, mm, pct, ratio } from "../../src/units/index.ts";
import {
  assumed,
  cite,
  commonPractice,
  derived,
  type Given,
  given,
  givenByMaker,
  isUnproven,
  isWorked,
  known,
  Problem,
  printHtml,
  printText,
  published,
  stepsOf,
  toJson,
  type Worked,
  type WorkedJson,
  wholeChain,
  work,
} from "../../src/worked/index.ts";
import { between } from "../kit/sizes.ts";

const span = given("span", mm(914.4), "mm");
const part = given("a share", ratio(-0.25), "1", assumed("a usual figure"));
const middle: Worked = work({
  says: "part of the span",
  unit: "mm",
  formula: "a = L·q",
  inputs: { L: span, q: part },
  value: mm(-228.6),
  source: derived("arithmetic"),
});
const answer: Worked = work({
  says: "the answer",
  unit: "mm",
  formula: "y = a + 2·L",
  inputs: { a: middle, L: span },
  value: mm(1600.2),
  source: published("A book", "p. 7", "memory"),
  notes: ["a first note", "a second"],
});

describe("as text", () => {
  test("the answer first, then what it came from, each once, indented below its use", () => {
    expect(printText(answer, "inch").split("\n")).toEqual([
      '  y = 63" [1600.2 mm]  the answer'.trimStart(),
      "  y = a + 2·L",
      "  y: (-228.6) + 2·914.4",
      "  A book, p. 7, from memory",
      "  note: a first note",
      "  note: a second",
      '  a = -9" [-228.6 mm]  part of the span',
      "    a = L·q",
      "    a: 914.4·(-0.25)",
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
    expect(stepsOf(worked, "mm")[0]?.filled).toBe("2·max(3, 4) + 5");
  });
});

const one = (value: number): Given => given("one", ratio(value), "1");

/** Well-formed means: every tag closed in its order, and nothing but the five escapes behind an &. */
function wellFormed(html: string): boolean {
  const open: string[] = [];
  for (const [, close, name = ""] of html.matchAll(/<(\/?)([a-z]+)(?: [a-z-]+="[^"<>]*")*>/g)) {
    if (close === "") open.push(name);
    else if (open.pop() !== name) return false;
  }
  const rest = html.replace(/<\/?[a-z]+(?: [a-z-]+="[^"<>]*")*>/g, "");
  return open.length === 0 && !/[<>"']/.test(rest) && !/&(?!(?:amp|lt|gt|quot|#39);)/.test(rest);
}

describe("as HTML", () => {
  test("every step is an item that tells its depth", () => {
    const html = printHtml(answer, "mm");
    expect(wellFormed(html)).toBe(true);
    expect(html.match(/<li data-depth="\d">/g)).toEqual(
      [0, 1, 2, 2].map((d) => `<li data-depth="${d}">`),
    );
    for (const text of ["the answer", "a first note", "A book, p. 7, from memory", "a = L·q"]) {
      expect(html).toContain(text);
    }
  });

  test("a text of any kind stays text", () => {
    const hostile = `<script>alert("1")</script>&amp;<img src=x onerror='y'>`;
    const texts = fc.oneof(
      fc.constant(hostile),
      fc.string({ unit: fc.constantFrom(..."<>&\"'/= ab;#3") }),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const source = published(text, text);
        const inner = given(text, mm(1), "mm", source);
        const worked = work({
          says: text,
          unit: "mm",
          formula: `x = ${text}`,
          inputs: { [text]: inner },
          value: mm(1),
          source,
          notes: [text],
        });
        const html = printHtml(worked, "mm");
        expect(wellFormed(html)).toBe(true);
        const names = [...html.matchAll(/<([a-z]+)/g)].map(([, name]) => name);
        expect(new Set(names)).toEqual(new Set(["ol", "li", "p", "i", "b", "span", "cite"]));
      }),
    );
  });

  test("the check for being well-formed can fail", () => {
    for (const bad of ["<p>", "<p><b></p></b>", "a & b", "a < b", 'a "', "<p onclick='x'></p>"]) {
      expect(wellFormed(bad), bad).toBe(false);
    }
    expect(wellFormed('<ol class="a"><li>1 &lt; 2</li></ol>')).toBe(true);
  });
});

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
    [published("Wood Handbook", "Eq 4-5"), "Wood Handbook, Eq 4-5, read second-hand", false],
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
