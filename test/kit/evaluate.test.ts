import { describe, expect, test } from "vitest";
import { deg, mm, ratio } from "../../src/units/index.ts";
import { derived, given, type Input, type Work, work } from "../../src/worked/index.ts";
import { evaluateText, recompute } from "./evaluate.ts";

const source = derived("planted");
const one = (value: number): Input => given("an input", ratio(value), "1", source);

/** A worked value whose formula and figure need not belong together. */
const planted = (
  formula: string,
  value: number,
  inputs: Readonly<Record<string, Input>>,
  more: Partial<Pick<Work<number>, "unit" | "symbol">> = {},
) => work({ says: "planted", unit: "1", formula, inputs, value, source, ...more });

describe("arithmetic as it is written", () => {
  test.each<[string, number]>([
    ["2 + 3·4", 14],
    ["2·3 − 4 - 5", -3],
    ["12/2·3", 18],
    ["12/2/3", 2],
    ["1/2·3/4", 0.375],
    ["(1 + 2)·(3 + 4)", 21],
    ["−2²", -4],
    ["(−2)²", 4],
    ["2·−3", -6],
    ["2³", 8],
    ["10⁹", 1e9],
    ["10⁻⁹", 1e-9],
    ["2^10", 1024],
    ["2^3^2", 512],
    ["2^−1", 0.5],
    ["4^0.5", 2],
    ["2^(1 + 2)·5", 40],
    ["√2·√2", 2.0000000000000004],
    ["2·√(9 + 16)", 10],
    ["√(4)²", 4],
    ["max(0, 1 − 3)", 0],
    ["min(4, 3, 5)", 3],
    ["ceil(2.1) + floor(2.9) + round(2.5)", 8],
    ["ln(exp(3))", 3],
    ["4·arctan(1) − π", 0],
    ["cos²(0.3) + sin²(0.3)", 1],
    ["144·25.4³", 2359737.216],
  ])("%s", (text, value) => {
    expect(evaluateText(text)).toBeCloseTo(value, 12);
  });

  test.each<[string, Readonly<Record<string, number>>, number]>([
    ["M₁ − M₂", { "M₁": 3, "M₂": 5 }, -2],
    ["G_b + G_M·θ", { G_b: 1, G_M: 2, θ: 3 }, 7],
    ["a′ − a", { a: 1, "a′": 3 }, 2],
    ["7/8·D", { D: 16 }, 14],
    ["K²·h²", { K: 2, h: 3 }, 36],
    ["δ_years·10⁶", { δ_years: 2 }, 2e6],
    ["ma·max(a, b)", { ma: 2, a: 3, b: 4 }, 8],
  ])("%s with names", (text, names, value) => {
    expect(evaluateText(text, names)).toBe(value);
  });

  test.each(["", "2 3", "2(3)", "(1", "1)", "a·b", "foo(2)", "1 +", "max(1,)", "a$b", "1 = 2"])(
    "“%s” is refused",
    (text) => {
      expect(() => evaluateText(text)).toThrow();
    },
  );
});

describe("a right formula agrees", () => {
  test("and says what it came to", () => {
    const right = planted("y = a·b / (c + 1)", 3, { a: one(2), b: one(6), c: one(3) });
    expect(recompute(right)).toEqual({ computed: 3, expected: 3, agrees: true, unused: [] });
  });

  test("degrees are degrees until the formula turns them into radians", () => {
    const angle = given("an angle", deg(30), "°", source);
    expect(recompute(planted("y = sin(θ·π/180)", 0.5, { θ: angle })).agrees).toBe(true);
    expect(recompute(planted("y = sin(θ)", 0.5, { θ: angle })).agrees).toBe(false);
    expect(recompute(planted("y = 2·θ", 60, { θ: angle }, { unit: "°" })).agrees).toBe(true);
  });

  test("an equation is judged by both sides", () => {
    const inputs = { a: one(2), b: one(-6) };
    const equation = (x: number) => planted("a·x + b = 0", x, inputs, { symbol: "x" });
    expect(recompute(equation(3)).agrees).toBe(true);
    expect(recompute(equation(3.0001)).agrees).toBe(false);
  });
});

describe("a planted wrong formula is noticed", () => {
  const a = one(2);
  const b = one(5);
  test.each([
    ["a wrong sign", "y = a − b", 7],
    ["a swapped pair", "y = b/a", 0.4],
    ["a power left out", "y = a·b", 50],
    ["a bracket left out", "y = a + b·a", 14],
    ["a constant two per cent off", "y = 1.02·a·b", 10],
    ["one part in a hundred million", "y = a·b", 10 * (1 + 1e-8)],
  ])("%s", (_, formula, value) => {
    expect(recompute(planted(formula, value, { a, b })).agrees).toBe(false);
  });

  test("an input that the formula never mentions", () => {
    const found = recompute(planted("y = 2·a", 4, { a, b }));
    expect(found).toMatchObject({ computed: 4, agrees: false, unused: ["b"] });
  });

  test("a name that is no input", () => {
    expect(() => recompute(planted("y = a·c", 4, { a }))).toThrow("c");
  });

  test("an equation that does not hold its symbol", () => {
    const found = recompute(planted("a − a = 0", 7, { a }, { symbol: "x" }));
    expect(found).toMatchObject({ agrees: false, unused: ["x"] });
  });

  test("nought said of what is not nought", () => {
    const length = given("a length", mm(1e-6), "mm", source);
    expect(recompute(planted("y = L", 0, { L: length })).agrees).toBe(false);
  });
});
