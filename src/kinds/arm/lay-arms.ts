import { type Mm, mm } from "../../units/index.ts";
import { endsOf, type Side } from "../frame/corner.ts";
import { blocksReach, type Framed } from "../frame/framed.ts";
import type { Making } from "../kind.ts";
import { SLACK } from "../slack.ts";
import type { ArmSizes } from "./settle-arms.ts";

/** Solid rail left between a shoulder and an opening, and between two openings; common practice [mm]. */
const FROM_SHOULDER = 40;
const BETWEEN = 90;
/** Air between a tail as it sweeps and a corner block [mm]. */
const FROM_BLOCK = 5;
/** Two arms bear a leaf this share of the rail in from its ends; common practice. */
const IN_FROM_ENDS = 0.25;

/** An end this many times as long as the rail is thick, and a little, turns out of it. */
const TIMES_THICK = 1.5;
const MORE = 6;
/** Room between the least and the most in which a size can be typed, a 64th of an inch too [mm]. */
const WRITABLE = 0.5;

/**
 * Shortest end of an arm that still turns out of its rail.
 *
 * @param thickness  of the rail [mm]
 */
export const shortestEnd = ({ offset }: ArmSizes, thickness: number): number =>
  TIMES_THICK * (thickness + 2 * Math.abs(offset.value)) + MORE;

/** Where an arm turns in a rail. */
export type ArmPlace = {
  readonly side: Side;
  /** counted from the rail's left end as it is seen from outside, from 1 [pieces] */
  readonly n: number;
  /** from the rail's left shoulder [mm] */
  readonly pivot: Mm;
  /** which way its reaching end lies, closed */
  readonly way: "right" | "left";
  /** its opening, with both saw cuts, from the left shoulder [mm] */
  readonly opening: readonly [from: number, to: number];
};

/**
 * How far an arm's opening goes from its pivot, at its longest corners.
 *
 * @param thickness  of the rail [mm]
 */
export function halvesOf(arms: ArmSizes, thickness: number) {
  const slope = Math.tan((arms.angle.value * Math.PI) / 180);
  const cut = arms.kerf.value * Math.hypot(1, slope);
  const [outer, inner] = [thickness / 2 - arms.offset.value, thickness / 2 + arms.offset.value];
  return {
    outer,
    inner,
    slope,
    cut,
    reach: arms.reach.value + outer * slope + cut,
    tail: arms.tail.value + inner * slope + cut,
  };
}

/** Arms on a rail: one in its middle, or two that reach towards each other. */
export function layArms(
  side: Side,
  arms: ArmSizes,
  framed: Framed,
  making: Making,
): readonly ArmPlace[] {
  const { between, thickness } = framed.rails[side];
  const half = halvesOf(arms, thickness);
  const least = leastPivot(half.tail, arms, thickness, framed);
  const isOne = arms.count === 1;
  const most = isOne
    ? between - FROM_SHOULDER - half.reach
    : between / 2 - BETWEEN / 2 - half.reach;
  refuseShort(side, least - most, arms, framed, making);
  const wished = isOne ? between / 2 : between * IN_FROM_ENDS;
  const pivot = Math.min(Math.max(wished, least), Math.max(least, most));
  const first: ArmPlace = {
    side,
    n: 1,
    pivot: mm(pivot),
    way: "right",
    opening: [pivot - half.tail, pivot + half.reach],
  };
  if (isOne) return [first];
  const other = between - pivot;
  const opening = [other - half.reach, other + half.tail] as const;
  return [first, { side, n: 2, pivot: mm(other), way: "left", opening }];
}

/** Nearest that a pivot may be to the shoulder its tail points to. */
function leastPivot(tail: number, arms: ArmSizes, thickness: number, framed: Framed): number {
  const blocks = blocksReach(framed);
  const swept = Math.hypot(arms.tail.value, thickness);
  return Math.max(FROM_SHOULDER + tail, blocks > 0 ? blocks + swept + FROM_BLOCK : 0);
}

/** Arms that do not go into their rail. */
function refuseShort(
  side: Side,
  missing: number,
  arms: ArmSizes,
  framed: Framed,
  { refuse }: Making,
): void {
  if (missing <= SLACK) return;
  const { asked } = framed;
  const more = arms.count === 1 ? missing : 2 * missing;
  const least = shortestEnd(arms, framed.rails[side].thickness) + WRITABLE;
  // An end of the maker's own is to blame only so far as a shorter one still turns out of the rail.
  const shorter = (end: "reach" | "tail", most: number) =>
    most >= least ? [{ key: `arms.${end}`, atMost: most }] : [];
  refuse({
    code: "no-room-for-arms",
    question: "length",
    reason: (show) =>
      `The ${side} rail is ${show(more)} too short for its arms and the wood beside them.`,
    atLeast: framed.topLength + more,
    values: [
      { key: `rail/${side}.between`, atLeast: framed.rails[side].between + more },
      ...shorter("reach", arms.reach.value - missing),
      ...shorter("tail", arms.tail.value - 1.1 * missing),
      ...endsOf[side].flatMap((name) =>
        (framed.legs[name]?.width ?? 0) > asked.leg + SLACK
          ? [{ key: `leg/${name}.width`, atMost: asked.leg }]
          : [],
      ),
    ],
  });
}
