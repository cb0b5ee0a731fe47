import { cross, dot, minus, plus, times, unit, type Vec3 } from "./vec.ts";

/** A plane, and the side that its direction points to. */
export type Plane = { readonly point: Vec3; readonly away: Vec3 };

/** A convex body: each face a plane polygon, counter-clockwise seen from outside. */
export type Convex = readonly (readonly Vec3[])[];

/** Volume [mm³] and first moment (volume times centre) [mm⁴]. */
export type Bulk = { readonly volume: number; readonly moment: Vec3 };

const noBulk: Bulk = { volume: 0, moment: [0, 0, 0] };

/** Closer than this to a plane [mm] counts as on it. */
const ON_PLANE = 1e-9;

/** The box from the origin to the opposite corner. */
export function box([l, w, t]: Vec3): Convex {
  return prism(
    [
      [0, 0, 0],
      [l, 0, 0],
      [l, w, 0],
      [0, w, 0],
    ],
    [0, 0, t],
  );
}

/**
 * The body that a convex plane polygon sweeps.
 *
 * @param base  counter-clockwise seen against `along`, so that its own face looks back
 * @param along  how far and whither
 */
export function prism(base: readonly Vec3[], along: Vec3): Convex {
  const top = base.map((p) => plus(p, along));
  const sides = base.map((p, i): readonly Vec3[] => {
    const next = (i + 1) % base.length;
    return [p, at(base, next), at(top, next), at(top, i)];
  });
  return [[...base].reverse(), top, ...sides];
}

function at<T>(list: readonly T[], i: number): T {
  const found = list[i];
  if (found === undefined) throw new Error(`no item ${i} in a list of ${list.length}`);
  return found;
}

const height = ({ point, away }: Plane, p: Vec3): number => dot(away, minus(p, point));

/** What of a body lies on the near side of a plane; no faces when nothing does. */
export function clipped(body: Convex, plane: Plane): Convex {
  const heights = body.map((face) => face.map((p) => height(plane, p)));
  if (heights.every((face) => face.every((h) => h <= ON_PLANE))) return body;
  if (heights.every((face) => face.every((h) => h >= -ON_PLANE))) return [];
  const faces = body.map((face) => clippedFace(face, plane)).filter((face) => face.length > 2);
  const lid = lidOf(faces, plane);
  return lid.length > 2 ? [...faces, lid] : faces;
}

function clippedFace(face: readonly Vec3[], plane: Plane): readonly Vec3[] {
  return face.flatMap((p, i) => {
    const q = at(face, (i + 1) % face.length);
    const [hp, hq] = [height(plane, p), height(plane, q)];
    const kept = hp <= ON_PLANE ? [p] : [];
    const crosses = (hp > ON_PLANE && hq < -ON_PLANE) || (hp < -ON_PLANE && hq > ON_PLANE);
    return crosses ? [...kept, plus(p, times(minus(q, p), hp / (hp - hq)))] : kept;
  });
}

/** The new face in the plane: the corners there, once each, in order about their middle. */
function lidOf(faces: Convex, plane: Plane): readonly Vec3[] {
  const corners: Vec3[] = [];
  for (const p of faces.flat()) {
    const isNew = corners.every((c) => Math.hypot(...minus(c, p)) > 1e-7);
    if (Math.abs(height(plane, p)) <= 1e-7 && isNew) corners.push(p);
  }
  if (corners.length < 3) return [];
  const middle = times(corners.reduce(plus), 1 / corners.length);
  const u = unit(minus(at(corners, 0), middle));
  const v = cross(unit(plane.away), u);
  const angle = (p: Vec3) => Math.atan2(dot(minus(p, middle), v), dot(minus(p, middle), u));
  return corners.sort((a, b) => angle(a) - angle(b));
}

/** Planes of a body's faces, looking out; slivers of faces have none. */
function planesOf(body: Convex): readonly Plane[] {
  return body.flatMap((face): Plane[] => {
    const normal = areaVector(face);
    return Math.hypot(...normal) > 1e-9 ? [{ point: at(face, 0), away: unit(normal) }] : [];
  });
}

/** Twice a face's area, along its outward direction. */
function areaVector(face: readonly Vec3[]): Vec3 {
  const origin = at(face, 0);
  let sum: Vec3 = [0, 0, 0];
  for (let i = 1; i + 1 < face.length; i++) {
    sum = plus(sum, cross(minus(at(face, i), origin), minus(at(face, i + 1), origin)));
  }
  return sum;
}

/** A body less another, as convex pieces that do not overlap. */
export function difference(body: Convex, cutter: Convex): readonly Convex[] {
  const pieces: Convex[] = [];
  let rest = body;
  for (const plane of planesOf(cutter)) {
    const outside = clipped(rest, { point: plane.point, away: times(plane.away, -1) });
    if (outside.length > 0) pieces.push(outside);
    rest = clipped(rest, plane);
    if (rest.length === 0) return [body];
  }
  return pieces;
}

/** Volume and first moment, summed over tetrahedra from a corner: exact for plane faces. */
export function bulkOf(body: Convex): Bulk {
  const apex = body[0]?.[0];
  if (apex === undefined) return noBulk;
  let volume = 0;
  let moment: Vec3 = [0, 0, 0];
  for (const face of body) {
    const a = at(face, 0);
    for (let i = 1; i + 1 < face.length; i++) {
      const [b, c] = [at(face, i), at(face, i + 1)];
      const six = dot(minus(a, apex), cross(minus(b, apex), minus(c, apex)));
      volume += six / 6;
      moment = plus(moment, times(plus(plus(apex, a), plus(b, c)), six / 24));
    }
  }
  return { volume, moment };
}

/** Volumes and moments together. */
export const sumBulk = (all: readonly Bulk[]): Bulk =>
  all.reduce(
    (sum, one) => ({ volume: sum.volume + one.volume, moment: plus(sum.moment, one.moment) }),
    noBulk,
  );
