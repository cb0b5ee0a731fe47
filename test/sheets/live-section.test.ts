import { describe, expect, test } from "vitest";
import { kindNamed, newDocument, pieceOf } from "../../src/kinds/index.ts";
import { drawingMarks, liveSection } from "../../src/sheets/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { deg, mm } from "../../src/units/index.ts";
import { boxOf } from "../kit/sheets.ts";

const WIDE = 104;

function live(units: "mm" | "inch", cutters: string, swing: number) {
  const blank = newDocument(kindNamed("drop-leaf-table"), "Table", units);
  const table = { ...blank.assemblies.table, kind: "drop-leaf-table", cutters };
  const thick = { ...table, "top-thickness": '7/8"' };
  const read = pieceOf({ ...blank, assemblies: { table: thick } }, demoShop);
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  const joint = read.piece.joints.find(({ kind }) => kind === "leaf");
  if (joint?.kind !== "leaf") throw new Error("it has no leaf");
  return liveSection(read.piece, joint.leaf, { units, wide: mm(WIDE), swing: deg(swing) });
}

const cutters = demoShop.jointCutters.map(({ name }) => name);

describe.each(cutters)("the section on the screen, %s", (name) => {
  test.each(["mm", "inch"] as const)(
    "lies within its place, no text on another, in %s",
    (units) => {
      const { section, region, tight, height } = live(units, name, 0);
      const placed = [section, ...(region ? [region] : []), ...(tight ? [tight] : [])];
      const marks = placed.flatMap(drawingMarks).flatMap((group) => group.marks);
      const boxes = marks.map((mark) => ({ mark, box: boxOf(mark) }));
      for (const { box } of boxes) {
        expect(Math.min(box[0], box[1])).toBeGreaterThan(0);
        expect(box[2]).toBeLessThan(WIDE);
        expect(box[3]).toBeLessThan(height);
      }
      const texts = boxes.filter(({ mark }) => mark.mark === "text").map(({ box }) => box);
      const touching = texts.flatMap((a, i) =>
        texts
          .slice(i + 1)
          .filter(
            (b) =>
              Math.min(a[2], b[2]) - Math.max(a[0], b[0]) > 0.15 &&
              Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > 0.15,
          ),
      );
      expect(texts.length).toBeGreaterThan(8);
      expect(touching).toEqual([]);
    },
  );

  test("past its rest the leaf rests", () => {
    const { rest } = live("mm", name, 0);
    expect(rest).toBeGreaterThan(90);
    expect(live("mm", name, 170).section).toEqual(live("mm", name, rest).section);
  });
});
