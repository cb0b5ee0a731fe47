import { describe, expect, test } from "vitest";
import { onSide } from "../../src/asking/index.ts";
import {
  type Outcome,
  openingTexts,
  reckon,
  type Topic,
  topicNamed,
  topics,
} from "../../src/reckon/index.ts";
import type { LengthUnit } from "../../src/units/index.ts";
import { cite, type Input, Problem } from "../../src/worked/index.ts";
import { rangeOf, withUnit } from "../kit/questions.ts";

const at = (name: string) => `field ${name}`;
const named = topics.map((t) => [t.name, t] as const);

/** What opens a topic, and every question that would else be answered for the maker. */
const toldOf = (topic: Topic, units: LengthUnit) => ({
  ...openingTexts(topic, units),
  ...Object.fromEntries(
    Object.entries(topic.asks)
      .filter(([, q]) => q.fallback !== undefined)
      .map(([k, q]) => [k, onSide(q.example, units)]),
  ),
});

/** A printed figure without what is said beside it in brackets: `500 N (51 kg)`. */
const plainly = (printed: string): string => printed.replace(/ \(.*\)$/, "");

const problemsOf = (outcome: Outcome) => (outcome.ok ? [] : outcome.problems);
const codesOf = (outcome: Outcome) => problemsOf(outcome).map((p) => `${p.code} ${p.place}`);

function resultsOf(outcome: Outcome) {
  if (!outcome.ok) expect.fail(JSON.stringify(outcome.problems));
  return outcome.answer.results;
}

describe.each(named)("%s", (_, topic) => {
  const needed = Object.entries(topic.asks).filter(
    ([, q]) => !q.optional && q.fallback === undefined,
  );

  test("each question that must be answered is missed by name, with an example", () => {
    const problems = problemsOf(reckon(topic, {}, "mm", at));
    expect(problems.map((p) => p.place)).toEqual(needed.map(([name]) => at(name)));
    for (const [i, [, q]] of needed.entries()) {
      expect(problems[i]?.code).toBe("missing");
      expect(problems[i]?.reason).toContain(q.says);
      expect(problems[i]?.remedy).toContain(onSide(q.example, "mm"));
    }
  });

  test("a blank is as good as nothing", () => {
    const blank = Object.fromEntries(Object.keys(topic.asks).map((name) => [name, " \t"]));
    expect(codesOf(reckon(topic, blank, "mm", at))).toEqual(codesOf(reckon(topic, {}, "mm", at)));
  });

  test("every fault is told at once, strange names among them", () => {
    const wrong = Object.fromEntries(Object.keys(topic.asks).map((name) => [name, "\u0000?"]));
    const outcome = reckon(topic, { ...wrong, colour: "red", toString: "1" }, "mm", at);
    const places = problemsOf(outcome).map((p) => p.place.split(",")[0]);
    expect(places).toEqual([at("colour"), at("toString"), ...Object.keys(topic.asks).map(at)]);
    for (const p of problemsOf(outcome)) {
      expect(p).toBeInstanceOf(Problem);
      expect(Math.min(p.code.length, p.reason.length, p.remedy.length)).toBeGreaterThan(5);
    }
  });

  test("every range has an end, and what a refusal says to use is let through", () => {
    const quantities = Object.entries(topic.asks).filter(([, q]) => q.kind === "quantity");
    expect(quantities.length).toBeGreaterThan(0);
    for (const [name, question] of quantities) {
      const { least, most } = rangeOf(question);
      const unit = question.unit ?? "1";
      const read = (n: number) => question.read(withUnit(n, unit), "mm", false);
      const span = most - least;
      for (const end of [least, most]) expect(read(end).ok, `${name} ${end}`).toBe(true);
      const hair = (n: number) => Math.max(Math.abs(n) * 3e-5, 1e-9);
      for (const beyond of [least - hair(least), most + hair(most), least - span, most + span]) {
        const refused = read(beyond);
        if (refused.ok) expect.fail(`${name} ${beyond} was let through`);
        const { code, remedy } = refused.fault;
        // A length may be refused by its reader already, as longer than anything made here.
        expect(["out-of-range", "length-too-large", "not-whole"]).toContain(code);
        if (code !== "out-of-range") continue;
        const told = /^Use (.+?)(?: to (.+)| or more)\.$/.exec(remedy);
        expect(told, remedy).not.toBeNull();
        for (const text of [told?.[1], told?.[2]]) {
          if (text !== undefined)
            expect(question.read(plainly(text), "mm", false).ok, text).toBe(true);
        }
      }
    }
  });

  test("what was not given stands in as assumed, what was given as given", () => {
    for (const [texts, isTold] of [
      [toldOf(topic, "mm"), true],
      [openingTexts(topic, "mm"), false],
    ] as const) {
      const outcome = reckon(topic, texts, "mm", at);
      if (!outcome.ok) expect.fail(JSON.stringify(outcome.problems));
      for (const [name, q] of Object.entries(topic.asks)) {
        if (q.fallback === undefined || q.kind !== "quantity") continue;
        const { source } = outcome.given[name] as Input;
        if (isTold) expect(source, name).toEqual({ kind: "given" });
        else expect(cite(source), name).toMatch(/^assumed: .|read second-hand$/);
      }
    }
  });
});

