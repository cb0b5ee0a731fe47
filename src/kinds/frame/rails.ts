import { frameOf, minus, plus, times, type Vec3 } from "../../geometry/index.ts";
import { gluedCheeks, tenonOf } from "../../joinery/index.ts";
import type { Feature, Joint, Key } from "../../piece/index.ts";
import { mm } from "../../units/index.ts";
import type { Unmarked } from "../kind.ts";
import { alongSide, corners, endsOf, outward, railsAt, type Side, wayOf } from "./corner.ts";
import type { Fits, FrameAsked, Legs, Rails } from "./frame.ts";

const sides: readonly Side[] = ["front", "right", "back", "left"];

/**
 * The rails: show face out, upper edge flush with the legs' tops.
 *
 * @param more  further features of each, by side
 */
export function railsOf(
  asked: FrameAsked,
  legs: Legs,
  rails: Rails,
  fits: Fits,
  assembly: Key,
  more: Readonly<Record<Side, readonly Feature[]>>,
): readonly Unmarked[] {
  return sides.map((side, at): Unmarked => {
    const { between, width, thickness } = rails[side];
    const [left, right] = endsOf[side].map((name) => fits[name]?.[wayOf(side)]);
    if (!left || !right) throw new Error(`the ${side} rail has no joints`);
    return {
      key: `${assembly}/rail/${side}`,
      name: `${side} rail`,
      role: "rail",
      blank: { length: mm(between + left.length + right.length), width, thickness },
      features: [
        tenonOf(left, "tenon-left", "left"),
        tenonOf(right, "tenon-right", "right"),
        ...more[side],
      ],
      isMirrored: false,
      pose: railFrame(
        side,
        asked,
        rails[side].width,
        thickness,
        shoulderAt(side, asked, legs) - left.length,
      ),
      reference: { face: "show", edge: "upper" },
      shows: ["show", "lower"],
      sawn: "flat",
      triangle: { set: `${assembly}/rails`, place: at + 1, of: 4 },
      strips: [{ from: mm(0), width, heart: "up", pith: [width / 2, thickness + 55] }],
    };
  });
}

/** Where a rail's left shoulder stands along its side, from the middle [mm]. */
export function shoulderAt(side: Side, asked: FrameAsked, legs: Legs): number {
  const leg = legs[endsOf[side][0]];
  if (!leg) throw new Error(`the ${side} rail has no leg at its left`);
  return wayOf(side) === "long" ? leg.width - asked.length / 2 : leg.thickness - asked.width / 2;
}

/**
 * The frame of a rail whose left end is at `start` from the middle of its side.
 *
 * @param start  along the side, as it is seen from outside [mm]
 * @param width  of the rail [mm]
 * @param thickness  of the rail [mm]
 */
export function railFrame(
  side: Side,
  asked: FrameAsked,
  width: number,
  thickness: number,
  start: number,
) {
  const half = (wayOf(side) === "long" ? asked.width : asked.length) / 2;
  const out: Vec3 = outward[side];
  const back = times(out, half - asked.setback - thickness);
  const lower: Vec3 = [0, 0, asked.height - width];
  return frameOf(
    plus(plus(back, lower), times(alongSide[side], start)),
    alongSide[side],
    [0, 0, 1],
  );
}

/** The eight joints. */
export function frameJoints(fits: Fits, assembly: Key): readonly Joint[] {
  return corners.flatMap((corner) => {
    const fit = fits[corner.name];
    if (!fit) throw new Error(`the frame has no corner ${corner.name}`);
    const leg = `${assembly}/leg/${corner.name}`;
    return railsAt(corner).map((side): Joint => {
      const way = wayOf(side);
      const rail = `${assembly}/rail/${side}`;
      const end = endsOf[side][0] === corner.name ? "left" : "right";
      return {
        key: `${assembly}/joint/${corner.name}/${way}`,
        kind: "mortise-and-tenon",
        says: `${side} rail into the ${corner.says} leg`,
        parts: [leg, rail],
        features: [
          [leg, `mortise-${way}`],
          [rail, `tenon-${end}`],
        ],
        glued: gluedCheeks(fit[way]),
        takes: [],
      };
    });
  });
}

/** The inner corner of the rails' back faces, seen from above. */
export function innerCorner(name: string, asked: FrameAsked, rails: Rails): Vec3 {
  const corner = corners.find((c) => c.name === name);
  if (!corner) throw new Error(`the frame has no corner ${name}`);
  const [long, end] = railsAt(corner);
  const from: Vec3 = [(-corner.inX * asked.length) / 2, (-corner.inY * asked.width) / 2, 0];
  return minus(from, [
    -corner.inX * (asked.setback + rails[end].thickness),
    -corner.inY * (asked.setback + rails[long].thickness),
    0,
  ]);
}
