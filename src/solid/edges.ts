import { dot, minus, type Vec3 } from "../geometry/index.ts";
import { cornerAt } from "./corner.ts";
import type { Solid } from "./mesh.ts";

/** Two faces that turn by more than this meet in a line that is drawn: a bore's flats do not. */
export const CREASE_DEG = 25;

type FacedMesh = Pick<Solid, "positions" | "triangles" | "faces" | "normals">;

/** A stretch of the line in which two faces meet: how far along it, and the corners there. */
type Stretch = { readonly from: number; readonly to: number; readonly ends: readonly [Vec3, Vec3] };

/** The sharp edges, as both ends of each; stretches of one line joined where they touch. */
export function sharpEdges(mesh: FacedMesh): Float64Array {
  const lines = [...edgesByFaces(mesh).values()].map((edges) => joined(edges));
  return Float64Array.from(lines.flat(3));
}

type Edge = readonly [Vec3, Vec3];

/** All edges between two faces lie in one line, that in which their planes cross. */
function edgesByFaces(mesh: FacedMesh): ReadonlyMap<number, readonly Edge[]> {
  const { positions, triangles, faces, normals } = mesh;
  const corners = positions.length / 3;
  const count = normals.length / 3;
  const once = new Map<number, number>();
  const found = new Map<number, Edge[]>();
  for (let i = 0; i < triangles.length; i++) {
    const a = triangles[i] as number;
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1] as number;
    const edge = Math.min(a, b) * corners + Math.max(a, b);
    const face = faces[Math.floor(i / 3)] as number;
    const other = once.get(edge);
    once.set(edge, face);
    if (other === undefined || !isSharp(normals, face, other)) continue;
    const pair = Math.min(face, other) * count + Math.max(face, other);
    const ends: Edge = [cornerAt(positions, a), cornerAt(positions, b)];
    found.set(pair, [...(found.get(pair) ?? []), ends]);
  }
  return found;
}

const leastCosine = Math.cos((CREASE_DEG * Math.PI) / 180);

const isSharp = (normals: Float64Array, a: number, b: number): boolean =>
  a !== b && dot(cornerAt(normals, a), cornerAt(normals, b)) < leastCosine;

/** Two stretches with less between them are one [mm]. */
const GAP = 1e-6;

function joined(edges: readonly Edge[]): readonly Edge[] {
  const [first] = edges;
  if (first === undefined || edges.length === 1) return edges;
  const along = minus(first[1], first[0]);
  const size = Math.hypot(...along);
  const place = (p: Vec3) => dot(minus(p, first[0]), along) / size;
  const stretches = edges
    .map(([a, b]): Stretch => {
      const [from, to] = [place(a), place(b)];
      return from <= to ? { from, to, ends: [a, b] } : { from: to, to: from, ends: [b, a] };
    })
    .sort((a, b) => a.from - b.from);
  const whole: Stretch[] = [];
  for (const next of stretches) {
    const last = whole.at(-1);
    if (!last || next.from > last.to + GAP) whole.push(next);
    else if (next.to > last.to)
      whole[whole.length - 1] = { ...last, to: next.to, ends: [last.ends[0], next.ends[1]] };
  }
  return whole.map(({ ends }) => ends);
}
