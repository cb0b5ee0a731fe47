import {
  chmodSync,
  closeSync,
  existsSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readFileSync,
} from "node:fs";
import { describe, expect, test } from "vitest";
import { documentText, type PieceDocument } from "../../src/piece/index.ts";
import { hear, type ProblemLine } from "../kit/cli.ts";
import { sampleDocument } from "../kit/documents.ts";
import { pieceFiles } from "../kit/piece-files.ts";

const files = pieceFiles();
const commands = ["parts", "check"] as const;

const sample = (
  answers: Readonly<Record<string, string>> = {},
  more: Partial<PieceDocument> = {},
) =>
  documentText(
    sampleDocument({ assemblies: { table: { kind: "plain-table", ...answers } }, ...more }),
  );

/** The sample as a text in which something is put in another's place. */
const spoilt = (was: string, is: string) => {
  const text = sample();
  if (!text.includes(was)) throw new Error(`the sample has no ${was}`);
  return text.replace(was, () => is);
};

/** A command on a file that cannot be worked: its problems, told twice, and the file left as it was. */
async function refusedFor(command: string, path: string, ...more: readonly string[]) {
  const plain = await hear([command, path, ...more]);
  const json = await hear([command, path, "--json", ...more]);
  expect([plain.code, json.code, plain.out]).toEqual([2, 2, ""]);
  expect(json.err).toBe(plain.err);
  const { problems } = JSON.parse(json.out) as { readonly problems: readonly ProblemLine[] };
  const lines = problems.flatMap(({ place, reason, remedy }) => [
    `${place}: ${reason}`,
    `  ${remedy}`,
  ]);
  // What would break the line stands in the data as it was read.
  if (!/[\p{Cc}]/u.test(lines.join(""))) expect(plain.err).toBe(`${lines.join("\n")}\n`);
  for (const { place, reason, remedy } of problems) {
    expect(place.startsWith(path)).toBe(true);
    for (const words of [reason, remedy]) expect(words.length).toBeGreaterThan(3);
  }
  return problems;
}

