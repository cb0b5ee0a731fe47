import type { Bore } from "../../piece/index.ts";
import type { FrameAsked } from "../frame/frame.ts";
import type { Making } from "../kind.ts";
import { SLACK } from "../slack.ts";

/** Wood of a top beside a lead hole's middle at least [mm]. */
const BESIDE = 4;

/** What of a top is as thick as it is: along the grain, and across it from one edge to the other [mm]. */
type Full = {
  readonly length: number;
  readonly width: number;
  /** where a leaf's tongue ends at each edge */
  readonly across: readonly [from: number, to: number];
};

/** A top of the maker's own so much smaller than its frame that what holds it would come out beside it. */
export function refuseSmallTop(
  leads: readonly Bore[],
  top: Full,
  frame: Pick<FrameAsked, "length" | "width">,
  { refuse }: Pick<Making, "refuse">,
): void {
  const ways = [
    { way: "length", axis: 0, from: 0, to: top.length },
    { way: "width", axis: 1, from: top.across[0], to: top.across[1] },
  ] as const;
  for (const { way, axis, from, to } of ways) {
    const room = leads.map((lead) => Math.min(lead.from[axis] - from, to - lead.from[axis]));
    const short = BESIDE - Math.min(BESIDE, ...room);
    if (short <= SLACK) continue;
    refuse({
      code: "top-too-small",
      question: way,
      reason: (show) =>
        `Its ${way} is ${show(2 * short)} too small: screws up from the frame would come out beside the top.`,
      atLeast: frame[way],
      // It lies over the middle of its frame, so that half of what is added comes to each edge.
      values: [{ key: `top.${way}`, atLeast: top[way] + 2 * short }],
    });
  }
}
