import type { Frame } from "../../geometry/index.ts";
import { into, plus, times, type Vec3 } from "../../geometry/index.ts";
import { fasteningPlaces, seasonalMove } from "../../joinery/index.ts";
import { type Mm, mm, type PerPct } from "../../units/index.ts";
import { derived, given, type Worked } from "../../worked/index.ts";
import { alongSide, outward, type Side } from "../frame/corner.ts";
import type { FrameAsked, Legs, Rails } from "../frame/frame.ts";
import { shoulderAt } from "../frame/rails.ts";
import type { Making } from "../kind.ts";

/** From one fastening to the next at most; common practice [mm]. */
const MOST_APART = mm(500);

/** A place on a rail's upper edge where the top is held. */
export type Place = {
  readonly side: Side;
  /** from the rail's left shoulder [mm] */
  readonly from: Mm;
  /** on the middle of the rail's thickness, at its upper edge, in the piece */
  readonly at: Vec3;
  /** whether the top is held fast here: at the middle of an end */
  readonly isFixed: boolean;
  /** of the top there, to one side [mm] */
  readonly move: Worked<Mm>;
};

/** Stretches along rails that nothing may be fastened in: from and to, from the left shoulder [mm]. */
export type Kept = Readonly<Record<Side, readonly (readonly [from: number, to: number])[]>>;

/** What is kept clear of fastenings. */
export type Clear = {
  /** of each rail's ends [mm] */
  readonly ends: Mm;
  readonly kept: Kept;
  /** half of a fastening's own size along the rail [mm] */
  readonly half: Mm;
};

/** What of a rail is left for fastenings: its length less its ends and what is kept clear. */
function freeOf(between: Mm, side: Side, { ends, kept, half }: Clear) {
  let free: readonly (readonly [from: number, to: number])[] = [[ends, between - ends]];
  for (const [from, to] of kept[side]) {
    free = free.flatMap(([a, b]) => [
      ...(a < Math.min(b, from - half) ? [[a, Math.min(b, from - half)] as const] : []),
      ...(Math.max(a, to + half) < b ? [[Math.max(a, to + half), b] as const] : []),
    ]);
  }
  return free;
}

/** Fastenings along a rail; without anything kept clear, the rail is one stretch. */
function spotsOn(side: Side, between: Mm, clear: Clear): readonly Mm[] {
  const isEnd = side === "left" || side === "right";
  if (clear.kept[side].length === 0) return fasteningPlaces(between, clear.ends, MOST_APART, isEnd);
  return freeOf(between, side, clear).flatMap(([from, to]) =>
    fasteningPlaces(mm(to - from), mm(0), MOST_APART, false).map((spot) => mm(from + spot)),
  );
}

/**
 * Where the top is held: along each rail, the middles of the ends fast, all else free to move.
 *
 * @param coefficient  of the top, across its width [per % MC]
 */
export function placesOf(
  asked: FrameAsked,
  legs: Legs,
  rails: Rails,
  coefficient: Worked<PerPct>,
  clear: Clear,
  { seasons }: Making,
): readonly Place[] {
  return (["front", "right", "back", "left"] as const).flatMap((side) => {
    const { between, thickness } = rails[side];
    const isEnd = side === "left" || side === "right";
    const spots = spotsOn(side, between, clear);
    const half = (isEnd ? asked.length : asked.width) / 2;
    const middle = plus(times(outward[side], half - asked.setback - thickness / 2), [
      0,
      0,
      asked.height,
    ]);
    return spots.map((from): Place => {
      const at = plus(middle, times(alongSide[side], shoulderAt(side, asked, legs) + from));
      const isFixed = isEnd && Math.abs(from - between / 2) < 1e-6;
      const off = given(
        "from the middle of the top",
        mm(isFixed ? 0 : Math.abs(at[1])),
        "mm",
        derived("geometry of the frame"),
      );
      const move = seasonalMove(off, coefficient, seasons.driest, seasons.dampest, seasons.made);
      return { side, from, at, isFixed, move };
    });
  });
}

/** Places numbered along each side, as their keys count them. */
export const numbered = (places: readonly Place[]): readonly (Place & { readonly n: number })[] =>
  places.map((place, i) => ({
    ...place,
    n: places.slice(0, i).filter((p) => p.side === place.side).length + 1,
  }));

/** Where a place lies in the top's own frame, seen from above. */
export const inTop = (frame: Frame, at: Vec3): readonly [number, number] => {
  const [x, y] = into(frame, at);
  return [x, y];
};
