import { hangsAt } from "../../motion/index.ts";
import type { LeafJoint } from "../../piece/index.ts";
import { type Deg, deg } from "../../units/index.ts";
import type { Framed } from "../frame/framed.ts";
import type { Hung } from "./hang.ts";
import { plainSizes } from "./plain-sizes.ts";

/**
 * From a leaf's joint in to what it may lean on: the legs' outer faces, or the rail's where the leaf
 * goes down between the legs.
 *
 * @param edge  from the middle of the table to the joint [mm]
 * @param length  of the leaf [mm]
 */
export function toFrame({ asked, legs }: Framed, edge: number, length: number): number {
  const widest = Math.max(...Object.values(legs).map((leg) => leg.width));
  const isBetween = length / 2 <= asked.length / 2 - widest;
  return edge - asked.width / 2 + (isBetween ? asked.setback : 0);
}

/**
 * Where a leaf comes to rest: hanging free, or past upright with its outer edge on the frame. One that
 * meets the frame before it is upright is left to run into it: that is no rest, and judged.
 */
export function restsAt(leaf: LeafJoint, { width, toFrame: inwards }: Hung): Deg {
  const hangs = hangsAt(leaf).value;
  const { g, dx, h } = plainSizes(leaf);
  // Past upright by φ its lower outer edge lies reach·sin φ + h·cos φ inside of the pin.
  const reach = width.value + g - dx;
  const share = (inwards + dx) / Math.hypot(reach, h);
  if (!(Math.abs(share) < 1)) return hangs;
  const leans = 90 + ((Math.asin(share) - Math.atan2(h, reach)) * 180) / Math.PI;
  return leans >= 90 && leans < hangs ? deg(leans) : hangs;
}
