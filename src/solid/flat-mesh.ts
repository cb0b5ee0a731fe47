import type { Solid } from "./mesh.ts";

/** A mesh as graphics take it: corners that faces share stand once for each face, so it is flat. */
export type FlatMesh = {
  /** x, y, z of each corner */
  readonly positions: Float32Array;
  /** x, y, z of the face's outward direction, at each corner */
  readonly normals: Float32Array;
  /** three corners a triangle; short where that will do */
  readonly indices: Uint16Array | Uint32Array;
};

/**
 * A solid for flat shading, in part coordinates.
 *
 * @param scale  what a millimetre becomes; a thousandth gives metres [1]
 */
export function flatMesh(solid: Solid, scale = 1): FlatMesh {
  const { positions, normals, triangles, faces } = solid;
  const corners = positions.length / 3;
  const numbers = new Map<number, number>();
  const [points, directions]: [number[], number[]] = [[], []];
  const order = Array.from(triangles, (corner, i) => {
    const face = faces[Math.floor(i / 3)] as number;
    const known = numbers.get(face * corners + corner);
    if (known !== undefined) return known;
    points.push(...positions.slice(3 * corner, 3 * corner + 3).map((n) => n * scale));
    directions.push(...normals.slice(3 * face, 3 * face + 3));
    const number = numbers.size;
    numbers.set(face * corners + corner, number);
    return number;
  });
  return {
    positions: Float32Array.from(points),
    normals: Float32Array.from(directions),
    // 65,535 itself is kept free in glTF: it may mean “start again”.
    indices: numbers.size < 65_536 ? Uint16Array.from(order) : Uint32Array.from(order),
  };
}
