import { frameOf, type Vec3 } from "../../geometry/index.ts";
import { mortiseOf } from "../../joinery/index.ts";
import type { Feature, Key, Taper } from "../../piece/index.ts";
import { mm } from "../../units/index.ts";
import type { Unmarked } from "../kind.ts";
import { type Corner, corners } from "./corner.ts";
import type { Fits, FrameAsked, Legs } from "./frame.ts";

/** Where the pith runs in a rift-sawn leg, so that its end shows rings from corner to corner [mm]. */
const PITH_OFF = 30;

/**
 * The legs. Their pattern is the front left one: left end up, show face to the front, lower edge to
 * the left; the front right and back left ones are its mirrors.
 */
export function legsOf(
  asked: FrameAsked,
  legs: Legs,
  fits: Fits,
  assembly: Key,
): readonly Unmarked[] {
  return corners.map((corner, at): Unmarked => {
    const { name, says, inX, inY } = corner;
    const [size, fit] = [legs[name], fits[name]];
    if (!size || !fit) throw new Error(`the frame has no corner ${name}`);
    const { length, width, thickness } = size;
    const isMirrored = inX !== inY;
    const features: readonly Feature[] = [
      mortiseOf(fit.long, "mortise-long", { face: "upper", outer: "show" }),
      mortiseOf(fit.end, "mortise-end", { face: "back", outer: "lower" }),
      ...tapersOf(asked, Math.max(fit.long.railWidth, fit.end.railWidth), width, thickness),
    ];
    return {
      key: `${assembly}/leg/${name}`,
      name: `${says} leg`,
      role: "leg",
      blank: { length, width, thickness },
      features,
      isMirrored,
      ...(isMirrored ? { mirrorOf: `${assembly}/leg/${twinOf(corner)}` } : {}),
      pose: poseOf(corner, asked, width, thickness),
      reference: { face: "show", edge: "lower" },
      shows: ["show", "lower", "upper", "back"],
      sawn: "rift",
      triangle: { set: `${assembly}/legs`, place: at + 1, of: 4 },
      strips: [{ from: mm(0), width, heart: "down", pith: [width + PITH_OFF, -PITH_OFF] }],
    };
  });
}

const twinOf = ({ inY }: Corner) => (inY > 0 ? "front-left" : "back-right");

/** On the two inner faces, so that the outer ones stay in one plane with the frame. */
function tapersOf(
  asked: FrameAsked,
  railWidth: number,
  width: number,
  thickness: number,
): readonly Taper[] {
  if (asked.legForm === "square") return [];
  const from = mm(railWidth + asked.taperBelow);
  return [
    { feature: "taper", key: "taper-long", face: "upper", from, depth: mm(width - asked.foot) },
    { feature: "taper", key: "taper-end", face: "back", from, depth: mm(thickness - asked.foot) },
  ];
}

function poseOf({ inX, inY }: Corner, asked: FrameAsked, width: number, thickness: number) {
  // A mirrored leg counts its y from the other edge, so its frame starts at the inner face.
  const isMirrored = inX !== inY;
  const y: Vec3 = [inY, 0, 0];
  const outerX = (-inX * asked.length) / 2;
  const outerY = (-inY * asked.width) / 2;
  const origin: Vec3 = [
    isMirrored ? outerX + inX * width : outerX,
    outerY + inY * thickness,
    asked.height,
  ];
  return frameOf(origin, [0, 0, -1], y);
}
