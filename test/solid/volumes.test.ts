import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Feature, mirrored, type Part } from "../../src/piece/index.ts";
import { CHORD, LEAST_SIDES, sidesFor, solidOf } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { expectNear } from "../kit/near.ts";
import { between } from "../kit/sizes.ts";
import { expectSameCorners, expectSound, kernel } from "../kit/solids.ts";
import { bore, mortise, partOf, slopedHaunch, slot, squareHaunch, tenon } from "./samples.ts";

/** Builds a part, expects it to be sound and of a volume worked out by hand. */
function expectVolume(part: Part, volume: number) {
  const solid = solidOf(kernel, part);
  expectSound(solid, part);
  expectNear(solid.volume, volume);
  return solid;
}

const polygon = (sides: number, radius: number) =>
  (sides / 2) * radius ** 2 * Math.sin((2 * Math.PI) / sides);

describe("volumes by hand", () => {
  test("a box", () => {
    const solid = expectVolume(partOf([540, 100, 20]), 540 * 100 * 20);
    expect(solid.area).toBeCloseTo(2 * (540 * 100 + 540 * 20 + 100 * 20), 6);
    expect(solid.centre.map((n) => Math.round(n * 1e9) / 1e9)).toEqual([270, 50, 10]);
    expect(solid.triangles).toHaveLength(36);
  });

  test("a through bore: a polygon's area, less than its circle's but not by much", () => {
    const through = bore({ depth: mm(100), isThrough: true });
    const sides = sidesFor(4);
    const solid = expectVolume(
      partOf([540, 100, 20], [through]),
      540 * 100 * 20 - 100 * polygon(sides, 4),
    );
    const gone = 540 * 100 * 20 - solid.volume;
    expect(gone).toBeLessThan(100 * Math.PI * 4 ** 2);
    expect(gone).toBeGreaterThan(100 * Math.PI * (4 - CHORD) ** 2);
  });

  test("a blind bore, and one aslant that leaves by the far edge", () => {
    expectVolume(partOf([540, 100, 20], [bore()]), 540 * 100 * 20 - 40 * polygon(sidesFor(4), 4));
    const aslant = bore({
      from: [50, 0, 10],
      along: [0.6, 0.8, 0],
      depth: mm(125),
      isThrough: true,
    });
    // As long as its middle line between two edges that are parallel, whatever its ends' slant.
    expectVolume(partOf([540, 100, 20], [aslant]), 540 * 100 * 20 - 125 * polygon(sidesFor(4), 4));
  });

  test("a taper: a box less a wedge", () => {
    const taper = (face: "show" | "lower"): Feature => ({
      ...{ feature: "taper", key: face, face },
      from: mm(120),
      depth: mm(9),
    });
    const wedge = ((700 - 120) * 9) / 2;
    expectVolume(partOf([700, 45, 40], [taper("show")]), 700 * 45 * 40 - wedge * 45);
    // Two of them share a pyramid at the corner, 9 square at its foot.
    expectVolume(
      partOf([700, 45, 40], [taper("show"), taper("lower")]),
      700 * 45 * 40 - wedge * 45 - wedge * 40 + ((700 - 120) * 9 * 9) / 3,
    );
  });

  test("a bevel and a rebate", () => {
    const bevel: Feature = { feature: "bevel", key: "b", end: "left", run: mm(12) };
    const rebate: Feature = {
      feature: "rebate",
      key: "r",
      end: "right",
      face: "back",
      length: mm(25),
      depth: mm(7),
    };
    expectVolume(partOf([540, 100, 20], [bevel]), 540 * 100 * 20 - (12 * 20 * 100) / 2);
    expectVolume(partOf([540, 100, 20], [rebate]), 540 * 100 * 20 - 25 * 7 * 100);
  });

  test.each(["along", "through"] as const)("a screw slot that runs %s: two stadiums", (runs) => {
    const travel = runs === "along" ? 9 : 4;
    const stadium = (radius: number) => polygon(sidesFor(radius), radius) + 2 * radius * travel;
    expectVolume(
      partOf([540, 60, 20], [slot({ runs, travel: mm(travel) })]),
      540 * 60 * 20 - 48 * stadium(2.5) - 12 * stadium(5),
    );
  });

  test("a slot in which the screw may not move is a bore", () => {
    const gone = 48 * polygon(sidesFor(2.5), 2.5) + 12 * polygon(sidesFor(5), 5);
    expectVolume(partOf([540, 60, 20], [slot({ travel: mm(0) })]), 540 * 60 * 20 - gone);
  });
});

const haunches = [
  ["none", undefined, 0],
  ["square", squareHaunch, 8 * 20],
  ["sloped", slopedHaunch, (8 * 20) / 2],
] as const;

