import { describe, expect, test } from "vitest";
import { minus, norm, type Vec3 } from "../../src/geometry/index.ts";
import type { Feature } from "../../src/piece/index.ts";
import { sharpEdges } from "../../src/solid/edges.ts";
import { CREASE_DEG, flatMesh, sidesFor, solidOf } from "../../src/solid/index.ts";
import { mm } from "../../src/units/index.ts";
import { kernel } from "../kit/solids.ts";
import { bore, mortise, partOf, slot, squareHaunch, tenon } from "./samples.ts";

const solid = (features: readonly Feature[] = []) =>
  solidOf(kernel, partOf([540, 100, 20], features));

/** How long each edge is, shortest first. */
function lengthsOf(edges: Float64Array): readonly number[] {
  return Array.from({ length: edges.length / 6 }, (_, i) => {
    const [ax, ay, az, bx, by, bz] = edges.slice(6 * i, 6 * i + 6) as unknown as number[];
    const [a, b] = [
      [ax, ay, az],
      [bx, by, bz],
    ] as unknown as [Vec3, Vec3];
    return norm(minus(b, a));
  }).sort((a, b) => a - b);
}

const lengths = (features: readonly Feature[] = []) => lengthsOf(solid(features).edges);
const total = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0);
const box = [20, 20, 20, 20, 100, 100, 100, 100, 540, 540, 540, 540];

describe("sharp edges", () => {
  test("a box has twelve, each in one piece", () => {
    expect(lengths()).toEqual(box);
  });

  test("a mortise adds its mouth, its floor and its corners", () => {
    const pocket = [13, 13, 13, 13, 65, 65, 65, 65, 9, 9, 9, 9];
    expect(lengths([mortise("show")])).toEqual([...box, ...pocket].sort((a, b) => a - b));
  });

  test("a tenon's are joined across what several cuts left", () => {
    const [body, tip] = [
      [510, 510, 510, 510, 100, 100, 100, 100, 20, 20, 20, 20],
      [30, 30, 30, 30, 65, 65, 65, 65, 7, 7, 7, 7],
    ];
    expect(lengths([tenon()])).toEqual([...body, ...tip].sort((a, b) => a - b));
  });

  test("what is left in two pieces by the kernel is joined, on both sides of a box", () => {
    // A box 10 × 4 × 3 with a corner too many in the middle of its two front edges.
    const outline = [0, 0, 5, 0, 10, 0, 10, 4, 0, 4];
    const at = (z: number) =>
      [0, 1, 2, 3, 4].flatMap((i) => [...outline.slice(2 * i, 2 * i + 2), z]);
    const sides = [0, 1, 2, 3, 4].flatMap((i) => {
      const next = (i + 1) % 5;
      return [i, next, 5 + next, i, 5 + next, 5 + i];
    });
    const edges = sharpEdges({
      positions: Float64Array.from([...at(0), ...at(3)]),
      triangles: Uint32Array.from([1, 0, 4, 1, 4, 3, 1, 3, 2, 6, 9, 5, 6, 8, 9, 6, 7, 8, ...sides]),
      faces: Uint32Array.from([0, 0, 0, 1, 1, 1, 2, 2, 2, 2, 3, 3, 4, 4, 5, 5]),
      normals: Float64Array.from([0, 0, -1, 0, 0, 1, 0, -1, 0, 1, 0, 0, 0, 1, 0, -1, 0, 0]),
    });
    expect(lengthsOf(edges)).toEqual([3, 3, 3, 3, 4, 4, 4, 4, 10, 10, 10, 10]);
  });

  test("of a bore its two rims, and no line along it", () => {
    const sides = sidesFor(4);
    const rims = lengths([bore({ depth: mm(100), isThrough: true })]);
    expect(rims).toHaveLength(12 + 2 * sides);
    expect(total(rims)).toBeCloseTo(total(box) + 2 * sides * 2 * 4 * Math.sin(Math.PI / sides), 9);
    // The flats of a round turn by less than what is drawn, even of the smallest.
    expect(360 / sidesFor(0.1)).toBeLessThan(CREASE_DEG);
  });

  test("a shallow slope is no edge, a steep one is", () => {
    // 2 in 400 is a third of a degree; 12 in 20 is 31 degrees.
    const taper: Feature = {
      feature: "taper",
      key: "t",
      face: "show",
      from: mm(140),
      depth: mm(2),
    };
    const bevel: Feature = { feature: "bevel", key: "b", end: "left", run: mm(12) };
    expect(lengths([taper])).toHaveLength(12 + 2);
    expect(lengths([bevel])).toHaveLength(12);
  });
});

describe("for flat shading", () => {
  const features = [tenon({ haunch: squareHaunch }), bore(), slot({ x: mm(200) })];

  test("a box has four corners a face", () => {
    const { positions, normals, indices } = flatMesh(solid());
    expect([positions.length, normals.length, indices.length]).toEqual([72, 72, 36]);
  });

  test("every triangle looks where its corners' directions point", () => {
    const { positions, normals, indices } = flatMesh(solid(features), 0.001);
    expect(indices.length).toBe(solid(features).triangles.length);
    const at = (array: Float32Array, i: number): Vec3 =>
      [...array.slice(3 * i, 3 * i + 3)] as unknown as Vec3;
    for (let t = 0; t < indices.length; t += 3) {
      const [i, j, k] = [...indices.slice(t, t + 3)] as [number, number, number];
      const [a, b, c] = [i, j, k].map((n) => at(positions, n)) as [Vec3, Vec3, Vec3];
      const [u, v] = [minus(b, a), minus(c, a)];
      const n: Vec3 = [
        u[1] * v[2] - u[2] * v[1],
        u[2] * v[0] - u[0] * v[2],
        u[0] * v[1] - u[1] * v[0],
      ];
      for (const corner of [i, j, k]) {
        const way = at(normals, corner);
        expect(norm(way)).toBeCloseTo(1, 6);
        expect((way[0] * n[0] + way[1] * n[1] + way[2] * n[2]) / norm(n)).toBeGreaterThan(0.999);
      }
    }
  });

  test("its size is as asked", () => {
    expect(Math.max(...flatMesh(solid(), 0.001).positions)).toBeCloseTo(0.54, 6);
    expect(Math.max(...flatMesh(solid()).positions)).toBe(540);
  });
});
