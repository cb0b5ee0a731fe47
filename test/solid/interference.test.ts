import { describe, expect, test } from "vitest";
import { type Frame, frameOf, outOf, turnedOut } from "../../src/geometry/index.ts";
import { createSolids, LEAST_CLASH } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";
import { home, mortise, partOf, slopedHaunch, squareHaunch, tenon, turned } from "./samples.ts";

const solids = createSolids(kernel);

/** A frame within another one, as the outer world sees it. */
const within = (outer: Frame, inner: Frame): Frame => ({
  origin: outOf(outer, inner.origin),
  x: turnedOut(outer, inner.x),
  y: turnedOut(outer, inner.y),
  z: turnedOut(outer, inner.z),
});

const tipped = (deg: number): Frame => {
  const angle = (deg * Math.PI) / 180;
  return frameOf([7, -3, 11], [1, 0, 0], [0, Math.cos(angle), Math.sin(angle)]);
};

const poses: readonly (readonly [string, Frame])[] = [
  ["as drawn", home],
  ["a quarter turn", turned(90, [10, 20, 30])],
  ["an eighth turn", turned(45, [-100, 3, 0.1])],
  ["two eighth turns, about two axes", within(tipped(45), turned(45, [1, 2, 3]))],
  ["by odd angles, far away", within(tipped(33.3), turned(-61, [1500, 1234.5, 800]))],
];

const at = (x: number, y: number, z: number): Frame => frameOf([x, y, z], [1, 0, 0], [0, 1, 0]);

describe.each(poses)("%s", (_, pose) => {
  const placed = (key: string, inner: Frame) =>
    partOf([100, 50, 30], [], { key, pose: within(pose, inner) });

  test("two boxes share the box they share", () => {
    const found = solids.interference([placed("a", at(0, 0, 0)), placed("b", at(90, 30, 25))]);
    expect(found).toHaveLength(1);
    expect([found[0]?.a, found[0]?.b]).toEqual(["a", "b"]);
    expect(found[0]?.volume).toBeCloseTo(10 * 20 * 5, 6);
  });

  test("flush faces share nothing", () => {
    const a = placed("a", at(0, 0, 0));
    const beside = [at(100, 0, 0), at(0, 50, 0), at(0, 0, 30), at(100, 50, 30), at(20, 11, -30)];
    for (const b of beside) expect(solids.interference([a, placed("b", b)])).toEqual([]);
  });

  test.each([
    ["none", undefined],
    ["square", squareHaunch],
    ["sloped", slopedHaunch],
  ])("a tenon fills its mortise, haunch %s", (_, haunch) => {
    const leg = partOf([700, 45, 45], [mortise("show", { haunch })], { key: "leg", pose });
    // Rail's length out of the leg's show face, its upper edge towards the leg's left end.
    const rail = (deeper: number) =>
      partOf([300, 100, 20], [tenon({ end: "left", length: mm(13), z: [mm(6), mm(15)], haunch })], {
        key: "rail",
        pose: within(pose, frameOf([100, 29, 32 - deeper], [0, 0, 1], [-1, 0, 0])),
      });
    expect(solids.interference([leg, rail(0)])).toEqual([]);
    // Driven in too far, shoulders, tip and haunch press: all of the rail's section between them.
    const [clash, ...more] = solids.interference([leg, rail(0.1)]);
    expect(more).toEqual([]);
    expect(clash?.volume).toBeCloseTo(100 * 20 * 0.1, 6);
    // Drawn out, it has play.
    expect(solids.interference([leg, rail(-0.1)])).toEqual([]);
  });
});

test("where they clash is told in the piece", () => {
  const a = partOf([100, 50, 30], [], { key: "a", pose: turned(90, [200, 0, 0]) });
  const b = partOf([100, 50, 30], [], { key: "b", pose: at(140, 95, 10) });
  // The first one stands from 150 to 200 across and from 0 to 100 away.
  const [clash] = solids.interference([a, b]);
  expect(clash?.volume).toBeCloseTo(50 * 5 * 20, 6);
  const round = (p?: readonly number[]) => p?.map((n) => Math.round(n * 1e6) / 1e6);
  expect(round(clash?.bounds.from)).toEqual([150, 95, 10]);
  expect(round(clash?.bounds.to)).toEqual([200, 100, 30]);
});

test("every pair is looked at, in the order of the parts; a mirrored one as it lies", () => {
  const rebate = { feature: "taper", key: "t", face: "upper", from: mm(0), depth: mm(49) } as const;
  const part = (key: string, isMirrored: boolean) =>
    partOf([100, 50, 30], [rebate], { key, isMirrored, pose: home });
  const found = solids.interference([part("a", false), part("b", true), part("c", false)]);
  expect(found.map(({ a, b }) => `${a} ${b}`)).toEqual(["a b", "a c", "b c"]);
  // At x they are 50 − 0.49·x high, from opposite edges, so 50 − 0.98·x of it is shared.
  const wedge = 100 * 30 * (50 - 49 / 2);
  const shared = (30 * 50 * (50 / 0.98)) / 2;
  expect(found[1]?.volume).toBeCloseTo(wedge, 6);
  expect(found[0]?.volume).toBeCloseTo(shared, 6);
});

test("how little is told can be said", () => {
  const parts = [at(0, 0, 0), at(0, 0, 29.9)].map((pose, i) =>
    partOf([100, 50, 30], [], { key: `p${i}`, pose }),
  );
  expect(solids.interference(parts)).toHaveLength(1);
  expect(solids.interference(parts, { least: 501 })).toEqual([]);
  expect(solids.interference(parts, { least: 499 })).toHaveLength(1);
  expect(LEAST_CLASH).toBeLessThan(0.01);
});
