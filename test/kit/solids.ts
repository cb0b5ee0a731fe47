import { expect } from "vitest";
import type { Shaped } from "../../src/piece/index.ts";
import { createKernel, type Kernel, type Solid } from "../../src/solid/index.ts";
import { isNear } from "./sizes.ts";

/** The kernel that all tests of one file share. */
export const kernel: Kernel = await createKernel();

type Point = readonly [number, number, number];

/** Corners of a solid. */
const cornersOf = ({ positions }: Pick<Solid, "positions">): readonly Point[] =>
  Array.from({ length: positions.length / 3 }, (_, i): Point => {
    const [x, y, z] = positions.slice(3 * i, 3 * i + 3);
    return [x ?? Number.NaN, y ?? Number.NaN, z ?? Number.NaN];
  });

/** Triangles of a solid, by the numbers of their corners. */
const trianglesOf = ({ triangles }: Pick<Solid, "triangles">): readonly Point[] =>
  Array.from({ length: triangles.length / 3 }, (_, i): Point => {
    const [a, b, c] = triangles.slice(3 * i, 3 * i + 3);
    return [a ?? Number.NaN, b ?? Number.NaN, c ?? Number.NaN];
  });

/** Volume by the divergence theorem over the mesh itself, so not by the kernel's word. */
function meshVolume(solid: Pick<Solid, "positions" | "triangles">): number {
  const corners = cornersOf(solid);
  const six = trianglesOf(solid).map((triangle) => {
    const [a, b, c] = triangle.map((i) => corners[i] ?? [0, 0, 0]) as [Point, Point, Point];
    const [[ax, ay, az], [bx, by, bz], [cx, cy, cz]] = [a, b, c];
    return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
  });
  return six.reduce((sum, one) => sum + one, 0) / 6;
}

/** Edges that are not walked exactly once in each direction. */
function openEdges(solid: Pick<Solid, "triangles">): readonly string[] {
  const walked = new Map<string, number>();
  for (const [a, b, c] of trianglesOf(solid))
    for (const edge of [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`])
      walked.set(edge, (walked.get(edge) ?? 0) + 1);
  const back = (edge: string) => edge.split(" ").reverse().join(" ");
  return [...walked].flatMap(([edge, n]) =>
    n === 1 && walked.get(back(edge)) === 1 ? [] : [edge],
  );
}

/** Triangles that lie outside the plane of the face they are said to belong to. */
function strayTriangles(solid: Solid): readonly number[] {
  const corners = cornersOf(solid);
  const heights = new Map<number, number>();
  return trianglesOf(solid).flatMap((triangle, i) => {
    const face = solid.faces[i] ?? -1;
    const [x = 0, y = 0, z = 0] = solid.normals.slice(3 * face, 3 * face + 3);
    const over = triangle.map((corner) => {
      const [px, py, pz] = corners[corner] ?? [0, 0, 0];
      return px * x + py * y + pz * z;
    });
    const height = heights.get(face) ?? over[0] ?? Number.NaN;
    heights.set(face, height);
    return over.every((h) => Math.abs(h - height) < 1e-6) ? [] : [i];
  });
}

/** How far a solid may stand out of its blank, for rounding [mm]. */
const SKIN = 1e-6;

/**
 * Expects what every part's solid owes: one closed body, turned right side out, inside its blank,
 * with plane faces and figures that agree with the mesh.
 */
export function expectSound(solid: Solid, part: Shaped): void {
  const { length, width, thickness } = part.blank;
  expect(solid.volume, part.key).toBeGreaterThan(0);
  expect(solid.volume, part.key).toBeLessThanOrEqual(length * width * thickness * (1 + 1e-12));
  expect(isNear(meshVolume(solid), solid.volume), `${part.key}: mesh and kernel`).toBe(true);
  expect(solid.bodies, part.key).toBe(1);
  expect(openEdges(solid), part.key).toEqual([]);
  expect(strayTriangles(solid), part.key).toEqual([]);
  const corners = cornersOf(solid);
  const sizes = [length, width, thickness];
  const outside = corners.filter((p) =>
    p.some((n, axis) => !(n >= -SKIN && n <= (sizes[axis] ?? 0) + SKIN)),
  );
  expect(outside, part.key).toEqual([]);
  for (const axis of [0, 1, 2] as const) {
    expect(solid.bounds.from[axis]).toBe(Math.min(...corners.map((p) => p[axis])));
    expect(solid.bounds.to[axis]).toBe(Math.max(...corners.map((p) => p[axis])));
    expect(solid.centre[axis]).toBeGreaterThan(solid.bounds.from[axis]);
    expect(solid.centre[axis]).toBeLessThan(solid.bounds.to[axis]);
  }
  expect([...solid.edges].every(Number.isFinite), part.key).toBe(true);
}

/** Expects two solids to have the same corners, one of them moved, whatever their order. */
export function expectSameCorners(
  a: Pick<Solid, "positions">,
  b: Pick<Solid, "positions">,
  move: (p: Point) => Point,
): void {
  const there = cornersOf(b);
  const lost = cornersOf(a)
    .map(move)
    .filter((p) => !there.some((q) => p.every((n, i) => Math.abs(n - (q[i] ?? 0)) < 1e-9)));
  expect(lost).toEqual([]);
  expect(cornersOf(a)).toHaveLength(there.length);
}