describe("one of several answers is enough, none is not", () => {
  test.each<
    [string, Readonly<Record<string, string>>, readonly Readonly<Record<string, string>>[]]
  >([
    ["emc", { temperature: "21 C" }, [{ humidity: "45" }, { moisture: "8" }]],
    [
      "cup",
      { species: "white oak", width: "200", thickness: "22", from: "12", to: "7" },
      [{ pith: "75" }, { chord: "100", rise: "12" }],
    ],
    [
      "finish",
      { coats: "3" },
      [{ area: "1.9 m²" }, { length: "1800", width: "900", thickness: "22" }],
    ],
    [
      "weight",
      { species: "white oak" },
      [{ volume: "40 bd ft" }, { length: "1800", width: "900", thickness: "22" }],
    ],
    [
      "weight",
      { species: "white oak" },
      [{ volume: "0.1 m³" }, { length: "1800", width: "900", thickness: "22" }],
    ],
  ])("%s", (name, always, enough) => {
    const topic = topicNamed(name);
    const none = problemsOf(reckon(topic, always, "mm", at));
    expect(none.map((p) => p.code)).toEqual(["missing"]);
    for (const one of enough) {
      expect(resultsOf(reckon(topic, { ...always, ...one }, "mm", at)).length).toBeGreaterThan(0);
      const names = Object.keys(one);
      for (const name of names.length > 1 ? names : []) {
        const { [name]: _, ...part } = one;
        expect(codesOf(reckon(topic, { ...always, ...part }, "mm", at))[0]).toMatch(/^missing/);
      }
    }
  });
});

describe("what is wrong only all together is told too", () => {
  test.each<[string, string, Readonly<Record<string, string>>]>([
    ["octagon", "octagon-blank", { square: "50", diameter: "60" }],
    ["octagon", "octagon-blank", { square: "50", diameter: "20" }],
    ["emc", "moisture-range", { temperature: "90 C", moisture: "29" }],
    ["screw", "screw-number", { species: "white oak", number: "5", grip: "20", thread: "rolled" }],
    [
      "tip",
      "centre-outside-feet",
      {
        mass: "20",
        feet: "400",
        top: "900",
        "feet-long": "800",
        "top-long": "1100",
        height: "740",
        offset: "250",
      },
    ],
  ])("%s: %s", (name, code, texts) => {
    const problems = problemsOf(reckon(topicNamed(name), texts, "mm", at));
    expect(problems.map((p) => p.code)).toEqual([code]);
    for (const { place, reason, remedy } of problems) {
      expect(Math.min(place.length, reason.length, remedy.length)).toBeGreaterThan(2);
    }
  });

  test("a topic that there is not", () => {
    expect(() => topicNamed("saw")).toThrow(Problem);
    expect(() => topicNamed("saw")).toThrow("movement");
  });
});
