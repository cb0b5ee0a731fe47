import { type LengthUnit, printFigure, printQuantity } from "../units/index.ts";
import { cite } from "./source.ts";
import { type Input, isWorked, type Worked, wholeChain } from "./worked.ts";

/** One line of a working: what it is, what it came to, by which formula, from where. */
export type Step = {
  readonly depth: number;
  readonly symbol: string;
  readonly says: string;
  /** the value in the maker's units, rounded by what it is */
  readonly result: string;
  /** the figure used in formulas, in the inside unit */
  readonly figure: string;
  readonly formula: string | undefined;
  /** the formula with its figures put in */
  readonly filled: string | undefined;
  readonly source: string;
  readonly notes: readonly string[];
};

/**
 * The whole chain of a worked value, the answer first, each input once, indented below what uses it.
 *
 * @param worked  the answer
 * @param units  the side to print results on; formulas are always in millimetres and newtons
 * @param known  chains that were told before, and are not told again
 */
export function stepsOf(
  worked: Worked,
  units: LengthUnit,
  known: readonly Worked[] = [],
): readonly Step[] {
  const steps: Step[] = [];
  const told = new Set<Input>(known.flatMap(wholeChain));
  const tell = (input: Input, symbol: string, depth: number) => {
    if (told.has(input)) return;
    told.add(input);
    const full = isWorked(input) ? input : undefined;
    steps.push({
      depth,
      symbol,
      says: input.says,
      result: printQuantity(input.value, input.unit, units),
      figure: figureOf(input),
      ...(full ? formulaAs(full, symbol) : { formula: undefined, filled: undefined }),
      source: cite(input.source),
      notes: full?.notes ?? [],
    });
    for (const [name, inner] of Object.entries(full?.inputs ?? {})) tell(inner, name, depth + 1);
  };
  tell(worked, worked.symbol, 0);
  return steps;
}

const figureOf = (input: Input): string =>
  input.unit === "1" || input.unit === "per % MC" || input.unit === "pieces"
    ? printFigure(input.value)
    : `${printFigure(input.value)} ${input.unit}`;

/** A name in a formula: letters, then letters, digits, an underscored or lowered index, primes. */
const NAME = /\p{L}[\p{L}\d]*(?:_[\p{L}\d]+)?[₀-₉]*′*/gu;

/**
 * The formula under the name its result has where it is used, and the same with figures put in. An
 * equation that was solved for its result keeps its own names.
 */
function formulaAs(worked: Worked, symbol: string): Pick<Step, "formula" | "filled"> {
  const [left = "", right = ""] = worked.formula.split(/=(.*)/s).map((side) => side.trim());
  if (left !== worked.symbol)
    return { formula: worked.formula, filled: fill(worked.formula, worked) };
  return { formula: `${symbol} = ${right}`, filled: `${symbol} = ${fill(right, worked)}` };
}

/** An expression with each input's figure in place of its name. */
const fill = (expression: string, worked: Worked): string =>
  expression.replace(NAME, (name) => {
    const input = worked.inputs[name];
    if (!input) return name;
    const figure = printFigure(input.value);
    return input.value < 0 || figure.includes("e") ? `(${figure})` : figure;
  });
