import { describe, expect, test } from "vitest";
import type { Part } from "../../src/piece/index.ts";
import { shapeKey } from "../../src/piece/index.ts";
import { createSolids, solidOf } from "../../src/solid/index.ts";
import { withKernel } from "../../src/solid/kernel.ts";
import { mm } from "../../src/units/index.ts";
import { expectSound, kernel } from "../kit/solids.ts";
import { bore, mortise, partOf, slot, squareHaunch, tenon, turned } from "./samples.ts";

const rail = partOf([540, 100, 20], [tenon({ haunch: squareHaunch }), bore(), slot()]);
const longer = (part: Part, by: number): Part => ({
  ...part,
  blank: { ...part.blank, length: mm(part.blank.length + by) },
});

describe("the key of a shape", () => {
  test("leaves out what does not shape it", () => {
    const other = { ...rail, key: "x", mark: "Z9", name: "n", pose: turned(30, [1, 2, 3]) };
    expect(shapeKey(other)).toBe(shapeKey(rail));
    // Nor does it matter what a cut was called.
    const renamed = { ...rail, features: rail.features.map((f) => ({ ...f, key: "other" })) };
    expect(shapeKey(renamed)).toBe(shapeKey(rail));
  });

  test("tells apart hands, and every dimension", () => {
    const shapes: readonly Part[] = [
      rail,
      { ...rail, isMirrored: true },
      longer(rail, 0.00001),
      partOf([540, 100, 20]),
      partOf([100, 540, 20]),
      partOf([540, 100, 20], [tenon()]),
      partOf([540, 100, 20], [tenon({ end: "left" })]),
      partOf([540, 100, 20], [tenon({ length: mm(30.00001) })]),
      partOf([540, 100, 20], [bore()]),
      partOf([540, 100, 20], [bore({ diameter: mm(8.1) })]),
      partOf([540, 100, 20], [bore({ along: [0, 0.8, 0.6] })]),
      partOf([540, 100, 20], [slot()]),
      partOf([540, 100, 20], [slot({ runs: "through" })]),
      ...[8, 8.00001].map((depth) =>
        partOf(
          [700, 45, 45],
          [{ feature: "taper", key: "t", face: "show", from: mm(100), depth: mm(depth) }],
        ),
      ),
    ];
    expect(new Set(shapes.map(shapeKey)).size).toBe(shapes.length);
  });

  test("is not upset by rounding or by a nought's sign", () => {
    expect(shapeKey(longer(rail, 1e-9))).toBe(shapeKey(rail));
    const [plus, minus] = [0, -0].map((x) => partOf([540, 100, 20], [bore({ from: [50, x, 10] })]));
    expect(plus && shapeKey(plus)).toBe(minus && shapeKey(minus));
  });

  test("is short", () => {
    const four = (["show", "back", "upper", "lower"] as const).map((face) => mortise(face));
    expect(shapeKey(partOf([700, 45, 45], four)).length).toBeLessThan(400);
  });
});

describe("the store of shapes", () => {
  test("equal shapes are one object, and are built once", () => {
    const solids = createSolids(kernel);
    const first = solids.of(rail);
    const elsewhere: Part = { ...rail, key: "other", pose: turned(45) };
    expect(solids.of(elsewhere)).toBe(first);
    expect(solids.of({ ...rail, isMirrored: true })).not.toBe(first);
    expect(solids.counts()).toEqual({ held: 2, built: 2 });
    solids.free();
  });

  test("it gives what is built without it", () => {
    const solids = createSolids(kernel);
    expect(solids.of(rail)).toEqual(solidOf(kernel, rail));
    expectSound(solids.of(rail), rail);
    solids.free();
  });

  test("a changed dimension rebuilds only the parts it shapes", () => {
    const solids = createSolids(kernel);
    const leg = partOf([700, 45, 45], [mortise("show")], { key: "leg" });
    for (const part of [leg, rail]) solids.of(part);
    for (const part of [leg, longer(rail, 10)]) solids.of(part);
    expect(solids.counts().built).toBe(3);
    solids.free();
  });

  test("what is longest unused goes first", () => {
    const solids = createSolids(kernel, 2);
    const [a, b, c] = [0, 1, 2].map((by) => longer(rail, by)) as [Part, Part, Part];
    const first = solids.of(a);
    solids.of(b);
    solids.of(a);
    solids.of(c);
    expect(solids.counts()).toEqual({ held: 2, built: 3 });
    expect(solids.of(a)).toBe(first);
    solids.of(b);
    expect(solids.counts()).toEqual({ held: 2, built: 4 });
    // Data that is out stays good after its shape is dropped.
    solids.free();
    expect(solids.counts().held).toBe(0);
    expectSound(first, a);
  });

  test("parts are compared even when it cannot hold two of them at a time", () => {
    const solids = createSolids(kernel, 1);
    const parts = [0, 1, 2].map((by) => ({ ...longer(rail, by), key: `p${by}` }));
    const roomy = createSolids(kernel);
    const found = solids.interference(parts);
    expect(found).toHaveLength(3);
    expect(found).toEqual(roomy.interference(parts));
    expect(solids.counts().held).toBe(1);
    for (const store of [solids, roomy]) store.free();
  });

  test("a part that cannot be built is not held, nor in the way of others", () => {
    const solids = createSolids(kernel);
    const bad = partOf([540, 100, 20], [bore({ diameter: mm(0) })]);
    expect(() => solids.of(bad)).toThrow("test/part");
    expect(() => solids.of(bad)).toThrow("test/part");
    solids.of(rail);
    expect(solids.counts()).toEqual({ held: 1, built: 1 });
    solids.free();
  });
});

describe("a scope", () => {
  const counted = () => {
    const thing = {
      freed: 0,
      delete: () => {
        thing.freed += 1;
      },
    };
    return thing;
  };

  test("frees what it kept, once, also when the work throws", () => {
    const [a, b] = [counted(), counted()];
    expect(withKernel(kernel, ({ keep }) => keep(keep(a)) === a)).toBe(true);
    expect(() =>
      withKernel(kernel, ({ keep }) => {
        keep(b);
        throw new Error("planted");
      }),
    ).toThrow("planted");
    expect([a.freed, b.freed]).toEqual([1, 1]);
  });

  test("does not free what was handed out, and hands out only its own", () => {
    const a = counted();
    withKernel(kernel, ({ keep, handOut }) => handOut(keep(a)));
    expect(a.freed).toBe(0);
    expect(() => withKernel(kernel, ({ handOut }) => handOut(a))).toThrow();
  });
});
