import { describe, expect, test } from "vitest";
import { reckonTopic } from "../../src/cli/reckon.ts";
import { type AnswerLine, hear, linesOf } from "../kit/cli.ts";
import { judged } from "./judged.ts";

const sum = ["--temperature=20 C", "--humidity=50"];

async function hearTopic(topic: ReturnType<typeof judged>, argv: readonly string[], input = "") {
  const heard = { out: "", err: "" };
  async function* rows() {
    yield input;
  }
  const io = {
    out: (text: string) => {
      heard.out += text;
    },
    err: (text: string) => {
      heard.err += text;
    },
  };
  return { code: await reckonTopic(topic, argv, io, rows()), ...heard };
}

describe("a finding that fails ends with 1, and is answered all the same", () => {
  test.each([
    [[], 0],
    [["ok", "watch", "not-judged"], 0],
    [["fails"], 1],
    [["ok", "fails", "watch"], 1],
  ] as const)("%j", async (verdicts, code) => {
    const topic = judged(...verdicts);
    for (const argv of [sum, [...sum, "--json"]]) {
      const heard = await hearTopic(topic, argv);
      expect([heard.code, heard.err]).toEqual([code, ""]);
      for (const verdict of verdicts) expect(heard.out).toContain(`laid on as ${verdict}`);
    }
  });

  const head = "temperature,humidity\n";
  test.each([
    ["every row answered", "20 C,50\n20 C,60\n", 1],
    ["a row that cannot be worked weighs more", "20 C,50\n20 C,x\n20 C,50\n", 2],
  ])("in a batch, %s", async (_, rows, code) => {
    const heard = await hearTopic(judged("fails"), ["--batch"], head + rows);
    expect(heard.code).toBe(code);
    expect(linesOf(heard.out)).toHaveLength(rows.trim().split("\n").length);
  });
});

test("the help texts say what the exit codes are", async () => {
  for (const argv of [["--help"], ["reckon", "--help"], ["reckon", "emc", "--help"]]) {
    expect((await hear(argv)).out).toMatch(/Exit code: 0 .*1 a finding fails, 2 .*, 3 /);
  }
});

test("an unknown topic is told as data to whoever asked for JSON", async () => {
  const plain = await hear(["reckon", "saw"]);
  const json = await hear(["reckon", "saw", "--json"]);
  expect([plain.code, plain.out, json.code]).toEqual([2, "", 2]);
  expect(json.err).toBe(plain.err);
  const { problems }: AnswerLine = JSON.parse(json.out);
  expect(problems).toMatchObject([{ code: expect.stringContaining("topic") }]);
});
