import type { Box, Manifold } from "manifold-3d";
import type { Key, Part } from "../piece/index.ts";
import { type Askew, areApart, askewBox, boxRound, overlap } from "./boxes.ts";
import type { Clash } from "./interference.ts";
import type { Scope } from "./kernel.ts";
import { matrixOf } from "./placed.ts";
import { sound } from "./wood.ts";

/** Where a part that moves first runs into one that stands. */
export type SweptClash = Clash & {
  /** which of the poses, from 0 */
  readonly at: number;
};

type WoodFor = (part: Part) => Manifold;
type Standing = {
  readonly key: Key;
  readonly wood: Manifold;
  readonly box: Box;
  readonly askew: Askew;
};

/** Kept of the standing wood round where something moves [mm]. */
const ROUND = 1;

/**
 * Where moving parts first run into standing ones, each pair once: `a` moves, `b` stands. The wood
 * that stands is posed once, and only what of it lies where something moves.
 *
 * @param moving  the moving parts as they stand at each pose, in the order of the way
 * @param least  shared volume that is told [mm³]
 */
export function sweptClashes(
  scope: Scope,
  woodFor: WoodFor,
  standing: readonly Part[],
  moving: readonly (readonly Part[])[],
  least: number,
): readonly SweptClash[] {
  const ways = waysOf(scope, woodFor, moving);
  return ways.flatMap(({ key, poses, reach }) =>
    standing.flatMap((part): readonly SweptClash[] => {
      const other = standingIn(scope, woodFor, part, reach);
      if (!other) return [];
      for (const [at, { wood, box, askew }] of poses.entries()) {
        if (!overlap(box, other.box) || areApart(askew, other.askew)) continue;
        const shared = sound(scope.keep(wood.intersect(other.wood)), `${key} with ${part.key}`);
        const volume = shared.volume();
        if (shared.isEmpty() || volume < least) continue;
        const { min, max } = shared.boundingBox();
        return [{ a: key, b: part.key, volume, bounds: { from: min, to: max }, at }];
      }
      return [];
    }),
  );
}

/** Each moving part at all of its poses, and the box round them all. */
function waysOf({ keep }: Scope, woodFor: WoodFor, moving: readonly (readonly Part[])[]) {
  const [first = []] = moving;
  return first.map((moved) => {
    const { key } = moved;
    // Placed at once at all poses: the next part may push this one's shape out of the store.
    const own = woodFor(moved);
    const poses = moving.map((parts): Standing => {
      const part = parts.find((one) => one.key === key);
      if (!part) throw new Error(`${key} is lost on its way`);
      const wood = keep(own.transform(matrixOf(part.pose)));
      return { key, wood, box: wood.boundingBox(), askew: askewBox(own.boundingBox(), part.pose) };
    });
    return { key, poses, reach: poses.map(({ box }) => box).reduce(boxRound) };
  });
}

/** What of a standing part lies in a box; undefined when nothing does. */
function standingIn(
  { keep, wasm }: Scope,
  woodFor: WoodFor,
  part: Part,
  { min, max }: Box,
): Standing | undefined {
  const own = woodFor(part);
  const whole = keep(own.transform(matrixOf(part.pose)));
  const box = whole.boundingBox();
  if (!overlap(box, { min, max })) return undefined;
  const at = (i: 0 | 1 | 2) => ({ from: min[i] - ROUND, to: max[i] + ROUND });
  const [x, y, z] = [at(0), at(1), at(2)];
  const room = keep(
    keep(wasm.Manifold.cube([x.to - x.from, y.to - y.from, z.to - z.from])).translate([
      x.from,
      y.from,
      z.from,
    ]),
  );
  const wood = sound(keep(whole.intersect(room)), part.key);
  if (wood.isEmpty()) return undefined;
  const { key, pose } = part;
  return { key, wood, box: wood.boundingBox(), askew: askewBox(own.boundingBox(), pose) };
}
