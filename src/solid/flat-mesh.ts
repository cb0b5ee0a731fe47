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
  const order = new Uint32Array(triangles.length);
  // As if no corner were shared; the longest it can be.
  const points = new Float32Array(3 * triangles.length);
  const directions = new Float32Array(3 * triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    const corner = triangles[i] as number;
    const face = faces[Math.floor(i / 3)] as number;
    const name = face * corners + corner;
    let number = numbers.get(name);
    if (number === undefined) {
      number = numbers.size;
      numbers.set(name, number);
      for (let axis = 0; axis < 3; axis++) {
        points[3 * number + axis] = (positions[3 * corner + axis] as number) * scale;
        directions[3 * number + axis] = normals[3 * face + axis] as number;
      }
    }
    order[i] = number;
  }
  return {
    positions: points.slice(0, 3 * numbers.size),
    normals: directions.slice(0, 3 * numbers.size),
    // 65,535 itself is kept free in glTF: it may mean “start again”.
    indices: numbers.size < 65_536 ? Uint16Array.from(order) : order,
  };
}
