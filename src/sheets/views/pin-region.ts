import {
  firstContact,
  pinClearance,
  type RuleJoint,
  safePinRegion,
  sectionOf,
  swingClearance,
  type Tightest,
} from "../../motion/index.ts";
import type { LeafJoint } from "../../piece/index.ts";
import { deg, mm } from "../../units/index.ts";
import { blankDrawing, type Drawing, type Point } from "../drawing.ts";
import { sized } from "./sized.ts";

/** Where a rule joint binds on its way down, or else where its parts come nearest. */
export type TightPlace = Tightest & { readonly isBinding: boolean };

/** Where a leaf binds or comes nearest; undefined between square edges. */
export function tightPlace(leaf: LeafJoint): TightPlace | undefined {
  const joint = sectionOf(leaf);
  if (!joint) return undefined;
  const first = firstContact(joint);
  return first ? { ...first, isBinding: true } : { ...swingClearance(joint), isBinding: false };
}

/** How far round the round-over's centre a place is looked for from which the region is seen, and how closely [mm]. */
const LOOK = { far: 2.4, step: 0.4 } as const;
/** Corners of a region. */
const RAYS = 36;

/** The region in which the pin may stand, in a drawing's own frame; undefined where no place frees the leaf. */
export function pinRegion(leaf: LeafJoint): readonly Point[] | undefined {
  const joint = sectionOf(leaf);
  const seen = joint && seenFrom(joint);
  if (!joint || !seen) return undefined;
  const up = sized(joint.centreHeight);
  return safePinRegion(seen, RAYS).map(({ pinOut, pinUp }): Point => [pinOut, pinUp + up]);
}

/** The joint with its pin where it is, or where that binds, at the place near it that leaves most room. */
function seenFrom(joint: RuleJoint): RuleJoint | undefined {
  if (swingClearance(joint).gap >= 0) return joint;
  let [best, most] = [undefined as RuleJoint | undefined, 0];
  const count = Math.round((2 * LOOK.far) / LOOK.step);
  for (let i = 0; i <= count; i++)
    for (let k = 0; k <= count; k++) {
      const [out, up] = [mm(i * LOOK.step - LOOK.far), mm(k * LOOK.step - LOOK.far)];
      const gap = pinClearance(joint, out, up);
      if (gap > most) [best, most] = [{ ...joint, pinOut: out, pinUp: up }, gap];
    }
  return best;
}

/**
 * A region as a thin closed line.
 *
 * @param scale  how many millimetres one on paper stands for [1]
 */
export const regionDrawing = (id: string, region: readonly Point[], scale: number): Drawing => ({
  ...blankDrawing(id, "Within this line the pin may stand and the leaf swings free", scale),
  strokes: { dimensions: [{ shape: "path", points: region, isClosed: true }] },
});

/** A ring on paper [mm]. */
const RING = 1.5;

/**
 * A ring round the place where leaf and top meet or come nearest.
 *
 * @param scale  how many millimetres one on paper stands for [1]
 */
export function tightDrawing(
  id: string,
  leaf: LeafJoint,
  { at, isBinding }: TightPlace,
  scale: number,
): Drawing {
  const joint = sectionOf(leaf);
  const up = joint ? sized(joint.centreHeight) : 0;
  return {
    ...blankDrawing(id, isBinding ? "Here the leaf binds" : "Here leaf and top are nearest", scale),
    strokes: {
      dimensions: [
        {
          ...{ shape: "arc", centre: [at.x, at.y + up], radius: mm(RING * scale) },
          ...{ from: deg(0), to: deg(360) },
        },
      ],
    },
  };
}
