import type { TenonFit } from "../../joinery/index.ts";
import type { Key } from "../../piece/index.ts";
import type { Bound, Making, Refused } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { corners, railsAt, type Side, wayOf } from "./corner.ts";
import type { Fits, FrameAsked, Legs, Rails } from "./frame.ts";
import { LEAST_BETWEEN, type Sizes } from "./refuse-sizes.ts";
import { longestTenon } from "./sizes.ts";

/** Least wood outside a mortise, and behind it [mm]. */
const LEAST_WALL = 3;
/** Least length of a tenon that counts as one, and how much longer than thick a mitred one is [mm]. */
const LEAST_TENON = 10;
const OVER_THICKNESS = 5;
const LEAST_TENON_WIDTH = 15;

/** A joint, with all that may be to blame where there is no wood for it. */
type Looked = {
  readonly fit: TenonFit;
  /** the one that comes into the leg from the other side */
  readonly otherFit: TenonFit;
  readonly place: string;
  readonly asked: FrameAsked;
  /** of the leg along the tenon [mm] */
  readonly leg: number;
  /** keys of what may be the maker's own, under the assembly */
  readonly joint: Key;
  readonly other: Key;
  readonly rail: Key;
  readonly otherRail: Key;
  readonly legSize: Key;
  /** the joint's own value, or that of all its fellows */
  readonly shared: (what: string, bound: Bound) => readonly ({ readonly key: Key } & Bound)[];
};

/** Joints for which there is no wood, and sizes of the maker's own that cannot be joined. */
export function refuseJoints(
  asked: FrameAsked,
  sizes: Sizes,
  legs: Legs,
  rails: Rails,
  fits: Fits,
  making: Making,
): void {
  for (const corner of corners) {
    const [ways, size] = [fits[corner.name], legs[corner.name]];
    if (!ways || !size) throw new Error(`the frame has no corner ${corner.name}`);
    for (const side of railsAt(corner)) {
      const looked = lookedAt(corner.name, side, asked, size, ways);
      const refused = rules.flatMap((rule) => rule(looked, making) ?? []);
      refused.forEach(making.refuse);
    }
    refuseFoot(asked, corner.name, size, making);
  }
  refuseShortRails(sizes, rails, making);
}

function lookedAt(
  name: (typeof corners)[number]["name"],
  side: Side,
  asked: FrameAsked,
  size: Legs[string],
  ways: Fits[string],
): Looked {
  const corner = corners.find((one) => one.name === name);
  if (!corner || !size || !ways) throw new Error(`the frame has no corner ${name}`);
  const way = wayOf(side);
  const otherWay = way === "long" ? "end" : "long";
  const [long, end] = railsAt(corner);
  const along = way === "long" ? "width" : "thickness";
  const joint = `joint/${name}/${way}`;
  return {
    fit: ways[way],
    otherFit: ways[otherWay],
    place: `${corner.says} leg`,
    asked,
    leg: size[along],
    joint,
    other: `joint/${name}/${otherWay}`,
    rail: `rail/${side}`,
    otherRail: `rail/${way === "long" ? end : long}`,
    legSize: `leg/${name}.${along}`,
    shared: (what, bound) =>
      [joint, `tenons/${way}`].map((of) => ({ key: `${of}.${what}`, ...bound })),
  };
}

type Rule = (looked: Looked, making: Making) => Refused | undefined;

const thinWall: Rule = ({ fit, asked, place, joint, rail, shared }) => {
  const short = LEAST_WALL - fit.wall;
  if (short <= SLACK) return undefined;
  return {
    code: "mortise-wall-thin",
    question: "setback",
    reason: (show) =>
      `In the ${place} ${show(fit.wall)} of wood are left outside a mortise; ${show(LEAST_WALL)} are needed.`,
    atLeast: asked.setback + short,
    values: [
      { key: `${joint}.wall`, atLeast: LEAST_WALL },
      { key: `${rail}.thickness`, atLeast: fit.railThickness + 2 * short },
      ...shared("mortise", { atMost: fit.mortise - 2 * short }),
    ],
  };
};

