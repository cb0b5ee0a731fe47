import {
  betweenLegs,
  buttedTenon,
  haunchLength,
  mitredTenon,
  mortiseWidth,
  outerWall,
  type TenonFit,
  tenonThickness,
  upperShoulder,
} from "../../joinery/index.ts";
import { plainly } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import { commonPractice, given, type Worked } from "../../worked/index.ts";
import type { Making } from "../kind.ts";
import { corners, railsAt, type Side } from "./corner.ts";
import type { Fits, FrameAsked, LegSize, Legs, Rails } from "./frame.ts";

/** Wood left between two square-ended mortises; common practice [mm]. */
const BETWEEN = given("wood left between the mortises", mm(3), "mm", commonPractice);
/** Between two mitred tips; common practice [mm]. */
const TIP_GAP = given("gap between the mitred tips", mm(1.5), "mm", commonPractice);
const LOWER = given("from the rail’s lower edge up to the tenon", mm(6), "mm", commonPractice);

/** Sizes of the four legs. */
export function settleLegs(asked: FrameAsked, { settle }: Making): Legs {
  return Object.fromEntries(
    corners.map(({ name, says }) => {
      const size = (what: keyof LegSize, words: string, value: Mm) =>
        settle(`leg/${name}.${what}`, `${says} leg, ${words}`, plainly(words, value));
      return [
        name,
        {
          length: size("length", "length", asked.height),
          width: size("width", "along the frame", asked.leg),
          thickness: size("thickness", "across the frame", asked.leg),
        },
      ];
    }),
  );
}

const legOf = (legs: Legs, name: string): LegSize => {
  const leg = legs[name];
  if (!leg) throw new Error(`the frame has no leg ${name}`);
  return leg;
};

/** Sizes of the four rails: what the legs leave between them. */
export function settleRails(asked: FrameAsked, legs: Legs, { settle }: Making): Rails {
  const rail = (side: Side, over: Mm, one: Mm, other: Mm) => {
    const size = (what: string, words: string, computed: Worked<Mm>) =>
      settle(`rail/${side}.${what}`, `${side} rail, ${words}`, computed);
    return {
      between: size("between", "between its shoulders", betweenLegs(over, one, other)),
      width: size("width", "width", plainly("width of the rails", asked.railWidth)),
      thickness: size(
        "thickness",
        "thickness",
        plainly("thickness of the rails", asked.railThickness),
      ),
    };
  };
  const [fl, fr, bl, br] = ["front-left", "front-right", "back-left", "back-right"].map((n) =>
    legOf(legs, n),
  ) as [LegSize, LegSize, LegSize, LegSize];
  return {
    front: rail("front", asked.length, fl.width, fr.width),
    back: rail("back", asked.length, bl.width, br.width),
    left: rail("left", asked.width, fl.thickness, bl.thickness),
    right: rail("right", asked.width, fr.thickness, br.thickness),
  };
}

type Way = "long" | "end";
const waySays: Readonly<Record<Way, string>> = { long: "long rails", end: "end rails" };

/** What all joints of the long rails share, and all of the end rails: where one figure is changed for all. */
function settleShared(way: Way, asked: FrameAsked, making: Making) {
  const { settle, shop } = making;
  const own = (what: string, words: string, computed: Worked<Mm>, least?: number) =>
    settle(`tenons/${way}.${what}`, `${waySays[way]}: ${words}`, computed, least);
  const mortise = own(
    "mortise",
    "width of the mortise",
    mortiseWidth(asked.railThickness, shop.chisels),
  );
  const wall = outerWall(asked.setback, asked.railThickness, mortise);
  const length = own(
    "length",
    "length of the tenon",
    tenonLength(
      asked,
      asked.leg,
      { wall: wall.value, mortise },
      mm(shop.cheekClearance / 2),
      making,
    ),
  );
  return {
    mortise,
    length,
    haunch:
      asked.haunch === "none"
        ? undefined
        : own("haunch", "length of the haunch", haunchLength(length)),
    upper: own("upper", "upper shoulder", upperShoulder(asked.railWidth), 0),
    lower: own("lower", "lower shoulder", plainly(LOWER.says, LOWER.value), 0),
  };
}

