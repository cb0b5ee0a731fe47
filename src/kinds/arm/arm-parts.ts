import { cross, type Frame, frameOf, outOf, times } from "../../geometry/index.ts";
import type { ArmCut, Bore, Feature, Joint, Motion } from "../../piece/index.ts";
import { deg, type Mm, mm } from "../../units/index.ts";
import { type Given, given, type Worked } from "../../worked/index.ts";
import { bothSides } from "../both-sides.ts";
import type { Framed } from "../frame/framed.ts";
import { railFrame, shoulderAt } from "../frame/rails.ts";
import type { Making, Unmarked } from "../kind.ts";
import { type ArmPlace, halvesOf } from "./lay-arms.ts";
import type { ArmSizes } from "./settle-arms.ts";

/** An arm, what is worked on its rail for it, and how it turns. */
export type Armed = {
  readonly place: ArmPlace;
  readonly part: Unmarked;
  readonly onRail: readonly (ArmCut | Bore)[];
  readonly joint: Joint;
  readonly motion: Motion;
};

/** Of the pivot screw's shank its lead hole has; and wood left under that at least; common practice. */
const LEAD = 0.7;
const UNDER_LEAD = 6;

/**
 * An arm in its rail. The pattern is the one that reaches to the right; the other is its mirror.
 *
 * @param overhang  from the rail's face out to the leaf's joint [mm]
 */
export function armAt(
  place: ArmPlace,
  arms: ArmSizes,
  framed: Framed,
  overhang: Given<Mm> | Worked<Mm>,
  { assembly, shop }: Making,
): Armed {
  const { side, n, way } = place;
  const isLeft = way === "left";
  const name = `${side}-${n}`;
  const says = `${side} arm${arms.count === 2 ? ` ${n}` : ""}`;
  const { asked, legs, rails, tenonAt } = framed;
  const { width, thickness } = rails[side];
  const half = halvesOf(arms, thickness);
  const rail = railFrame(
    side,
    asked,
    width,
    thickness,
    shoulderAt(side, asked, legs) - tenonAt(side),
  );
  const turn = turnOf(place, arms, thickness, tenonAt(side));
  const lift = arms.washers.reduce((sum, one) => sum + one, 0);
  const low = width - arms.opening.value + lift;
  const key = `${assembly}/arm/${name}`;
  const motionKey = `${assembly}/motion/arm-${name}`;
  const seat = `arm-${n}`;
  const part: Unmarked = {
    key,
    name: says,
    role: "arm",
    outOf: `${assembly}/rail/${side}`,
    blank: {
      length: mm(half.reach + half.tail - 2 * half.cut),
      width: arms.height.value,
      thickness,
    },
    features: armFeatures(arms, thickness, half, shop.pivotHead),
    isMirrored: isLeft,
    ...(isLeft ? { mirrorOf: `${assembly}/arm/${side}-1` } : {}),
    pose: poseOf(rail, turn, half.tail - half.cut, low, arms.height.value),
    reference: { face: "show", edge: "upper" },
    shows: ["show"],
    sawn: "flat",
    strips: [
      { from: mm(0), width: arms.height.value, heart: "up", pith: [width / 2, thickness + 55] },
    ],
  };
  const onRail = seatOf(place, arms, framed, turn, shop.pivotLength);
  return {
    place,
    part,
    onRail,
    joint: {
      key: `${assembly}/joint/arm-${name}`,
      kind: "pivot",
      says: `${says} in the ${side} rail`,
      parts: [key, `${assembly}/rail/${side}`],
      features: [
        [key, "pivot"],
        [`${assembly}/rail/${side}`, seat],
        [`${assembly}/rail/${side}`, `${seat}-lead`],
      ],
      takes: takesOf(arms, shop.pivotScrew, shop.pivotLength),
      pivot: {
        arm: key,
        rail: `${assembly}/rail/${side}`,
        motion: motionKey,
        bears: `${assembly}/motion/leaf-${side}`,
        reach: arms.reach,
        tail: arms.tail,
        thickness: given("thickness of the rail", thickness, "mm"),
        height: arms.height,
        offset: arms.offset,
        angle: arms.angle,
        kerf: arms.kerf,
        opening: arms.opening,
        washers: arms.washers,
        screw: arms.screw,
        hole: arms.hole,
        overhang,
      },
    },
    motion: {
      key: motionKey,
      kind: "arm",
      says,
      ends: ["in", "out"],
      axis: {
        at: outOf(rail, [turn.x, width, turn.z]),
        along: cross(times(rail.x, isLeft ? -1 : 1), rail.z),
      },
      most: deg(90),
      carries: [key],
      heldBy: [],
    },
  };
}

