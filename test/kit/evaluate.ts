import type { Worked } from "../../src/worked/index.ts";
import { parseFormula, type Term } from "./formula-parser.ts";

/**
 * Works formulas out from their text alone, knowing nothing of the code that made them: only so
 * can it tell whether the formula shown is the formula computed.
 */
export type Recomputed = {
  /** what the formula's text comes to; for an equation, its left side */
  readonly computed: number;
  /** the value it was said to have; for an equation, its right side */
  readonly expected: number;
  readonly agrees: boolean;
  /** inputs that the formula never mentions: their reasoning would be shown for nothing */
  readonly unused: readonly string[];
};

const TOLERANCE = 1e-9;
/** An equation solved by halving reaches a root at nought only nearly. */
const LEAST_TERM = 1e-6;

/**
 * Recomputes a value from its formula's text and its inputs' values, in the units they are shown in:
 * a formula that takes degrees turns them into radians itself. An equation such as `a·x + b = 0` is
 * judged by both sides, against the size of its largest term.
 */
export function recompute(worked: Worked): Recomputed {
  const { left, right } = parseFormula(worked.formula);
  const names = new Map(Object.entries(worked.inputs).map(([name, { value }]) => [name, value]));
  const used = new Set([...namesIn(left), ...namesIn(right)]);
  const unused = [...names.keys()].filter((name) => !used.has(name));
  if (left.kind === "name" && left.name === worked.symbol) {
    const computed = evaluate(right, names);
    const expected = worked.value;
    const scale = Math.max(Math.abs(computed), Math.abs(expected));
    return { computed, expected, unused, agrees: within(computed, expected, scale, unused) };
  }
  names.set(worked.symbol, worked.value);
  const computed = evaluate(left, names);
  const expected = evaluate(right, names);
  const terms = [...addends(left), ...addends(right)].map((t) => Math.abs(evaluate(t, names)));
  const scale = Math.max(LEAST_TERM, ...terms);
  // A symbol that the equation never mentions would make it true of any value.
  const missing = used.has(worked.symbol) ? unused : [...unused, worked.symbol];
  return {
    computed,
    expected,
    unused: missing,
    agrees: within(computed, expected, scale, missing),
  };
}

const within = (a: number, b: number, scale: number, unused: readonly string[]): boolean =>
  unused.length === 0 &&
  Number.isFinite(a) &&
  Number.isFinite(b) &&
  Math.abs(a - b) <= TOLERANCE * scale;

/** A formula's right side with plain numbers for its names. */
export function evaluateText(text: string, names: Readonly<Record<string, number>> = {}): number {
  return evaluate(parseFormula(`y = ${text}`).right, new Map(Object.entries(names)));
}

const functions: Readonly<Record<string, (...numbers: readonly number[]) => number>> = {
  max: (...n) => Math.max(...n),
  min: (...n) => Math.min(...n),
  ceil: (x = Number.NaN) => Math.ceil(x),
  floor: (x = Number.NaN) => Math.floor(x),
  round: (x = Number.NaN) => Math.floor(x + 0.5),
  ln: (x = Number.NaN) => Math.log(x),
  exp: (x = Number.NaN) => Math.exp(x),
  sin: (x = Number.NaN) => Math.sin(x),
  cos: (x = Number.NaN) => Math.cos(x),
  arctan: (x = Number.NaN) => Math.atan(x),
  "√": (x = Number.NaN) => Math.sqrt(x),
};

function evaluate(term: Term, names: ReadonlyMap<string, number>): number {
  switch (term.kind) {
    case "number":
      return term.value;
    case "name": {
      const value = names.get(term.name) ?? (term.name === "π" ? Math.PI : undefined);
      if (value === undefined) throw new Error(`the formula's “${term.name}” is no input`);
      return value;
    }
    case "call": {
      const work = functions[term.name];
      if (!work) throw new Error(`no function “${term.name}” is known here`);
      return work(...term.of.map((t) => evaluate(t, names)));
    }
    case "minus":
      return -evaluate(term.of, names);
    case "pair": {
      const a = evaluate(term.a, names);
      const b = evaluate(term.b, names);
      switch (term.sign) {
        case "+":
          return a + b;
        case "-":
          return a - b;
        case "·":
          return a * b;
        case "/":
          return a / b;
        case "^":
          return a ** b;
      }
    }
  }
}

function namesIn(term: Term): readonly string[] {
  switch (term.kind) {
    case "number":
      return [];
    case "name":
      return [term.name];
    case "call":
      return term.of.flatMap(namesIn);
    case "minus":
      return namesIn(term.of);
    case "pair":
      return [...namesIn(term.a), ...namesIn(term.b)];
  }
}

function addends(term: Term): readonly Term[] {
  return term.kind === "pair" && (term.sign === "+" || term.sign === "-")
    ? [...addends(term.a), ...addends(term.b)]
    : [term];
}
