import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import type { Spot } from "./corners.ts";
import { type RuleJoint, type Sizes, sizesOf } from "./rule-joint.ts";

/** A piece of an outline: a straight edge, or a quarter of a circle's arc. */
type Piece =
  | { readonly from: Spot; readonly to: Spot }
  | { readonly centre: Spot; readonly radius: number; readonly most: number };

/** A member of the joint as a region of the plane, in its own place when the leaf is closed. */
type Member = {
  readonly holds: (p: Spot) => boolean;
  readonly outline: readonly Piece[];
  /** points along the outline */
  readonly points: readonly Spot[];
};

/** What a sweep of the two sections finds. */
export type Swept = {
  /** least distance between the members, negative by how deep they overlap [mm] */
  readonly gap: Mm;
  /** leaf down by this where that is [°] */
  readonly swing: Deg;
  /** first overlap on the way down; undefined when there is none [°] */
  readonly firstContact: Deg | undefined;
  /** where the members first overlap, or else come nearest [mm] */
  readonly at: Spot;
};

function topOf(s: Sizes): Member {
  const face = s.f + s.R;
  const outline: readonly Piece[] = [
    { centre: { x: 0, y: 0 }, radius: s.R, most: Math.PI / 2 },
    { from: { x: s.R, y: 0 }, to: { x: s.R - s.u, y: -s.b } },
    { from: { x: s.R - s.u, y: -s.b }, to: { x: -3 * s.R, y: -s.b } },
  ];
  const holds = ({ x, y }: Spot) => {
    if (y > face || y < -s.b) return false;
    if (x <= 0) return true;
    return y >= 0 ? x * x + y * y <= s.R * s.R : x <= s.R + (s.u * y) / s.b;
  };
  return { holds, outline, points: outline.flatMap(pointsOf) };
}

function leafOf(s: Sizes): Member {
  const face = s.f + s.R;
  const centre = { x: s.g, y: s.k - s.c };
  const foot = { x: s.g + s.Rc, y: -s.b };
  const outline: readonly Piece[] = [
    { centre, radius: s.Rc, most: Math.acos(s.trim / s.Rc) },
    { from: { x: s.g + s.Rc, y: centre.y }, to: foot },
    { from: foot, to: { x: s.g + 3 * s.Rc, y: -s.b } },
  ];
  const holds = ({ x, y }: Spot) => {
    if (y > face || y < -s.b || x < s.g + s.trim) return false;
    if (y < centre.y) return x >= s.g + s.Rc;
    return (x - centre.x) ** 2 + (y - centre.y) ** 2 >= s.Rc * s.Rc;
  };
  return { holds, outline, points: outline.flatMap(pointsOf) };
}

/** Points along an outline, its ends among them: corners are where most contacts are. */
function pointsOf(piece: Piece): readonly Spot[] {
  const count = "radius" in piece ? 40 : 8;
  return Array.from({ length: count + 1 }, (_, i) => {
    const share = i / count;
    if ("radius" in piece) {
      const a = share * piece.most;
      const { centre, radius } = piece;
      return { x: centre.x + radius * Math.cos(a), y: centre.y + radius * Math.sin(a) };
    }
    const { from, to } = piece;
    return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) };
  });
}

function distanceTo(piece: Piece, p: Spot): number {
  if ("radius" in piece) {
    const [x, y] = [p.x - piece.centre.x, p.y - piece.centre.y];
    const a = Math.atan2(y, x);
    if (a >= 0 && a <= piece.most) return Math.abs(Math.hypot(x, y) - piece.radius);
    const ends = [0, piece.most].map((end) =>
      Math.hypot(x - piece.radius * Math.cos(end), y - piece.radius * Math.sin(end)),
    );
    return Math.min(...ends);
  }
  const { from, to } = piece;
  const [ex, ey] = [to.x - from.x, to.y - from.y];
  const share = ((p.x - from.x) * ex + (p.y - from.y) * ey) / (ex * ex + ey * ey);
  const held = Math.max(0, Math.min(1, share));
  return Math.hypot(p.x - from.x - held * ex, p.y - from.y - held * ey);
}

const turned = (p: Spot, pin: Spot, radians: number): Spot => {
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const [x, y] = [p.x - pin.x, p.y - pin.y];
  return { x: pin.x + x * cos - y * sin, y: pin.y + x * sin + y * cos };
};

/** Nearest of one member's points to the other, below nothing where one lies within it. */
function nearest(points: readonly Spot[], other: Member, pin: Spot, radians: number) {
  let [gap, at] = [Number.POSITIVE_INFINITY, pin];
  for (const point of points) {
    const p = turned(point, pin, radians);
    let off = Number.POSITIVE_INFINITY;
    for (const piece of other.outline) off = Math.min(off, distanceTo(piece, p));
    const signed = other.holds(p) ? -off : off;
    if (signed < gap) [gap, at] = [signed, p];
  }
  return { gap, at };
}

/** Closer than this counts as touching, not as overlap [mm]. */
const TOUCH = 1e-6;
const STEPS = 60;

/**
 * Swings the two sections through each other by brute force: every point of either outline is asked,
 * swing by swing, whether it lies in the other member. It knows the outlines alone, and none of the
 * formulas that place the pin: whoever doubts those may ask it.
 *
 * @throws Problem "rule-joint-section"
 */
export function sweptJoint(joint: RuleJoint): Swept {
  const s = sizesOf(joint);
  const [top, leaf] = [topOf(s), leafOf(s)];
  const pin = { x: s.dx, y: s.dy };
  const gapAt = (radians: number) => {
    const ofLeaf = nearest(leaf.points, top, pin, -radians);
    const ofTop = nearest(top.points, leaf, pin, radians);
    if (ofLeaf.gap <= ofTop.gap) return ofLeaf;
    return { gap: ofTop.gap, at: turned(ofTop.at, pin, -radians) };
  };
  const one = Math.PI / 2 / STEPS;
  const found = Array.from({ length: STEPS + 1 }, (_, i) => ({ a: i * one, ...gapAt(i * one) }));
  const least = found.reduce((best, now) => (now.gap < best.gap ? now : best));
  const fine = finest(gapAt, Math.max(0, least.a - one), Math.min(Math.PI / 2, least.a + one));
  const best = fine.gap < least.gap ? fine : least;
  const first = [...found, best].sort((p, q) => p.a - q.a).find(({ gap }) => gap < -TOUCH);
  if (!first)
    return { gap: mm(best.gap), swing: degrees(best.a), firstContact: undefined, at: best.at };
  let [free, bound] = [Math.max(0, first.a - one), first.a];
  for (let i = 0; i < 24 && bound > 0; i++) {
    const half = (free + bound) / 2;
    if (gapAt(half).gap < -TOUCH) bound = half;
    else free = half;
  }
  const { at } = gapAt(bound);
  return { gap: mm(best.gap), swing: degrees(best.a), firstContact: degrees(bound), at };
}

const degrees = (radians: number): Deg => deg((radians * 180) / Math.PI);

function finest(gapAt: (a: number) => { gap: number; at: Spot }, from: number, to: number) {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [from, to];
  for (let i = 0; i < 14; i++) {
    const [left, right] = [b - golden * (b - a), a + golden * (b - a)];
    if (gapAt(left).gap < gapAt(right).gap) b = right;
    else a = left;
  }
  const middle = (a + b) / 2;
  return { a: middle, ...gapAt(middle) };
}
