import { frameOf, into, outOf, plus, times, type Vec3 } from "../../geometry/index.ts";
import { screwLength } from "../../joinery/index.ts";
import type { Bore, Joint, Key } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import type { Unmarked } from "../kind.ts";
import { screwNamed } from "../top/screws.ts";
import { type Corner, corners, railsAt, type Side } from "./corner.ts";
import type { FrameAsked, Legs, Rails } from "./frame.ts";
import { innerCorner, railFrame, shoulderAt } from "./rails.ts";

/** Thickness of a corner block, and how far its short side stands off the leg; common practice [mm]. */
const THICK = 22;
const OFF_LEG = 1.5;
/** Least half of the short side [mm]. */
const LEAST_HALF = 12;
/** Below the rails' upper edge, so that it never lifts the top [mm]. */
const BELOW = 2;
const SHANK = mm(4.5);
const LEAD = mm(3);
/** Nearer to a rail's back than this counts as on it [mm]. */
const ON_FACE = 1e-6;

export type Block = {
  readonly corner: Corner;
  /** of its long side [mm] */
  readonly length: Mm;
  /** up the rail [mm] */
  readonly width: Mm;
  /** from the rails' inner corner along a rail to its long side [mm] */
  readonly reach: Mm;
};

/** A block in each corner: 45° at both ends, its grain across the corner, screwed to both rails. */
export const blocksOf = (asked: FrameAsked, legs: Legs, rails: Rails): readonly Block[] =>
  corners.map((corner) => {
    const [long, end] = railsAt(corner);
    const leg = legs[corner.name];
    if (!leg) throw new Error(`the frame has no leg ${corner.name}`);
    const inX = leg.width - asked.setback - rails[end].thickness;
    const inY = leg.thickness - asked.setback - rails[long].thickness;
    const near = Math.max(LEAST_HALF, (inX + inY) / Math.SQRT2 + OFF_LEG);
    const far = near + THICK;
    return {
      corner,
      length: mm(2 * far),
      width: mm(Math.min(rails[long].width, rails[end].width) - 3 * BELOW),
      reach: mm(far * Math.SQRT2),
    };
  });

/** Its screws leave through the middle of the slanting ends, square to them. */
function screws(block: Block): readonly Bore[] {
  const half = Math.SQRT1_2;
  return (["left", "right"] as const).flatMap((end) =>
    [0.25, 0.75].map((up): Bore => {
      const x = end === "right" ? block.length - THICK : THICK;
      return {
        feature: "bore",
        key: `screw-${end}-${up < 0.5 ? "lower" : "upper"}`,
        from: [x, block.width * up, 0],
        along: [end === "right" ? half : -half, 0, half],
        diameter: SHANK,
        depth: mm(THICK * half),
        isThrough: true,
      };
    }),
  );
}

function poseOf(
  { corner: { name, inX, inY }, length, width }: Block,
  asked: FrameAsked,
  rails: Rails,
) {
  const r = Math.SQRT1_2;
  const x: Vec3 = [inY * r, -inX * r, 0];
  const middle = plus(innerCorner(name, asked, rails), times([inX * r, inY * r, 0], length / 2));
  const low: Vec3 = [0, 0, asked.height - BELOW - width];
  return frameOf(plus(plus(middle, low), times(x, -length / 2)), x, [0, 0, 1]);
}

/** The blocks as parts. */
export const blockParts = (
  blocks: readonly Block[],
  asked: FrameAsked,
  rails: Rails,
  assembly: Key,
): readonly Unmarked[] =>
  blocks.map((block, at): Unmarked => {
    const { corner, length, width } = block;
    return {
      key: `${assembly}/corner-block/${corner.name}`,
      name: `${corner.says} corner block`,
      role: "corner-block",
      blank: { length, width, thickness: mm(THICK) },
      features: [
        { feature: "bevel", key: "bevel-left", end: "left", run: mm(THICK) },
        { feature: "bevel", key: "bevel-right", end: "right", run: mm(THICK) },
        ...screws(block),
      ],
      isMirrored: false,
      pose: poseOf(block, asked, rails),
      reference: { face: "back", edge: "upper" },
      shows: [],
      sawn: "flat",
      triangle: { set: `${assembly}/corner-blocks`, place: at + 1, of: 4 },
      strips: [{ from: mm(0), width, heart: "up", pith: [width / 2, THICK + 40] }],
    };
  });

/** A lead hole in a rail, where a block's screw meets it. */
export type Lead = {
  readonly corner: Corner;
  readonly side: Side;
  readonly screw: Key;
  readonly bore: Bore;
};

/**
 * Lead holes in the rails for the blocks' screws.
 *
 * @param tenonAt  length of the tenon at a rail's left end, by side [mm]
 */
export function leadsOf(
  blocks: readonly Block[],
  asked: FrameAsked,
  legs: Legs,
  rails: Rails,
  tenonAt: (side: Side) => number,
): readonly Lead[] {
  return blocks.flatMap((block) => {
    const pose = poseOf(block, asked, rails);
    return screws(block).flatMap(({ from, along, depth, key }) => {
      const mouth = outOf(pose, plus(from, times(along, depth)));
      return railsAt(block.corner).flatMap((side): Lead[] => {
        const { width, thickness } = rails[side];
        const start = shoulderAt(side, asked, legs) - tenonAt(side);
        const [x, y, z] = into(railFrame(side, asked, width, thickness, start), mouth);
        // The screw comes out at one rail's back; off the other's plane it misses that one.
        if (Math.abs(z) > ON_FACE) return [];
        const bore: Bore = {
          feature: "bore",
          key: `lead-${block.corner.name}-${key}`,
          from: [x, y, 0],
          along: [0, 0, 1],
          diameter: LEAD,
          depth: mm(0.6 * thickness),
          isThrough: false,
        };
        return [{ corner: block.corner, side, screw: key, bore }];
      });
    });
  });
}

/** What ties the blocks to the rails. */
export const blockJoints = (
  blocks: readonly Block[],
  leads: readonly Lead[],
  assembly: Key,
): readonly Joint[] =>
  blocks.map(({ corner }): Joint => {
    const block = `${assembly}/corner-block/${corner.name}`;
    const rail = (side: Side) => `${assembly}/rail/${side}`;
    const own = leads.filter((lead) => lead.corner === corner);
    return {
      key: `${assembly}/joint/${corner.name}/block`,
      kind: "corner-block",
      says: `${corner.says} corner block to both rails`,
      parts: [block, ...railsAt(corner).map(rail)],
      features: own.flatMap(({ screw, side, bore }): (readonly [Key, Key])[] => [
        [block, screw],
        [rail(side), bore.key],
      ]),
      takes: own.map(({ bore }) => screwNamed(screwLength(mm(THICK * Math.SQRT1_2), bore.depth))),
    };
  });
