import {
  apart,
  type Convex,
  cross,
  type Flat,
  type Frame,
  frameOf,
  outOf,
  type Shadow,
  shadowOf,
  turnedOutline,
  unit,
  type Vec3,
} from "../geometry/index.ts";
import type { Key, Motion } from "../piece/index.ts";
import { type Deg, deg, type Mm, mm } from "../units/index.ts";

/** A part's wood as convex bodies, in the piece, as it stands with every motion at 0. */
export type Wood = { readonly key: Key; readonly bodies: readonly Convex[] };

/** How what turns passes what stands. */
export type Passing = {
  /** the least between them, below nought where they run into each other [mm] */
  readonly gap: Mm;
  /** turned by this when they are nearest, or first meet [°] */
  readonly turn: Deg;
  /** where, in the piece */
  readonly at: Vec3;
  /** the two parts */
  readonly moving: Key;
  readonly standing: Key;
};

/** Bodies that only touch along the axis do not meet in turning [mm]. */
const TOUCH = 1e-3;
const STEP = Math.PI / 180;
const RADIAN = Math.PI / 180;

/** A frame whose z is the axis: so turning is turning in its plane. */
function acrossAxis({ axis }: Motion): Frame {
  const { at, along } = axis;
  const [x, y, z] = along.map(Math.abs) as [number, number, number];
  const away: Vec3 = x <= y && x <= z ? [1, 0, 0] : y <= z ? [0, 1, 0] : [0, 0, 1];
  const side = unit(cross(away, along));
  return frameOf(at, side, cross(along, side));
}

type Shaded = {
  readonly key: Key;
  readonly shadow: Shadow;
  readonly near: number;
  readonly far: number;
};

/** Every body's shadow, and how far from the axis it lies. */
const shadesOf = (wood: readonly Wood[], frame: Frame): readonly Shaded[] =>
  wood.flatMap(({ key, bodies }) =>
    bodies.flatMap((body): readonly Shaded[] => {
      const shadow = shadowOf([body], frame);
      if (!shadow || shadow.outline.length < 3) return [];
      const far = Math.max(...shadow.outline.map(([x, y]) => Math.hypot(x, y)));
      const [nearX, nearY] = [spanFrom(shadow.outline, 0), spanFrom(shadow.outline, 1)];
      return [{ key, shadow, near: Math.hypot(nearX, nearY), far }];
    }),
  );

/** How far an outline's box stays from the origin along an axis. */
function spanFrom(outline: readonly Flat[], axis: 0 | 1): number {
  const places = outline.map((p) => p[axis]);
  return Math.max(0, Math.min(...places), -Math.max(...places));
}

/**
 * How near what a motion carries comes to what stands, seen along its axis, from one turn to another.
 * Bodies are taken as they are cut, and nothing is known here of what placed them. Where they run into
 * each other it is the first time that is told; otherwise the nearest.
 *
 * @param moving  what turns, as it stands at 0
 * @param standing  what stays
 * @param from  of the turn [°]
 * @param to  of the turn [°]
 * @returns undefined when no body of either lies beside one of the other
 */
export function passing(
  motion: Motion,
  moving: readonly Wood[],
  standing: readonly Wood[],
  from: Deg,
  to: Deg,
): Passing | undefined {
  const frame = acrossAxis(motion);
  const still = shadesOf(standing, frame);
  const pairs = shadesOf(moving, frame).flatMap((m) =>
    still
      .filter((s) => isBeside(m.shadow, s.shadow))
      .map((s) => ({ m, s, room: Math.max(s.near - m.far, m.near - s.far) })),
  );
  // Those that may come nearest first, so that the others can be passed over.
  pairs.sort((a, b) => a.room - b.room);
  let best: Passing | undefined;
  for (const { m, s, room } of pairs) {
    if (best && room >= Math.max(best.gap, 0)) continue;
    const care = best ? Math.max(best.gap, 0) : Number.POSITIVE_INFINITY;
    const found = pairPassing(m, s, [from * RADIAN, to * RADIAN], care);
    if (best && !isWorse(found, best)) continue;
    const [x, y] = found.at;
    const high = (Math.max(m.shadow.from, s.shadow.from) + Math.min(m.shadow.to, s.shadow.to)) / 2;
    best = {
      gap: mm(found.gap),
      turn: deg(found.turn / RADIAN),
      at: outOf(frame, [x, y, high]),
      moving: m.key,
      standing: s.key,
    };
  }
  return best;
}

