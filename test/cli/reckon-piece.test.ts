import { beforeAll, expect, test } from "vitest";
import { demoPieces } from "../../src/kinds/index.ts";
import { type AnswerLine, hear } from "../kit/cli.ts";
import { pieceFiles } from "../kit/piece-files.ts";

const files = pieceFiles();
const file = (kind: string): string => {
  const document = demoPieces().find(({ assemblies }) => assemblies.table?.kind === kind);
  if (!document) throw new Error(`no demo is a ${kind}`);
  return files.putPiece(`${kind}.json`, document);
};
let [table, plain] = ["", ""];
beforeAll(() => {
  [table, plain] = [file("drop-leaf-table"), file("plain-table")];
});

const asked = async (...argv: readonly string[]) => {
  const heard = await hear(["reckon", ...argv, "--json"]);
  const answer: AnswerLine = JSON.parse(heard.out || heard.err);
  const value = (name: string) => answer.results?.find((r) => r.name === name)?.value ?? Number.NaN;
  return { ...heard, answer, value };
};

test("a leaf’s joint is reckoned by the sizes of its piece", async () => {
  const { code, value } = await asked("leaf-joint", "--piece", table);
  expect(code).toBe(0);
  // The demo's hinge is let in flush, its pin 3.2 mm up; 19.05 mm wood less 12.7 and 3.2.
  expect(value("pin")).toBeCloseTo(3.2, 9);
  expect(value("fillet")).toBeCloseTo(19.05 - 12.7 - 3.2, 9);
  expect(value("clearance")).toBeGreaterThan(0);
});

test("what is typed stands before what the piece says", async () => {
  const { value } = await asked("leaf-joint", "--piece", table, "--pin-out", "-0.6 mm");
  expect(value("clearance")).toBeLessThan(0);
});

test("an arm is reckoned by the sizes of its piece", async () => {
  const { code, value } = await asked("swing-arm", "--piece", table);
  expect(code).toBe(0);
  expect(value("borne")).toBeGreaterThan(50);
});

test("tipping is reckoned for the state that tips soonest, as the findings say", async () => {
  const { value } = await asked("tip", "--piece", table);
  const checked = JSON.parse((await hear(["check", table, "--json"])).out) as {
    readonly findings: readonly { readonly id: string; readonly margin?: { value: number } }[];
  };
  const one = checked.findings.find(({ id }) => id === "stands/front-leaf");
  expect(one?.margin?.value ?? Number.NaN).toBeCloseTo(value("edge") / 9.80665, 6);
});

test("a piece without leaves says what it has not, and a plain table tips all the same", async () => {
  const { code, err } = await hear(["reckon", "leaf-joint", "--piece", plain]);
  expect(code).toBe(2);
  expect(err).toContain("no rule joint");
  expect((await asked("tip", "--piece", plain)).code).toBe(0);
});

test("wrong words are told", async () => {
  expect((await hear(["reckon", "emc", "--piece", plain])).err).toContain("--piece");
  expect((await hear(["reckon", "tip", "--shop", plain])).err).toContain("--piece");
  expect((await hear(["reckon", "tip", "--piece", table, "--batch"])).err).toContain("Rows");
  expect((await hear(["reckon", "tip", "--piece", files.path("none.json")])).code).toBe(2);
});
