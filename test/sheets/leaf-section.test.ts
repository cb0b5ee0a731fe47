import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Frame } from "../../src/geometry/index.ts";
import { outOf } from "../../src/geometry/index.ts";
import { kindNamed, newDocument, pieceOf } from "../../src/kinds/index.ts";
import { pinClearance, sectionOf, sweptJoint } from "../../src/motion/index.ts";
import { type LeafJoint, type Piece, posedAt } from "../../src/piece/index.ts";
import type { Point } from "../../src/sheets/index.ts";
import { clippedOutline } from "../../src/sheets/views/clip-area.ts";
import { leafSection } from "../../src/sheets/views/leaf-section.ts";
import { pinRegion, tightPlace } from "../../src/sheets/views/pin-region.ts";
import { demoShop } from "../../src/shop/index.ts";
import { deg, mm } from "../../src/units/index.ts";
import { solids } from "../kit/sheets.ts";

type Asked = {
  readonly answers?: Readonly<Record<string, string>>;
  readonly overrides?: Readonly<Record<string, string>>;
};

/** A drop-leaf table as asked, and the joint of its first leaf. */
function table({ answers = {}, overrides = {} }: Asked = {}): {
  readonly piece: Piece;
  readonly leaf: LeafJoint;
} {
  const blank = newDocument(kindNamed("drop-leaf-table"), "Table", "mm");
  const read = pieceOf(
    {
      ...blank,
      overrides,
      assemblies: { table: { ...blank.assemblies.table, ...answers, kind: "drop-leaf-table" } },
    },
    demoShop,
  );
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("\n"));
  const joint = read.piece.joints.find(({ kind }) => kind === "leaf");
  if (joint?.kind !== "leaf") throw new Error("it has no leaf");
  return { piece: read.piece, leaf: joint.leaf };
}

const shown = { top: mm(60), leaf: mm(70) } as const;
const asked = { id: "joint", units: "mm", scale: 1, shown, sizes: "all" } as const;

const areaOf = (outline: readonly Point[]): number =>
  Math.abs(
    outline.reduce((sum, [x0, y0], i) => {
      const [x1, y1] = outline[(i + 1) % outline.length] ?? [x0, y0];
      return sum + (x0 * y1 - x1 * y0) / 2;
    }, 0),
  );

/** Area of a hatch: its first outline less the beds that lie in it. */
const hatched = ([whole, ...beds]: readonly (readonly Point[])[]): number =>
  areaOf(whole ?? []) - beds.reduce((sum, bed) => sum + areaOf(bed), 0);

/** What the kernel finds when it cuts a part where the drawing does, within the stretch that is drawn. */
function cutArea({ piece, leaf }: ReturnType<typeof table>, key: string): number {
  const middle = leaf.hinges[Math.floor(leaf.hinges.length / 2)] ?? 0;
  // Beside the middle of the hinge, where a screw's hole may be.
  const { section } = leaf;
  const plane: Frame = { ...section, origin: outOf(section, [0, 0, middle + 5]) };
  const cut = solids.sections(piece.parts, plane).find((one) => one.key === key);
  if (!cut) throw new Error(`${key} is not cut`);
  const area = { left: -shown.top, right: shown.leaf, bottom: -50, top: 100 };
  return cut.outlines
    .map((one) => clippedOutline(one, area))
    .reduce((sum, one) => sum + areaOf(one), 0);
}