/** What meets is worse than what does not; of two that meet the sooner, of two that do not the nearer. */
function isWorse(found: Found, best: Passing): boolean {
  if (found.gap < -TOUCH && best.gap < -TOUCH) return found.turn / RADIAN < best.turn;
  return found.gap < best.gap;
}

const isBeside = (a: Shadow, b: Shadow): boolean =>
  Math.min(a.to, b.to) - Math.max(a.from, b.from) > TOUCH;

type Found = { readonly gap: number; readonly turn: number; readonly at: Flat };

/**
 * A gap falls by no more than the farthest corner travels: so after a wide one many steps can be
 * passed over, and none that is nearer than the nearest so far is missed by more than a step. Gaps wider than `care` are no matter.
 */
function pairPassing(
  m: Shaded,
  s: Shaded,
  [from, to]: readonly [number, number],
  care: number,
): Found {
  const gapAt = (turn: number, enough?: number): Found => ({
    ...apart(turnedOutline(m.shadow.outline, turn), s.shadow.outline, enough),
    turn,
  });
  const way = to < from ? -1 : 1;
  let least = gapAt(from);
  if (least.gap < -TOUCH) return least;
  let [found, before] = [least, from];
  while (way * (to - before) > 1e-12) {
    const stride = Math.max(STEP, (found.gap - Math.min(least.gap, care)) / m.far);
    const turn = way * Math.min(way * (before + way * stride), way * to);
    found = gapAt(turn, Math.min(least.gap, care));
    if (found.gap < -TOUCH) return firstOf(gapAt, before, turn);
    if (found.gap < least.gap) least = found;
    before = turn;
  }
  if (least.gap - STEP * m.far > care) return least;
  const fine = finest(gapAt, least.turn, STEP, [from, to]);
  if (fine.gap < -TOUCH) return firstOf(gapAt, fine.turn - way * STEP, fine.turn);
  return fine.gap < least.gap ? fine : least;
}

/** The turn at which two begin to overlap. */
function firstOf(gapAt: (turn: number) => Found, free: number, bound: number): Found {
  let [good, bad] = [free, bound];
  for (let i = 0; i < 30; i++) {
    const half = (good + bad) / 2;
    if (gapAt(half).gap < -TOUCH) bad = half;
    else good = half;
  }
  // What is told of a meeting is how deep it goes a step further on, and where it began.
  return { ...gapAt(bad), gap: Math.min(gapAt(bound).gap, -TOUCH) };
}

/** Narrowed about the nearest step; the gap is smooth between two of them. */
function finest(
  gapAt: (turn: number) => Found,
  about: number,
  step: number,
  [from, to]: readonly [number, number],
): Found {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const golden = (Math.sqrt(5) - 1) / 2;
  let [a, b] = [Math.max(low, about - Math.abs(step)), Math.min(high, about + Math.abs(step))];
  let [left, right] = [gapAt(b - golden * (b - a)), gapAt(a + golden * (b - a))];
  for (let i = 0; i < 16; i++) {
    if (left.gap < right.gap) {
      [b, right] = [right.turn, left];
      left = gapAt(b - golden * (b - a));
    } else {
      [a, left] = [left.turn, right];
      right = gapAt(a + golden * (b - a));
    }
  }
  return left.gap < right.gap ? left : right;
}