/** At one cheek. */
const playOf = (mortise: Mm, thickness: Mm): Mm => mm(Math.max(0, mortise - thickness) / 2);

/** By the mouth of the joint from the other side, and by this tenon's own play in its mortise. */
const tenonLength = (
  { tips }: FrameAsked,
  leg: Mm,
  other: { readonly wall: Mm; readonly mortise: Mm },
  play: Mm,
  { shop }: Making,
): Worked<Mm> =>
  tips === "mitred"
    ? mitredTenon(leg, other.wall, TIP_GAP, play)
    : buttedTenon(leg, other.wall, other.mortise, BETWEEN, shop.depthClearance);

/**
 * The longest tenon that a corner has room for, beside the one from the other side.
 *
 * @param leg  of the leg, along the tenon [mm]
 * @param own  the joint
 * @param other  the one from the other side
 */
export const longestTenon = (
  asked: FrameAsked,
  leg: number,
  own: TenonFit,
  other: TenonFit,
  making: Making,
): Mm => tenonLength(asked, mm(leg), other, playOf(own.mortise, own.thickness), making).value;

/** The eight joints, each by the sizes of its own leg and rails. */
export function settleFits(asked: FrameAsked, legs: Legs, rails: Rails, making: Making): Fits {
  const { settle, isOwn, shop } = making;
  const shared = {
    long: settleShared("long", asked, making),
    end: settleShared("end", asked, making),
  };
  return Object.fromEntries(
    corners.map((corner) => {
      const leg = legOf(legs, corner.name);
      const [longSide, endSide] = railsAt(corner);
      const side = { long: longSide, end: endSide };
      const own = (way: Way, what: string, words: string, computed: Worked<Mm>, least?: number) =>
        settle(
          `joint/${corner.name}/${way}.${what}`,
          `${corner.says}, ${side[way]} rail: ${words}`,
          computed,
          least,
        );
      const mouth = (way: Way) => {
        const mortise = own(
          way,
          "mortise",
          "width of the mortise",
          plainly("width of the mortise", shared[way].mortise),
        );
        const wall = own(
          way,
          "wall",
          "wood outside the mortise",
          outerWall(asked.setback, rails[side[way]].thickness, mortise),
        );
        return { mortise, wall };
      };
      const mouths = { long: mouth("long"), end: mouth("end") };
      const fitOf = (way: Way): TenonFit => {
        const other = mouths[way === "long" ? "end" : "long"];
        const { mortise, wall } = mouths[way];
        const along = way === "long" ? leg.width : leg.thickness;
        const across = way === "long" ? leg.thickness : leg.width;
        const thickness = own(
          way,
          "thickness",
          "thickness of the tenon",
          tenonThickness(mortise, shop.cheekClearance),
        );
        const computed = isOwn(`tenons/${way}.length`)
          ? plainly("length of the tenon", shared[way].length)
          : tenonLength(asked, along, other, playOf(mortise, thickness), making);
        const length = own(way, "length", "length of the tenon", computed);
        const rail = rails[side[way]];
        return {
          railWidth: rail.width,
          railThickness: rail.thickness,
          setback: asked.setback,
          leg: across,
          wall,
          mortise,
          thickness,
          length,
          upper: own(
            way,
            "upper",
            "upper shoulder",
            plainly("upper shoulder", shared[way].upper),
            0,
          ),
          lower: own(
            way,
            "lower",
            "lower shoulder",
            plainly("lower shoulder", shared[way].lower),
            0,
          ),
          haunch:
            asked.haunch === "none"
              ? undefined
              : {
                  length: own(
                    way,
                    "haunch",
                    "length of the haunch",
                    isOwn(`tenons/${way}.haunch`) && shared[way].haunch !== undefined
                      ? plainly("length of the haunch", shared[way].haunch)
                      : haunchLength(length),
                  ),
                  isSloped: asked.haunch === "sloped",
                },
          isMitred: asked.tips === "mitred",
          widthClearance: shop.widthClearance,
          depthClearance: shop.depthClearance,
        };
      };
      return [corner.name, { long: fitOf("long"), end: fitOf("end") }];
    }),
  );
}
