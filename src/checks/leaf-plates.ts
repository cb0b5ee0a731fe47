import { outerFaceDepth, type PlateScrews } from "../motion/index.ts";
import type { LeafJoint } from "../piece/index.ts";
import type { LeafHinge } from "../shop/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { derived, given, type Worked, work } from "../worked/index.ts";
import { plainOf } from "./leaf-alike.ts";

type Hole = LeafHinge["long"]["holes"][number];

/** Where the leaf has its full thickness, from the pin: past the cove, or past the gap [mm]. */
export const fullFrom = ({ rule, setOut, pinOut }: LeafJoint): Mm =>
  mm(plainOf(setOut) + (rule ? plainOf(rule.cove) : 0) - plainOf(pinOut));

/** Holes of the long plate whose middle lies over full wood. */
export const woodedHoles = (leaf: LeafJoint): readonly Hole[] =>
  leaf.hinge.long.holes.filter(({ from }) => from >= fullFrom(leaf));

/** How the steel holds both members: the middle of each plate's screws, those that find wood. */
export function plateScrews(leaf: LeafJoint): PlateScrews {
  const wooded = woodedHoles(leaf);
  return {
    short: middleOf("short", leaf.hinge.short.holes),
    long: middleOf("long", wooded.length > 0 ? wooded : leaf.hinge.long.holes),
  };
}

function middleOf(plate: string, holes: readonly Hole[]): Worked<Mm> {
  const source = derived("the hinge, as the shop has it");
  const sum = mm(holes.reduce((all, { from }) => all + from, 0));
  return work({
    says: `middle of the ${plate} plate’s screws from the pin`,
    unit: "mm",
    formula: "s = q/n",
    inputs: {
      q: given(`holes of the ${plate} plate from the pin, added up`, sum, "mm", source),
      n: given(`holes of the ${plate} plate`, holes.length, "pieces", source),
    },
    value: mm(sum / holes.length),
    source: derived("arithmetic"),
  });
}

/** Where a hinge lies across its joint, and how far its plates stand under the face. */
export type Bed = {
  /** from the visible edge, in the section's x: where the short plate ends, and the long one [mm] */
  readonly inner: number;
  readonly outer: number;
  /** half its length along the line [mm] */
  readonly half: number;
  /** plates under the underside, 0 when they are let in [mm] */
  readonly proud: Worked<Mm>;
};

/** The bed of a joint's hinges; all of them lie alike across it. */
export function bedOf({ hinge, pinOut, pinHeight }: LeafJoint): Bed {
  const q = outerFaceDepth(pinHeight, hinge.pinOverFace);
  const out = plainOf(pinOut);
  return {
    inner: out - hinge.short.reach,
    outer: out + hinge.long.reach,
    half: hinge.length / 2,
    proud: work({
      says: "plates stand under the face by",
      unit: "mm",
      formula: "p = max(0, −q)",
      inputs: { q },
      value: mm(Math.max(0, -q.value)),
      source: derived("geometry of the joint’s section"),
    }),
  };
}
