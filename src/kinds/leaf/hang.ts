import { cross, frameOf, outOf, plus, times, type Vec3 } from "../../geometry/index.ts";
import type { Feature, Joint, Key, LeafJoint, Motion } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import type { Given, Worked } from "../../worked/index.ts";
import { bothSides } from "../both-sides.ts";
import { outward } from "../frame/corner.ts";
import type { Unmarked } from "../kind.ts";
import { stripsOf, type TopAsked } from "../top/top.ts";
import { onLeaf, onTop } from "./hinge-features.ts";
import { plainSizes, tongueOf } from "./plain-sizes.ts";
import { restsAt } from "./rests-at.ts";
import type { JointSizes } from "./settle-joint.ts";

export type LeafSide = "front" | "back";

/** A leaf that is to hang on a top. */
export type Hung = {
  readonly side: LeafSide;
  /** along the hinge line [mm] */
  readonly length: Mm;
  /** from the lip's end to the outer edge [mm] */
  readonly width: Given<Mm> | Worked<Mm>;
  /** [mm] */
  readonly thickness: Mm;
  /** from the middle of the table to the top's visible edge on this side [mm] */
  readonly edge: Mm;
  /** from there in to the frame that it may lean on, hanging [mm] */
  readonly toFrame: Mm;
  /** middles of its hinges along the section's z [mm] */
  readonly hinges: readonly Mm[];
  /** keys of the arms' motions that hold it */
  readonly heldBy: readonly Key[];
};

/**
 * The top's visible edge on one side seen across: x out to the leaf, y up.
 *
 * @param edge  from the middle of the table [mm]
 * @param underside  above the floor [mm]
 */
function sectionAt(side: LeafSide, edge: Mm, underside: Mm) {
  const out: Vec3 = outward[side];
  return frameOf(plus(times(out, edge), [0, 0, underside]), out, [0, 0, 1]);
}

/**
 * A leaf's own work on the top: its round-over, and what its hinges ask.
 *
 * @param topLength  [mm]
 * @param topWidth  with its tongues [mm]
 */
export function topFeatures(
  joint: JointSizes,
  { side, hinges }: Hung,
  topLength: Mm,
  topWidth: Mm,
): readonly Feature[] {
  const { rule, t } = plainSizes(joint);
  const tongue = tongueOf(joint);
  const moulding: readonly Feature[] = rule
    ? [
        {
          feature: "round-over",
          key: `round-over-${side}`,
          edge: side === "back" ? "upper" : "lower",
          fillet: mm(rule.fillet),
          radius: mm(rule.R),
          bevel: mm(rule.bevel),
        },
      ]
    : [];
  const edge = side === "back" ? topWidth - tongue : tongue;
  const way = side === "back" ? 1 : -1;
  // The section's z runs with the top's x at the back, against it at the front.
  return [
    ...moulding,
    ...hinges.flatMap((z, i) =>
      onTop(joint, {
        x: topLength / 2 + way * z,
        edge,
        way,
        thickness: t,
        name: `${side}-${i + 1}`,
      }),
    ),
  ];
}

/**
 * A leaf, its joint with the top, and how it turns.
 *
 * @param underside  of the top above the floor [mm]
 */
export function hungLeaf(
  joint: JointSizes,
  hung: Hung,
  top: TopAsked,
  underside: Mm,
  assembly: Key,
): { readonly part: Unmarked; readonly joint: Joint; readonly motion: Motion } {
  const { side, length, width, thickness, edge, hinges, heldBy } = hung;
  const key = `${assembly}/leaf/${side}`;
  const s = plainSizes(joint);
  const section = sectionAt(side, edge, underside);
  // The pattern lies as the back leaf does: its moulded edge is the lower one. The front one is turned about.
  const x: Vec3 = side === "back" ? [1, 0, 0] : [-1, 0, 0];
  const start = plus(outOf(section, [s.g, 0, 0]), times(x, -length / 2));
  const moulding: readonly Feature[] = s.rule
    ? [
        {
          feature: "cove",
          key: "cove",
          edge: "lower",
          radius: mm(s.rule.Rc),
          lip: mm(s.rule.lip + thickness - s.t),
        },
      ]
    : [];
  const features = [
    ...moulding,
    ...hinges.flatMap((z, i) =>
      onLeaf(joint, { x: length / 2 + z, edge: -s.g, way: 1, thickness, name: `${i + 1}` }),
    ),
  ];
  const motionKey = `${assembly}/motion/leaf-${side}`;
  const leaf: LeafJoint = {
    ...joint,
    top: `${assembly}/top`,
    leaf: key,
    motion: motionKey,
    section,
    leafWidth: width,
    hinges,
  };
  const asked: TopAsked = { ...top, length, width: width.value, thickness };
  return {
    part: {
      key,
      name: `${side} leaf`,
      role: "leaf",
      blank: { length, width: width.value, thickness },
      features,
      isMirrored: false,
      pose: frameOf(start, x, section.x),
      reference: { face: "show", edge: "lower" },
      shows: ["show", "back", "left", "right", "upper"],
      sawn: top.sawn,
      strips: stripsOf(asked),
    },
    joint: tie(leaf, features, side, assembly),
    motion: {
      key: motionKey,
      kind: "leaf",
      says: `${side} leaf`,
      ends: ["up", "down"],
      axis: {
        at: outOf(section, [s.dx, s.h, 0]),
        along: cross(section.x, times(section.y, -1)),
      },
      most: restsAt(leaf, hung),
      carries: [key],
      heldBy,
    },
  };
}

function tie(leaf: LeafJoint, features: readonly Feature[], side: LeafSide, assembly: Key): Joint {
  const { hinge, hinges } = leaf;
  const screws = hinges.length * (hinge.short.holes.length + hinge.long.holes.length);
  const own = features.map(({ key }) => [leaf.leaf, key] as const);
  const moulded = leaf.rule ? [[leaf.top, `round-over-${side}`] as const] : [];
  return {
    key: `${assembly}/joint/leaf-${side}`,
    kind: "leaf",
    says: `${side} leaf to the top, ${leaf.rule ? "a rule joint" : "square edges"}`,
    parts: [leaf.top, leaf.leaf],
    features: [...moulded, ...own],
    takes: [
      `${hinges.length} leaf hinges “${hinge.name}”`,
      `${screws} screws for leaf hinges, ${bothSides(hinge.screwLength)}`,
    ],
    leaf,
  };
}
