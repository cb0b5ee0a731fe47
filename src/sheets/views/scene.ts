import { dot, type Frame, into, turnedOut } from "../../geometry/index.ts";
import { CREASE_DEG, type Solid } from "../../solid/index.ts";

/** A solid and where it stands. */
export type Body = { readonly solid: Solid; readonly pose: Frame };

/** What is seen from one side, in that view's own x, y, and z towards the eye [mm]. */
export type Scene = {
  /** faces turned to the eye: three corners of x, y, z each */
  readonly triangles: Float64Array;
  /** sharp edges, and where a rounded face turns away from the eye: both ends of x, y, z each */
  readonly edges: Float64Array;
};

/** Flatter to the line of sight than this, a face hides nothing: sine of the angle. */
const EDGE_ON = 1e-3;

/** Bodies as they are seen in a view. */
export function sceneOf(bodies: readonly Body[], view: Frame): Scene {
  const triangles: number[] = [];
  const edges: number[] = [];
  for (const body of bodies) {
    const corners = seenCorners(body, view);
    const facing = facingOf(body, view);
    addTriangles(triangles, body.solid, corners, facing);
    for (let i = 0; i < body.solid.edges.length; i += 3)
      edges.push(...pointSeen(body, view, body.solid.edges, i));
    addTurns(edges, body.solid, corners, facing);
  }
  return { triangles: Float64Array.from(triangles), edges: Float64Array.from(edges) };
}

function pointSeen({ pose }: Body, view: Frame, list: Float64Array, i: number) {
  const [x, y, z] = [list[i] ?? 0, list[i + 1] ?? 0, list[i + 2] ?? 0];
  const { origin } = pose;
  const p = turnedOut(pose, [x, y, z]);
  return into(view, [origin[0] + p[0], origin[1] + p[1], origin[2] + p[2]]);
}

function seenCorners(body: Body, view: Frame): Float64Array {
  const { positions } = body.solid;
  const seen = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i += 3) seen.set(pointSeen(body, view, positions, i), i);
  return seen;
}

/** How far each face looks at the eye: 1 straight, below nought away. */
function facingOf({ solid, pose }: Body, view: Frame): Float64Array {
  const { normals } = solid;
  const facing = new Float64Array(normals.length / 3);
  for (let i = 0; i < facing.length; i++) {
    const [x = 0, y = 0, z = 0] = normals.subarray(3 * i, 3 * i + 3);
    facing[i] = dot(turnedOut(pose, [x, y, z]), view.z);
  }
  return facing;
}

function addTriangles(
  out: number[],
  { triangles, faces }: Solid,
  corners: Float64Array,
  facing: Float64Array,
): void {
  for (let t = 0; t < faces.length; t++) {
    if ((facing[faces[t] ?? 0] ?? 0) < EDGE_ON) continue;
    for (let i = 3 * t; i < 3 * t + 3; i++) {
      const at = 3 * (triangles[i] ?? 0);
      out.push(corners[at] ?? 0, corners[at + 1] ?? 0, corners[at + 2] ?? 0);
    }
  }
}

const leastCosine = Math.cos((CREASE_DEG * Math.PI) / 180);

/** The edges of rounded faces, not sharp themselves, where one side is seen and the other is not. */
function addTurns(out: number[], solid: Solid, corners: Float64Array, facing: Float64Array): void {
  const { triangles, faces, normals } = solid;
  const count = corners.length / 3;
  const once = new Map<number, number>();
  const isSharp = (f: number, g: number) => {
    let cosine = 0;
    for (let i = 0; i < 3; i++) cosine += (normals[3 * f + i] ?? 0) * (normals[3 * g + i] ?? 0);
    return cosine < leastCosine;
  };
  for (let i = 0; i < triangles.length; i++) {
    const a = triangles[i] ?? 0;
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1] ?? 0;
    const edge = Math.min(a, b) * count + Math.max(a, b);
    const face = faces[Math.floor(i / 3)] ?? 0;
    const other = once.get(edge);
    once.set(edge, face);
    if (other === undefined || other === face) continue;
    const isTurn = (facing[face] ?? 0) > EDGE_ON !== (facing[other] ?? 0) > EDGE_ON;
    if (!isTurn || isSharp(face, other)) continue;
    out.push(...corners.subarray(3 * a, 3 * a + 3), ...corners.subarray(3 * b, 3 * b + 3));
  }
}
