import { describe, expect, test } from "vitest";
import { run } from "../../src/cli/index.ts";
import { LONGEST_LINE } from "../../src/cli/lines.ts";
import { reckonTopic } from "../../src/cli/reckon.ts";
import type { Input } from "../../src/cli/run.ts";
import { hear, linesOf } from "../kit/cli.ts";
import { judged } from "./judged.ts";

const batch = (input: string | readonly (string | Uint8Array)[], ...more: readonly string[]) =>
  hear(["reckon", "movement", "--batch", ...more], input);

/** What a row came to: its width in mm, or the code of its first problem. */
const told = (out: string) =>
  linesOf(out).map(({ row, given, problems }) => {
    const width = given?.width;
    return [row, problems?.[0]?.code ?? (typeof width === "object" ? width.value : undefined)];
  });

const head = "species,width,from,to\n";

describe("rows of CSV", () => {
  test("one JSON line a row, in order", async () => {
    const { code, out, err } = await batch(`${head}white oak,9 in,7,11\nblack cherry,300,8,10\n`);
    expect([code, err]).toEqual([0, ""]);
    expect(told(out)).toEqual([
      [1, 228.6],
      [2, 300],
    ]);
    expect(linesOf(out)[1]?.results?.[0]).toMatchObject({ name: "movement", unit: "mm" });
  });

  test("a bad row in the middle costs none of the others", async () => {
    const rows = [
      "white oak,100,7,11",
      "white oak,x,7,11",
      "white oak,100,7",
      "white oak,100,7,11,12",
      'white oak,"100,7,11',
      '"white oak"",100,7,11',
      'white oak,"9" wide,7,11',
      "brick,100,7,11",
      "white oak,200,7,11",
    ];
    const { code, out } = await batch(head + rows.join("\n"));
    expect(code).toBe(2);
    expect(told(out)).toEqual([
      [1, 100],
      [2, "length-not-a-number"],
      [3, "csv-cells"],
      [4, "csv-cells"],
      [5, "csv-quotes"],
      [6, "csv-quotes"],
      [7, "csv-quotes"],
      [8, "species-unknown"],
      [9, 200],
    ]);
    for (const { row, problems } of linesOf(out)) {
      for (const { place, reason, remedy } of problems ?? []) {
        expect(place).toContain(`row ${row}`);
        expect(Math.min(reason.length, remedy.length)).toBeGreaterThan(8);
      }
    }
  });

  test("marks of inches, in quotation marks and without", async () => {
    const cells = ['9"', '"9"""', `5' 6"`, `"5' 6 1/2"""`, ' "1 1/4 in" ', "1¼″", '" 9 "'];
    const rows = cells.map((cell) => `white oak,${cell},7,11`);
    const { code, out } = await batch(head + rows.join("\n"), "--units", "inch");
    expect(code).toBe(0);
    const inches = [9, 9, 66, 66.5, 1.25, 1.25, 9];
    for (const [i, [, width]] of told(out).entries()) {
      expect(width).toBeCloseTo((inches[i] ?? 0) * 25.4, 9);
    }
    expect(told(out)).toHaveLength(cells.length);
  });

  test.each([
    ["a byte order mark", `\ufeff${head}white oak,100,7,11\n`],
    ["line ends of two characters", `${head}white oak,100,7,11\n`.replaceAll("\n", "\r\n")],
    ["line ends of old spreadsheets", `${head}white oak,100,7,11\n`.replaceAll("\n", "\r")],
    ["no line end at the end", `${head}white oak,100,7,11`],
    ["blank lines", `\n\n${head}\n   \nwhite oak,100,7,11\n\n`],
    ["spaces about cells", "species , width,from , to\n white oak , 100 , 7,11\n"],
    ["columns in another order", "to,from,width,species\n11,7,100,white oak\n"],
    ["quotation marks about all", '"species","width","from","to"\n"white oak","100","7","11"\n'],
  ])("%s", async (_, text) => {
    const { code, out } = await batch(text);
    expect(told(out)).toEqual([[1, 100]]);
    expect(code).toBe(0);
  });

  test("bytes that arrive in the middle of a character", async () => {
    const bytes = new TextEncoder().encode(`\ufeff${head}white oak,1¼″,7,11\nwhite oak,½ m,7,11\n`);
    const pieces = [...bytes].map((b) => Uint8Array.of(b));
    const { code, out } = await batch(pieces);
    expect(code).toBe(0);
    expect(told(out)).toEqual([
      [1, 31.75],
      [2, 500],
    ]);
  });

  test("what an option says holds where the column is empty or missing", async () => {
    const { code, out } = await batch(
      "width,from\n100,\n200,9\n",
      "--species=white oak",
      "--to=11",
      "--from=7",
    );
    expect(code).toBe(0);
    expect(linesOf(out).map((l) => l.given?.from)).toMatchObject([{ value: 7 }, { value: 9 }]);
  });

  test("a missing column is missing in every row, a strange one strange", async () => {
    const { code, out } = await batch("species,width,from\nwhite oak,1,2\nwhite oak,3,4\n");
    expect(code).toBe(2);
    expect(linesOf(out).map((l) => l.problems)).toMatchObject([
      [{ code: "missing", place: "row 1, column to" }],
      [{ code: "missing", place: "row 2, column to" }],
    ]);
    const names = ["colour", "constructor", "toString", "__proto__"];
    for (const name of names) {
      const strange = await batch(`species,width,from,to,${name}\nwhite oak,100,7,11,red\n`);
      expect(told(strange.out)).toEqual([[1, "unknown-question"]]);
      expect(strange.code).toBe(2);
      const [problem] = linesOf(strange.out)[0]?.problems ?? [];
      expect(problem?.place).toBe(`row 1, column ${name}`);
      expect(problem?.remedy).toMatch(/species, width, from, to\b/);
      expect(problem?.remedy).not.toContain("row");
    }
  });

  test.each([
    ["the same column twice", "species,width,width,from,to\nwhite oak,1,2,7,11\n", "csv-columns"],
    ["an open quotation mark", '"species,width,from,to\nwhite oak,1,7,11\n', "csv-quotes"],
    ["semicolons", "species;width;from;to\nwhite oak;1,5;7;11\n", "csv-separator"],
    ["semicolons and quotation marks", '"species";"width"\n"white oak";"1"\n', "csv-separator"],
    ["tabs", "species\twidth\tfrom\tto\nwhite oak\t1\t7\t11\n", "csv-separator"],
    ["no end", `${" ".repeat(LONGEST_LINE + 1)}${head}`, "line-too-long"],
  ])("a head line with %s is told once", async (_, text, code) => {
    const heard = await batch(text);
    expect(heard.code).toBe(2);
    expect(told(heard.out)).toEqual([[0, code]]);
    const [problem] = linesOf(heard.out)[0]?.problems ?? [];
    expect(problem?.place).toBe("head line");
    // The answers may go to a file: whoever sits before the terminal must hear it too.
    expect(heard.err).toContain(problem?.reason);
    expect(heard.err).toContain(problem?.remedy);
  });

  test("one column alone is no table of another kind", async () => {
    const others = ["--species=white oak", "--from=7", "--to=11"];
    expect(told((await batch("width\t\n100\n", ...others)).out)).toEqual([[1, 100]]);
  });

  test("a row without measure costs none of the others", async () => {
    const long = `white oak,${"9".repeat(LONGEST_LINE)},7,11`;
    const { code, out, err } = await batch(`${head}white oak,1,7,11\n${long}\nwhite oak,3,7,11\n`);
    expect([code, err]).toEqual([2, ""]);
    expect(told(out)).toEqual([
      [1, 1],
      [2, "line-too-long"],
      [3, 3],
    ]);
  });

  test.each(["", "\n\n", "\ufeff", head, "   "])("no row at all: %j", async (text) => {
    const { code, out, err } = await batch(text);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain("standard input");
    expect(err).toContain("species,width,from,to");
  });
});