/** The pivot in the rail's own x and z, and which way the arm reaches. */
type Turn = { readonly x: number; readonly z: number; readonly way: 1 | -1 };

const turnOf = (
  { pivot, way }: ArmPlace,
  { offset }: ArmSizes,
  thickness: number,
  tenon: number,
): Turn => ({
  x: tenon + pivot,
  z: thickness / 2 + offset.value,
  way: way === "right" ? 1 : -1,
});

/** A mirrored arm counts its y from its upper edge: so it is turned about, and still stands upright. */
function poseOf(rail: Frame, { x, way }: Turn, tail: number, low: number, height: number): Frame {
  return way > 0
    ? frameOf(outOf(rail, [x - tail, low, 0]), rail.x, rail.y)
    : frameOf(outOf(rail, [x + tail, low + height, 0]), times(rail.x, -1), times(rail.y, -1));
}

function armFeatures(
  arms: ArmSizes,
  thickness: number,
  half: ReturnType<typeof halvesOf>,
  head: Mm,
): readonly Feature[] {
  const run = mm(thickness * half.slope);
  const mitres: readonly Feature[] =
    arms.angle.value > 0
      ? [
          { feature: "bevel", key: "end-tail", end: "left", run },
          { feature: "bevel", key: "end-reach", end: "right", run, shorter: "back" },
        ]
      : [];
  const hole = arms.hole.value;
  const sunk = mm(Math.min((head - hole) / 2, arms.height.value / 2));
  return [
    ...mitres,
    {
      feature: "bore",
      key: "pivot",
      from: [half.tail - half.cut, arms.height.value, half.inner],
      along: [0, -1, 0],
      diameter: hole,
      depth: arms.height.value,
      isThrough: true,
      ...(sunk > 0 ? { sink: { diameter: head, depth: sunk } } : {}),
    },
  ];
}

/** The opening, wider than the arm by a saw's cut at each end, and the lead hole in its floor. */
function seatOf(
  { side, n }: ArmPlace,
  arms: ArmSizes,
  { rails }: Framed,
  { x, z, way }: Turn,
  screw: Mm,
): readonly (ArmCut | Bore)[] {
  const { width, thickness } = rails[side];
  const half = halvesOf(arms, thickness);
  const ends = [-(arms.tail.value + half.cut), arms.reach.value + half.cut] as const;
  const at = (across: number) => {
    const [a, b] = ends.map((end) => x + way * (end + across * half.slope)) as [number, number];
    return [mm(Math.min(a, b)), mm(Math.max(a, b))] as const;
  };
  const floor = width - arms.opening.value;
  const depth = Math.min(screw - arms.height.value, floor - UNDER_LEAD);
  const lead: readonly Bore[] =
    depth > 1
      ? [
          {
            feature: "bore",
            key: `arm-${n}-lead`,
            from: [x, floor, z],
            along: [0, -1, 0],
            diameter: mm(LEAD * arms.screw.value),
            depth: mm(depth),
            isThrough: false,
          },
        ]
      : [];
  return [
    {
      feature: "arm-cut",
      key: `arm-${n}`,
      show: at(half.outer),
      back: at(-half.inner),
      depth: arms.opening.value,
    },
    ...lead,
  ];
}

function takesOf(arms: ArmSizes, screw: Mm, length: Mm): readonly string[] {
  return [
    `1 screw that an arm turns on, ${bothSides(screw)} × ${bothSides(length)}`,
    ...arms.washers.map((one) => `1 washer under an arm, ${bothSides(one)}`),
    "1 thin hardwood wedge under a leaf, with a stop, set at fitting",
    ...(arms.angle.value > 0 ? [] : ["1 stop behind a closed arm"]),
  ];
}
