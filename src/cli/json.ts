import { Refusal } from "../kinds/index.ts";
import type { Answer, Topic } from "../reckon/index.ts";
import {
  cite,
  type Given,
  notesOf,
  type Problem,
  toJson,
  unprovenOf,
  type Worked,
} from "../worked/index.ts";

/** An answer as plain data: inside units, full precision. */
export function answerJson(
  topic: Topic,
  given: Readonly<Record<string, unknown>>,
  answer: Answer,
  working: boolean,
) {
  return {
    topic: topic.name,
    given: Object.fromEntries(Object.entries(given).map(([k, v]) => [k, givenJson(v)])),
    results: answer.results.map(({ name, says, worked, low, high }) => ({
      name,
      ...figureJson(worked),
      ...(says === undefined ? {} : { says }),
      ...(low && high ? { low: low.value, high: high.value } : {}),
      ...doubtsJson(worked),
      ...(working ? { working: toJson(worked) } : {}),
      ...(working && low && high ? { ends: [low, high].map(toJson) } : {}),
    })),
    remarks: answer.remarks,
    findings: answer.findings.map(({ id, verdict, says }) => ({ id, verdict, says })),
    cautions: answer.cautions.map(({ says, source }) => ({ says, source: cite(source) })),
  };
}

export const figureJson = ({ says, value, unit, source }: Worked) => ({
  says,
  value,
  unit,
  source: cite(source),
});

/** Notes of a figure's whole chain, and what in it is not proven. */
export const doubtsJson = (worked: Worked) => ({
  ...listed("notes", notesOf(worked)),
  ...listed(
    "unproven",
    unprovenOf(worked).map(({ says, source }) => `${says}: ${cite(source)}`),
  ),
});

/** A list under its name, or nothing where it is empty. */
const listed = (name: string, list: readonly string[]) => (list.length > 0 ? { [name]: list } : {});

function givenJson(answer: unknown) {
  if (typeof answer === "string") return answer;
  if (isGiven(answer)) {
    return { value: answer.value, unit: answer.unit, source: cite(answer.source) };
  }
  return (answer as { readonly name: string }).name;
}

const isGiven = (answer: unknown): answer is Given =>
  typeof answer === "object" && answer !== null && "value" in answer && "unit" in answer;

/** With the change that puts it right, where one is known. */
export const problemJson = (problem: Problem) => {
  const { code, place, reason, remedy } = problem;
  const mend = problem instanceof Refusal ? { mend: problem.mend } : {};
  return { code, place, reason, remedy, ...mend };
};
