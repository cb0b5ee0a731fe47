import { corners, railsAt, type Side } from "../frame/corner.ts";
import type { Fits, FrameAsked, Legs, Rails } from "../frame/frame.ts";
import type { Bound, Making } from "../kind.ts";
import { BUTTON_THICK } from "../top/buttons.ts";
import { NECK } from "../top/screws.ts";

/** What rounding may take away from a size that is just right [mm]. */
const SLACK = 1e-6;
/** Least between two legs, so that a rail has wood between its joints [mm]. */
const LEAST_BETWEEN = 150;
/** Least of a leg that stands free below the rails [mm]. */
const LEAST_BELOW = 100;
/** Least wood outside a mortise, and least length of a tenon that counts as one [mm]. */
const LEAST_WALL = 3;
const LEAST_TENON = 10;
/** Least width of a tenon [mm]. */
const LEAST_TENON_WIDTH = 15;

export type Sizes = {
  /** [mm] */
  readonly length: number;
  /** [mm] */
  readonly width: number;
  /** [mm] */
  readonly height: number;
  readonly fastening: "screws in slots" | "buttons";
};

/** Sizes that leave no room for each other, before any joint is laid out. */
export function refuseSizes(asked: FrameAsked, sizes: Sizes, { refuse }: Making): void {
  const room = (question: "length" | "width", over: number, whole: number) => {
    const between = over - 2 * asked.leg;
    if (between >= LEAST_BETWEEN - SLACK) return;
    refuse({
      code: "no-room-between-legs",
      question,
      reason: `It leaves ${Math.max(between, 0).toFixed(0)} mm between the legs, ${LEAST_BETWEEN} are needed.`,
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
      reason: `It leaves ${Math.max(below, 0).toFixed(0)} mm of leg below the rails, ${needed.toFixed(0)} are needed.`,
      atLeast: sizes.height + needed - below,
    });
  }
  if (asked.setback + asked.railThickness > asked.leg + SLACK) {
    refuse({
      code: "rail-thicker-than-leg",
      // The leg and not the rail: what asks for a thick rail, such as a button's slot, asks on.
      question: "leg",
      reason: `A rail of ${asked.railThickness.toFixed(1)} mm, set back ${asked.setback.toFixed(1)} mm, stands out behind it.`,
      atLeast: asked.setback + asked.railThickness,
    });
  }
  if (asked.legForm === "tapered" && asked.foot > asked.leg + SLACK) {
    refuse({
      code: "foot-wider-than-leg",
      question: "foot",
      reason: `The leg is ${asked.leg.toFixed(1)} mm.`,
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

/** The side whose rail runs one way into a corner. */
function sideOf(name: string, way: "long" | "end"): Side {
  const corner = corners.find((one) => one.name === name);
  if (!corner) throw new Error(`the frame has no corner ${name}`);
  return railsAt(corner)[way === "long" ? 0 : 1];
}

/** Joints for which there is no wood. */
export function refuseJoints(
  asked: FrameAsked,
  sizes: Sizes,
  legs: Legs,
  rails: Rails,
  fits: Fits,
  { refuse }: Making,
): void {
  for (const [name, ways] of Object.entries(fits)) {
    for (const way of ["long", "end"] as const) {
      const { wall, length, thickness, upper, lower, railWidth, depthClearance, mortise } =
        ways[way];
      const leg = legs[name]?.[way === "long" ? "width" : "thickness"] ?? asked.leg;
      const place = `${name.replace("-", " ")} leg`;
      const joint = `joint/${name}/${way}`;
      const side = sideOf(name, way);
      const rail = `rail/${side}`;
      const otherWay = way === "long" ? "end" : "long";
      const other = `joint/${name}/${otherWay}`;
      const otherWall = ways[otherWay].wall;
      /** The joint's own value, or that of all its fellows. */
      const shared = (what: string, bound: Bound) =>
        [joint, `tenons/${way}`].map((of) => ({ key: `${of}.${what}`, ...bound }));
      /** The leg's own size along the tenon, larger by so much. */
      const size = (more: number) => [
        { key: `leg/${name}.${way === "long" ? "width" : "thickness"}`, atLeast: leg + more },
      ];
      if (wall < LEAST_WALL - SLACK) {
        refuse({
          code: "mortise-wall-thin",
          question: "setback",
          reason: `In the ${place} ${wall.toFixed(1)} mm of wood are left outside a mortise; ${LEAST_WALL} are needed.`,
          atLeast: asked.setback + LEAST_WALL - wall,
          values: [
            { key: `${joint}.wall`, atLeast: LEAST_WALL },
            {
              key: `${rail}.thickness`,
              atLeast: (rails[side]?.thickness ?? 0) + 2 * (LEAST_WALL - wall),
            },
            ...shared("mortise", { atMost: mortise - 2 * (LEAST_WALL - wall) }),
          ],
        });
      }
      const least = asked.tips === "mitred" ? Math.max(LEAST_TENON, thickness + 5) : LEAST_TENON;
      const most = leg - depthClearance - LEAST_WALL;
      if (length < least - SLACK) {
        refuse({
          code: "tenon-too-short",
          question: "leg",
          reason: `The tenon in the ${place} would be ${Math.max(length, 0).toFixed(1)} mm long; ${least.toFixed(1)} are needed.`,
          atLeast: asked.leg + least - length,
          values: [
            ...shared("length", { atLeast: least }),
            ...size(least - length),
            { key: `${other}.wall`, atMost: otherWall - (least - length) },
          ],
        });
      } else if (length > most + SLACK) {
        refuse({
          code: "tenon-too-long",
          question: "setback",
          reason: `A tenon of ${length.toFixed(1)} mm leaves too little wood behind its mortise in the ${place}.`,
          atLeast: asked.setback + length - most,
          values: [
            ...shared("length", { atMost: most }),
            { key: `${other}.wall`, atLeast: otherWall + length - most },
            {
              key: `rail/${sideOf(name, otherWay)}.thickness`,
              atLeast: ways[otherWay].railThickness + 2 * (length - most),
            },
          ],
        });
      }
      const wide = railWidth - upper - lower;
      if (wide < LEAST_TENON_WIDTH - SLACK) {
        refuse({
          code: "tenon-too-narrow",
          question: "rail-width",
          reason: `Between its shoulders the tenon in the ${place} is ${Math.max(wide, 0).toFixed(1)} mm wide; ${LEAST_TENON_WIDTH} are needed.`,
          atLeast: asked.railWidth + LEAST_TENON_WIDTH - wide,
          values: [
            { key: `${rail}.width`, atLeast: railWidth + LEAST_TENON_WIDTH - wide },
            ...shared("upper", { atMost: upper - (LEAST_TENON_WIDTH - wide) }),
            ...shared("lower", { atMost: lower - (LEAST_TENON_WIDTH - wide) }),
          ],
        });
      }
      if (mortise > leg / 2 + SLACK) {
        refuse({
          code: "mortise-too-wide",
          question: "leg",
          reason: `A mortise of ${mortise.toFixed(1)} mm is more than half of the ${place}.`,
          atLeast: asked.leg + 2 * mortise - leg,
          values: [...shared("mortise", { atMost: leg / 2 }), ...size(2 * mortise - leg)],
        });
      }
    }
  }
  for (const side of ["front", "back", "left", "right"] as const) {
    const { between } = rails[side];
    if (between >= LEAST_BETWEEN - SLACK) continue;
    const isLong = side === "front" || side === "back";
    refuse({
      code: "rail-too-short",
      question: isLong ? "length" : "width",
      reason: `The ${side} rail is ${Math.max(between, 0).toFixed(0)} mm between its shoulders; ${LEAST_BETWEEN} are needed.`,
      atLeast: (isLong ? sizes.length : sizes.width) + LEAST_BETWEEN - between,
      values: [{ key: `rail/${side}.between`, atLeast: LEAST_BETWEEN }],
    });
  }
}
