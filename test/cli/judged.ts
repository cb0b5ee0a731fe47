import type { Topic } from "../../src/reckon/index.ts";
import { topics } from "../../src/reckon/index.ts";

type Finding = ReturnType<Topic["answer"]>["findings"][number];

/**
 * The moisture topic with a finding of the given verdict laid on its answer: no quick sum of today
 * fails a design by itself.
 */
export function judged(...verdicts: readonly Finding["verdict"][]): Topic {
  const topic = topics.find(({ name }) => name === "emc");
  if (topic === undefined) throw new Error("the moisture topic is gone");
  const findings = verdicts.map(
    (verdict, i): Finding => ({
      id: `laid-on-${i}`,
      group: "Strength",
      verdict,
      says: `It is laid on as ${verdict}.`,
      why: [],
      lights: [],
    }),
  );
  type Arguments = Parameters<Topic["answer"]>;
  const answer = (...asked: Arguments) => ({ ...topic.answer(...asked), findings });
  return { ...topic, answer };
}
