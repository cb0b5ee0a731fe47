import { describe, expect, test } from "vitest";
import { type Frame, frameOf } from "../../src/geometry/index.ts";
import { createSolids, type Outlines, sidesFor } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";
import { bore, home, partOf, squareHaunch, tenon, turned } from "./samples.ts";

const solids = createSolids(kernel);

const areaOf = (outline: Outlines[number]): number =>
  outline.reduce((sum, [x, y], i) => {
    const [u = Number.NaN, v = Number.NaN] = outline[(i + 1) % outline.length] ?? [];
    return sum + (x * v - u * y) / 2;
  }, 0);

/** Corners without their order, rounded as the kernel's plane outlines are. */
const corners = (outline: Outlines[number] | undefined) =>
  (outline ?? [])
    .map(([x, y]) => [x, y].map((n) => Math.round(n * 1e6) / 1e6 + 0).join(" "))
    .sort();

const level = (z: number): Frame => frameOf([0, 0, z], [1, 0, 0], [0, 1, 0]);
/** Square to the grain, seen from the right end: y to the right, z up. */
const across = (x: number): Frame => frameOf([x, 0, 0], [0, 1, 0], [0, 0, 1]);

describe("sections", () => {
  test("of a box, its rectangle, counter-clockwise", () => {
    const [section] = solids.sections([partOf([540, 100, 20])], level(7));
    expect(section?.key).toBe("test/part");
    expect(section?.outlines).toHaveLength(1);
    expect(corners(section?.outlines[0])).toEqual(["0 0", "0 100", "540 0", "540 100"]);
    expect(section?.outlines.map(areaOf)[0]).toBeCloseTo(540 * 100, 4);
  });

  test("of a turned and lifted box, in the plane's own coordinates", () => {
    const part = partOf([540, 100, 20], [], { pose: turned(90, [100, 0, 50]) });
    const [section] = solids.sections([part], frameOf([0, 0, 60], [0, 1, 0], [-1, 0, 0]));
    expect(corners(section?.outlines[0])).toEqual(["0 -100", "0 0", "540 -100", "540 0"]);
    expect(solids.sections([part], level(49))).toEqual([]);
    expect(solids.sections([part], level(71))).toEqual([]);
  });

  test("a box turned by 45° is cut at its width times √2", () => {
    const part = partOf([540, 100, 20], [], { pose: turned(45) });
    const [section] = solids.sections([part], frameOf([0, 200, 0], [1, 0, 0], [0, 0, 1]));
    const xs = (section?.outlines[0] ?? []).map(([x]) => x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(100 * Math.SQRT2, 6);
  });

  test("through a tenon, a haunch, and the rail", () => {
    const part = partOf([540, 100, 20], [tenon({ haunch: squareHaunch })]);
    const cut = (x: number) => corners(solids.sections([part], across(x))[0]?.outlines[0]);
    expect(cut(530)).toEqual(["15 13", "15 6", "80 13", "80 6"]);
    expect(cut(515)).toEqual(["100 13", "100 6", "15 13", "15 6"]);
    expect(cut(300)).toEqual(["0 0", "0 20", "100 0", "100 20"]);
  });

  test("a hole runs the other way about", () => {
    const part = partOf(
      [540, 100, 20],
      [bore({ from: [50, 40, 20], along: [0, 0, -1], depth: mm(20), isThrough: true })],
    );
    const [section] = solids.sections([part], level(10));
    const areas = section?.outlines.map(areaOf).sort((a, b) => a - b) ?? [];
    const sides = sidesFor(4);
    expect(areas).toHaveLength(2);
    expect(areas[0]).toBeCloseTo((-sides / 2) * 16 * Math.sin((2 * Math.PI) / sides), 5);
    expect(areas[1]).toBeCloseTo(540 * 100, 4);
  });

  test("a face in the plane is cut when its wood is on the plane's z side", () => {
    expect(solids.sections([partOf([540, 100, 20])], level(0))).toHaveLength(1);
    expect(solids.sections([partOf([540, 100, 20])], level(20))).toEqual([]);
  });

  test("of several parts, those that are cut", () => {
    const parts = [0, 100, 10].map((z, i) =>
      partOf([540, 100, 20], [], { key: `p${i}`, pose: turned(0, [0, 0, z]) }),
    );
    expect(solids.sections(parts, level(15)).map(({ key }) => key)).toEqual(["p0", "p2"]);
  });
});

describe("outlines", () => {
  test("of a rail with a tenon, seen from the show face and from its end", () => {
    const part = partOf([540, 100, 20], [tenon()]);
    expect(corners(solids.outline(part, home)[0])).toEqual(
      ["0 0", "0 100", "510 0", "510 15", "540 15", "540 80", "510 80", "510 100"].sort(),
    );
    expect(corners(solids.outline(part, across(0))[0])).toEqual(["0 0", "0 20", "100 0", "100 20"]);
  });

  test("of a mirrored one, the mirror, and counter-clockwise still", () => {
    const part = partOf([540, 100, 20], [tenon()], { isMirrored: true });
    const [outline, ...more] = solids.outline(part, home);
    expect(more).toEqual([]);
    expect(corners(outline)).toContain("540 20");
    expect(corners(outline)).toContain("540 85");
    expect(outline && areaOf(outline)).toBeCloseTo(510 * 100 + 30 * 65, 4);
  });

  test("from behind, and of a posed part", () => {
    const part = partOf([540, 100, 20], [], { pose: turned(90, [100, 20, 300]) });
    const front = frameOf([0, 0, 0], [1, 0, 0], [0, 0, 1]);
    expect(corners(solids.outline(part, front)[0])).toEqual([
      "0 300",
      "0 320",
      "100 300",
      "100 320",
    ]);
    const behind = frameOf([0, 0, 0], [-1, 0, 0], [0, 0, 1]);
    expect(corners(solids.outline(part, behind)[0])).toEqual([
      "-100 300",
      "-100 320",
      "0 300",
      "0 320",
    ]);
  });

  test("a bore that one looks through is a hole, one that one looks across is not", () => {
    const part = partOf([540, 100, 20], [bore({ depth: mm(100), isThrough: true })]);
    expect(solids.outline(part, home)).toHaveLength(1);
    expect(solids.outline(part, frameOf([0, 0, 0], [1, 0, 0], [0, 0, 1]))).toHaveLength(2);
  });
});
