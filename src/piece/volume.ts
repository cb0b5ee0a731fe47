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
import type { Cut, PrismCut } from "./cut.ts";
import { cutsOf } from "./cuts-of.ts";
import type { Bore, Cove, Feature, RoundOver, ScrewSlot } from "./feature.ts";
import { planeCutsOf, roundBulkOf } from "./mouldings.ts";
import type { Blank, Part } from "./part.ts";

/**
 * Volume and first moment of a part in its unmirrored pattern, in closed form: plane cuts by exact
 * division into convex bodies, round ones by their formulas. Round cuts are taken as meeting no
 * other cut of the part.
 */
export function bulkOfPart(part: Pick<Part, "blank" | "features">): Bulk {
  const { blank, features } = part;
  const holes = features.flatMap((f) => roundBulk(f, blank));
  const solid = sumBulk(bodiesOfPart(part).map(bulkOf));
  const gone = sumBulk(holes);
  return { volume: solid.volume - gone.volume, moment: minus(solid.moment, gone.moment) };
}

/**
 * A part's wood as convex bodies that do not overlap, in its unmirrored pattern; what is round is
 * still full, so that the bodies hold all of the wood and a little more.
 */
export function bodiesOfPart({ blank, features }: Pick<Part, "blank" | "features">) {
  const size: Vec3 = [blank.length, blank.width, blank.thickness];
  let bodies: readonly Convex[] = [box(size)];
  for (const cut of features.flatMap((f) => planeCuts(f, blank))) {
    if (cut.cut === "half-space") {
      bodies = bodies.map((b) => clipped(b, cut)).filter((b) => b.length > 0);
    } else if (cut.cut === "prism") {
      const cutter = prismOf(cut);
      bodies = bodies.flatMap((b) => (isBeside(b, cutter) ? [b] : difference(b, cutter)));
    } else throw new Error(`a plane feature made a ${cut.cut}`);
  }
  return bodies;
}

/** Most cuts of a long part lie beside most of its bodies, which a look along the axes tells. */
const isBeside = (one: Convex, other: Convex): boolean => {
  const [a, b] = [boundsOf(one), boundsOf(other)];
  return ([0, 1, 2] as const).some((i) => a.to[i] <= b.from[i] || b.to[i] <= a.from[i]);
};

function boundsOf(body: Convex): { readonly from: Vec3; readonly to: Vec3 } {
  const from: [number, number, number] = [Infinity, Infinity, Infinity];
  const to: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const face of body)
    for (const corner of face)
      for (const i of [0, 1, 2] as const) {
        from[i] = Math.min(from[i], corner[i]);
        to[i] = Math.max(to[i], corner[i]);
      }
  return { from, to };
}

const isMoulding = (f: Feature): f is RoundOver | Cove =>
  f.feature === "round-over" || f.feature === "cove";

function planeCuts(feature: Feature, blank: Blank): readonly Cut[] {
  if (feature.feature === "bore" || feature.feature === "screw-slot") return [];
  return isMoulding(feature) ? planeCutsOf(feature, blank) : cutsOf(feature, blank);
}

function roundBulk(feature: Feature, blank: Blank): readonly Bulk[] {
  if (feature.feature === "bore") return boreBulks(feature);
  if (feature.feature === "screw-slot") return slotBulk(feature, blank.width);
  return isMoulding(feature) ? [roundBulkOf(feature, blank)] : [];
}

function prismOf({ frame, outline, depth }: PrismCut): Convex {
  const base = outline.map(([x, y]) => outOf(frame, [x, y, 0]));
  return prism(base, turnedOut(frame, [0, 0, depth]));
}

/** A cylinder's volume by its middle line, which slanting ends leave as it is; and its countersink. */
function boreBulks({ from, along, diameter, depth, sink }: Bore): readonly Bulk[] {
  const volume = (Math.PI / 4) * diameter ** 2 * depth;
  const hole = { volume, moment: times(plus(from, times(along, depth / 2)), volume) };
  if (!sink) return [hole];
  const [D, d, s] = [sink.diameter, diameter, sink.depth];
  const cone = (Math.PI / 12) * s * (D ** 2 + D * d + d ** 2);
  const middle = ((s / 4) * (D ** 2 + 2 * D * d + 3 * d ** 2)) / (D ** 2 + D * d + d ** 2);
  const within = (Math.PI / 4) * d ** 2 * s;
  const first = cone * middle - (within * s) / 2;
  const more = cone - within;
  return [hole, { volume: more, moment: plus(times(from, more), times(along, first)) }];
}

function slotBulk({ x, z, travel, diameter, headDiameter, headDepth }: ScrewSlot, width: number) {
  const area = (d: number) => travel * d + (Math.PI / 4) * d ** 2;
  const bulk = (volume: number, y: number): Bulk => ({ volume, moment: times([x, y, z], volume) });
  return [
    bulk(area(headDiameter) * headDepth, headDepth / 2),
    bulk(area(diameter) * (width - headDepth), (headDepth + width) / 2),
  ];
}
