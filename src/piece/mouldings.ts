import { type Bulk, type Frame, frameOf, plus, times, type Vec3 } from "../geometry/index.ts";
import type { Cut, HalfSpaceCut, PrismCut, QuarterCut } from "./cut.ts";
import type { Cove, RoundOver } from "./feature.ts";
import { OUT } from "./out.ts";
import type { Blank } from "./part.ts";

type Moulding = RoundOver | Cove;

/**
 * Frame across a moulded edge: its origin at the round's centre, x towards the edge or away from it,
 * y up to the show face, z along the grain one way or the other, starting outside the wood.
 */
function across(
  edge: Moulding["edge"],
  centre: readonly [y: number, z: number],
  way: "out" | "in",
  { length }: Blank,
): Frame {
  const isUp = (edge === "upper") === (way === "out");
  const x = isUp ? -OUT : length + OUT;
  return frameOf([x, centre[0], centre[1]], [0, isUp ? 1 : -1, 0], [0, 0, 1]);
}

/** Height of a round's centre over the back. */
const centreHeight = (moulding: Moulding, { thickness }: Blank): number =>
  thickness -
  moulding.radius -
  (moulding.feature === "round-over" ? moulding.fillet : moulding.lip);

/** Frame of a moulding's round, seen across its edge. */
function roundFrame(moulding: Moulding, blank: Blank): Frame {
  const { edge, radius, feature } = moulding;
  const off = feature === "round-over" ? radius : 0;
  const y = edge === "upper" ? blank.width - off : off;
  const way = feature === "round-over" ? "out" : "in";
  return across(edge, [y, centreHeight(moulding, blank)], way, blank);
}

/** What a moulding takes off its blank. */
export function mouldingCuts(moulding: Moulding, blank: Blank): readonly Cut[] {
  const { radius } = moulding;
  const quarter: QuarterCut = {
    cut: "quarter",
    frame: roundFrame(moulding, blank),
    radius,
    leaves: moulding.feature === "round-over" ? "inside" : "outside",
    past:
      moulding.feature === "round-over"
        ? [OUT, moulding.fillet + OUT]
        : // Past its own centre, even where that lies behind the wood: no farther out than the round is wide.
          [OUT, Math.max(0, centreHeight(moulding, blank)) + OUT],
    depth: blank.length + 2 * OUT,
  };
  return [quarter, ...bevelOf(moulding, blank)];
}

/** The lower corner of a round-over's edge, planed off from the round's foot to the back. */
function bevelOf(moulding: Moulding, blank: Blank): readonly HalfSpaceCut[] {
  if (moulding.feature !== "round-over" || !(moulding.bevel > 0)) return [];
  const out = moulding.edge === "upper" ? 1 : -1;
  const high = centreHeight(moulding, blank);
  const size = Math.hypot(high, moulding.bevel);
  return [
    {
      cut: "half-space",
      point: [0, moulding.edge === "upper" ? blank.width : 0, high],
      away: [0, (out * high) / size, -moulding.bevel / size],
    },
  ];
}

/** What of a moulding has plane faces: the step over a round-over and its bevel, or what lies behind a hollow. */
export function planeCutsOf(
  moulding: Moulding,
  blank: Blank,
): readonly (PrismCut | HalfSpaceCut)[] {
  const { radius } = moulding;
  const isHollow = moulding.feature === "cove";
  // A hollow whose centre lies behind the wood has nothing behind it.
  if (isHollow && centreHeight(moulding, blank) <= 0) return [];
  const [from, to] = isHollow
    ? [-centreHeight(moulding, blank) - OUT, 0]
    : [radius, radius + moulding.fillet + OUT];
  const [near, far] = isHollow ? [-OUT, radius] : [0, radius + OUT];
  return [
    {
      cut: "prism",
      frame: roundFrame(moulding, blank),
      outline: [
        [near, from],
        [far, from],
        [far, to],
        [near, to],
      ],
      depth: blank.length + 2 * OUT,
    },
    ...bevelOf(moulding, blank),
  ];
}

/** What of a moulding is round, in closed form: a quarter disc so far as it lies in the wood, or a square less one. */
export function roundBulkOf(moulding: Moulding, blank: Blank): Bulk {
  const { radius } = moulding;
  const isHollow = moulding.feature === "cove";
  const disc = quarterDisc(radius, isHollow ? Math.max(0, -centreHeight(moulding, blank)) : 0);
  const square = { area: radius ** 2, x: radius ** 3 / 2, y: radius ** 3 / 2 };
  const { area, ...first } = isHollow
    ? disc
    : { area: square.area - disc.area, x: square.x - disc.x, y: square.y - disc.y };
  const { origin, x, y } = roundFrame(moulding, blank);
  const from: Vec3 = [blank.length / 2, origin[1], origin[2]];
  const middle = plus(from, plus(times(x, first.x / area), times(y, first.y / area)));
  const volume = area * blank.length;
  return { volume, moment: times(middle, volume) };
}

/**
 * Area of a quarter disc, and its first moments along x and y, so far as it lies over a height.
 *
 * @param radius  [mm]
 * @param over  0 or more, less than the radius [mm]
 */
function quarterDisc(radius: number, over: number) {
  const [R, d] = [radius, over];
  const half = Math.sqrt(R ** 2 - d ** 2);
  return {
    area: (Math.PI / 4) * R ** 2 - (d * half + R ** 2 * Math.asin(d / R)) / 2,
    x: R ** 3 / 3 - (R ** 2 * d - d ** 3 / 3) / 2,
    y: half ** 3 / 3,
  };
}
