import { describe, expect, test } from "vitest";
import { cross, dot, minus, norm, type Vec3 } from "../../src/geometry/index.ts";
import { type Cut, cutsOfPart, type Feature, faces } from "../../src/piece/index.ts";
import { solidOf } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";
import {
  bore,
  mortise,
  partOf,
  type Size,
  slopedHaunch,
  slot,
  squareHaunch,
  tenon,
} from "./samples.ts";

const size: Size = [540, 100, 20];
const longFaces = faces.filter((face) => face !== "left" && face !== "right");
const haunches = [undefined, squareHaunch, slopedHaunch];
const ends = ["left", "right"] as const;

const features: readonly (readonly [string, Feature])[] = [
  ...ends.flatMap((end) =>
    haunches.flatMap((haunch) =>
      [false, true].map((isMitred): [string, Feature] => [
        `tenon ${end}, ${haunch?.length} ${haunch?.isSloped}, mitred ${isMitred}`,
        tenon({ end, haunch, isMitred }),
      ]),
    ),
  ),
  ...longFaces.flatMap((face) =>
    haunches.map((haunch): [string, Feature] => [
      `mortise ${face}, ${haunch?.length} ${haunch?.isSloped}`,
      mortise(face, { haunch, depth: mm(9), across: [mm(6), mm(14)] }),
    ]),
  ),
  ...longFaces.map((face): [string, Feature] => [
    `taper ${face}`,
    { feature: "taper", key: "taper", face, from: mm(100), depth: mm(8) },
  ]),
  ...ends.flatMap((end): [string, Feature][] => [
    [`bevel ${end}`, { feature: "bevel", key: "bevel", end, run: mm(12) }],
    ...(["show", "back"] as const).map((face): [string, Feature] => [
      `rebate ${end} ${face}`,
      { feature: "rebate", key: "rebate", end, face, length: mm(25), depth: mm(7) },
    ]),
  ]),
  ["bore", bore()],
  ["bore through, aslant", bore({ along: [0.6, 0.8, 0], depth: mm(125), isThrough: true })],
  ["slot along", slot()],
  ["slot through", slot({ runs: "through", travel: mm(4) })],
];

const turns = (cut: Cut & { cut: "prism" }): readonly number[] =>
  cut.outline.map((_, i) => {
    const at = (k: number): Vec3 => {
      const [x = Number.NaN, y = Number.NaN] = cut.outline[(i + k) % cut.outline.length] ?? [];
      return [x, y, 0];
    };
    return cross(minus(at(1), at(0)), minus(at(2), at(1)))[2];
  });

describe("what a feature takes away is drawn as the kernel needs it", () => {
  test.each(features)("%s", (_, feature) => {
    const cuts = cutsOfPart(partOf(size, [feature]));
    expect(cuts.length).toBeGreaterThan(0);
    for (const cut of cuts) {
      if (cut.cut === "half-space") expect(norm(cut.away)).toBeCloseTo(1, 12);
      else expect(cut.depth).toBeGreaterThan(0);
      if (cut.cut === "bore" || cut.cut === "sweep") expect(norm(cut.along)).toBeCloseTo(1, 12);
      if (cut.cut === "sweep") expect(dot(cut.along, minus(cut.to, cut.from))).toBeCloseTo(0, 12);
      if (cut.cut !== "prism") continue;
      const { x, y, z } = cut.frame;
      expect([norm(x), norm(y), norm(z)]).toEqual([1, 1, 1]);
      expect(dot(cross(x, y), z)).toBe(1);
      // Every corner turns to the left, and all of them together once about.
      for (const turn of turns(cut)) expect(turn).toBeGreaterThan(0);
      expect(cut.outline.length).toBeLessThan(5);
    }
  });
});

describe("a cut that cannot be made is a fault of ours, told with the part", () => {
  test.each<[string, Feature]>([
    ["no depth", bore({ depth: mm(-8) })],
    ["no radius", bore({ diameter: mm(0) })],
    ["not a number", { ...bore(), from: [Number.NaN, 0, 0] }],
    ["no direction", { ...bore(), along: [0, 0, 0] }],
    ["inside out", mortise("show", { across: [mm(14), mm(6)] })],
    ["flat", mortise("show", { x: [mm(14), mm(14)] })],
  ])("%s", (_, feature) => {
    expect(() => solidOf(kernel, partOf(size, [feature]))).toThrow("test/part");
  });

  test("wood that is all cut away is a problem of the input", () => {
    const all: Feature = {
      feature: "rebate",
      key: "r",
      end: "left",
      face: "show",
      length: mm(600),
      depth: mm(20),
    };
    expect(() => solidOf(kernel, partOf(size, [all]))).toThrow(
      expect.objectContaining({ code: "nothing-left", place: "test/part" }),
    );
  });
});
