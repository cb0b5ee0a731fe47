import type { Making } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { BUTTON_THICK } from "../top/buttons.ts";
import type { Fastening } from "../top/held.ts";
import { NECK } from "../top/screws.ts";
import type { FrameAsked } from "./frame.ts";

/** Least between two legs, so that a rail has wood between its joints [mm]. */
export const LEAST_BETWEEN = 150;
/** Least of a leg that stands free below the rails [mm]. */
const LEAST_BELOW = 100;

export type Sizes = {
  /** [mm] */
  readonly length: number;
  /** [mm] */
  readonly width: number;
  /** [mm] */
  readonly height: number;
  readonly fastening: Fastening;
};

/** Sizes that leave no room for each other, before any joint is laid out. */
export function refuseSizes(asked: FrameAsked, sizes: Sizes, { refuse }: Making): void {
  const room = (question: "length" | "width", over: number, whole: number) => {
    const between = over - 2 * asked.leg;
    if (between >= LEAST_BETWEEN - SLACK) return;
    refuse({
      code: "no-room-between-legs",
      question,
      reason: (show) =>
        `It leaves ${show(Math.max(between, 0))} between the legs, ${show(LEAST_BETWEEN)} are needed.`,
      atLeast: whole + LEAST_BETWEEN - between,
    });
  };
  room("length", asked.length, sizes.length);
  room("width", asked.width, sizes.width);
  const below = asked.height - asked.railWidth;
  const needed = LEAST_BELOW + (asked.legForm === "tapered" ? asked.taperBelow : 0);
  if (below < needed - SLACK) {
    refuse({
      code: "leg-too-short",
      question: "height",
      reason: (show) =>
        `It leaves ${show(Math.max(below, 0))} of leg below the rails, ${show(needed)} are needed.`,
      atLeast: sizes.height + needed - below,
    });
  }
  if (asked.setback + asked.railThickness > asked.leg + SLACK) {
    refuse({
      code: "rail-thicker-than-leg",
      // The leg and not the rail: what asks for a thick rail, such as a button's slot, asks on.
      question: "leg",
      reason: (show) =>
        `A rail of ${show(asked.railThickness)}, set back ${show(asked.setback)}, stands out behind it.`,
      atLeast: asked.setback + asked.railThickness,
    });
  }
  if (asked.legForm === "tapered" && asked.foot > asked.leg + SLACK) {
    refuse({
      code: "foot-wider-than-leg",
      question: "foot",
      reason: (show) => `The leg is ${show(asked.leg)}.`,
      atMost: asked.leg,
    });
  }
  const leastRail = sizes.fastening === "buttons" ? 2 * BUTTON_THICK + 5 : NECK + 10;
  if (asked.railWidth < leastRail - SLACK) {
    refuse({
      code: "rail-too-narrow",
      question: "rail-width",
      reason: `${sizes.fastening === "buttons" ? "A button’s slot" : "A screw’s sunk head"} needs more wood.`,
      atLeast: leastRail,
    });
  }
}
