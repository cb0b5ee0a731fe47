import { type Answer, openingTexts, reckon, type Topic, topics } from "../src/reckon/index.ts";
import { printHtml, printText } from "../src/worked/index.ts";
import { type Timing, time } from "./measure.ts";

/** The examples of a topic, answered: the inputs of the bench are those of its help. */
function answerOf(topic: Topic): () => Answer {
  const texts = openingTexts(topic, "inch");
  return () => {
    const outcome = reckon(topic, texts, "inch", (name) => name);
    if (!outcome.ok) throw new Error(`the examples of ${topic.name} are not worked`);
    return outcome.answer;
  };
}

/** Every quick sum from texts to answer, and the printing of one working. */
export function sums(): readonly Timing[] {
  const emc = topics[0];
  const worked = emc && answerOf(emc)().results[0]?.worked;
  if (!worked) throw new Error("the first sum has no result");
  return [
    ...topics.map((topic) => time(`reckon ${topic.name}`, answerOf(topic))),
    time("printText of a working", () => printText(worked, "inch")),
    time("printHtml of a working", () => printHtml(worked, "inch")),
  ];
}
