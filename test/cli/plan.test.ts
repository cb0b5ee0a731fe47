import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { plan } from "../../src/cli/plan.ts";
import { demoPieces } from "../../src/kinds/index.ts";
import { documentText } from "../../src/piece/index.ts";
import { hear } from "../kit/cli.ts";

let folder: string;
let piece: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "latewood plan "));
  piece = join(folder, "table.json");
  const [, demo] = demoPieces();
  if (!demo) throw new Error("there is no demo piece");
  writeFileSync(piece, documentText(demo));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the command on a day of its own, and gives back what it wrote. */
async function planned(name: string, more: readonly string[] = []) {
  const out = join(folder, name);
  const said: string[] = [];
  const io = {
    out: (text: string) => void said.push(text),
    err: (text: string) => void said.push(text),
  };
  const code = await plan([piece, "-o", out, ...more], io, new Date("2026-03-04T05:06:07Z"));
  const read = (file: string) => readFileSync(join(out, file));
  return { code, out, said: said.join(""), read };
}

test("the whole set of papers, each named, and the piece's file as it was", async () => {
  const before = readFileSync(piece, "utf8");
  const { code, out, said, read } = await planned("papers");
  expect(code).toBe(0);
  const names = readdirSync(out).sort();
  const svgs = names.filter((name) => /^sheet-\d\d\.svg$/.test(name));
  expect(svgs.length).toBeGreaterThan(5);
  expect(names).toEqual(
    [...svgs, "cut-list.csv", "model.glb", "papers.pdf", "worked-up.json"].sort(),
  );
  for (const name of names) expect(said).toContain(join(out, name));
  expect(read("papers.pdf").subarray(0, 5).toString()).toBe("%PDF-");
  expect(read("model.glb").subarray(0, 4).toString()).toBe("glTF");
  expect(read("cut-list.csv").toString().split("\n").length).toBeGreaterThan(5);
  expect(JSON.parse(read("worked-up.json").toString()).piece.document.name).toBe(
    "Tallow Wharf breakfast table",
  );
  expect(read("sheet-01.svg").toString()).toContain("2026-03-04");
  expect(readFileSync(piece, "utf8")).toBe(before);
});

test("the same day gives the same papers to the byte", async () => {
  const [a, b] = [await planned("one"), await planned("two")];
  for (const name of readdirSync(a.out)) expect(a.read(name).equals(b.read(name)), name).toBe(true);
});

test("paper and side are those asked for, or the piece's own", async () => {
  const size = (svg: Buffer) => /width="([\d.]+)mm"/.exec(svg.toString())?.[1];
  expect(size((await planned("own")).read("sheet-01.svg"))).toBe("279.4");
  expect(size((await planned("a4", ["--paper", "A4"])).read("sheet-01.svg"))).toBe("297");
  expect((await planned("mm", ["--units", "mm"])).read("sheet-01.svg").toString()).toContain(
    ">743<",
  );
});

describe("what cannot be done is said, and nothing of the maker's is written over", () => {
  test("a folder that something lies in", async () => {
    const out = join(folder, "filled");
    mkdirSync(out);
    writeFileSync(join(out, "letter.txt"), "mine");
    const { code, said } = await planned("filled");
    expect(code).toBe(2);
    expect(said).toContain(out);
    expect(readdirSync(out)).toEqual(["letter.txt"]);
  });

  test("a file where the folder should be", async () => {
    writeFileSync(join(folder, "file"), "mine");
    expect((await planned("file")).code).toBe(2);
    expect(readFileSync(join(folder, "file"), "utf8")).toBe("mine");
  });

  test.each([
    ["no folder", []],
    ["an unknown paper", ["-o", "x", "--paper", "vellum"]],
    ["an unknown option", ["-o", "x", "--colour"]],
  ])("%s", async (_, words) => {
    const { code, err } = await hear(["plan", piece, ...words]);
    expect(code).toBe(2);
    expect(err).toMatch(/\w+.*\n {2}\w/);
    expect(existsSync("x")).toBe(false);
  });

  test("a piece that cannot be made leaves no folder behind", async () => {
    const bad = join(folder, "bad.json");
    writeFileSync(
      bad,
      readFileSync(piece, "utf8").replace('"length": "54\\""', '"length": "10 in"'),
    );
    const out = join(folder, "none");
    const { code, err } = await hear(["plan", bad, "-o", out]);
    expect(code).toBe(2);
    expect(err).toContain("length");
    expect(existsSync(out)).toBe(false);
  });
});
