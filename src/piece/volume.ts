import {
  type Bulk,
  box,
  bulkOf,
  type Convex,
  clipped,
  difference,
  minus,
  outOf,
  plus,
  prism,
  sumBulk,
  times,
  turnedOut,
  type Vec3,
} from "../geometry/index.ts";
import type { PrismCut } from "./cut.ts";
import { cutsOf } from "./cuts-of.ts";
import type { Bore, Feature, ScrewSlot } from "./feature.ts";
import type { Part } from "./part.ts";

/**
 * Volume and first moment of a part in its unmirrored pattern, in closed form: plane cuts by exact
 * division into convex bodies, round ones by their formulas. Round cuts are taken as meeting no
 * other cut of the part.
 */
export function bulkOfPart({ blank, features }: Pick<Part, "blank" | "features">): Bulk {
  const size: Vec3 = [blank.length, blank.width, blank.thickness];
  const round = features.filter(isRound);
  const plane = features.filter((f) => !isRound(f)).flatMap((f) => cutsOf(f, blank));
  let bodies: readonly Convex[] = [box(size)];
  for (const cut of plane) {
    if (cut.cut === "half-space") {
      bodies = bodies.map((b) => clipped(b, cut)).filter((b) => b.length > 0);
    } else if (cut.cut === "prism") {
      const cutter = prismOf(cut);
      bodies = bodies.flatMap((b) => difference(b, cutter));
    } else throw new Error(`a plane feature made a ${cut.cut}`);
  }
  const holes = round.flatMap((f) =>
    f.feature === "bore" ? [boreBulk(f)] : slotBulk(f, blank.width),
  );
  const solid = sumBulk(bodies.map(bulkOf));
  const gone = sumBulk(holes);
  return { volume: solid.volume - gone.volume, moment: minus(solid.moment, gone.moment) };
}

type Round = Bore | ScrewSlot;
const isRound = (f: Feature): f is Round => f.feature === "bore" || f.feature === "screw-slot";

function prismOf({ frame, outline, depth }: PrismCut): Convex {
  const base = outline.map(([x, y]) => outOf(frame, [x, y, 0]));
  return prism(base, turnedOut(frame, [0, 0, depth]));
}

/** A cylinder's volume by its middle line, which slanting ends leave as it is. */
function boreBulk({ from, along, diameter, depth }: Bore): Bulk {
  const volume = (Math.PI / 4) * diameter ** 2 * depth;
  return { volume, moment: times(plus(from, times(along, depth / 2)), volume) };
}

function slotBulk({ x, z, travel, diameter, headDiameter, headDepth }: ScrewSlot, width: number) {
  const area = (d: number) => travel * d + (Math.PI / 4) * d ** 2;
  const bulk = (volume: number, y: number): Bulk => ({ volume, moment: times([x, y, z], volume) });
  return [
    bulk(area(headDiameter) * headDepth, headDepth / 2),
    bulk(area(diameter) * (width - headDepth), (headDepth + width) / 2),
  ];
}