/** Room between the least and the most in which a size can be typed, a 64th of an inch too [mm]. */
const WRITABLE = 0.5;

const shortTenon: Rule = (looked, making) => {
  const { fit, otherFit, asked, place, leg, legSize, other, otherRail, shared } = looked;
  const least = fit.isMitred ? Math.max(LEAST_TENON, fit.thickness + OVER_THICKNESS) : LEAST_TENON;
  const short = least - fit.length;
  if (short <= SLACK) return undefined;
  // A length of the maker's own is to blame only where the leg has room for a longer one.
  const more = least + WRITABLE - mostOf(looked, making);
  const own = more <= SLACK ? shared("length", { atLeast: least }) : [];
  const missing = Math.max(more, 0) || short;
  return {
    code: "tenon-too-short",
    question: "leg",
    reason: (show) =>
      `The tenon in the ${place} would be ${show(Math.max(fit.length, 0))} long; ${show(least)} are needed.`,
    atLeast: asked.leg + missing,
    values: [
      ...own,
      { key: legSize, atLeast: leg + missing },
      { key: `${other}.wall`, atMost: otherFit.wall - missing },
      { key: `${otherRail}.thickness`, atMost: otherFit.railThickness - 2 * missing },
    ],
  };
};

/** The longest tenon that leaves wood behind its mortise and keeps clear of the other one. */
const mostOf = ({ fit, otherFit, asked, leg }: Looked, making: Making): number =>
  Math.min(leg - fit.depthClearance - LEAST_WALL, longestTenon(asked, leg, fit, otherFit, making));

/** It would come out of the leg, or meet the one from the other side. */
const longTenon: Rule = (looked, making) => {
  const { fit, otherFit, asked, place, other, otherRail, shared } = looked;
  const most = mostOf(looked, making);
  const over = fit.length - most;
  if (over <= SLACK) return undefined;
  return {
    code: "tenon-too-long",
    question: "setback",
    reason: (show) =>
      `A tenon of ${show(fit.length)} leaves too little wood in the ${place}, or meets the other; ${show(most)} is the most.`,
    atLeast: asked.setback + over,
    values: [
      ...shared("length", { atMost: most }),
      { key: `${other}.wall`, atLeast: otherFit.wall + over },
      { key: `${otherRail}.thickness`, atLeast: otherFit.railThickness + 2 * over },
    ],
  };
};

const narrowTenon: Rule = ({ fit, asked, place, rail, shared }) => {
  const { railWidth, upper, lower } = fit;
  const short = LEAST_TENON_WIDTH - (railWidth - upper - lower);
  if (short <= SLACK) return undefined;
  return {
    code: "tenon-too-narrow",
    question: "rail-width",
    reason: (show) =>
      `Between its shoulders the tenon in the ${place} is ${show(Math.max(LEAST_TENON_WIDTH - short, 0))} wide; ${show(LEAST_TENON_WIDTH)} are needed.`,
    atLeast: asked.railWidth + short,
    values: [
      { key: `${rail}.width`, atLeast: railWidth + short },
      ...shared("upper", { atMost: upper - short }),
      ...shared("lower", { atMost: lower - short }),
    ],
  };
};

/** The leg's top must close the mortise, or the haunch has nothing to stand in. */
const openMortise: Rule = ({ fit, place, shared }) => {
  const least = fit.widthClearance / 2 + (fit.haunch ? 2 : 0);
  if (fit.upper >= least - SLACK) return undefined;
  return {
    code: "mortise-open",
    question: "haunch",
    reason: `The mortise in the ${place} would run out at the leg's top.`,
    use: "none",
    values: shared("upper", { atLeast: Math.max(least, 6) }),
  };
};

