import { washerStack } from "../../motion/index.ts";
import { plainly } from "../../piece/index.ts";
import { type Deg, type Mm, mm } from "../../units/index.ts";
import {
  commonPractice,
  derived,
  type Given,
  given,
  type Worked,
  work,
} from "../../worked/index.ts";
import type { Making } from "../kind.ts";

/** How an arm is freed from its rail; the safest way first. */
export const freedWays = ["ripped off and glued back", "sawn out of the rail"] as const;

/** What the swing arms of a piece are asked. */
export type ArmsAsked = {
  /** on each rail that has a leaf */
  readonly count: 1 | 2;
  /** from the pivot to the end that swings out [mm] */
  readonly reach: Mm;
  /** from the pivot to the end that swings in [mm] */
  readonly tail: Mm;
  /** [mm] */
  readonly height: Mm;
  /** of the ends from square; 0 for square ends [°] */
  readonly angle: Deg;
  readonly freed: (typeof freedWays)[number];
};

type Sized = Given<Mm> | Worked<Mm>;

/** Sizes that all arms of a piece share. */
export type ArmSizes = {
  readonly count: 1 | 2;
  /** from the pivot to the end that swings out [mm] */
  readonly reach: Sized;
  /** from the pivot to the end that swings in [mm] */
  readonly tail: Sized;
  /** [mm] */
  readonly height: Sized;
  /** pivot off the rail's middle, outwards [mm] */
  readonly offset: Sized;
  /** of the cuts at both ends [mm] */
  readonly kerf: Sized;
  /** its depth, from the rail's upper edge [mm] */
  readonly opening: Sized;
  /** of both ends from square [°] */
  readonly angle: Given<Deg>;
  /** under the arm [mm] */
  readonly washers: readonly Mm[];
  /** of the pivot's screw [mm] */
  readonly screw: Given<Mm>;
  /** of its hole [mm] */
  readonly hole: Given<Mm>;
};

/** An arm ripped off is planed by about a washer, and a shaving for the air over it; common practice [mm]. */
const ABOUT_A_WASHER = 1;
const SHAVING = given("air over the arm", mm(0.1), "mm", commonPractice);

/** Settles the arms' sizes, and what goes under them. */
export function settleArms(asked: ArmsAsked, { settleKnown, shop }: Making): ArmSizes {
  const size = (what: string, says: string, computed: Worked<Mm>, least = 0): Sized =>
    settleKnown(`arms.${what}`, `swing arms: ${says}`, computed, least);
  const reach = size("reach", "pivot to the end that swings out", plainly("reach", asked.reach), 1);
  const tail = size("tail", "pivot to the end that swings in", plainly("tail", asked.tail), 1);
  const height = size("height", "height", plainly("height of the arm", asked.height), 1);
  const offset = size(
    "offset",
    "pivot off the rail’s middle, outwards",
    plainly("pivot off the middle, outwards", mm(0)),
    -10,
  );
  const inShop = derived("the shop’s own");
  const kerf = size(
    "kerf",
    "cut at the ends",
    work({
      says: "cut at the ends",
      unit: "mm",
      formula: "k = s",
      inputs: { s: given("cut of the saw that frees an arm", shop.armKerf, "mm", inShop) },
      value: shop.armKerf,
      source: derived("the saw’s cut"),
    }),
  );
  const under = underArm(asked, shop.armKerf, shop.washers);
  const opening = size("opening", "depth of the opening in the rail", openingFor(height, under), 1);
  // What was measured decides how many washers lie under the arm.
  const lift = mm(Math.max(0, opening.value - height.value));
  return {
    count: asked.count,
    reach,
    tail,
    height,
    offset,
    kerf,
    opening,
    angle: given("angle of the ends from square", asked.angle, "°"),
    washers: washerStack(lift, shop.washers).washers,
    screw: given("screw of the pivot", shop.pivotScrew, "mm", inShop),
    hole: given("hole of the pivot", shop.pivotHole, "mm", inShop),
  };
}

/** What of the opening the arm does not fill: the saw's cut, or what is planed off a ripped strip. */
function underArm({ freed }: ArmsAsked, kerf: Mm, washers: readonly Mm[]): Sized {
  if (freed === "sawn out of the rail")
    return given("cut under the arm", kerf, "mm", derived("the saw’s cut"));
  const off = (washer: number) => Math.abs(washer - ABOUT_A_WASHER);
  const nearest = washers.reduce((best, one) => (off(one) < off(best) ? one : best));
  const w = given("washer under the arm", nearest, "mm", derived("the shop’s nearest to 1 mm"));
  return work({
    says: "planed off the arm’s lower edge",
    unit: "mm",
    formula: "p = w + s",
    inputs: { w, s: SHAVING },
    value: mm(w.value + SHAVING.value),
    source: commonPractice,
  });
}

const openingFor = (height: Sized, under: Sized): Worked<Mm> =>
  work({
    says: "depth of the opening in the rail",
    unit: "mm",
    formula: "D = h + p",
    inputs: { h: height, p: under },
    value: mm(height.value + under.value),
    source: derived("geometry of the arm in its rail"),
  });
