import { expect, test } from "vitest";
import { kindNamed, newDocument, pieceOf } from "../../src/kinds/index.ts";
import { overAll } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";

function sizes(kind: string, answers: Readonly<Record<string, string>>) {
  const fresh = newDocument(kindNamed(kind), "Size", "mm");
  const { table } = fresh.assemblies;
  if (!table) throw new Error("a fresh piece has no table");
  const read = pieceOf({ ...fresh, assemblies: { table: { ...table, ...answers } } }, demoShop);
  if (!read.ok) throw new Error(read.problems.map(({ code }) => code).join(", "));
  return overAll(read.piece.parts, read.piece.motions);
}

test("a plain table is as large as its top, and stands one way", () => {
  const { open, closed } = sizes("plain-table", { length: "1500 mm", width: "800 mm" });
  expect([open.length, open.width, open.height].map((n) => n.toFixed(6))).toEqual([
    "1500.000000",
    "800.000000",
    "740.000000",
  ]);
  expect(closed).toBeUndefined();
});

test("open it is as wide as top, leaves and what they are set out; closed as the top and two leaves’ thickness", () => {
  const asked = { length: "1100 mm", width: "480 mm", leaf: "290 mm", "top-thickness": "19 mm" };
  for (const [leaves, count] of [
    ["one", 1],
    ["two", 2],
  ] as const) {
    const { open, closed } = sizes("drop-leaf-table", { ...asked, leaves, "set-out": "0.5 mm" });
    expect(open.width).toBeCloseTo(480 + count * (290 + 0.5), 6);
    expect(open.length).toBeCloseTo(1100, 6);
    expect(closed?.height).toBeCloseTo(740, 6);
    // A leaf hangs a little in or out of plumb, and its joint’s face stands near the top’s edge.
    const stands = (closed?.width ?? 0) - 480;
    expect(stands).toBeGreaterThan(0);
    expect(stands).toBeLessThan(count * 2 * 19);
  }
});