const wideMortise: Rule = ({ fit, asked, place, leg, legSize, shared }) => {
  if (fit.mortise <= leg / 2 + SLACK) return undefined;
  return {
    code: "mortise-too-wide",
    question: "leg",
    reason: (show) => `A mortise of ${show(fit.mortise)} is more than half of the ${place}.`,
    atLeast: asked.leg + 2 * fit.mortise - leg,
    values: [...shared("mortise", { atMost: leg / 2 }), { key: legSize, atLeast: 2 * fit.mortise }],
  };
};

const thickTenon: Rule = ({ fit, asked, place, joint, shared }) => {
  if (fit.thickness <= fit.mortise + SLACK) return undefined;
  return {
    code: "tenon-too-thick",
    question: "rail-thickness",
    reason: (show) =>
      `A tenon of ${show(fit.thickness)} does not go into a mortise of ${show(fit.mortise)} in the ${place}.`,
    atLeast: asked.railThickness,
    values: [
      { key: `${joint}.thickness`, atMost: fit.mortise },
      ...shared("mortise", { atLeast: fit.thickness }),
    ],
  };
};

/** The tenon must be within its rail, however the mortise was moved. */
const tenonBeside: Rule = ({ fit, asked, place, joint, rail }) => {
  const inner = fit.wall + fit.mortise - fit.setback - fit.railThickness;
  const outer = fit.setback - fit.wall;
  const over = Math.max(inner, outer);
  if (over <= SLACK) return undefined;
  const bound: Bound =
    inner > outer
      ? { atMost: fit.setback + fit.railThickness - fit.mortise }
      : { atLeast: fit.setback };
  return {
    code: "tenon-beside-rail",
    question: "rail-thickness",
    reason: (show) =>
      `The mortise in the ${place} lies ${show(over)} outside the rail that is to fill it.`,
    atLeast: asked.railThickness + over,
    values: [
      { key: `${joint}.wall`, ...bound },
      { key: `${rail}.thickness`, atLeast: fit.railThickness + over },
    ],
  };
};

const longHaunch: Rule = ({ fit, place, shared }) => {
  const most = fit.length - (fit.isMitred ? fit.thickness : 2);
  const length = fit.haunch?.length ?? 0;
  if (length <= most + SLACK) return undefined;
  return {
    code: "haunch-too-long",
    question: "haunch",
    reason: (show) =>
      `A haunch of ${show(length)} is as long as the tenon beside it in the ${place}; ${show(most)} is the most.`,
    use: "none",
    values: shared("haunch", { atMost: most }),
  };
};

const rules: readonly Rule[] = [
  thinWall,
  shortTenon,
  longTenon,
  narrowTenon,
  openMortise,
  wideMortise,
  thickTenon,
  tenonBeside,
  longHaunch,
];

/** A leg that was measured thinner than the foot it is to taper to. */
function refuseFoot(asked: FrameAsked, name: string, size: Legs[string], { refuse }: Making): void {
  const least = Math.min(size?.width ?? asked.leg, size?.thickness ?? asked.leg);
  // Wider than the leg that was asked for is refused before.
  if (asked.legForm !== "tapered" || asked.foot > asked.leg || asked.foot <= least + SLACK) return;
  refuse({
    code: "foot-wider-than-measured-leg",
    question: "foot",
    reason: (show) => `The ${name.replace("-", " ")} leg is ${show(least)}.`,
    atMost: least,
  });
}

function refuseShortRails(sizes: Sizes, rails: Rails, { refuse }: Making): void {
  for (const side of ["front", "back", "left", "right"] as const) {
    const { between } = rails[side];
    if (between >= LEAST_BETWEEN - SLACK) continue;
    const isLong = wayOf(side) === "long";
    refuse({
      code: "rail-too-short",
      question: isLong ? "length" : "width",
      reason: (show) =>
        `The ${side} rail is ${show(Math.max(between, 0))} between its shoulders; ${show(LEAST_BETWEEN)} are needed.`,
      atLeast: (isLong ? sizes.length : sizes.width) + LEAST_BETWEEN - between,
      values: [{ key: `rail/${side}.between`, atLeast: LEAST_BETWEEN }],
    });
  }
}
