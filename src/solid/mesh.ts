import type { Manifold, Mesh } from "manifold-3d";
import { cross, dot, minus, plus, times, unit, type Vec3 } from "../geometry/index.ts";
import { cornerAt } from "./corner.ts";
import { sharpEdges } from "./edges.ts";
import type { Scope } from "./kernel.ts";

export type Bounds = { readonly from: Vec3; readonly to: Vec3 };

/** A part's wood in its own coordinates, mirrored already if the part is; lengths in mm. */
export type Solid = {
  /** x, y, z of each corner [mm] */
  readonly positions: Float64Array;
  /** three corners a triangle, counter-clockwise seen from outside */
  readonly triangles: Uint32Array;
  /** which plane face each triangle belongs to */
  readonly faces: Uint32Array;
  /** x, y, z of each face's outward direction [1] */
  readonly normals: Float64Array;
  /** both ends, x, y, z each, of every line where the surface breaks sharply [mm] */
  readonly edges: Float64Array;
  /** [mm³] */
  readonly volume: number;
  /** of all its surface [mm²] */
  readonly area: number;
  /** middle of the volume [mm] */
  readonly centre: Vec3;
  /** [mm] */
  readonly bounds: Bounds;
  /** pieces that hang together [pieces] */
  readonly bodies: number;
};

/** What leaves the kernel of a part's wood. */
export function solidFrom(scope: Scope, wood: Manifold): Solid {
  const mesh = wood.getMesh();
  const triangles = Uint32Array.from(mesh.triVerts);
  const positions = positionsOf(scope, wood, mesh);
  const faces = renumbered(mesh.faceID);
  const normals = normalsOf({ positions, triangles, faces });
  const { min, max } = wood.boundingBox();
  const bounds: Bounds = { from: min, to: max };
  return {
    ...{ positions, triangles, faces, normals },
    edges: sharpEdges({ positions, triangles, faces, normals }),
    volume: wood.volume(),
    area: wood.surfaceArea(),
    centre: centreOf({ positions, triangles }, bounds),
    bounds,
    bodies: wood.decompose().map((body) => scope.keep(body)).length,
  };
}

/**
 * The kernel reckons in 64 bits but its mesh has 32, which at two metres are a tenth of a thousandth
 * of a millimetre; its warp, leaving all where it is, shows the corners whole, in the same order.
 */
function positionsOf({ keep }: Scope, wood: Manifold, mesh: Mesh): Float64Array {
  let whole: Float64Array | undefined;
  keep(
    wood.warpBatch((corners, count) => {
      whole = corners.slice(0, 3 * count);
    }),
  );
  const short = mesh.vertProperties;
  if (whole?.length !== short.length || whole.some((n, i) => Math.fround(n) !== short[i]))
    throw new Error("the kernel numbers a mesh's corners in two ways");
  return whole;
}

function renumbered(ids: Uint32Array): Uint32Array {
  const seen = new Map<number, number>();
  return ids.map((id) => {
    const known = seen.get(id) ?? seen.size;
    seen.set(id, known);
    return known;
  });
}

const triangleAt = (
  { positions, triangles }: Pick<Solid, "positions" | "triangles">,
  triangle: number,
): readonly [Vec3, Vec3, Vec3] => [
  cornerAt(positions, triangles[3 * triangle] as number),
  cornerAt(positions, triangles[3 * triangle + 1] as number),
  cornerAt(positions, triangles[3 * triangle + 2] as number),
];

/** Summed over a face's triangles by their areas, so that a sliver's rounding tells nothing. */
function normalsOf(mesh: Pick<Solid, "positions" | "triangles" | "faces">): Float64Array {
  const { faces } = mesh;
  const count = faces.reduce((most, face) => Math.max(most, face + 1), 0);
  const sums = new Float64Array(3 * count);
  for (let i = 0; i < faces.length; i++) {
    const [a, b, c] = triangleAt(mesh, i);
    const area = cross(minus(b, a), minus(c, a));
    const at = 3 * (faces[i] as number);
    for (let axis = 0; axis < 3; axis++)
      sums[at + axis] = (sums[at + axis] as number) + (area[axis] as number);
  }
  for (let at = 0; at < sums.length; at += 3) sums.set(unit(cornerAt(sums, at / 3)), at);
  return sums;
}

/** From tetrahedra over the middle of the bounds: near it, little is lost in the sum. */
function centreOf(mesh: Pick<Solid, "positions" | "triangles">, { from, to }: Bounds): Vec3 {
  const apex = times(plus(from, to), 0.5);
  let volume = 0;
  let moment: Vec3 = [0, 0, 0];
  for (let i = 0; i < mesh.triangles.length / 3; i++) {
    const [a, b, c] = triangleAt(mesh, i).map((p) => minus(p, apex)) as [Vec3, Vec3, Vec3];
    const six = dot(a, cross(b, c));
    volume += six / 6;
    moment = plus(moment, times(plus(a, plus(b, c)), six / 24));
  }
  return plus(apex, times(moment, 1 / volume));
}
