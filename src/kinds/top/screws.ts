import type { Frame } from "../../geometry/index.ts";
import { screwLength, screwLengthSold, slotTravel } from "../../joinery/index.ts";
import type { Bore, Joint, Key, ScrewSlot } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import type { Side } from "../frame/corner.ts";
import type { Rails } from "../frame/frame.ts";
import type { Making } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { inTop, numbered, type Place } from "./places.ts";

/** Of a wood screw No. 8, with a little air; common practice [mm]. */
export const SHANK = mm(4.5);
const HEAD = mm(9);
const LEAD = mm(3);
/** Wood left between the sunk head and the rail's upper edge [mm]. */
export const NECK = mm(25);
/** How deep a head can be sunk with a bit in a drill press; common practice [mm]. */
const DEEPEST = 75;
/** Least wood left beside a slot's mouth [mm]. */
const SLOT_WALL = mm(3);

export type Fastened = {
  readonly onRails: Readonly<Record<Side, readonly (ScrewSlot | Bore)[]>>;
  readonly inTop: readonly Bore[];
  readonly joints: readonly Joint[];
};

/**
 * Screws up through the rails, in slots that are long the way the top moves there.
 *
 * @param tenonAt  length of the tenon at a rail's left end, by side [mm]
 * @param topThickness  [mm]
 * @param top  the top's frame
 */
export function screwed(
  places: readonly Place[],
  rails: Rails,
  tenonAt: (side: Side) => number,
  topThickness: Mm,
  top: Frame,
  { settle, assembly, refuse }: Making,
): Fastened {
  const onRails: Record<Side, ScrewSlot[]> = { front: [], back: [], left: [], right: [] };
  const leads: Bore[] = [];
  const joints: Joint[] = [];
  for (const { side, n, from, at, isFixed, move } of numbered(places)) {
    const { width, thickness } = rails[side];
    const key = `fastening/${side}-${n}`;
    const says = `top to the ${side} rail, ${n}`;
    const travel = isFixed
      ? mm(0)
      : settle(`${key}.travel`, `${says}: travel of the screw`, slotTravel(move), 0);
    const runs = side === "left" || side === "right" ? "along" : "through";
    const needed = HEAD + 2 * SLOT_WALL + (runs === "through" ? travel : 0);
    if (thickness < needed - SLACK) {
      refuse({
        code: "slot-too-wide",
        question: "fastening",
        reason: (show) =>
          `A slot in the ${side} rail must be ${show(HEAD + travel)} wide at its mouth, in a rail of ${show(thickness)}.`,
        use: "buttons",
        values: [{ key: `${key}.travel`, atMost: thickness - HEAD - 2 * SLOT_WALL }],
      });
    }
    if (width - NECK > DEEPEST + SLACK) {
      refuse({
        code: "head-too-deep",
        question: "fastening",
        reason: (show) =>
          `In the ${side} rail the screws' heads would be sunk ${show(width - NECK)} deep; past ${show(DEEPEST)} no bit keeps its line.`,
        use: "buttons",
      });
    }
    onRails[side].push({
      feature: "screw-slot",
      key: `slot-${n}`,
      x: mm(tenonAt(side) + from),
      z: mm(thickness / 2),
      runs,
      travel,
      diameter: SHANK,
      headDiameter: HEAD,
      headDepth: mm(width - NECK),
    });
    const [x, y] = inTop(top, at);
    leads.push(leadInTop(`lead-${side}-${n}`, x, y, topThickness));
    joints.push({
      key: `${assembly}/${key}`,
      kind: "screwed-slot",
      says: isFixed ? `${says}, held fast` : says,
      parts: [`${assembly}/rail/${side}`, `${assembly}/top`],
      features: [
        [`${assembly}/rail/${side}`, `slot-${n}`],
        [`${assembly}/top`, `lead-${side}-${n}`],
      ],
      takes: [`${screwIntoTop(NECK, topThickness)}, round head`],
    });
  }
  return { onRails, inTop: leads, joints };
}

const leadDepth = (topThickness: Mm): Mm => mm((2 / 3) * topThickness);

/**
 * A lead hole in the top's underside, two thirds of its thickness deep.
 *
 * @param x  along the top [mm]
 * @param y  across it [mm]
 * @param topThickness  [mm]
 */
export const leadInTop = (key: Key, x: number, y: number, topThickness: Mm): Bore => ({
  feature: "bore",
  key,
  from: [x, y, 0],
  along: [0, 0, 1],
  diameter: LEAD,
  depth: leadDepth(topThickness),
  isThrough: false,
});

/**
 * A screw through some wood into the top, by the deepest its lead hole goes.
 *
 * @param through  the wood it passes [mm]
 * @param topThickness  [mm]
 */
export const screwIntoTop = (through: Mm, topThickness: Mm): string =>
  screwNamed(screwLength(through, leadDepth(topThickness)));

/**
 * A wood screw as it is bought.
 *
 * @param length  undefined where none is short enough [mm]
 */
export const screwNamed = (length: Mm | undefined): string =>
  length === undefined
    ? "1 wood screw No. 8, cut short to fit"
    : `1 wood screw No. 8 × ${screwLengthSold(length)}`;
