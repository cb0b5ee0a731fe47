import { expect, test } from "vitest";
import { idleAsks, kindNamed, kinds, newDocument, pieceOf } from "../../src/kinds/index.ts";
import { demoShop } from "../../src/shop/index.ts";

const [plain, dropLeaf] = [kindNamed("plain-table"), kindNamed("drop-leaf-table")];

test("what means nothing beside the other answers is idle, however they are written", () => {
  expect(idleAsks(plain, {})).toEqual([]);
  expect(idleAsks(plain, { "leg-form": "Square" })).toEqual(["foot", "taper-start"]);
  expect(idleAsks(dropLeaf, {})).toEqual([]);
  expect(idleAsks(dropLeaf, { joint: "square edges", "arm-ends": "square" })).toEqual([
    "cutters",
    "crown",
    "pin-out",
    "bevel",
    "arm-angle",
  ]);
});

test("and another answer to it changes nothing of the piece", () => {
  for (const kind of kinds) {
    const fresh = newDocument(kind, "Idle", "mm");
    const { table } = fresh.assemblies;
    if (!table) throw new Error("a fresh piece has no table");
    const texts = {
      ...table,
      "leg-form": "square",
      ...(kind === dropLeaf ? { joint: "square edges", "arm-ends": "square" } : {}),
    };
    const idle = idleAsks(kind, texts);
    expect(idle.length).toBeGreaterThan(1);
    const made = (more: Readonly<Record<string, string>>) => {
      const document = { ...fresh, assemblies: { table: { ...texts, ...more } } };
      const read = pieceOf(document, demoShop);
      if (!read.ok) throw new Error(read.problems.map(({ code }) => code).join(", "));
      const { document: _, ...piece } = read.piece;
      return JSON.stringify(piece);
    };
    const others: Readonly<Record<string, string>> = {
      foot: "35 mm",
      "taper-start": "40 mm",
      cutters: "10 mm pair",
      crown: "0.3 mm",
      "pin-out": "1 mm",
      bevel: "2 mm",
      "arm-angle": "30",
    };
    const before = made({});
    for (const name of idle) {
      const other = others[name];
      if (other === undefined) throw new Error(`no other answer is given for ${name}`);
      expect(other).not.toBe(texts[name as keyof typeof texts]);
      expect(made({ [name]: other }), name).toBe(before);
    }
  }
});