describe("JSON lines", () => {
  const row = (width: unknown) =>
    JSON.stringify({ species: "white oak", width, from: 7, to: "11 %" });

  test("texts, numbers, nothing, and bad lines in the middle", async () => {
    const lines = [
      row("4 in"),
      "nonsense",
      row(100),
      "",
      "[1]",
      "3",
      "null",
      row({}),
      row(true),
      row(null),
      row(7),
    ];
    const { code, out } = await batch(`\ufeff${lines.join("\r\n")}`);
    expect(code).toBe(2);
    const bad = "json-line";
    expect(told(out).map(([, what]) => what)).toEqual([
      101.6,
      bad,
      100,
      bad,
      bad,
      bad,
      bad,
      bad,
      "missing",
      7,
    ]);
    expect(linesOf(out).map((l) => l.row)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  });

  test.each(["[", '[{"width":1},\n{"width":2}]', "  [1]\n"])(
    "an array is told once: %j",
    async (text) => {
      const { code, out, err } = await batch(text);
      expect(code).toBe(2);
      expect(told(out)).toEqual([[0, "json-array"]]);
      expect(err).toContain("one object a line");
    },
  );

  test("a line without measure costs none of the others, be it the first", async () => {
    const long = `{"species":"${" ".repeat(LONGEST_LINE)}"}`;
    const { code, out } = await batch([long, row(1), long, row(2)].join("\n"));
    expect(code).toBe(2);
    const bad = "line-too-long";
    expect(told(out).map(([, what]) => what)).toEqual([bad, 1, bad, 2]);
  });

  test("names that every object has are no columns", async () => {
    const text = `{"species":"white oak","width":9,"from":7,"to":11,"__proto__":"1"}`;
    expect(told((await batch(text)).out)).toEqual([[1, "unknown-question"]]);
  });

  test("--working gives each row its chain", async () => {
    const { out } = await batch(row(100), "--working");
    expect(linesOf(out)[0]?.results?.[0]?.working).toMatchObject({ formula: expect.any(String) });
  });
});

describe("where rows come from and answers go", () => {
  /** Runs a batch on an input of the test's own making, with a reader that is as slow as told. */
  async function heard(input: Input, drained?: (out: readonly string[]) => Promise<void>) {
    const out: string[] = [];
    const err: string[] = [];
    const code = await run(
      ["reckon", "movement", "--batch"],
      {
        out: (text) => void out.push(text),
        err: (text) => void err.push(text),
        ...(drained && { drained: () => drained(out) }),
      },
      input,
    );
    return { code, out: out.join(""), err: err.join("") };
  }

  async function* breaking(text: string) {
    yield text;
    throw new Error("EISDIR: illegal operation on a directory, read");
  }

  test("an input that breaks off is told, behind the answers that were had", async () => {
    const { code, out, err } = await heard(breaking(`${head}white oak,1,7,11\nwhite`));
    expect(code).toBe(2);
    expect(told(out)).toEqual([
      [1, 1],
      [0, "input-unread"],
    ]);
    for (const part of ["standard input", "EISDIR"]) expect(err).toContain(part);
  });

  test("an input that cannot be read at all is told once", async () => {
    const { code, out, err } = await heard(breaking(""));
    expect([code, told(out)]).toEqual([2, [[0, "input-unread"]]]);
    expect(err).not.toContain("No row");
  });

  test("a fault of ours is no fault of the input", async () => {
    const answer = () => {
      throw new Error("ours");
    };
    const io = { out: () => {}, err: () => {} };
    const input = breaking("temperature,humidity\n20 C,50\n");
    const ran = reckonTopic({ ...judged(), answer }, ["--batch"], io, input);
    await expect(ran).rejects.toThrow("ours");
  });

  test("typed rows are asked for, others are not", async () => {
    async function* rows() {
      yield `${head}white oak,1,7,11\n`;
    }
    const typed = await heard(Object.assign(rows(), { isTTY: true }));
    expect(typed.code).toBe(0);
    for (const part of ["species,width,from,to", "Ctrl+D"]) expect(typed.err).toContain(part);
    expect((await heard(rows())).err).toBe("");
  });

  test("no row is worked before the reader has taken the one before", async () => {
    const text = `${head}${"white oak,1,7,11\n".repeat(5)}`;
    const lengths: number[] = [];
    let isWaiting = false;
    async function* rows() {
      yield* text.split(/(?<=\n)/);
    }
    const { code } = await heard(rows(), async (out) => {
      expect(isWaiting).toBe(false);
      isWaiting = true;
      lengths.push(out.length);
      await new Promise((settle) => setTimeout(settle));
      expect(out).toHaveLength(lengths.length);
      isWaiting = false;
    });
    expect(code).toBe(0);
    expect(lengths).toEqual([1, 2, 3, 4, 5]);
  });

  test("an input that is given up is closed", async () => {
    let isClosed = false;
    async function* endless() {
      try {
        for (;;) yield "[\n";
      } finally {
        isClosed = true;
      }
    }
    expect((await heard(endless())).code).toBe(2);
    expect(isClosed).toBe(true);
  });
});

test("ten thousand rows come out in order", async () => {
  const rows = Array.from({ length: 10_000 }, (_, i) => `white oak,${i + 1},7,11`);
  const pieces = [head, ...chunks(`${rows.join("\n")}\n`, 7001)];
  const { code, out } = await batch(pieces);
  expect(code).toBe(0);
  expect(told(out)).toEqual(rows.map((_, i) => [i + 1, i + 1]));
});

const chunks = (text: string, size: number): readonly string[] =>
  Array.from({ length: Math.ceil(text.length / size) }, (_, i) =>
    text.slice(i * size, (i + 1) * size),
  );
