import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { optionPlace } from "../../src/cli/options.ts";
import { reckon, topics } from "../../src/reckon/index.ts";
import { isWorked, wholeChain } from "../../src/worked/index.ts";
import { recompute } from "../kit/evaluate.ts";
import { answersFor, bareOn, everyWorked, textsOf, withUnit } from "../kit/questions.ts";

const RUNS = 150;

describe("the formula shown is the formula computed", () => {
  test.each(topics.map((t) => [t.name, t] as const))("%s", (_, topic) => {
    const formulas = new Set<string>();
    let worked = 0;
    const writers = [
      (side: "inch" | "mm") => (v: number, u: Parameters<typeof withUnit>[1]) => bareOn(side, v, u),
      () => withUnit,
    ];
    fc.assert(
      fc.property(
        answersFor(topic),
        fc.constantFrom("inch", "mm"),
        fc.constantFrom(...writers),
        (answers, side, writer) => {
          const outcome = reckon(topic, textsOf(topic, answers, writer(side)), side, optionPlace);
          if (!outcome.ok) {
            for (const { code, place, reason, remedy } of outcome.problems) {
              expect(
                Math.min(code.length, place.length, reason.length, remedy.length),
              ).toBeGreaterThan(0);
            }
            return;
          }
          worked++;
          for (const input of everyWorked(outcome.answer).flatMap(wholeChain)) {
            if (!isWorked(input)) continue;
            formulas.add(input.formula);
            const found = recompute(input);
            if (!found.agrees) expect.fail(`${input.formula}: ${JSON.stringify({ found, input })}`);
          }
        },
      ),
      { numRuns: RUNS },
    );
    // Without enough answers and formulas the property above would have looked at nothing.
    expect(worked).toBeGreaterThan(RUNS / 10);
    expect(formulas.size).toBeGreaterThanOrEqual(2);
  });
});
