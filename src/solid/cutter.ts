import type { Manifold } from "manifold-3d";
import { cross, minus, norm, outOf, plus, times, unit, type Vec3 } from "../geometry/index.ts";
import type { BoreCut, HalfSpaceCut, PrismCut, SweepCut } from "../piece/index.ts";
import { sidesFor } from "./fineness.ts";
import type { Scope } from "./kernel.ts";

export type SunkCut = Exclude<PrismCut | BoreCut | SweepCut, HalfSpaceCut>;

/**
 * The body that a cut takes away. All are convex, so the hull of their corners is the whole of it.
 * The kernel's own extrusion would go through its plane outlines, which round to 4·10⁻⁹ mm; corners
 * of a hull stay as they are given.
 */
export function cutterOf({ wasm, keep }: Scope, cut: SunkCut): Manifold {
  const corners = cornersOf(cut);
  // The kernel takes what is not a number without a word.
  if (corners.flat().some((n) => !Number.isFinite(n))) throw new Error(`a ${cut.cut} off the map`);
  if (!(cut.depth > 0)) throw new Error(`a ${cut.cut} with depth ${cut.depth}`);
  const cutter = keep(wasm.Manifold.hull(corners.map((p): [number, number, number] => [...p])));
  if (!(cutter.volume() > 0)) throw new Error(`a ${cut.cut} that holds nothing`);
  return cutter;
}

function cornersOf(cut: SunkCut): readonly Vec3[] {
  switch (cut.cut) {
    case "prism":
      return [0, cut.depth].flatMap((z) =>
        cut.outline.map(([x, y]) => outOf(cut.frame, [x, y, z])),
      );
    case "bore":
      return sunk(circle(cut.from, acrossOf(cut.along), cut), cut);
    case "sweep": {
      const travel = minus(cut.to, cut.from);
      const across = norm(travel) > 0 ? unit(travel) : acrossOf(cut.along);
      return sunk([...circle(cut.from, across, cut), ...circle(cut.to, across, cut)], cut);
    }
  }
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
