import { describe, expect, test } from "vitest";
import { onSide } from "../../src/asking/index.ts";
import { type Topic, topics } from "../../src/reckon/index.ts";
import type { LengthUnit } from "../../src/units/index.ts";
import { type AnswerLine, hear } from "../kit/cli.ts";

/** Examples of the questions that open a topic and of all that have a fallback, as options. */
const examples = (topic: Topic, units: LengthUnit): readonly string[] =>
  opening(topic).flatMap(([name, q]) => [`--${name}`, onSide(q.example, units)]);

const opening = (topic: Topic) =>
  Object.entries(topic.asks).filter(([name, q]) => !q.optional || topic.opensWith.includes(name));

const named = topics.map((t) => [t.name, t] as const);
const sides = ["inch", "mm"] as const;

describe.each(named)("latewood reckon %s", (name, topic) => {
  test.each(sides)("its examples work, %s", async (units) => {
    const argv = ["reckon", name, ...examples(topic, units), "--units", units];
    const heard = await hear(argv);
    expect(heard.err).toBe("");
    expect(heard.code).toBe(0);
    expect(heard.out).toContain(topic.title);
    expect(heard.out.split("\n").length).toBeGreaterThan(2);
    expect(heard.out).not.toMatch(/NaN|undefined|\[object/);
  });

  test.each(sides)("--json gives every figure in its inside unit, %s", async (units) => {
    const argv = ["reckon", name, ...examples(topic, units), "--units", units, "--json"];
    const { code, out, err } = await hear(argv);
    expect([code, err]).toEqual([0, ""]);
    const answer: AnswerLine = JSON.parse(out);
    expect(answer.topic).toBe(name);
    expect(Object.keys(answer.given ?? {}).sort()).toEqual(
      opening(topic)
        .map(([name]) => name)
        .sort(),
    );
    expect(answer.results?.length).toBeGreaterThan(0);
    for (const { name, value, unit, source, low, high, working } of answer.results ?? []) {
      expect(name).toMatch(/^[a-z-]+$/);
      expect(Number.isFinite(value)).toBe(true);
      expect(unit.length + source.length).toBeGreaterThan(3);
      expect(low === undefined).toBe(high === undefined);
      expect(working).toBeUndefined();
    }
    for (const caution of answer.cautions ?? []) {
      expect(Math.min(caution.says.length, caution.source.length)).toBeGreaterThan(5);
    }
  });

  test("--working prints the whole chain, and puts it into --json", async () => {
    const argv = ["reckon", name, ...examples(topic, "mm"), "--working"];
    const [plain, worked] = [await hear(argv.slice(0, -1)), await hear(argv)];
    expect(worked.code).toBe(0);
    expect(plain.out).not.toMatch(/^ +\S+ = /m);
    expect(worked.out).toMatch(/^ +\S+ = /m);
    expect(worked.out.length).toBeGreaterThan(plain.out.length);
    const { results }: AnswerLine = JSON.parse((await hear([...argv, "--json"])).out);
    for (const { working, value } of results ?? []) {
      expect(working).toMatchObject({ value, formula: expect.stringContaining("=") });
    }
  });

  test("--help names every question with how it is written", async () => {
    const { code, out } = await hear(["reckon", name, "--help"]);
    expect(code).toBe(0);
    for (const [question, { says }] of Object.entries(topic.asks)) {
      expect(out).toContain(`--${question} `);
      expect(out).toContain(says);
    }
  });

  test("asked nothing, it says everything that is missing at once", async () => {
    const { code, err, out } = await hear(["reckon", name]);
    expect([code, out]).toEqual([2, ""]);
    for (const [question, q] of Object.entries(topic.asks)) {
      if (!q.optional && q.fallback === undefined) expect(err).toContain(`--${question}: `);
    }
  });
});

describe("what cannot be worked ends with 2, its place, and what would be right", () => {
  test.each<[string, readonly string[], readonly string[]]>([
    ["a command", ["saw"], ["saw", "reckon"]],
    ["a topic", ["reckon", "saw"], ["saw", "movement"]],
    ["an option", ["reckon", "emc", "--temprature", "20"], ["--temprature", "--temperature"]],
    ["a short option", ["reckon", "emc", "-q", "20"], ["-q", "--temperature"]],
    ["an inherited name", ["reckon", "emc", "--constructor=1"], ["--constructor", "--humidity"]],
    ["a word", ["reckon", "emc", "warm"], ["warm", "option"]],
    ["no value", ["reckon", "emc", "--temperature"], ["--temperature", "Write"]],
    [
      "no value before the next option",
      ["reckon", "emc", "--temperature", "--humidity", "40"],
      ["--temperature: Nothing follows"],
    ],
    ["a value for a switch", ["reckon", "emc", "--json=1"], ["--json", "1", "alone"]],
    ["a side", ["reckon", "emc", "--units", "yard"], ["--units", "yard", "inch or mm"]],
    ["one option twice", ["reckon", "emc", "--humidity=4", "--humidity=5"], ["twice", "once"]],
    [
      "a value",
      ["reckon", "emc", "--temperature", "20 K", "--humidity", "45"],
      ["--temperature", "at character 4", "K", "°C"],
    ],
    [
      "a value out of range",
      ["reckon", "emc", "--temperature", "20 C", "--humidity", "101"],
      ["--humidity", "101", "1 % RH to 99 % RH"],
    ],
    [
      "a timber",
      ["reckon", "movement", "--species", "oak", "--width=9", "--from=7", "--to=9"],
      ["--species", "oak", "northern red oak"],
    ],
    [
      "a choice",
      ["reckon", "screw", "--species=oak-white", "--number=8", "--grip=25", "--thread=left"],
      ["--thread", "left", "cut, rolled"],
    ],
    [
      "part of a number",
      ["reckon", "clamps", "--length=9", "--thickness=9", "--edge=1,250 mm"],
      ["--edge", "1,250", "comma"],
    ],
  ])("%s", async (_, argv, parts) => {
    const { code, out, err } = await hear(argv);
    expect([code, out]).toEqual([2, ""]);
    for (const part of parts) expect(err).toContain(part);
    // Place and reason on one line, the remedy on the next.
    for (const line of err
      .trimEnd()
      .split("\n")
      .filter((_, i) => i % 2 === 1)) {
      expect(line).toMatch(/^ {2}\S.{6,}/);
    }
  });

  test("several faults are told in one go, and --json tells them as data", async () => {
    const argv = [
      "reckon",
      "movement",
      "--species",
      "brick",
      "--width",
      "x",
      "--from",
      "40",
      "--to",
      "9",
    ];
    const { code, err } = await hear(argv);
    expect(code).toBe(2);
    for (const place of ["--species", "--width", "--from"]) expect(err).toContain(place);
    const json = await hear([...argv, "--json"]);
    const { problems }: AnswerLine = JSON.parse(json.out);
    expect(json.code).toBe(2);
    expect(problems?.map((p) => p.code)).toEqual([
      "species-unknown",
      "length-not-a-number",
      "out-of-range",
    ]);
  });
});

test.each([[], ["help"], ["--help"], ["-h"], ["reckon"], ["reckon", "-h"]])(
  "%j tells what there is",
  async (...argv) => {
    const { code, out } = await hear(argv);
    expect(code).toBe(0);
    for (const topic of topics) expect(out).toContain(topic.name);
  },
);

test.each([["-5C"], ["-5 °C"], ["−5 C"]])(
  "a negative value may follow its option: %s",
  async (value) => {
    for (const argv of [["--temperature", value], [`--temperature=${value}`]]) {
      const { code, out } = await hear(["reckon", "emc", ...argv, "--humidity", "40", "--json"]);
      expect(code).toBe(0);
      const answer: AnswerLine = JSON.parse(out);
      expect(answer.given?.temperature).toEqual({ value: -5, unit: "°C", source: "given" });
    }
  },
);
