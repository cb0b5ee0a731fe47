import { createRequire } from "node:module";
import { WebIO } from "@gltf-transform/core";
import { describe, expect, test } from "vitest";
import { frameOf } from "../../src/geometry/index.ts";
import { createSolids, type GlbPart, writeGlb } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";
import { bore, mortise, partOf, slot, squareHaunch, tenon, turned } from "./samples.ts";

type Report = {
  readonly issues: {
    readonly numErrors: number;
    readonly numWarnings: number;
    readonly messages: readonly unknown[];
  };
  readonly info: { readonly totalTriangleCount: number; readonly materialCount: number };
};
// It comes without types.
const { validateBytes } = createRequire(import.meta.url)("gltf-validator") as {
  validateBytes: (bytes: Uint8Array) => Promise<Report>;
};

const solids = createSolids(kernel);
const oak = { name: "demo oak", colour: "#c8a068" };
const ash = { name: "demo ash", colour: "#ffffff" };

const leg = partOf([700, 45, 45], [mortise("show", { haunch: squareHaunch })], {
  mark: "A1",
  name: "leg, front left",
  // Upright: along the grain from the top down.
  pose: frameOf([10, 20, 700], [0, 0, -1], [1, 0, 0]),
});
const rail = partOf([540, 100, 20], [tenon(), bore(), slot({ x: mm(200) })], {
  mark: "B1",
  name: "rail, “long” ½",
  pose: turned(33, [45, 20, 600]),
});
const items: readonly GlbPart[] = [
  { part: leg, solid: solids.of(leg), timber: oak },
  { part: { ...leg, mark: "A2" }, solid: solids.of(leg), timber: oak },
  ...[rail, { ...rail, isMirrored: true, mark: "B2" }].map((part) => ({
    ...{ part, timber: ash },
    solid: solids.of(part),
  })),
];

describe("a binary glTF", () => {
  test("is found without fault by the format's own validator", async () => {
    const report = await validateBytes(await writeGlb(items));
    expect(report.issues.messages).toEqual([]);
    expect([report.issues.numErrors, report.issues.numWarnings]).toEqual([0, 0]);
    // Each mesh once, however many parts share it.
    const shapes = [...new Set(items.map(({ solid }) => solid))];
    const triangles = shapes.reduce((sum, { triangles }) => sum + triangles.length / 3, 0);
    expect(report.info.totalTriangleCount).toBe(triangles);
    expect(report.info.materialCount).toBe(2);
  });

  test("the validator does find faults", async () => {
    const bytes = await writeGlb(items);
    // Noughts in the middle of it, among corners and directions.
    const broken = bytes.map((byte, i) =>
      i > bytes.length / 2 && i < bytes.length / 2 + 400 ? 0 : byte,
    );
    const report = await validateBytes(broken);
    expect(report.issues.numErrors).toBeGreaterThan(0);
  });

  test("has a node for each part, by mark and name, and a mesh for each shape", async () => {
    const read = (await new WebIO().readBinary(await writeGlb(items))).getRoot();
    expect(read.listNodes().map((node) => node.getName())).toEqual([
      "A1 leg, front left",
      "A2 leg, front left",
      "B1 rail, “long” ½",
      "B2 rail, “long” ½",
    ]);
    expect(read.listMeshes()).toHaveLength(3);
    expect(read.listMaterials().map((one) => one.getName())).toEqual(["demo oak", "demo ash"]);
    expect(read.listMaterials()[1]?.getBaseColorFactor()).toEqual([1, 1, 1, 1]);
    // 0xc8 is 0.784 of full as written, 0.578 as shone.
    expect(read.listMaterials()[0]?.getBaseColorFactor()[0]).toBeCloseTo(0.5776, 4);
  });

  test("stands upright, in metres, y up and the viewer at z", async () => {
    const read = (await new WebIO().readBinary(await writeGlb(items))).getRoot();
    const [node] = read.listNodes();
    const points = node?.getMesh()?.listPrimitives()[0]?.getAttribute("POSITION");
    const m = node?.getWorldMatrix();
    if (!points || !m) throw new Error("the leg is missing");
    const all = Array.from({ length: points.getCount() }, (_, i) => {
      const [x = 0, y = 0, z = 0] = points.getElement(i, []);
      return [0, 1, 2].map((row) => {
        const [a, b, c, d] = [m[row] ?? 0, m[4 + row] ?? 0, m[8 + row] ?? 0, m[12 + row] ?? 0];
        return a * x + b * y + c * z + d;
      });
    });
    const span = (axis: number) => {
      const values = all.map((p) => p[axis] ?? Number.NaN);
      return [Math.min(...values), Math.max(...values)].map((n) => Math.round(n * 1e6) / 1e6);
    };
    // In the piece: 10 to 55 to the right, 20 to −25 away, 0 to 700 up.
    expect([span(0), span(1), span(2)]).toEqual([
      [0.01, 0.055],
      [0, 0.7],
      [-0.02, 0.025],
    ]);
  });

  test("is the same twice", async () => {
    expect(await writeGlb(items)).toEqual(await writeGlb(items));
  });

  test("a colour must be written as one", async () => {
    const [first] = items;
    if (!first) throw new Error("no part");
    const wrong = writeGlb([{ ...first, timber: { name: "x", colour: "brown" } }]);
    await expect(wrong).rejects.toThrow("#rrggbb");
  });
});
