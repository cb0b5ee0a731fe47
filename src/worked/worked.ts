import type { UnitName } from "../units/index.ts";
import { givenByMaker, isUnproven, type Source } from "./source.ts";

/** An input at the end of a chain: typed, looked up, or assumed. */
export type Given<V extends number = number> = {
  readonly says: string;
  readonly value: V;
  readonly unit: UnitName;
  readonly source: Source;
};

/** A number with its reasoning. Its formula computes its value from its inputs, in their units. */
export type Worked<V extends number = number> = Given<V> & {
  /** what it is called inside formulas: the left side of its own */
  readonly symbol: string;
  readonly formula: string;
  /** by the names they have in the formula */
  readonly inputs: Readonly<Record<string, Input>>;
  readonly notes: readonly string[];
};

export type Input = Given | Worked;

/** What a formula takes: a plain number, or one that brings its reasoning along. */
export type Known<V extends number> = V | Given<V> | Worked<V>;

/** Whether an input brings a formula of its own. */
export const isWorked = (input: Input): input is Worked => "formula" in input;

/** A value looked up or assumed, with where it comes from. */
export const given = <V extends number>(
  says: string,
  value: V,
  unit: UnitName,
  source: Source = givenByMaker,
): Given<V> => ({ says, value, unit, source });

/** An argument as an input: plain numbers are taken as given by the maker under this name. */
export const known = <V extends number>(
  argument: Known<V>,
  says: string,
  unit: UnitName,
): Given<V> | Worked<V> =>
  typeof argument === "object" ? argument : given(says, argument as V, unit);

export type Work<V extends number> = {
  readonly says: string;
  readonly unit: UnitName;
  /** `y = a · b`; or an equation solved for the symbol, `a·x² + b = 0` */
  readonly formula: string;
  /** needed only when the left side is not the symbol alone */
  readonly symbol?: string;
  readonly inputs: Readonly<Record<string, Input>>;
  readonly value: V;
  readonly source: Source;
  readonly notes?: readonly string[];
};

/** Puts a computed value together with its reasoning. */
export function work<V extends number>(spec: Work<V>): Worked<V> {
  const { says, unit, formula, inputs, value, source, notes = [] } = spec;
  if (!Number.isFinite(value))
    throw new Error(`“${says}” did not come out as a number: ${formula}`);
  const symbol = spec.symbol ?? formula.slice(0, formula.indexOf("=")).trim();
  return { says, value, unit, source, symbol, formula, inputs, notes };
}

/** Every worked value and input of a chain, each once, the asked one first. */
export function wholeChain(worked: Worked): readonly Input[] {
  const seen = new Set<Input>();
  const visit = (input: Input) => {
    if (seen.has(input)) return;
    seen.add(input);
    if (isWorked(input)) Object.values(input.inputs).forEach(visit);
  };
  visit(worked);
  return [...seen];
}

/** Every note of a chain, each once: what is stretched, doubtful, or to be minded. */
export const notesOf = (worked: Worked): readonly string[] => [
  ...new Set(wholeChain(worked).flatMap((input) => (isWorked(input) ? input.notes : []))),
];

/**
 * What in a chain rests on memory or common practice, and should be known to. What is assumed in
 * place of an answer is left out: it shows among the answers.
 */
export const unprovenOf = (worked: Worked): readonly Input[] =>
  wholeChain(worked).filter(({ source }) => isUnproven(source) && source.kind !== "assumed");
