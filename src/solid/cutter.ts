import type { Manifold } from "manifold-3d";
import { cross, minus, norm, outOf, plus, times, unit, type Vec3 } from "../geometry/index.ts";
import type { BoreCut, HalfSpaceCut, PrismCut, QuarterCut, SweepCut } from "../piece/index.ts";
import { FINE_CHORD, sidesFor } from "./fineness.ts";
import type { Scope } from "./kernel.ts";

type ConvexCut = Exclude<PrismCut | BoreCut | SweepCut, HalfSpaceCut>;
export type SunkCut = ConvexCut | QuarterCut;

/**
 * The body that a cut takes away. All but a round-over's are convex, so the hull of their corners is
 * the whole of it. The kernel's own extrusion would go through its plane outlines, which round to
 * 4·10⁻⁹ mm; corners of a hull stay as they are given.
 */
export function cutterOf(scope: Scope, cut: SunkCut): Manifold {
  if (!(cut.depth > 0)) throw new Error(`a ${cut.cut} with depth ${cut.depth}`);
  if (cut.cut !== "quarter") return hullOf(scope, cut.cut, cornersOf(cut));
  const hulls = quarterHulls(cut).map((corners) => hullOf(scope, cut.cut, corners));
  const [body, core] = hulls;
  if (!body) throw new Error("a quarter of nothing");
  return core ? scope.keep(body.subtract(core)) : body;
}

function hullOf({ wasm, keep }: Scope, name: string, corners: readonly Vec3[]): Manifold {
  // The kernel takes what is not a number without a word.
  if (corners.flat().some((n) => !Number.isFinite(n))) throw new Error(`a ${name} off the map`);
  const cutter = keep(wasm.Manifold.hull(corners.map((p): [number, number, number] => [...p])));
  if (!(cutter.volume() > 0)) throw new Error(`a ${name} that holds nothing`);
  return cutter;
}

/**
 * What a moulding takes: a hollow whole; a round-over's square corner, and after it the round wood
 * that stays. Flats lie on the side of less wood on both halves, so that two that clear each other
 * by less than their height still do.
 */
function quarterHulls({ frame, radius, leaves, past: [px, py], depth }: QuarterCut) {
  const sides = sidesFor(radius, FINE_CHORD) / 4;
  const step = Math.PI / 2 / sides;
  const run = (outline: readonly (readonly [number, number])[]) =>
    [0, depth].flatMap((z) => outline.map(([x, y]) => outOf(frame, [x, y, z])));
  const on = (r: number, angle: number) => [r * Math.cos(angle), r * Math.sin(angle)] as const;
  if (leaves === "outside") {
    const round = Array.from({ length: sides }, (_, i) =>
      on(radius / Math.cos(step / 2), (i + 0.5) * step),
    );
    return [run([[radius, -py], [radius, 0], ...round, [0, radius], [-px, radius], [-px, -py]])];
  }
  const inner = Array.from({ length: sides + 1 }, (_, i) => on(radius, i * step));
  const [w, h] = [radius + px, radius + py];
  const corner = [
    [0, 0],
    [w, 0],
    [w, h],
    [0, h],
  ] as const;
  // The core goes on past both straight sides, so that only the round is left of its faces.
  return [run(corner), coreOf(frame, [...inner, [-1, radius], [-1, -1], [radius, -1]], depth)];
}

/** The same outline, a little longer at both ends than what it is taken out of. */
const coreOf = (
  frame: QuarterCut["frame"],
  outline: readonly (readonly [number, number])[],
  depth: number,
): readonly Vec3[] =>
  [-1, depth + 1].flatMap((z) => outline.map(([x, y]) => outOf(frame, [x, y, z])));

function cornersOf(cut: ConvexCut): readonly Vec3[] {
  switch (cut.cut) {
    case "prism":
      return [0, cut.depth].flatMap((z) =>
        cut.outline.map(([x, y]) => outOf(cut.frame, [x, y, z])),
      );
    case "bore":
      return boreCorners(cut);
    case "sweep": {
      const travel = minus(cut.to, cut.from);
      const across = norm(travel) > 0 ? unit(travel) : acrossOf(cut.along);
      return sunk([...circle(cut.from, across, cut), ...circle(cut.to, across, cut)], cut);
    }
  }
}

/** Both rims of a hole; of a cone they differ. */
function boreCorners(cut: BoreCut): readonly Vec3[] {
  const across = acrossOf(cut.along);
  const mouth = circle(cut.from, across, cut);
  if (cut.endRadius === undefined) return sunk(mouth, cut);
  const end = plus(cut.from, times(cut.along, cut.depth));
  return [...mouth, ...circle(end, across, { ...cut, radius: cut.endRadius })];
}

type Round = Pick<BoreCut, "along" | "radius" | "depth">;

const sunk = (mouth: readonly Vec3[], { along, depth }: Round): readonly Vec3[] =>
  [0, depth].flatMap((z) => mouth.map((p) => plus(p, times(along, z))));

/** Corners on a circle, the first of them towards `first`. */
function circle(middle: Vec3, first: Vec3, { along, radius }: Round): readonly Vec3[] {
  const second = cross(along, first);
  const sides = sidesFor(radius);
  return Array.from({ length: sides }, (_, i) => {
    const angle = (2 * Math.PI * i) / sides;
    const [a, b] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return plus(middle, plus(times(first, a), times(second, b)));
  });
}

/** A direction square to another: off the axis that it runs along least. */
function acrossOf(along: Vec3): Vec3 {
  const [x, y, z] = along.map(Math.abs) as [number, number, number];
  if (x <= y && x <= z) return unit(cross(along, [1, 0, 0]));
  return unit(cross(along, y <= z ? [0, 1, 0] : [0, 0, 1]));
}
