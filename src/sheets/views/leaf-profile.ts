import { dot, into, outOf } from "../../geometry/index.ts";
import type { LeafJoint, Part, Piece } from "../../piece/index.ts";
import { deg } from "../../units/index.ts";
import type { Point, Stroke } from "../drawing.ts";

/** What a hinge's bed takes out of a part from below: a stretch across the joint, so deep [mm]. */
export type Bed = { readonly from: number; readonly to: number; readonly depth: number };

/** One of a leaf joint's two parts cut across, its leaf level: x out from the visible edge, y up from the underside. */
export type Profile = {
  /** its whole outline as a polygon, curves in short steps */
  readonly outline: readonly Point[];
  /** its sides without the one where it is broken off */
  readonly sides: readonly Stroke[];
  readonly beds: readonly Bed[];
};

/** Steps of a quarter circle in an outline: off the true arc by less than 1/1000 of its radius. */
const STEPS = 36;

const named = ({ parts }: Pick<Piece, "parts">, key: string): Part => {
  const part = parts.find((one) => one.key === key);
  if (!part) throw new Error(`a leaf's joint names ${key}, which is no part`);
  return part;
};

/** Where a part's long edge lies in the section, seen across. */
const edgeAt = ({ section }: LeafJoint, { pose, blank }: Part, edge: "lower" | "upper"): number =>
  into(section, outOf(pose, [0, edge === "upper" ? blank.width : 0, 0]))[0];

/** The edge of a part that is farther out or farther in. */
function edgeTowards(joint: LeafJoint, part: Part, way: "out" | "in"): "lower" | "upper" {
  const isUpperOut = dot(joint.section.x, part.pose.y) > 0;
  return isUpperOut === (way === "out") ? "upper" : "lower";
}

/** The beds that the hinge in the middle of the joint has in a part. */
function bedsIn({ section, hinges }: LeafJoint, { features, pose }: Part): readonly Bed[] {
  const z = hinges[Math.floor(hinges.length / 2)] ?? 0;
  return features.flatMap((feature): readonly Bed[] => {
    if (feature.feature !== "hinge-recess" && feature.feature !== "knuckle-groove") return [];
    const ends = feature.x.map((x) => into(section, outOf(pose, [x, 0, 0]))[2]);
    if (Math.min(...ends) > z || Math.max(...ends) < z) return [];
    const across = feature.y.map((y) => into(section, outOf(pose, [0, y, 0]))[0]);
    return [{ from: Math.min(...across), to: Math.max(...across), depth: feature.depth }];
  });
}

const line = (from: Point, to: Point): Stroke => ({ shape: "line", from, to });

/** Sides one after the other, from the underside's broken end round to the face's. */
const chain = (...points: readonly Point[]): readonly Stroke[] =>
  points.slice(1).map((to, i) => line(points[i] ?? to, to));

type Arc = Extract<Stroke, { shape: "arc" }>;

const quarter = (centre: Point, radius: number): Arc => ({
  ...{ shape: "arc", centre, from: deg(0), to: deg(90) },
  radius: radius as Arc["radius"],
});

/** Points along a quarter from its foot to its crown. */
const pointsAlong = ({ centre: [x, y], radius }: Arc): readonly Point[] =>
  Array.from({ length: STEPS + 1 }, (_, i): Point => {
    const angle = (i * Math.PI) / 2 / STEPS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/**
 * The fixed top across the joint.
 *
 * @param reach  so far in from the visible edge it is shown [mm]
 */
export function topProfile(piece: Pick<Piece, "parts">, joint: LeafJoint, reach: number): Profile {
  const part = named(piece, joint.top);
  const edge = edgeTowards(joint, part, "out");
  const out = edgeAt(joint, part, edge);
  const high = part.blank.thickness;
  const beds = bedsIn(joint, part).filter(({ to }) => to > -reach);
  const moulding = part.features.find((f) => f.feature === "round-over" && f.edge === edge);
  if (moulding?.feature !== "round-over") {
    const sides = chain([-reach, 0], [out, 0], [out, high], [-reach, high]);
    const outline: readonly Point[] = [
      [-reach, 0],
      [out, 0],
      [out, high],
      [-reach, high],
    ];
    return { outline, sides, beds };
  }
  const { radius, fillet, bevel } = moulding;
  const foot = high - fillet - radius;
  const arc = quarter([out - radius, foot], radius);
  const low: readonly Point[] = [
    [-reach, 0],
    [out - bevel, 0],
    [out, foot],
  ];
  const up: readonly Point[] = [
    [out - radius, foot + radius],
    [out - radius, high],
    [-reach, high],
  ];
  return {
    outline: [...low, ...pointsAlong(arc).slice(1, -1), ...up],
    sides: [...chain(...low), arc, ...chain(...up)],
    beds,
  };
}

/**
 * The leaf across the joint, level.
 *
 * @param reach  so far out from the visible edge it is shown [mm]
 */
export function leafProfile(piece: Pick<Piece, "parts">, joint: LeafJoint, reach: number): Profile {
  const part = named(piece, joint.leaf);
  const edge = edgeTowards(joint, part, "in");
  const start = edgeAt(joint, part, edge);
  const high = part.blank.thickness;
  const beds = bedsIn(joint, part).filter(({ from }) => from < reach);
  const moulding = part.features.find((f) => f.feature === "cove" && f.edge === edge);
  if (moulding?.feature !== "cove") {
    const outline: readonly Point[] = [
      [reach, 0],
      [start, 0],
      [start, high],
      [reach, high],
    ];
    return { outline, sides: chain(...outline), beds };
  }
  const { radius, lip } = moulding;
  const foot = high - lip - radius;
  const arc = quarter([start, foot], radius);
  const low: readonly Point[] = [
    [reach, 0],
    [start + radius, 0],
    [start + radius, foot],
  ];
  const up: readonly Point[] = [
    [start, foot + radius],
    [start, high],
    [reach, high],
  ];
  return {
    outline: [...low, ...pointsAlong(arc).slice(1, -1), ...up],
    sides: [...chain(...low), arc, ...chain(...up)],
    beds,
  };
}
