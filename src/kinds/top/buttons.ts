import { type Frame, frameOf, minus, plus, times, type Vec3 } from "../../geometry/index.ts";
import { buttonGap, slotDepth, tongueLength } from "../../joinery/index.ts";
import type { Bore, Joint, Mortise } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import { derived, given } from "../../worked/index.ts";
import { outward, type Side } from "../frame/corner.ts";
import type { Rails } from "../frame/frame.ts";
import type { Making, Unmarked } from "../kind.ts";
import { SLACK } from "../slack.ts";
import { inTop, numbered, type Place } from "./places.ts";
import { leadInTop, SHANK, screwIntoTop } from "./screws.ts";

/** A button's sizes besides its tongue; common practice [mm]. */
const BODY = mm(30);
export const BUTTON_WIDTH = mm(30);
export const BUTTON_THICK = mm(20);
const TONGUE_THICK = mm(9);
/** Left between button and top until the screw draws it up; common practice [mm]. */
const DRAW = 0.8;
/** Least wood left behind a slot in the rail [mm]. */
const BEHIND_SLOT = mm(4);

const NONE = given("movement to one side", mm(0), "mm", derived("the top slides along this rail"));

export type Buttoned = {
  readonly parts: readonly Unmarked[];
  readonly onRails: Readonly<Record<Side, readonly Mortise[]>>;
  readonly inTop: readonly Bore[];
  readonly joints: readonly Joint[];
};

/**
 * Buttons: each a block screwed to the top, its tongue in a slot of the rail. On the long rails the
 * tongue slides in and out, on the end rails along.
 *
 * @param tenonAt  length of the tenon at a rail's left end, by side [mm]
 * @param topThickness  [mm]
 * @param top  the top's frame
 */
export function buttoned(
  places: readonly Place[],
  rails: Rails,
  tenonAt: (side: Side) => number,
  topThickness: Mm,
  top: Frame,
  { settle, assembly, refuse }: Making,
): Buttoned {
  const parts: Unmarked[] = [];
  const onRails: Record<Side, Mortise[]> = { front: [], back: [], left: [], right: [] };
  const leads: Bore[] = [];
  const joints: Joint[] = [];
  for (const { side, n, from, at, isFixed, move } of numbered(places)) {
    const { width, thickness } = rails[side];
    const isEnd = side === "left" || side === "right";
    const key = `fastening/${side}-${n}`;
    const says = `button at the ${side} rail, ${n}`;
    // Along an end rail the tongue slides in its slot, and never in or out of it.
    const inOut = isEnd ? NONE : move;
    const tongue = settle(`${key}.tongue`, `${says}: length of the tongue`, tongueLength(inOut));
    const gap = settle(`${key}.gap`, `${says}: gap to the rail`, buttonGap(inOut), 0);
    const depth = settle(
      `${key}.depth`,
      `${says}: depth of its slot`,
      slotDepth(tongue, gap, inOut),
    );
    const needed = tongue - gap;
    if (depth < needed - SLACK) {
      refuse({
        code: "button-slot-too-shallow",
        question: "fastening",
        reason: (show) =>
          `A tongue of the ${side} rail's button ${n} reaches ${show(needed)} into a slot ${show(depth)} deep.`,
        use: "screws in slots",
        values: [
          { key: `${key}.depth`, atLeast: needed },
          { key: `${key}.tongue`, atMost: depth + gap },
          { key: `${key}.gap`, atLeast: tongue - depth },
        ],
      });
    }
    // Along the rail the slot is long by what the top moves there; at the middle of an end it is snug.
    const play = isEnd && !isFixed ? 2 * move.value + 1.6 : isEnd ? 0.5 : 4;
    if (thickness < depth + BEHIND_SLOT - SLACK) {
      refuse({
        code: "button-slot-too-deep",
        question: "rail-thickness",
        reason: (show) =>
          `A button's slot in the ${side} rail must be ${show(depth)} deep, in a rail of ${show(thickness)}.`,
        atLeast: depth + BEHIND_SLOT,
        values: [
          { key: `${key}.depth`, atMost: thickness - BEHIND_SLOT },
          { key: `rail/${side}.thickness`, atLeast: depth + BEHIND_SLOT },
        ],
      });
    }
    const middle = tenonAt(side) + from;
    const half = (BUTTON_WIDTH + play) / 2;
    onRails[side].push({
      feature: "mortise",
      key: `slot-${n}`,
      face: "back",
      x: [mm(middle - half), mm(middle + half)],
      // The tongue bears on the slot's upper cheek before the button meets the top: so it draws it down.
      across: [
        mm(width - BUTTON_THICK - DRAW - 1.5),
        mm(width - BUTTON_THICK - DRAW + TONGUE_THICK),
      ],
      depth,
      haunch: undefined,
    });
    const length = mm(tongue + BODY);
    const out = outward[side];
    const face = minus(at, times(out, thickness / 2));
    const tip = plus(face, times(out, tongue - gap));
    const pose = poseOf(out, tip, at[2] - DRAW);
    parts.push({
      key: `${assembly}/button/${side}-${n}`,
      name: `button, ${side} rail ${n}`,
      role: "button",
      blank: { length, width: BUTTON_WIDTH, thickness: BUTTON_THICK },
      features: [
        {
          feature: "rebate",
          key: "tongue",
          end: "left",
          face: "show",
          length: tongue,
          depth: mm(BUTTON_THICK - TONGUE_THICK),
        },
        {
          feature: "bore",
          key: "screw",
          from: [tongue + BODY / 2, BUTTON_WIDTH / 2, 0],
          along: [0, 0, 1],
          diameter: SHANK,
          depth: BUTTON_THICK,
          isThrough: true,
        },
      ],
      isMirrored: false,
      pose,
      reference: { face: "show", edge: "lower" },
      shows: [],
      sawn: "flat",
      strips: [{ from: mm(0), width: BUTTON_WIDTH, heart: "up", pith: [12, BUTTON_THICK + 45] }],
    });
    const screwAt = minus(tip, times(out, tongue + BODY / 2));
    const [x, y] = inTop(top, screwAt);
    leads.push(leadInTop(`lead-${side}-${n}`, x, y, topThickness));
    joints.push({
      key: `${assembly}/${key}`,
      kind: "button",
      says,
      parts: [`${assembly}/button/${side}-${n}`, `${assembly}/rail/${side}`, `${assembly}/top`],
      features: [
        [`${assembly}/button/${side}-${n}`, "tongue"],
        [`${assembly}/rail/${side}`, `slot-${n}`],
        [`${assembly}/top`, `lead-${side}-${n}`],
      ],
      takes: [screwIntoTop(BUTTON_THICK, topThickness)],
    });
  }
  return { parts, onRails, inTop: leads, joints };
}

/** Its tongue towards the rail, its show face against the top's underside. */
function poseOf(out: Vec3, [x, y]: Vec3, underside: number): Frame {
  const inward = times(out, -1);
  const across: Vec3 = [-inward[1], inward[0], 0];
  const low: Vec3 = [x, y, underside - BUTTON_THICK];
  return frameOf(minus(low, times(across, BUTTON_WIDTH / 2)), inward, across);
}