describe("a rail's tenons", () => {
  const body = 480 * 100 * 20;
  const one = 30 * 65 * 7;
  const mitre = (65 * 7 * 7) / 2;

  test.each(haunches)("haunch %s", (_, haunch, area) => {
    for (const isMitred of [false, true]) {
      const each = one + area * 7 - (isMitred ? mitre : 0);
      const [left, right] = (["left", "right"] as const).map((end) =>
        tenon({ end, haunch, isMitred }),
      ) as [Feature, Feature];
      expectVolume(partOf([540, 100, 20], [left, right]), body + 2 * each);
      const atLeft = expectVolume(partOf([540, 100, 20], [left]), body + 30 * 100 * 20 + each);
      const atRight = expectVolume(partOf([540, 100, 20], [right]), body + 30 * 100 * 20 + each);
      expectSameCorners(atLeft, atRight, ([x, y, z]) => [540 - x, y, z]);
    }
  });

  test("a tenon as wide and thick as its rail has no shoulders to saw", () => {
    const flush = tenon({ y: [mm(0), mm(100)], z: [mm(0), mm(20)] });
    expectVolume(partOf([540, 100, 20], [flush]), 540 * 100 * 20);
  });
});

test.each(haunches)("a leg with a mortise in each long face, haunch %s", (_, haunch, area) => {
  const four = (["show", "back", "upper", "lower"] as const).map((face) =>
    mortise(face, { haunch }),
  );
  // The socket is as deep as the haunch is long, and runs 20 from the mortise to the left end.
  const gone = 65 * 9 * 13 + area * 9;
  expectVolume(partOf([700, 45, 45], four), 700 * 45 * 45 - 4 * gone);
  for (const one of four) expectVolume(partOf([700, 45, 45], [one]), 700 * 45 * 45 - gone);
});

describe("a mirrored part", () => {
  const rail: readonly Feature[] = [
    tenon({ end: "left", haunch: slopedHaunch, isMitred: true }),
    tenon({ haunch: squareHaunch }),
    slot({ x: mm(200) }),
    bore({ from: [300, 0, 6], along: [0.6, 0.8, 0] }),
    { feature: "taper", key: "t", face: "upper", from: mm(200), depth: mm(3) },
  ];

  test("is the reflection of its twin, right side out", () => {
    const part = partOf([540, 100, 20], rail);
    const twin = { ...part, isMirrored: true };
    const [drawn, other] = [solidOf(kernel, part), solidOf(kernel, twin)];
    expectSound(drawn, part);
    expectSound(other, twin);
    expectNear(other.volume, drawn.volume, 1e-12);
    expectNear(other.area, drawn.area, 1e-12);
    expect(other.edges).toHaveLength(drawn.edges.length);
    expectSameCorners(drawn, other, (p) => mirrored(twin, p));
    expect(() => expectSameCorners(drawn, other, (p) => p)).toThrow();
  });
});

test("any rail with two tenons is sound and of the volume that sums say", () => {
  const sizes = fc.record({
    length: between(2, 60),
    low: between(0, 30),
    high: between(60, 99),
    back: between(0, 8),
    show: between(12, 20),
    haunch: fc.constantFrom(undefined, true, false),
  });
  fc.assert(
    fc.property(sizes, sizes, (left, right) => {
      const made = [left, right].map((of, i): [Feature, number] => {
        const reach = of.length / 3;
        const haunch =
          of.haunch === undefined ? undefined : { length: mm(reach), isSloped: of.haunch };
        const beside =
          of.haunch === undefined ? 0 : reach * (100 - of.high) * (of.haunch ? 0.5 : 1);
        return [
          tenon({
            ...{ end: i === 0 ? "left" : "right", length: mm(of.length), haunch },
            y: [mm(of.low), mm(of.high)],
            z: [mm(of.back), mm(of.show)],
          }),
          (of.length * (of.high - of.low) + beside) * (of.show - of.back),
        ];
      });
      const part = partOf(
        [540, 100, 20],
        made.map(([feature]) => feature),
      );
      const body = (540 - left.length - right.length) * 100 * 20;
      expectVolume(
        part,
        made.reduce((sum, [, volume]) => sum + volume, body),
      );
    }),
    { numRuns: 60 },
  );
});

describe("fineness", () => {
  test.each([0.01, 0.02, 0.5, 1, 2.5, 4, 6, 17.5, 100, 900])("radius %f", (radius) => {
    const sides = sidesFor(radius);
    const sag = (n: number) => radius * (1 - Math.cos(Math.PI / n));
    expect(sag(sides)).toBeLessThanOrEqual(CHORD);
    expect(sides % 4).toBe(0);
    expect(sides).toBeGreaterThanOrEqual(LEAST_SIDES);
    // And no finer than it must be.
    expect(sides === LEAST_SIDES || sag(sides - 4) > CHORD).toBe(true);
  });

  test("there is no circle without a radius", () => {
    expect(() => sidesFor(0)).toThrow();
    expect(() => sidesFor(Number.NaN)).toThrow();
  });
});
