import { describe, expect, test } from "vitest";
import { demoPieces, kindNamed } from "../../src/kinds/index.ts";
import type { PieceDocument } from "../../src/piece/index.ts";
import { mm, readLength } from "../../src/units/index.ts";
import { hear } from "../kit/cli.ts";
import { sampleDocument } from "../kit/documents.ts";
import { pieceFiles } from "../kit/piece-files.ts";

const files = pieceFiles();
const demos = demoPieces().map((piece, i) => [piece.name, piece, `demo ${i}.json`] as const);
const commands = ["parts", "check"] as const;

type Row = {
  readonly keys: readonly string[];
  readonly marks: readonly string[];
  readonly mirrored: readonly string[];
  readonly name: string;
  readonly pieces: number;
  readonly layers: number;
  readonly finished: Readonly<Record<"length" | "width" | "thickness", number>>;
  readonly rough: Readonly<Record<"length" | "width" | "thickness", number>>;
  readonly quarter: string;
  readonly boardFeet: number;
  readonly massKg: number;
  readonly working?: object;
};
type Parts = {
  readonly rows: readonly Row[];
  readonly byThickness: readonly { readonly quarter: string; readonly boardFeet: number }[];
  readonly mass: { readonly value: number; readonly unit: string; readonly working?: object };
  readonly moisturePct: number;
};

