import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { reckon, topics } from "../../src/reckon/index.ts";
import {
  cite,
  type Input,
  isUnproven,
  printHtml,
  printText,
  toJson,
  wholeChain,
} from "../../src/worked/index.ts";
import { answersFor, textsOf, withUnit } from "../kit/questions.ts";

const at = (name: string) => `field ${name}`;
const named = topics.map((t) => [t.name, t] as const);

describe("what is known only from memory", () => {
  const runs = named.map(([name, topic]) => {
    const chains = fc
      .sample(answersFor(topic), { numRuns: 60, seed: 1 })
      .map((a) => reckon(topic, textsOf(topic, a, withUnit), "mm", at))
      .flatMap((o) => (o.ok ? o.answer.results : []))
      .flatMap(({ worked, low, high }) => [worked, ...(low && high ? [low, high] : [])]);
    return [name, chains] as const;
  });

  const isMemory = ({ source }: Input) => source.kind === "published" && source.seen === "memory";

  test("says so wherever it is shown", () => {
    let shown = 0;
    for (const worked of runs.flatMap(([, chains]) => chains)) {
      const remembered = wholeChain(worked).filter(isMemory);
      if (remembered.length === 0) continue;
      shown++;
      for (const { source } of remembered) {
        expect(cite(source)).toContain("from memory");
        expect(isUnproven(source)).toBe(true);
        for (const text of [
          printText(worked, "mm"),
          printHtml(worked, "inch").replaceAll("&#39;", "'"),
          JSON.stringify(toJson(worked)),
        ]) {
          expect(text).toContain(cite(source));
        }
      }
    }
    expect(shown).toBeGreaterThan(50);
  });

  test("only these sums rest on any", () => {
    const resting = runs.filter(([, chains]) => chains.some((w) => wholeChain(w).some(isMemory)));
    expect(resting.map(([name]) => name)).toEqual([
      "movement",
      "cup",
      "weight",
      "sag",
      "leaf-joint",
      "screw",
      "finish",
    ]);
  });
});
