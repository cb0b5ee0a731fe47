import type { Frame } from "../../geometry/index.ts";
import type { Bore, Feature, Joint } from "../../piece/index.ts";
import { type Mm, mm, type PerPct } from "../../units/index.ts";
import type { Worked } from "../../worked/index.ts";
import type { Side } from "../frame/corner.ts";
import { blocksReach, type Framed, refuseBlocks } from "../frame/framed.ts";
import type { Making, Unmarked } from "../kind.ts";
import { BUTTON_WIDTH, buttoned } from "./buttons.ts";
import { type Kept, placesOf } from "./places.ts";
import { screwed } from "./screws.ts";

/** Kept clear at a rail's ends for the fastenings' own size, and for glue on the blocks [mm]. */
const FROM_ENDS = 60;
const FROM_BLOCK = 12;

/** How a top is held to its frame. */
export const fastenings = ["screws in slots", "buttons"] as const;
export type Fastening = (typeof fastenings)[number];

/** What holds a top: parts of its own, and what is worked for it on rails and top. */
export type Held = {
  readonly parts: readonly Unmarked[];
  readonly onRails: Readonly<Record<Side, readonly Feature[]>>;
  readonly inTop: readonly Bore[];
  readonly joints: readonly Joint[];
};

/** A top over its frame, so far as it must be held. */
export type Over = {
  /** [mm] */
  readonly thickness: Mm;
  readonly frame: Frame;
  /** across its width [per % MC] */
  readonly coefficient: Worked<PerPct>;
};

/** What holds the top: clear of legs, corner blocks, and what else a rail keeps free. */
export function heldTop(
  framed: Framed,
  top: Over,
  fastening: Fastening,
  kept: Kept,
  making: Making,
): Held {
  const { asked, legs, rails, tenonAt } = framed;
  const ends = fromEnds(framed, fastening);
  refuseBlocks(framed, ends, making);
  const half = fastening === "buttons" ? BUTTON_WIDTH / 2 : FROM_BLOCK;
  const places = placesOf(
    asked,
    legs,
    rails,
    top.coefficient,
    { ends, kept, half: mm(half) },
    making,
  );
  return fastening === "buttons"
    ? buttoned(places, rails, tenonAt, top.thickness, top.frame, making)
    : { parts: [], ...screwed(places, rails, tenonAt, top.thickness, top.frame, making) };
}

/** Clear of the legs that stand in behind the rails, of corner blocks, and of one another in the corners. */
function fromEnds(framed: Framed, fastening: Fastening): Mm {
  const own = fastening === "buttons" ? BUTTON_WIDTH / 2 + FROM_ENDS : FROM_ENDS / 2;
  const past = blocksReach(framed);
  const half = fastening === "buttons" ? BUTTON_WIDTH / 2 + FROM_BLOCK : FROM_BLOCK;
  return mm(Math.max(own, past > 0 ? past + half : 0));
}
