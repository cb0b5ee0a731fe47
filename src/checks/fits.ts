import { into, outOf, type Vec3 } from "../geometry/index.ts";
import {
  type Joint,
  type Mortise,
  mirrored,
  type Part,
  type Piece,
  type Tenon,
} from "../piece/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { derived, type Finding, given, type Worked, work } from "../worked/index.ts";

/** What glue and a clamp close, or a plane takes off [mm]. */
const NO_MATTER = 0.3;

/** Whether settled sizes agree: shoulders reach the legs, all feet the floor, the top the frame. */
export const fitsTogether = (piece: Piece): readonly Finding[] => [
  ...shoulders(piece),
  ...feet(piece),
  ...overFrame(piece),
];

const offBy = (says: string, off: number): Worked<Mm> =>
  work({
    says,
    unit: "mm",
    formula: "a = d",
    inputs: { d: given(says, mm(off), "mm", derived("geometry of the piece")) },
    value: mm(off),
    source: derived("geometry of the piece"),
  });

const finding = (
  id: string,
  verdict: Finding["verdict"],
  says: string,
  margin: Worked | undefined,
  lights: readonly string[],
): Finding => ({
  id,
  group: "Joinery",
  verdict,
  says,
  ...(margin ? { margin } : {}),
  why: margin ? [margin] : [],
  lights,
});

/** The widest gap, or the deepest bite, between a rail's shoulder and its leg. */
function shoulders(piece: Piece): readonly Finding[] {
  const gaps = piece.joints
    .flatMap((joint) => gapOf(joint, piece) ?? [])
    .sort((a, b) => Math.abs(b.gap) - Math.abs(a.gap));
  const [worst] = gaps;
  if (!worst) return [];
  const off = gaps.filter(({ gap }) => Math.abs(gap) > NO_MATTER);
  if (off.length === 0) {
    return [finding("fits/shoulders", "ok", "Every shoulder meets its leg.", undefined, [])];
  }
  const says =
    worst.gap > 0
      ? `The ${worst.joint.says} leaves a gap at its shoulder.`
      : `The ${worst.joint.says} is too long between its shoulders.`;
  const margin = offBy(`${worst.joint.says}: shoulder off the leg`, worst.gap);
  return [
    finding("fits/shoulders", "fails", says, margin, [
      ...new Set(off.flatMap(({ joint }) => joint.parts)),
    ]),
  ];
}

type Gap = { readonly joint: Joint; readonly gap: number };

/** From the leg's face out to the shoulder; below nought when the shoulder stands in the leg. */
function gapOf(joint: Joint, { parts }: Piece): Gap | undefined {
  if (joint.kind !== "mortise-and-tenon") return undefined;
  const held = joint.features.flatMap(([key, name]) => {
    const part = parts.find((one) => one.key === key);
    const feature = part?.features.find((one) => one.key === name);
    return part && feature ? [{ part, feature }] : [];
  });
  const tenon = held.find(({ feature }) => feature.feature === "tenon");
  const mortise = held.find(({ feature }) => feature.feature === "mortise");
  if (!tenon || !mortise) return undefined;
  const { end, length, y, z } = tenon.feature as Tenon;
  const x = end === "left" ? length : tenon.part.blank.length - length;
  const middle: Vec3 = [x, (y[0] + y[1]) / 2, (z[0] + z[1]) / 2];
  const there = into(mortise.part.pose, outOf(tenon.part.pose, middle));
  return { joint, gap: outOfFace(mortise.part, mortise.feature as Mortise, there) };
}

function outOfFace(part: Part, { face }: Mortise, at: Vec3): number {
  const [, y, z] = mirrored(part, at);
  const { width, thickness } = part.blank;
  return { upper: y - width, lower: -y, show: z - thickness, back: -z }[face];
}

/** How far legs end off the floor. */
function feet({ parts }: Piece): readonly Finding[] {
  const legs = parts.filter((part) => part.role === "leg");
  const ends = legs.map((part) => ({
    part,
    height: outOf(part.pose, [part.blank.length, 0, 0])[2],
  }));
  const [worst] = [...ends].sort((a, b) => Math.abs(b.height) - Math.abs(a.height));
  if (!worst) return [];
  const off = ends.filter(({ height }) => Math.abs(height) > NO_MATTER);
  if (off.length === 0)
    return [finding("fits/feet", "ok", "All legs end on the floor.", undefined, [])];
  const margin = offBy(`${worst.part.name}: its end above the floor`, worst.height);
  // Equally long legs only make another height; one that differs makes it rock.
  const isLevel = ends.every(({ height }) => Math.abs(height - worst.height) <= NO_MATTER);
  return [
    finding(
      "fits/feet",
      isLevel ? "watch" : "fails",
      isLevel
        ? "The legs are not as long as the height asks: the table will stand at another height."
        : "The legs are not equally long: the table rocks.",
      margin,
      off.map(({ part }) => part.key),
    ),
  ];
}

/** How far the frame stands out from under the top. */
function overFrame({ parts }: Piece): readonly Finding[] {
  const top = parts.find((part) => part.role === "top");
  if (!top) return [];
  const { length, width } = top.blank;
  const out = parts
    .filter((part) => part.role === "leg" || part.role === "rail")
    .flatMap((part) => corners(part).map((corner) => ({ part, at: into(top.pose, corner) })))
    .map(({ part, at: [x, y] }) => ({ part, over: Math.max(-x, x - length, -y, y - width) }))
    .filter(({ over }) => over > NO_MATTER)
    .sort((a, b) => b.over - a.over);
  const [worst] = out;
  if (!worst) return [];
  return [
    finding(
      "fits/top",
      "watch",
      "The frame stands out from under the top.",
      offBy(`${worst.part.name}: out from under the top`, worst.over),
      [...new Set(out.map(({ part }) => part.key))],
    ),
  ];
}

const corners = (part: Part): readonly Vec3[] => {
  const { length, width, thickness } = part.blank;
  return [0, length].flatMap((x) =>
    [0, width].flatMap((y) => [0, thickness].map((z) => outOf(part.pose, [x, y, z]))),
  );
};
