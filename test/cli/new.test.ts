import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { kinds } from "../../src/kinds/index.ts";
import { readDocument } from "../../src/piece/index.ts";
import { hear } from "../kit/cli.ts";
import { pieceFiles } from "../kit/piece-files.ts";

const files = pieceFiles();
const names = kinds.map(({ name }) => name);

/** A folder of this name, still empty. */
const folder = (name: string) => {
  mkdirSync(files.path(name));
  return files.path(name);
};

describe.each(names)("latewood new %s", (kind) => {
  test.each(["inch", "mm"])(
    "to standard output, on the %s side, it can be worked",
    async (side) => {
      const { code, out, err } = await hear(["new", kind, "--units", side, "--name", "Hall table"]);
      expect([code, err]).toEqual([0, ""]);
      const read = readDocument(out);
      expect(read).toMatchObject({ ok: true, document: { name: "Hall table", units: side } });
      const path = files.put(`${kind} ${side}.json`, out);
      for (const command of ["parts", "check"]) expect((await hear([command, path])).code).toBe(0);
    },
  );

  test.each(["-o", "--out"])(
    "%s writes it with the schema beside it, which it keeps to",
    async (o) => {
      const at = folder(`${kind} ${o}`);
      const path = join(at, "table.json");
      const { code, out, err } = await hear(["new", kind, o, path]);
      expect([code, err]).toEqual([0, ""]);
      expect(out).toContain(path);
      const document = JSON.parse(readFileSync(path, "utf8"));
      expect(document.$schema).toBe("./piece-1.schema.json");
      const schema = readFileSync(join(at, "piece-1.schema.json"), "utf8");
      expect(schema).toBe((await hear(["schema"])).out);
      const isValid = new Ajv2020({ strict: false }).compile(JSON.parse(schema));
      expect(isValid(document)).toBe(true);
      expect(isValid({ ...document, colour: "red" })).toBe(false);
      expect((await hear(["check", path])).code).toBe(0);
    },
  );

  test("it never writes over what is there, the schema neither", async () => {
    const at = folder(`${kind} there`);
    const path = join(at, "table.json");
    writeFileSync(path, "mine");
    writeFileSync(join(at, "piece-1.schema.json"), "mine too");
    const { code, out, err } = await hear(["new", kind, "-o", path]);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toMatch(/^.*table\.json: There is a file.*\n {2}\S/);
    expect(readFileSync(path, "utf8")).toBe("mine");
    expect((await hear(["new", kind, "-o", join(at, "other.json")])).code).toBe(0);
    expect(readFileSync(join(at, "piece-1.schema.json"), "utf8")).toBe("mine too");
    expect((await hear(["new", kind, "-o", join(at, "piece-1.schema.json")])).code).toBe(2);
  });
});

const [kind = ""] = names;

describe("what cannot be made ends with 2, its place, and what would be right", () => {
  test.each<[string, readonly string[], readonly string[]]>([
    ["no kind", [], ["KIND", "latewood new KIND"]],
    ["an unknown kind", ["throne"], ["throne", kind]],
    ["an inherited name", ["constructor"], ["constructor", kind]],
    ["two kinds", [kind, "throne"], ["“throne”", "no option"]],
    ["a side", [kind, "--units", "yard"], ["yard", "inch or mm"]],
    ["no name", [kind, "--name", ""], ["--name", "Nothing is written"]],
    ["a name without measure", [kind, "--name", "x".repeat(121)], ["--name", "121", "at most 120"]],
    ["no file behind -o", [kind, "-o"], ["-o", "Nothing follows"]],
    ["an option behind -o", [kind, "-o", "--units", "mm"], ["--out", "Nothing follows"]],
    ["two files", [kind, "-o", "a", "--out", "b"], ["--out", "twice"]],
    ["an option that is none", [kind, "--color=red"], ["--color", "--name"]],
  ])("%s", async (_, argv, parts) => {
    const { code, out, err } = await hear(["new", ...argv]);
    expect([code, out]).toEqual([2, ""]);
    for (const part of parts) expect(err).toContain(part);
    for (const file of ["a", "b"]) expect(existsSync(file)).toBe(false);
  });

  test("a folder that is not there, and a file in its place", async () => {
    for (const path of [
      files.path("nowhere/table.json"),
      join(files.put("in the way", ""), "table.json"),
    ]) {
      const { code, err } = await hear(["new", kind, "-o", path]);
      expect([code, err]).toEqual([2, expect.stringContaining(`${path}: There is no such`)]);
    }
    expect(existsSync(files.path("nowhere"))).toBe(false);
  });
});

describe("latewood schema", () => {
  test("is JSON Schema, with the questions of every kind", async () => {
    const { code, out } = await hear(["schema"]);
    expect(code).toBe(0);
    const schema = JSON.parse(out);
    expect(schema.$schema).toContain("2020-12");
    for (const { asks } of kinds)
      for (const ask of Object.keys(asks)) expect(out).toContain(`"${ask}"`);
  });

  test("takes nothing", async () => {
    expect((await hear(["schema", "please"])).code).toBe(2);
    expect((await hear(["schema", "--json"])).err).toContain("--json");
  });
});

test.each(["new", "schema"])("latewood %s --help tells what it does", async (command) => {
  const { code, out } = await hear([command, "--help"]);
  expect(code).toBe(0);
  expect(out).toMatch(new RegExp(`^latewood ${command}`));
  expect(out).toContain("Exit code");
});

test("the usage names every command, and each kind", async () => {
  const { out } = await hear([]);
  for (const command of ["new", "parts", "check", "schema", "reckon", "serve", "version"]) {
    expect(out).toMatch(new RegExp(`^latewood ${command}\\b`, "m"));
  }
  for (const name of names) expect(out).toContain(name);
});
