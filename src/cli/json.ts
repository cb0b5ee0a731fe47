import type { Answer, Topic } from "../reckon/index.ts";
import { cite, type Given, type Problem, toJson, type Worked } from "../worked/index.ts";

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
      ...(working ? { working: toJson(worked) } : {}),
    })),
    remarks: answer.remarks,
    findings: answer.findings.map(({ id, verdict, says }) => ({ id, verdict, says })),
    cautions: answer.cautions.map(({ says, source }) => ({ says, source: cite(source) })),
  };
}

const figureJson = ({ says, value, unit, source, notes }: Worked) => ({
  says,
  value,
  unit,
  source: cite(source),
  ...(notes.length > 0 ? { notes } : {}),
});

function givenJson(answer: unknown) {
  if (typeof answer === "string") return answer;
  if (isGiven(answer)) {
    return { value: answer.value, unit: answer.unit, source: cite(answer.source) };
  }
  return (answer as { readonly name: string }).name;
}

const isGiven = (answer: unknown): answer is Given =>
  typeof answer === "object" && answer !== null && "value" in answer && "unit" in answer;

export const problemJson = ({ code, place, reason, remedy }: Problem) => ({
  code,
  place,
  reason,
  remedy,
});