describe.each(demos)("the cut list of %s", (_, piece, file) => {
  test("the text tells every row, thickness and mark, within 100 columns", async () => {
    const path = files.putPiece(file, piece);
    const { code, out, err } = await hear(["parts", path]);
    expect([code, err]).toEqual([0, ""]);
    const { rows, byThickness }: Parts = JSON.parse((await hear(["parts", path, "--json"])).out);
    expect(rows.length).toBeGreaterThan(3);
    for (const { name } of rows) expect(out).toContain(name);
    for (const { quarter } of byThickness) expect(out).toContain(quarter);
    for (const word of [piece.name, piece.client, piece.timber, "invented", "demo shop", "% MC"]) {
      expect(out.toLowerCase()).toContain(word.toLowerCase());
    }
    expect(out).toContain("mirrored: L2, L4");
    expect(out).not.toMatch(/NaN|undefined|\[object| $/m);
    for (const line of out.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
  });

  test("the columns of the text stand under one another", async () => {
    const { out } = await hear(["parts", files.putPiece(file, piece)]);
    const lines = out.split("\n");
    const head = lines.findIndex((line) => line.includes("Mark"));
    const below = lines.slice(head, lines.indexOf("", head));
    for (const word of ["Part", "Length", "Width", "Thickness", "Mass"]) {
      const at = lines[head]?.indexOf(word) ?? -1;
      expect(at).toBeGreaterThan(0);
      for (const line of below) expect(line.slice(at - 2, at).trim()).toBe("");
    }
  });

  test("the data are whole: every piece of wood, and what adds up", async () => {
    const { out } = await hear(["parts", files.putPiece(file, piece), "--json"]);
    const { rows, byThickness, mass, moisturePct }: Parts = JSON.parse(out);
    const keys = rows.flatMap((row) => row.keys);
    const marks = rows.flatMap((row) => row.marks);
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(marks).size).toBe(keys.length);
    const total = (of: readonly number[]) => of.reduce((sum, n) => sum + n, 0);
    expect(total(rows.map((r) => r.massKg))).toBeCloseTo(mass.value, 9);
    expect(total(rows.map((r) => r.boardFeet))).toBeCloseTo(
      total(byThickness.map((r) => r.boardFeet)),
      9,
    );
    expect(mass.unit).toBe("kg");
    expect(moisturePct).toBe(Number.parseFloat(piece.home.made));
    const sold = byThickness.map(({ quarter }) => quarter);
    for (const { finished, rough, marks: all, mirrored, quarter, working } of rows) {
      // What is sawn out of another part is named by that one's mark, and has no rough size of its own.
      const isOwn = sold.includes(quarter);
      if (!isOwn) expect(marks).toContain(quarter.split(", ")[0]);
      expect(rough.length > finished.length).toBe(isOwn);
      expect(rough.width > finished.width).toBe(isOwn);
      expect(all).toEqual(expect.arrayContaining([...mirrored]));
      expect(working).toBeUndefined();
    }
  });

  test("--working gives each figure its chain, in text and in data", async () => {
    const path = files.putPiece(file, piece);
    const { out } = await hear(["parts", path, "--working"]);
    const { rows, mass }: Parts = JSON.parse(
      (await hear(["parts", path, "--working", "--json"])).out,
    );
    for (const { boardFeet, working } of rows) {
      expect(working).toMatchObject({ value: boardFeet, formula: expect.stringContaining("=") });
    }
    expect(mass.working).toMatchObject({ value: mass.value, formula: "m = V·ρ" });
    expect(out.split("BF = n·").length - 1).toBeGreaterThanOrEqual(rows.length);
    expect(out).toContain("m = V·ρ");
  });

  test("--units changes the text's side and nothing in the data", async () => {
    const path = files.putPiece(file, piece);
    for (const command of commands) {
      const json = await hear([command, path, "--json", "--working"]);
      for (const side of ["inch", "mm"]) {
        const other = await hear([command, path, "--json", "--working", "--units", side]);
        expect(other.out).toBe(json.out);
      }
    }
    const [inch, mm] = [
      await hear(["parts", path, "--units", "inch"]),
      await hear(["parts", path, "--units", "mm"]),
    ];
    // Bought things are named on both sides, as they are sold.
    const [inInches, inMm] = [inch, mm].map(({ out }) => out.replace(/^ +\d+ {2}.*$/gm, ""));
    expect(inInches).toMatch(/\d"/);
    expect(inInches).not.toMatch(/\d mm\b/);
    expect(inMm).toMatch(/\d mm\b/);
    expect(inMm).not.toMatch(/\d"/);
    expect([inch.out, mm.out]).toContain((await hear(["parts", path])).out);
  });

  test("written on the other side of the inch it gives the same data", async () => {
    const here = files.putPiece(file, piece);
    const there = files.putPiece(`other ${file}`, onOtherSide(piece));
    for (const command of commands) {
      const [a, b] = [
        await hear([command, here, "--json", "--working"]),
        await hear([command, there, "--json", "--working"]),
      ];
      expect([a.code, b.code]).toEqual([0, 0]);
      expect(rounded(a.out)).toEqual(rounded(b.out));
    }
  });
});

/** The same sizes with every unit written out on the other side, and bare numbers read as there. */
function onOtherSide(piece: PieceDocument): PieceDocument {
  const { units } = piece;
  const other = (text: string) => {
    const read = readLength(text, units);
    if (!read.ok) return text;
    return units === "inch" ? `${read.value}` : `${read.value / 25.4}`;
  };
  const [name = "", table] = Object.entries(piece.assemblies)[0] ?? [];
  if (!table) throw new Error("the piece has no assembly");
  const { asks } = kindNamed(table.kind);
  const turned = Object.entries(table).map(([ask, text]) => [
    ask,
    asks[ask]?.unit === "mm" ? other(text) : text,
  ]);
  const assemblies = { [name]: { ...Object.fromEntries(turned), kind: table.kind } };
  return { ...piece, units: units === "inch" ? "mm" : "inch", assemblies };
}

/** Data without what the last bits of a number decide: its last digits, and the order of equals. */
const rounded = (out: string): unknown =>
  JSON.parse(out, (name, value) => {
    if (typeof value === "number") return Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(9));
    // Words say lengths on the piece's own side.
    if (name === "says" && typeof value === "string")
      return value.replace(/[\d./⁄ ]+("|″| mm| in)( full| scant)?/g, " so much");
    return name === "lights" ? [...value].sort() : value;
  });

type Findings = {
  readonly findings: readonly {
    readonly id: string;
    readonly verdict: "ok" | "watch" | "fails" | "not-judged";
    readonly says: string;
    readonly margin?: { readonly value: number; readonly unit: string };
    readonly working?: readonly object[];
  }[];
};

const worst = ["fails", "watch", "not-judged", "ok"];
const words = { fails: "Stops.", watch: "Watch.", "not-judged": "Not judged.", ok: "Proven." };

/** A top cut 10 mm short of what the design asks for now, and an override that names nothing. */
const spoilt = sampleDocument({
  cut: {
    "table/top": {
      length: mm(1490),
      width: mm(800),
      thickness: mm(22),
      features: [],
      values: { "table/top.length": "1490 mm" },
    },
  },
  overrides: { "table/wheel.width": "1 in" },
});

describe.each([
  ...demos,
  ["a piece with a part that no longer fits", spoilt, "spoilt.json"] as const,
])("the judgements on %s", (_, piece, file) => {
  test("worst first, with words for each verdict, and the exit code of the worst", async () => {
    const path = files.putPiece(file, piece);
    const { code, out, err } = await hear(["check", path]);
    expect(err).toBe("");
    const { findings }: Findings = JSON.parse((await hear(["check", path, "--json"])).out);
    expect(findings.length).toBeGreaterThan(2);
    const order = findings.map(({ verdict }) => worst.indexOf(verdict));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(code).toBe(findings.some(({ verdict }) => verdict === "fails") ? 1 : 0);
    const at = findings.map(({ verdict, says }) => out.indexOf(`  ${words[verdict]} ${says}\n`));
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
    expect(out).not.toMatch(/NaN|undefined|\[object| $/m);
  });

  test("--working gives the whole chain, in text and in data", async () => {
    const path = files.putPiece(file, piece);
    const [plain, worked] = [await hear(["check", path]), await hear(["check", path, "--working"])];
    expect(worked.code).toBe(plain.code);
    expect(plain.out).not.toMatch(/^ +\S+ = /m);
    expect(worked.out).toMatch(/^ +a = /m);
    const json = await hear(["check", path, "--working", "--json"]);
    const { findings }: Findings = JSON.parse(json.out);
    for (const { margin, working } of findings.filter((finding) => finding.margin)) {
      expect(working?.[0]).toMatchObject({ value: margin?.value, formula: expect.any(String) });
    }
  });
});

test("a part cut to another size stops, with by how much, and ends with 1", async () => {
  const path = files.putPiece("spoilt.json", spoilt);
  const { code, out } = await hear(["check", path, "--units", "mm"]);
  expect(code).toBe(1);
  expect(out).toMatch(/^ {2}Stops\. .*smaller.*\n {4}-10 mm/m);
  expect(out).toContain("table/wheel.width");
  expect((await hear(["parts", path])).code).toBe(0);
});

describe("what is asked of a command and cannot be", () => {
  test.each(commands)("%s gathers every fault of its words", async (command) => {
    const argv = [command, "a.json", "b.json", "--colour", "--units", "yard", "--json=1", "--shop"];
    const { code, out, err } = await hear(argv);
    expect([code, out]).toEqual([2, ""]);
    for (const part of ["“b.json”", "--colour", "yard", "--json", "--shop"]) {
      expect(err).toContain(part);
    }
    for (const [i, line] of err.trimEnd().split("\n").entries()) {
      expect(line).toMatch(i % 2 === 0 ? /^\S.*: \S/ : /^ {2}\S/);
    }
  });

  test.each(commands)(
    "%s asks for the piece it is not given, and takes none twice",
    async (command) => {
      const none = await hear([command, "--json"]);
      expect(none.code).toBe(2);
      expect(JSON.parse(none.out)).toMatchObject({
        problems: [
          { code: "word-missing", place: "PIECE", remedy: `Write latewood ${command} PIECE.` },
        ],
      });
      const twice = await hear([command, "a.json", "--units=mm", "--units=mm", "--json"]);
      expect(JSON.parse(twice.out)).toMatchObject({ problems: [{ code: "option-twice" }] });
    },
  );

  test.each(commands)("%s --help tells the options and the exit codes", async (command) => {
    const { code, out } = await hear([command, "--help"]);
    expect(code).toBe(0);
    for (const word of ["PIECE", "--units", "--shop", "--working", "--json"]) {
      expect(out).toContain(word);
    }
    expect(out).toMatch(/Exit code: 0 .*1 a finding fails, 2 .*, 3 /);
  });
});
