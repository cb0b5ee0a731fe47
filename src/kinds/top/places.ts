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

/**
 * Where the top is held: along each rail, the middles of the ends fast, all else free to move.
 *
 * @param coefficient  of the top, across its width [per % MC]
 * @param fromEnds  of a rail, kept clear [mm]
 */
export function placesOf(
  asked: FrameAsked,
  legs: Legs,
  rails: Rails,
  coefficient: Worked<PerPct>,
  fromEnds: Mm,
  { seasons }: Making,
): readonly Place[] {
  return (["front", "right", "back", "left"] as const).flatMap((side) => {
    const { between, thickness } = rails[side];
    const isEnd = side === "left" || side === "right";
    const spots = fasteningPlaces(between, fromEnds, MOST_APART, isEnd);
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
