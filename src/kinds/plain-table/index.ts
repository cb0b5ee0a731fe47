import type { Feature } from "../../piece/index.ts";
import { plainly } from "../../piece/index.ts";
import { mm } from "../../units/index.ts";
import { endsOf, type Side, wayOf } from "../frame/corner.ts";
import { type Block, blockJoints, blockParts, blocksOf, leadsOf } from "../frame/corner-blocks.ts";
import type { FrameAsked, Legs } from "../frame/frame.ts";
import { legsOf } from "../frame/legs.ts";
import { frameJoints, railsOf } from "../frame/rails.ts";
import { settleFits, settleLegs, settleRails } from "../frame/sizes.ts";
import { kind, type Made, type Making } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { BUTTON_WIDTH, buttoned } from "../top/buttons.ts";
import { placesOf } from "../top/places.ts";
import { screwed } from "../top/screws.ts";
import { type TopAsked, topCoefficient, topFrame, topJoints, topPart } from "../top/top.ts";
import { asks, groups, type PlainTableAnswers } from "./asks.ts";
import { refuseJoints } from "./refuse-joints.ts";
import { refuseSizes } from "./refuse-sizes.ts";

/** Kept clear at a rail's ends for the fastenings' own size, and for glue on the blocks [mm]. */
const FROM_ENDS = 60;
const FROM_BLOCK = 12;

/** Four legs, four rails, a top that may move. */
export const plainTable = kind({
  name: "plain-table",
  title: "Plain table",
  tells: "four legs, four rails with mortise and tenon, a glued-up top",
  asks,
  groups,
  make,
});

const nothing: Made = { parts: [], joints: [] };

function make(given: PlainTableAnswers, making: Making): Made {
  const { assembly, settle, species, refuse } = making;
  const top: TopAsked = {
    length: settle("top.length", "top, length", plainly("length of the top", given.length.value)),
    width: settle("top.width", "top, width", plainly("width of the top", given.width.value)),
    thickness: settle(
      "top.thickness",
      "top, thickness",
      plainly("thickness of the top", given["top-thickness"].value),
    ),
    widest: given["widest-strip"].value,
    sawn: given.sawn,
    hearts: given.hearts,
  };
  const asked: FrameAsked = {
    length: mm(given.length.value - 2 * given["end-overhang"].value),
    width: mm(given.width.value - 2 * given["side-overhang"].value),
    height: mm(given.height.value - top.thickness),
    leg: given.leg.value,
    legForm: given["leg-form"],
    foot: given.foot.value,
    taperBelow: given["taper-start"].value,
    railWidth: given["rail-width"].value,
    railThickness: given["rail-thickness"].value,
    setback: given.setback.value,
    tips: given.tips,
    haunch: given.haunch,
  };
  const sizes = {
    length: given.length.value,
    width: given.width.value,
    height: given.height.value,
    fastening: given.fastening,
  };
  refuseSizes(asked, sizes, making);
  if (making.isRefused()) return nothing;
  const legs = settleLegs(asked, making);
  const rails = settleRails(asked, legs, making);
  const fits = settleFits(asked, legs, rails, making);
  refuseJoints(asked, sizes, legs, rails, fits, making);
  if (making.isRefused()) return nothing;

  const blocks = given["corner-blocks"] === "yes" ? blocksOf(asked, legs, rails) : [];
  const tenonAt = (side: Side) => fits[endsOf[side][0]]?.[wayOf(side)].length ?? 0;
  const leads = leadsOf(blocks, asked, legs, rails, tenonAt);
  const ends = fromEnds(blocks, asked, legs, given.fastening);
  refuseBlocks(blocks, rails, ends, refuse);

  const frame = topFrame(top.length, top.width, asked.height);
  const places = placesOf(asked, legs, rails, topCoefficient(top.sawn, species), ends, making);
  const held =
    given.fastening === "buttons"
      ? buttoned(places, rails, tenonAt, top.thickness, frame, making)
      : { parts: [], ...screwed(places, rails, tenonAt, top.thickness, frame, making) };

  const onRail = (side: Side): readonly Feature[] => [
    ...held.onRails[side],
    ...leads.filter((lead) => lead.side === side).map((lead) => lead.bore),
  ];
  const more = {
    front: onRail("front"),
    back: onRail("back"),
    left: onRail("left"),
    right: onRail("right"),
  };
  return {
    parts: [
      ...legsOf(asked, legs, fits, assembly),
      ...railsOf(asked, legs, rails, fits, assembly, more),
      topPart(top, asked.height, held.inTop, assembly),
      ...blockParts(blocks, asked, rails, assembly),
      ...held.parts,
    ],
    joints: [
      ...frameJoints(fits, assembly),
      ...blockJoints(blocks, leads, assembly),
      ...held.joints,
      ...topJoints(top, assembly),
    ],
  };
}

/** Clear of the legs that stand in behind the rails, of corner blocks, and of one another in the corners. */
function fromEnds(blocks: readonly Block[], asked: FrameAsked, legs: Legs, fastening: string) {
  const own = fastening === "buttons" ? BUTTON_WIDTH / 2 + FROM_ENDS : FROM_ENDS / 2;
  const behindLeg = Math.min(
    ...Object.values(legs).map((leg) => Math.min(leg.width, leg.thickness)),
  );
  const inside = behindLeg - asked.setback - asked.railThickness;
  const past = Math.max(0, ...blocks.map((block) => block.reach - inside));
  const half = fastening === "buttons" ? BUTTON_WIDTH / 2 + FROM_BLOCK : FROM_BLOCK;
  return mm(Math.max(own, past > 0 ? past + half : 0));
}

/** Blocks that leave no place on a rail for what holds the top. */
function refuseBlocks(
  blocks: readonly Block[],
  rails: ReturnType<typeof settleRails>,
  ends: number,
  refuse: Making["refuse"],
): void {
  const isTight = Object.values(rails).some(({ between }) => between < 2 * ends - SLACK);
  if (blocks.length === 0 || !isTight) return;
  refuse({
    code: "no-room-for-blocks",
    question: "corner-blocks",
    reason: "Between corner blocks of this size a rail has no place left for what holds the top.",
    use: "no",
  });
}
