import { parse } from "@babel/parser";
import type { Node } from "@babel/types";

/** One number of the formula code, to be made two per cent too large. */
export type Mutant = {
  readonly file: string;
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly raw: string;
  /** the line it stands in, for reading */
  readonly text: string;
};

/** A node that can be looked into; the parser's own types are too many to name here. */
type AnyNode = Node & Readonly<Record<string, unknown>>;

const isNode = (value: unknown): value is AnyNode =>
  typeof value === "object" && value !== null && "type" in value && "start" in value;

const comparisons = new Set(["<", ">", "<=", ">=", "===", "!==", "==", "!="]);
/** What is rounded for show or cut to length is no formula. */
const showing = new Set(["toFixed", "toPrecision", "slice", "padStart", "padEnd"]);

/** Where numbers are no constants of a formula: limits of use, refusals, types, places of a list. */
function isNoFormula(node: AnyNode): boolean {
  switch (node.type) {
    case "BinaryExpression":
      return comparisons.has(node.operator);
    case "ThrowStatement":
    case "ImportDeclaration":
      return true;
    case "NewExpression":
      return node.callee.type === "Identifier" && node.callee.name === "Problem";
    case "CallExpression": {
      const { callee } = node;
      const name =
        callee.type === "MemberExpression" && callee.property.type === "Identifier"
          ? callee.property.name
          : "";
      return showing.has(name);
    }
    default:
      return node.type.startsWith("TS") && node.type !== "TSAsExpression"
        ? node.type !== "TSSatisfiesExpression"
        : false;
  }
}

function* numbersIn(node: AnyNode): Generator<AnyNode> {
  if (node.type === "NumericLiteral") yield node;
  if (isNoFormula(node)) return;
  for (const [key, child] of Object.entries(node)) {
    if (key === "loc" || key.endsWith("Comments")) continue;
    if (node.type === "MemberExpression" && node.computed && key === "property") continue;
    for (const one of Array.isArray(child) ? child : [child])
      if (isNode(one)) yield* numbersIn(one);
  }
}

/**
 * Every number that may be a constant of a formula. Nought stays nought when multiplied, and
 * `1e-9` is a hair of slack for the machine's rounding.
 */
export function mutantsOf(file: string, code: string): readonly Mutant[] {
  const tree = parse(code, { sourceType: "module", plugins: ["typescript"] });
  const lines = code.split("\n");
  return [...numbersIn(tree.program as AnyNode)].flatMap((node): readonly Mutant[] => {
    const { start, end, loc } = node;
    if (start == null || end == null || !loc) return [];
    const raw = code.slice(start, end);
    if (Number(raw.replaceAll("_", "")) === 0 || raw === "1e-9") return [];
    const { line } = loc.start;
    return [{ file, line, start, end, raw, text: (lines[line - 1] ?? "").trim() }];
  });
}

/** The code with that number two per cent too large. */
export const mutated = (code: string, { start, end, raw }: Mutant): string =>
  `${code.slice(0, start)}(${raw} * 1.02)${code.slice(end)}`;
