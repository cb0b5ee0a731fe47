import type { Feature, Joint, Key } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import type { Making, Unmarked } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { endsOf, type Side, wayOf } from "./corner.ts";
import {
  type Block,
  blockJoints,
  blockParts,
  blocksOf,
  type Lead,
  leadsOf,
} from "./corner-blocks.ts";
import type { Fits, FrameAsked, Legs, Rails } from "./frame.ts";
import { legsOf } from "./legs.ts";
import { frameJoints, railsOf } from "./rails.ts";
import { refuseJoints } from "./refuse-joints.ts";
import { refuseSizes, type Sizes } from "./refuse-sizes.ts";
import { settleFits, settleLegs, settleRails } from "./sizes.ts";

/** A frame with all its sizes settled. */
export type Framed = {
  readonly asked: FrameAsked;
  /** of the top over it, for what is refused for want of it [mm] */
  readonly topLength: Mm;
  readonly legs: Legs;
  readonly rails: Rails;
  readonly fits: Fits;
  readonly blocks: readonly Block[];
  readonly leads: readonly Lead[];
  /** length of the tenon at a rail's left end [mm] */
  readonly tenonAt: (side: Side) => Mm;
};

/** Settles a frame; undefined when it was refused, and all that would follow from it is nothing. */
export function settleFrame(
  asked: FrameAsked,
  sizes: Sizes,
  hasBlocks: boolean,
  making: Making,
): Framed | undefined {
  refuseSizes(asked, sizes, making);
  if (making.isRefused()) return undefined;
  const legs = settleLegs(asked, making);
  const rails = settleRails(asked, legs, making);
  const fits = settleFits(asked, legs, rails, making);
  refuseJoints(asked, sizes, legs, rails, fits, making);
  if (making.isRefused()) return undefined;
  const blocks = hasBlocks ? blocksOf(asked, legs, rails) : [];
  const tenonAt = (side: Side) => fits[endsOf[side][0]]?.[wayOf(side)].length ?? mm(0);
  const leads = leadsOf(blocks, asked, legs, rails, tenonAt);
  return { asked, topLength: mm(sizes.length), legs, rails, fits, blocks, leads, tenonAt };
}

/** What the frame is made of: legs and rails first, then its blocks. */
export function frameParts(
  { asked, legs, rails, fits, blocks, leads }: Framed,
  onRails: Readonly<Record<Side, readonly Feature[]>>,
  assembly: Key,
): { readonly sticks: readonly Unmarked[]; readonly blocks: readonly Unmarked[] } {
  const onRail = (side: Side): readonly Feature[] => [
    ...onRails[side],
    ...leads.filter((lead) => lead.side === side).map((lead) => lead.bore),
  ];
  const more = {
    front: onRail("front"),
    back: onRail("back"),
    left: onRail("left"),
    right: onRail("right"),
  };
  return {
    sticks: [
      ...legsOf(asked, legs, fits, assembly),
      ...railsOf(asked, legs, rails, fits, assembly, more),
    ],
    blocks: blockParts(blocks, asked, rails, assembly),
  };
}

/** What ties a frame together. */
export const frameTies = ({ fits, blocks, leads }: Framed, assembly: Key): readonly Joint[] => [
  ...frameJoints(fits, assembly),
  ...blockJoints(blocks, leads, assembly),
];

/** From a rail's shoulder to where a corner block behind it ends; 0 without blocks [mm]. */
export function blocksReach({ asked, legs, blocks }: Framed): number {
  const behindLeg = Math.min(
    ...Object.values(legs).map((leg) => Math.min(leg.width, leg.thickness)),
  );
  const inside = behindLeg - asked.setback - asked.railThickness;
  return Math.max(0, ...blocks.map((block) => block.reach - inside));
}

/**
 * Blocks that leave no place on a rail for what holds the top.
 *
 * @param ends  of a rail, kept clear of fastenings [mm]
 */
export function refuseBlocks({ blocks, rails }: Framed, ends: Mm, { refuse }: Making): void {
  const isTight = Object.values(rails).some(({ between }) => between < 2 * ends - SLACK);
  if (blocks.length === 0 || !isTight) return;
  refuse({
    code: "no-room-for-blocks",
    question: "corner-blocks",
    reason: "Between corner blocks of this size a rail has no place left for what holds the top.",
    use: "no",
  });
}
