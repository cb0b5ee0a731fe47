import { describe, expect, test } from "vitest";
import { kindNamed, kinds, newDocument, pieceOf } from "../../src/kinds/index.ts";
import type { Piece } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { apartOffsets, middleOf } from "../../src/web/model/apart.ts";
import { drawnParts } from "../../src/workup/index.ts";

type Place = readonly [number, number, number];

const dot = (a: Place, b: Place) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

function table(answers: Readonly<Record<string, string>>): Piece {
  const [kind] = kinds;
  if (!kind) throw new Error("there is no kind of furniture");
  const fresh = newDocument(kind, "Demo table", "mm");
  const { table: texts } = fresh.assemblies;
  if (!texts) throw new Error("a fresh piece has no table");
  const document = { ...fresh, assemblies: { table: { ...texts, ...answers } } };
  const read = pieceOf(document, demoShop);
  if (!read.ok) throw new Error(read.problems.map((problem) => problem.code).join(", "));
  return read.piece;
}

const tables = [
  { says: "a table with buttons", piece: table({}) },
  {
    says: "a table with corner blocks",
    piece: table({ "corner-blocks": "yes", fastening: "screws in slots" }),
  },
  { says: "a small one", piece: table({ length: "500 mm", width: "400 mm", height: "450 mm" }) },
  { says: "a long narrow one", piece: table({ length: "3000 mm", width: "500 mm" }) },
];

describe.each(tables)("$says drawn apart", ({ piece }) => {
  const parts = drawnParts(piece);
  const offsets = apartOffsets(parts);
  const offset = (key: string) => {
    const found = offsets.get(key);
    if (!found) throw new Error(`${key} has no place`);
    return found;
  };
  const part = (key: string) => {
    const found = piece.parts.find((p) => p.key === key);
    if (!found) throw new Error(`there is no ${key}`);
    return found;
  };

  test("each tenon leaves its mortise along its own line, and all of it is seen", () => {
    const joints = piece.joints.filter((joint) => joint.kind === "mortise-and-tenon");
    expect(joints).toHaveLength(8);
    for (const { parts: keys, features } of joints) {
      const [leg, rail] = keys.map(part);
      if (!leg || !rail) throw new Error("a joint has two parts");
      const tenon = rail.features.find((feature) =>
        features.some(([of, key]) => of === rail.key && key === feature.key),
      );
      if (tenon?.feature !== "tenon") throw new Error("a rail has a tenon");
      const gap = minus(offset(leg.key), offset(rail.key));
      const out: Place = tenon.end === "right" ? rail.pose.x : [0, 0, 0];
      const along = tenon.end === "right" ? dot(gap, out) : -dot(gap, rail.pose.x);
      expect(along).toBeGreaterThan(tenon.length);
      expect(Math.hypot(...gap)).toBeCloseTo(along, 9);
    }
  });

  test("the top goes straight up, nothing goes down", () => {
    const [x, y, z] = offset("table/top");
    expect([x, y]).toEqual([0, 0]);
    expect(z).toBeGreaterThan(0);
    for (const { key } of parts) expect(offset(key)[2]).toBeGreaterThanOrEqual(0);
  });

  test("what holds the top leaves the rails inwards", () => {
    const held = parts.filter(({ role }) => role === "button" || role === "corner-block");
    for (const joint of piece.joints) {
      const inner = held.find(({ key }) => joint.parts.includes(key));
      if (!inner) continue;
      const rails = joint.parts.filter((key) => key.startsWith("table/rail/"));
      expect(rails.length).toBeGreaterThan(0);
      for (const rail of rails) {
        const gap = minus(offset(inner.key), offset(rail));
        // A rail's show face looks out.
        expect(dot(gap, part(rail).pose.z)).toBeLessThan(0);
      }
    }
  });

  test("opposite parts go opposite ways", () => {
    for (const one of parts) {
      const [x, y, z] = middleOf(one);
      const other = parts.find((p) => {
        const [ox, oy, oz] = middleOf(p);
        return Math.hypot(x + ox, y + oy, z - oz) < 1e-6;
      });
      if (!other) continue;
      const [a, b] = [offset(one.key), offset(other.key)];
      expect(Math.hypot(a[0] + b[0], a[1] + b[1], a[2] - b[2])).toBeLessThan(1e-9);
    }
  });
});

test("of a drop-leaf table leaves leave the top outwards, arms their rails upwards, and neither the other", () => {
  const read = pieceOf(newDocument(kindNamed("drop-leaf-table"), "Demo table", "mm"), demoShop);
  if (!read.ok) throw new Error("a fresh table is refused");
  const { piece } = read;
  const offsets = apartOffsets(drawnParts(piece));
  const offset = (key: string) => offsets.get(key) as Place;
  const leaves = piece.joints.filter(({ kind }) => kind === "leaf");
  const arms = piece.joints.filter(({ kind }) => kind === "pivot");
  expect([leaves.length, arms.length]).toEqual([2, 4]);
  for (const { parts } of leaves) {
    const leaf = parts.find((key) => key.startsWith("table/leaf/")) as string;
    const [x, y, z] = minus(offset(leaf), offset("table/top"));
    expect([x, z]).toEqual([0, 0]);
    expect(Math.sign(y)).toBe(leaf.endsWith("front") ? -1 : 1);
    expect(Math.abs(y)).toBeGreaterThan(100);
  }
  for (const { parts } of arms) {
    const arm = parts.find((key) => key.startsWith("table/arm/")) as string;
    const rail = parts.find((key) => key.startsWith("table/rail/")) as string;
    const [, y, z] = minus(offset(arm), offset(rail));
    expect(y).toBe(0);
    const part = piece.parts.find(({ key }) => key === arm);
    expect(z).toBeGreaterThan(part?.blank.width ?? Number.POSITIVE_INFINITY);
  }
});

test("a part alone stays where it is, and nothing has no parts to move", () => {
  const [first] = drawnParts(table({}));
  if (!first) throw new Error("a table has parts");
  expect([...apartOffsets([first]).values()]).toEqual([[0, 0, 0]]);
  expect(apartOffsets([]).size).toBe(0);
});
