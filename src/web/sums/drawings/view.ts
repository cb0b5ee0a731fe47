import { type Outcome, type Result, reckon, type Topic } from "../../../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../../../units/index.ts";
import type { Given } from "../../../worked/index.ts";

type Good = Extract<Outcome, { ok: true }>;

/** What a drawing may look at: the answers given, the results, and which field is touched. */
export type View = {
  /** an answer's value in its inside unit, or undefined when it was left out */
  readonly value: (name: string) => number | undefined;
  /** an answer as it would be printed */
  readonly label: (name: string) => string;
  /** a choice's word */
  readonly word: (name: string) => string;
  readonly result: (name: string) => number | undefined;
  readonly resultLabel: (name: string) => string;
  /** a result without its sign, where a drawing shows which way it goes */
  readonly resultSize: (name: string) => string;
  readonly touched: string | undefined;
};

const isGiven = (answer: unknown): answer is Given =>
  typeof answer === "object" && answer !== null && "value" in answer;

export function viewOf(good: Good, units: LengthUnit, touched: string | undefined): View {
  const given = (name: string): Given | undefined => {
    const answer = good.given[name];
    return isGiven(answer) ? answer : undefined;
  };
  const result = (name: string): Result | undefined =>
    good.answer.results.find((r) => r.name === name);
  const print = (found: Result | undefined, value: number | undefined): string =>
    found && value !== undefined
      ? printQuantity(value, found.worked.unit, units, found.purpose)
      : "";
  return {
    value: (name) => given(name)?.value,
    label: (name) => {
      const answer = given(name);
      return answer ? printQuantity(answer.value, answer.unit, units) : "";
    },
    word: (name) => String(good.given[name] ?? ""),
    result: (name) => result(name)?.worked.value,
    resultLabel: (name) => print(result(name), result(name)?.worked.value),
    resultSize: (name) => print(result(name), Math.abs(result(name)?.worked.value ?? 0)),
    touched,
  };
}

/**
 * The first result of a topic at several answers to one question: the points of a curve.
 *
 * @param topic  the topic
 * @param texts  the other answers
 * @param name  the question that runs
 * @param answers  its texts
 */
export function sweep(
  topic: Topic,
  texts: Readonly<Record<string, string>>,
  name: string,
  answers: readonly string[],
): readonly (number | undefined)[] {
  return answers.map((answer) => {
    const outcome = reckon(topic, { ...texts, [name]: answer }, "mm", (n) => n);
    return outcome.ok ? outcome.answer.results[0]?.worked.value : undefined;
  });
}