describe.each(commands)("latewood %s on a file that cannot be worked", (command) => {
  test.each<[string, string | Uint8Array, string, string]>([
    ["nothing", "", "not-json", "line 1"],
    ["no JSON", "a table, please", "not-json", "line 1"],
    ["cut short", sample().slice(0, -4), "not-json", "where the file ends"],
    ["cut short in the middle of a text", sample().slice(0, 61), "not-json", "line"],
    ["a list", "[]", "not-a-piece", ""],
    ["null", "null", "not-a-piece", ""],
    ["NaN", spoilt('"version": 1', '"version": NaN'), "not-json", "line"],
    [
      "a number without end",
      spoilt('"version": 1', '"version": 1e999'),
      "version-unknown",
      "version",
    ],
    [
      "a number that is a text",
      spoilt('"version": 1', '"version": "1"'),
      "version-unknown",
      "version",
    ],
    ["a version to come", spoilt('"version": 1', '"version": 7'), "version-future", "version"],
    ["no version", spoilt('"version": 1,', ""), "version-unknown", "version"],
    ["another format", spoilt("latewood-piece", "latewood-shop"), "not-this", "format"],
    ["a number for a name", spoilt('"Sample table"', "12"), "wrong-type", "name"],
    ["a list for a name", spoilt('"Sample table"', '["a"]'), "wrong-type", "name"],
    ["no name", spoilt('"Sample table"', '""'), "text-empty", "name"],
    ["a name without measure", spoilt("Sample table", "x".repeat(500)), "text-too-long", "name"],
    [
      "no object of assemblies",
      spoilt('"assemblies": {', '"assemblies": 4, "x": {'),
      "wrong-type",
      "assemblies",
    ],
    [
      "a number for a length",
      spoilt('"kind": "plain-table"', '"kind": "plain-table", "length": 60'),
      "wrong-type",
      "table › length",
    ],
    [
      "an unknown field",
      spoilt('"client"', '"colour": "red", "client"'),
      "field-unknown",
      "colour",
    ],
    [
      "a name all objects have",
      spoilt('"client"', '"__proto__": {"demo": true}, "client"'),
      "field-unknown",
      "__proto__",
    ],
    [
      "such a name among values",
      spoilt('"overrides": {}', '"overrides": {"__proto__": "1 in"}'),
      "name-unreadable",
      "__proto__",
    ],
    ["such a name as an answer", sample({ constructor: "9 in" }), "field-unknown", "constructor"],
    ["an unknown kind", spoilt("plain-table", "throne"), "kind-unknown", "throne"],
    ["an unknown answer", sample({ wheels: "4" }), "field-unknown", "wheels"],
    ["an unknown timber", spoilt("black cherry", "brick"), "species-unknown", "timber"],
    ["a length in words", sample({ length: "long" }), "length-not-a-number", "table › length"],
    ["a length without end", sample({ length: "1e999 mm" }), "", "table › length"],
    ["no number for a length", sample({ length: "NaN" }), "length-not-a-number", "table › length"],
    ["an unknown unit", sample({ length: "3 cubits" }), "length-unit-unknown", "table › length"],
    ["no length", sample({ length: "" }), "length-empty", "table › length"],
    ["a negative size", sample({ leg: "-2 in" }), "out-of-range", "table › leg"],
    ["a size beyond all", sample({ length: "900 m" }), "out-of-range", "table › length"],
    [
      "a value that is no length",
      sample({}, { overrides: { "table/top.length": "x" } }),
      "length-not-a-number",
      "table/top.length",
    ],
    ["a humidity that is none", spoilt('"35 %"', '"350 %"'), "out-of-range", "home › driest"],
    [
      "another encoding",
      Buffer.from(spoilt("Sample", "Klavierstuhl für Ánna"), "latin1"),
      "not-utf8",
      "line 4",
    ],
    [
      "another encoding of two bytes",
      Buffer.from(`\ufeff${sample()}`, "utf16le"),
      "not-utf8",
      "line 1",
    ],
  ])("%s", async (what, content, code, place) => {
    const path = files.put(`${command} ${what}.json`, content);
    const problems = await refusedFor(command, path);
    expect(problems.map((p) => p.code)).toContainEqual(
      code === "" ? expect.stringMatching(/^length-|out-of-range/) : code,
    );
    expect(problems.some((p) => p.place.includes(place))).toBe(true);
    expect(readFileSync(path)).toEqual(Buffer.from(content as string));
  });

  test("every fault is told in one go", async () => {
    const text = sample({ length: "x", leg: "-1 in" }, { timber: "brick" });
    const problems = await refusedFor(command, files.put(`${command} three.json`, text));
    expect(problems.map((p) => p.code).sort()).toEqual([
      "length-not-a-number",
      "out-of-range",
      "species-unknown",
    ]);
  });

  test("a rail longer than its table is refused with what mends it, and that mends it", async () => {
    const short = { length: "10 in", leg: "2 in", "end-overhang": "1/2 in" };
    const path = files.put(`${command} short.json`, sample(short));
    const problems = await refusedFor(command, path);
    const refusal = problems.find((p) => p.code === "no-room-between-legs") as ProblemLine & {
      readonly mend: { readonly at: readonly string[]; readonly to: string };
    };
    expect(refusal.place).toBe(`${path}, assemblies › table › length`);
    expect(refusal.remedy).toContain(refusal.mend.to);
    expect(refusal.mend.at).toEqual(["assemblies", "table", "length"]);
    const mended = files.put(
      `${command} mended.json`,
      sample({ ...short, length: refusal.mend.to }),
    );
    expect((await hear([command, mended])).code).not.toBe(2);
  });

  test("what is not there, and what is a folder", async () => {
    expect(await refusedFor(command, files.path("nowhere.json"))).toMatchObject([
      { code: "file-missing" },
    ]);
    expect(existsSync(files.path("nowhere.json"))).toBe(false);
    mkdirSync(files.path("folder"), { recursive: true });
    expect(await refusedFor(command, files.path("folder"))).toMatchObject([
      { code: "file-is-folder" },
    ]);
    const behind = `${files.put("a file.json", sample())}/piece.json`;
    expect(await refusedFor(command, behind)).toMatchObject([{ code: "file-missing" }]);
    const { code, err } = await hear([command, ""]);
    expect([code, err]).toEqual([2, expect.stringContaining("“”")]);
  });

  test.skipIf(process.platform === "win32" || process.getuid?.() === 0)(
    "what may not be read",
    async () => {
      const path = files.put("private.json", sample());
      chmodSync(path, 0);
      expect(await refusedFor(command, path)).toMatchObject([{ code: "file-unreadable" }]);
    },
  );

  test("50 MB are refused by their size, and not read", async () => {
    const path = files.path("large.json");
    const file = openSync(path, "w");
    ftruncateSync(file, 50_000_000);
    closeSync(file);
    const before = process.memoryUsage().arrayBuffers;
    const problems = await refusedFor(command, path);
    expect(problems).toMatchObject([{ code: "document-too-large", place: path }]);
    expect(problems[0]?.reason).toContain("50 MB");
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(10_000_000);
  });

  test.skipIf(!existsSync("/dev/zero"))("what tells no size and has no end", async () => {
    expect(await refusedFor(command, "/dev/zero")).toMatchObject([{ code: "document-too-large" }]);
  });

  test("a text of more characters than a piece has, under the size of a file", async () => {
    const path = files.put("long.json", " ".repeat(5_000_000));
    expect(await refusedFor(command, path)).toMatchObject([
      { code: "document-too-large", place: path },
    ]);
  });

  test("a byte order mark and line ends of two characters are no faults", async () => {
    const text = `\ufeff${sample().replaceAll("\n", "\r\n")}`;
    const path = files.put("windows.json", text);
    expect(await hear([command, path])).toMatchObject({ code: 0, err: "" });
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  test("markup in names is a text like any other; orders to the terminal are not", async () => {
    const markup = '<script>alert("1")</script> & co';
    const name = sampleDocument({ name: markup, client: "\u001b[2Jgone\nnext line" });
    const { code, out } = await hear([command, files.putPiece("markup.json", name)]);
    expect(code).toBe(0);
    expect(out.split("\n")[0]).toContain(markup);
    expect(out).not.toContain("\u001b");
    expect(out.split("\n")[1]).toContain("gone\ufffdnext line");
  });

  test("the file that is read is never written to", async () => {
    const path = files.put("read only.json", sample());
    const bytes = readFileSync(path);
    chmodSync(path, 0o444);
    expect((await hear([command, path, "--working"])).code).toBe(0);
    expect(readFileSync(path)).toEqual(bytes);
  });
});

describe("the shop's file", () => {
  const piece = () => files.put("for a shop.json", sample());

  test("is read, and named", async () => {
    const shop = { format: "latewood-shop", version: 1, name: "Bay two", "extra-length": "2 in" };
    const path = files.put("shop.json", JSON.stringify(shop));
    const own = await hear(["parts", piece(), "--json", "--shop", path]);
    const demo = await hear(["parts", piece(), "--json"]);
    const [a, b] = [JSON.parse(own.out), JSON.parse(demo.out)];
    expect(a.shop).toEqual({ name: "Bay two", isDemo: false });
    expect(b.shop.isDemo).toBe(true);
    expect(a.rows[0].rough.length - a.rows[0].finished.length).toBeCloseTo(50.8, 9);
    expect(b.rows[0].rough.length - b.rows[0].finished.length).toBeCloseTo(25, 9);
    expect((await hear(["parts", piece(), "--shop", path])).out).toContain("Bay two\n");
  });

  test.each([
    ["no JSON", "bench", "not-json"],
    ["of another format", '{"format": "latewood-piece", "version": 1}', "not-this"],
    [
      "of chisels that are none",
      '{"format": "latewood-shop", "version": 1, "chisels": ["x"]}',
      "length-not-a-number",
    ],
  ])("%s is refused with its place", async (what, text, code) => {
    const path = files.put(`shop ${what}.json`, text);
    const { code: ended, out } = await hear(["check", piece(), "--json", "--shop", path]);
    expect(ended).toBe(2);
    const { problems } = JSON.parse(out) as { readonly problems: readonly ProblemLine[] };
    expect(problems).toMatchObject([{ code }]);
    expect(problems[0]?.place.startsWith(path)).toBe(true);
  });

  test("its faults and the piece's are told together", async () => {
    const shop = files.put("shop bad.json", "bench");
    const bad = files.put("piece bad.json", "table");
    const { err } = await hear(["check", bad, "--shop", shop]);
    for (const path of [shop, bad]) expect(err).toContain(path);
  });
});