describe("a leaf's joint in section", () => {
  test.each<readonly [string, Asked]>([
    ["let in", {}],
    ["square edges", { answers: { joint: "square edges" } }],
    ["a deep hinge", { overrides: { "table/leaf-joint.pin-height": "4.5 mm" } }],
    ["no bevel", { answers: { bevel: "0 mm" } }],
  ])("shows as much wood as the kernel finds in the parts: %s", (_, which) => {
    const made = table(which);
    const drawing = leafSection(made.piece, made.leaf, { ...asked, swing: deg(0) });
    const [top, leaf] = drawing.hatches.map(({ outlines }) => hatched(outlines));
    for (const [drawn, key] of [
      [top, made.leaf.top],
      [leaf, made.leaf.leaf],
    ] as const) {
      const cut = cutArea(made, key);
      expect(cut).toBeGreaterThan(500);
      expect(Math.abs((drawn ?? 0) - cut) / cut, key).toBeLessThan(1e-3);
    }
  });

  test.each([17, 60, 92])("turned down %i°, the leaf is where its motion carries it", (swing) => {
    const { piece, leaf } = table();
    const section = { ...asked, shown: { top: mm(60), leaf: mm(250) }, swing: deg(swing) };
    const drawn = leafSection(piece, leaf, section).hatches[1]?.outlines[0] ?? [];
    const posed = posedAt(piece.parts, piece.motions, { [leaf.motion]: deg(swing) });
    const part = posed.find(({ key }) => key === leaf.leaf);
    if (!part) throw new Error("the leaf is gone");
    // The lip's upper corner, and a place on the face far out.
    for (const y of [0, 250 - 0.4]) {
      const place = outOf(part.pose, [0, y, part.blank.thickness]);
      const own = [0, 1].map((axis) => {
        const along = axis === 0 ? leaf.section.x : leaf.section.y;
        return [0, 1, 2].reduce(
          (sum, i) => sum + ((place[i] ?? 0) - (leaf.section.origin[i] ?? 0)) * (along[i] ?? 0),
          0,
        );
      });
      const off = drawn.map(([a, b]) => Math.hypot(a - (own[0] ?? 0), b - (own[1] ?? 0)));
      expect(Math.min(...off)).toBeLessThan(1e-6);
    }
  });

  test("names every size of a rule joint, and of square edges those there are", () => {
    const names = ({ piece, leaf }: ReturnType<typeof table>) =>
      leafSection(piece, leaf, { ...asked, swing: deg(0) })
        .dimensions.map(({ id }) => id.replace("joint.", ""))
        .sort();
    const square = ["pin-height", "pin-out", "set-out", "thickness"];
    const rule = ["bevel", "cove", "fillet", "lip", "round-over"];
    expect(names(table())).toEqual([...square, ...rule].sort());
    expect(names(table({ answers: { joint: "square edges" } }))).toEqual(square);
  });
});

describe("where the pin may stand", () => {
  const inside = (region: readonly Point[], [x, y]: Point): boolean =>
    region.reduce((isIn, [x0, y0], i) => {
      const [x1, y1] = region[(i + 1) % region.length] ?? [x0, y0];
      const meets = y0 <= y !== y1 <= y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0);
      return meets ? !isIn : isIn;
    }, false);

  test("its corners are the last places that free the leaf, seen from the pin", () => {
    const { leaf } = table();
    const [joint, region] = [sectionOf(leaf), pinRegion(leaf)];
    if (!joint || !region) throw new Error("a rule joint has a region");
    const up = 19 - 12.7 - 3.1;
    const [x, y] = [0.4, 3.2];
    // No farther than 3 mm is tried.
    const found = region.filter(([a, b]) => Math.hypot(a - x, b - y) < 2.99);
    expect(found.length).toBeGreaterThan(region.length / 2);
    const gaps = found.map(([a, b]) =>
      [0.98, 1.05].map((share) =>
        pinClearance(joint, mm(x + share * (a - x)), mm(y - up + share * (b - y))),
      ),
    );
    for (const [within = -1, beyond = 1] of gaps) {
      expect(within).toBeGreaterThan(0);
      expect(beyond).toBeLessThan(0);
    }
  });

  test("a pin where the leaf binds lies without it, and every place in it is free by a sweep", () => {
    const { leaf } = table({ overrides: { "table/leaf-joint.pin-out": "-0.8 mm" } });
    const region = pinRegion(leaf);
    const joint = sectionOf(leaf);
    if (!region || !joint) throw new Error("no place frees it");
    expect(tightPlace(leaf)?.isBinding).toBe(true);
    expect(inside(region, [-0.8, 3.2])).toBe(false);
    const middle = [0, 1].map(
      (axis) => region.reduce((sum, p) => sum + (p[axis] ?? 0), 0) / region.length,
    );
    const moved = { ...joint, pinOut: mm(middle[0] ?? 0), pinUp: mm((middle[1] ?? 0) - 3.2) };
    expect(sweptJoint(moved).firstContact).toBeUndefined();
  });

  test("whether it binds is what brute force finds, wherever the pin is", () => {
    fc.assert(
      fc.property(fc.integer({ min: -15, max: 20 }), (tenths) => {
        const { leaf } = table({ overrides: { "table/leaf-joint.pin-out": `${tenths / 10} mm` } });
        const joint = sectionOf(leaf);
        if (!joint) throw new Error("a rule joint has a section");
        const swept = sweptJoint(joint);
        if (Math.abs(swept.gap) < 0.01) return;
        expect(tightPlace(leaf)?.isBinding).toBe(swept.gap < 0);
      }),
      { numRuns: 12 },
    );
  });
});
