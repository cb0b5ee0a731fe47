import type { Manifold } from "manifold-3d";
import type { Key, Part } from "../piece/index.ts";
import { overlap } from "./boxes.ts";
import type { Scope } from "./kernel.ts";
import type { Bounds } from "./mesh.ts";
import { matrixOf } from "./placed.ts";
import { sound } from "./wood.ts";

/** Two parts that want the same room. */
export type Clash = {
  readonly a: Key;
  readonly b: Key;
  /** what both take up [mm³] */
  readonly volume: number;
  /** of that, in the piece [mm] */
  readonly bounds: Bounds;
};

/** Less than this is the rounding of two turned faces that lie flush, not wood in wood [mm³]. */
export const LEAST_CLASH = 1e-3;

/**
 * All pairs of posed parts that want the same room, in the order of the parts.
 *
 * @param least  shared volume that is told [mm³]
 */
export function clashes(
  { keep }: Scope,
  woodFor: (part: Part) => Manifold,
  parts: readonly Part[],
  least: number,
): readonly Clash[] {
  const posed = parts.map((part) => {
    const wood = keep(woodFor(part).transform(matrixOf(part.pose)));
    return { key: part.key, wood, box: wood.boundingBox() };
  });
  return posed.flatMap((a, i) =>
    posed.slice(i + 1).flatMap((b): Clash[] => {
      if (!overlap(a.box, b.box)) return [];
      const shared = sound(keep(a.wood.intersect(b.wood)), `${a.key} with ${b.key}`);
      const volume = shared.volume();
      if (shared.isEmpty() || volume < least) return [];
      const { min, max } = shared.boundingBox();
      return [{ a: a.key, b: b.key, volume, bounds: { from: min, to: max } }];
    }),
  );
}
