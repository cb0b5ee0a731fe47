import { type Frame, into, outOf } from "../../geometry/index.ts";
import { type Bore, plainly } from "../../piece/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import type { Armed } from "../arm/arm-parts.ts";
import type { Framed } from "../frame/framed.ts";
import { shoulderAt } from "../frame/rails.ts";
import type { Making } from "../kind.ts";
import type { TopAsked } from "../top/top.ts";
import type { Hung, LeafSide } from "./hang.ts";
import { hingePlaces, type Stretch } from "./hinge-places.ts";
import { plainSizes, tongueOf } from "./plain-sizes.ts";
import { refuseLeaf } from "./refuse-leaves.ts";
import { toFrame } from "./rests-at.ts";
import type { JointSizes } from "./settle-joint.ts";

/** Beside an open arm, and round the lead holes of what holds the top [mm]. */
const BESIDE_ARM = 6;
const ROUND_LEAD = 8;

/** Plates that stand so far under the wood are in an arm's way [mm]. */
const PROUD = 0.05;

type Asked = {
  readonly sides: readonly LeafSide[];
  readonly joint: JointSizes;
  /** of a leaf [mm] */
  readonly width: Mm;
  readonly top: TopAsked;
  /** of the top */
  readonly frame: Frame;
  readonly framed: Framed;
  readonly armed: readonly Armed[];
  /** lead holes in the top */
  readonly leads: readonly Bore[];
};

/** Settles the leaves' sizes, and where their hinges go. */
export function settleLeaves(asked: Asked, making: Making): readonly Hung[] {
  const { sides, joint, top } = asked;
  const visible = top.width - sides.length * tongueOf(joint);
  return sides.map((side): Hung => {
    const size = (what: string, words: string, value: Mm) =>
      making.settleKnown(`leaf/${side}.${what}`, `${side} leaf, ${words}`, plainly(words, value));
    const length = size("length", "length", top.length).value;
    const width = size("width", "width", asked.width);
    const thickness = size("thickness", "thickness", top.thickness).value;
    const own = asked.armed.filter(({ place }) => place.side === side);
    const hung: Hung = {
      side,
      length,
      width,
      thickness,
      edge: mm(visible / 2),
      toFrame: mm(toFrame(asked.framed, visible / 2, length)),
      hinges: hingePlaces(mm(Math.min(length, top.length)), joint.hinge.length, taken(asked, side)),
      heldBy: own.map(({ motion }) => motion.key),
    };
    refuseLeaf(joint, hung, { thickness: top.thickness, width: asked.width }, making);
    return hung;
  });
}

/** What is in the way of hinges along a side, from the leaf's middle, the way of the section's z. */
function taken({ joint, framed, armed, frame, leads, top }: Asked, side: LeafSide) {
  const { asked, legs, rails } = framed;
  const s = plainSizes(joint);
  const inner = joint.hinge.short.reach - s.dx;
  const isProud = s.h < s.e - PROUD;
  // Seen from outside a rail runs to the right, the section's z to the left.
  const along = (fromShoulder: number) => -(shoulderAt(side, asked, legs) + fromShoulder);
  const open = armed
    .filter(({ place }) => place.side === side)
    .map(({ place: { pivot, opening, way } }): Stretch => {
      const half = rails[side].thickness / 2 + BESIDE_ARM;
      const at = along(pivot);
      // Under plates that stand proud an arm must not even pass: it sweeps from its pivot to its end.
      const end = isProud ? along(way === "right" ? opening[1] : opening[0]) : at;
      return [Math.min(at - half, end), Math.max(at + half, end)];
    });
  const edge = side === "back" ? top.width - tongueOf(joint) : tongueOf(joint);
  const near = leads.flatMap(({ from }): readonly Stretch[] => {
    const inwards = side === "back" ? edge - from[1] : from[1] - edge;
    if (inwards > inner + ROUND_LEAD) return [];
    const [x] = into({ ...frame, origin: [0, 0, 0] }, outOf(frame, from));
    const z = side === "back" ? x : -x;
    return [[z - ROUND_LEAD, z + ROUND_LEAD]];
  });
  return [...open, ...near];
}
