import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Answer, reckon, type Topic, topics } from "../../src/reckon/index.ts";
import type { LengthUnit, UnitName } from "../../src/units/index.ts";
import { answersFor, bareOn, textsOf, withUnit } from "../kit/questions.ts";
import { isNear } from "../kit/sizes.ts";

type Write = (value: number, unit: UnitName) => string;

/** The same quantities, written in four ways, each with the side it is asked on. */
const ways: readonly (readonly [says: string, side: LengthUnit, write: Write])[] = [
  ["with units, mm side", "mm", withUnit],
  ["with units, inch side", "inch", withUnit],
  ["bare, mm side", "mm", (v, u) => bareOn("mm", v, u)],
  ["bare, inch side", "inch", (v, u) => bareOn("inch", v, u)],
];

/**
 * Values that stay clear of a step: ceilings, whole feet and chart rows jump where two writings of
 * one length may differ in the last digit.
 */
const calm = (value: number): number =>
  Number.isInteger(value) ? value : Number(value.toPrecision(7));

const figures = ({ results, findings }: Answer) =>
  results
    .flatMap(({ name, worked, low, high }) => [
      [name, worked.value],
      [`${name}, low`, low?.value],
      [`${name}, high`, high?.value],
    ])
    .concat(findings.map(({ id, verdict }) => [id, verdict]));

function answered(topic: Topic, texts: Readonly<Record<string, string>>, side: LengthUnit) {
  const outcome = reckon(topic, texts, side, (name) => name);
  return outcome.ok
    ? figures(outcome.answer)
    : outcome.problems.map((p) => [p.code, p.place.split(",")[0]]);
}

describe.each(topics.map((t) => [t.name, t] as const))("%s", (_, topic) => {
  test("the same quantities give the same answer, however and on whichever side they are written", () => {
    let compared = 0;
    // What is left out stands for itself on each side, and those may differ: 1000 lb and 4.4 kN.
    const whole = answersFor(topic).filter((answers) =>
      Object.entries(topic.asks).every(
        ([name, q]) => name in answers || typeof q.fallback !== "object",
      ),
    );
    fc.assert(
      fc.property(whole, (answers) => {
        const same = Object.fromEntries(
          Object.entries(answers).map(([k, v]) => [k, typeof v === "number" ? calm(v) : v]),
        );
        const [first = [], ...others] = ways.map(([, side, write]) =>
          answered(topic, textsOf(topic, same, write), side),
        );
        for (const [i, other] of others.entries()) {
          const says = `${ways[i + 1]?.[0]}: ${JSON.stringify({ same, first, other })}`;
          expect(
            other.map(([name]) => name),
            says,
          ).toEqual(first.map(([name]) => name));
          for (const [at, [, value]] of other.entries()) {
            const before = first[at]?.[1];
            compared++;
            if (typeof value === "number" && typeof before === "number") {
              // What is the difference of nearly equal figures keeps fewer digits than they have.
              const isSame = isNear(value, before, 1e-9) || Math.abs(value - before) < 1e-11;
              expect(isSame, says).toBe(true);
            } else expect(value, says).toBe(before);
          }
        }
      }),
      { numRuns: 120 },
    );
    expect(compared).toBeGreaterThan(100);
  });
});
