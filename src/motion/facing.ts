import { type Corners, cornersOf, type Spot, swung } from "./corners.ts";
import type { Sizes } from "./rule-joint.ts";

/** Where two members of a rule joint come closest. */
export type Contact =
  | "cove and round-over"
  | "foot of the round-over"
  | "tip of the lip"
  | "lower edge of the top"
  | "lower corner of the leaf";

/** How near the members are at one swing, where, and between what. */
export type Nearest = {
  /** negative where they overlap [mm] */
  readonly gap: number;
  readonly contact: Contact;
  /** in the frame of the fixed top */
  readonly at: Spot;
};

/** How far a point of the top is from the leaf's cove and wall, both in the leaf's frame. */
function toLeaf(s: Sizes, q: Spot): number {
  const x = q.x - s.g;
  const y = q.y - (s.k - s.c);
  if (y <= 0) return s.Rc - x;
  const isPastLip = x * Math.sqrt(s.Rc ** 2 - s.trim ** 2) < s.trim * y;
  return isPastLip ? FAR : s.Rc - Math.sqrt(x * x + y * y);
}

/** How far the lip's tip is from the round-over and the edge below it. */
function toTop(s: Sizes, q: Spot): number {
  if (q.y >= 0) return q.x > -1e-9 ? Math.sqrt(q.x * q.x + q.y * q.y) - s.R : FAR;
  const out = q.x - s.R;
  const isBelowFoot = -s.u * out - s.b * q.y > 0;
  return isBelowFoot
    ? (s.b * out - s.u * q.y) / Math.sqrt(s.b * s.b + s.u * s.u)
    : Math.sqrt(out * out + q.y * q.y);
}

const FAR = Number.POSITIVE_INFINITY;
const RIGHT = Math.PI / 2;

const fromPin = (s: Sizes, p: Spot): number => Math.atan2(p.y - s.dy, p.x - s.dx);
const reach = (s: Sizes, p: Spot): number => Math.sqrt((p.x - s.dx) ** 2 + (p.y - s.dy) ** 2);
const held = (n: number): number => Math.max(-1, Math.min(1, n));

/** Two things that may touch: how near at a swing, where, and at which swings that can turn. */
type Pair = {
  readonly contact: Contact;
  readonly gap: (s: Sizes, corners: Corners, radians: number) => number;
  readonly at: (s: Sizes, corners: Corners, radians: number) => Spot;
  readonly turns: (s: Sizes, corners: Corners) => readonly number[];
};

/** Where the round-over faces the cove's nearest arc, from the moved cove centre; a direction. */
function facingDirection(s: Sizes, { coveCentre }: Corners, radians: number) {
  const centre = swung(s, coveCentre, radians);
  return {
    off: Math.sqrt(centre.x * centre.x + centre.y * centre.y),
    phi: Math.atan2(-centre.y, -centre.x),
  };
}

/** A corner of the top runs past wall and cove, farthest out where they lie square to its way. */
const cornerOfTop = (name: "foot" | "lowerEdge", contact: Contact): Pair => ({
  contact,
  gap: (s, corners, radians) => toLeaf(s, swung(s, corners[name], -radians)),
  at: (_, corners) => corners[name],
  turns: (s, corners) => {
    const { coveCentre, [name]: p } = corners;
    const start = fromPin(s, p);
    const across = Math.asin(held((coveCentre.y - s.dy) / reach(s, p)));
    return [
      -start,
      fromPin(s, coveCentre) + Math.PI - start,
      across - start,
      Math.PI - across - start,
    ];
  },
});

const pairs: readonly Pair[] = [
  {
    contact: "cove and round-over",
    gap: (s, corners, radians) => {
      const { off, phi } = facingDirection(s, corners, radians);
      const isFacing = phi >= 0 && phi <= RIGHT && phi + radians <= corners.lipAngle;
      return off < 1e-12 || isFacing ? s.c - off : FAR;
    },
    at: (s, corners, radians) => {
      const { phi } = facingDirection(s, corners, radians);
      return { x: s.R * Math.cos(phi), y: s.R * Math.sin(phi) };
    },
    turns: (s, { coveCentre }) => [fromPin(s, coveCentre) - Math.atan2(s.dy, s.dx)],
  },
  cornerOfTop("foot", "foot of the round-over"),
  cornerOfTop("lowerEdge", "lower edge of the top"),
  {
    contact: "tip of the lip",
    gap: (s, { lipTip }, radians) => toTop(s, swung(s, lipTip, radians)),
    at: (s, { lipTip }, radians) => swung(s, lipTip, radians),
    turns: (s, { lipTip }) => {
      const start = fromPin(s, lipTip);
      const across = Math.asin(held(-s.dy / reach(s, lipTip)));
      return [start - Math.atan2(s.dy, s.dx) - Math.PI, start - across, start - Math.PI + across];
    },
  },
  {
    contact: "lower corner of the leaf",
    gap: (s, { leafCorner }, radians) => {
      const corner = swung(s, leafCorner, radians);
      return corner.x < s.R - s.u ? -s.b - corner.y : FAR;
    },
    at: (s, { leafCorner }, radians) => swung(s, leafCorner, radians),
    turns: (s, { leafCorner }) => [
      fromPin(s, leafCorner) + Math.acos(held((s.R - s.u - s.dx) / reach(s, leafCorner))),
    ],
  },
];

/**
 * How near leaf and top are at one swing, exactly: arcs, and every corner that may touch first. That
 * the lip's end meets the fillet when closed is a stop, not a fault, and is left out.
 *
 * @param corners  from `cornersOf`
 * @param radians  leaf turned down by this [rad]
 */
export function nearestAt(s: Sizes, corners: Corners, radians: number): Nearest {
  let least: { pair: Pair; gap: number } | undefined;
  // In a fixed order, and only by more than a hair: equal gaps must not be told apart by rounding.
  for (const pair of pairs) {
    const gap = pair.gap(s, corners, radians);
    if (!least || gap < least.gap - HAIR) least = { pair, gap };
  }
  if (!least) throw new Error("there are pairs");
  const { pair, gap } = least;
  return { gap, contact: pair.contact, at: pair.at(s, corners, radians) };
}

const HAIR = 1e-9;

const inSwing = (radians: number): number =>
  radians - 2 * Math.PI * Math.floor(radians / (2 * Math.PI));

/** Swings at which a distance can turn from falling to rising, 0 and 90° among them. */
export const turningSwings = (s: Sizes, corners: Corners): readonly number[] => [
  0,
  RIGHT,
  ...pairs.flatMap((pair) =>
    pair
      .turns(s, corners)
      .map(inSwing)
      .filter((a) => a < RIGHT),
  ),
];

/**
 * The least that leaf and top come near each other, and at which swing: each pair is asked at its
 * own few swings.
 */
export function leastOverSwing(s: Sizes): {
  readonly gap: number;
  readonly contact: Contact;
  readonly radians: number;
  readonly at: Spot;
} {
  const corners = cornersOf(s);
  let [least, found, swing] = [FAR, pairs[0], 0];
  for (const pair of pairs) {
    const ask = (radians: number) => {
      const gap = pair.gap(s, corners, radians);
      if (gap < least - HAIR) [least, found, swing] = [gap, pair, radians];
    };
    ask(0);
    for (const turn of pair.turns(s, corners)) {
      const radians = inSwing(turn);
      if (radians < RIGHT) ask(radians);
    }
    ask(RIGHT);
  }
  if (!found) throw new Error("there are pairs");
  return { gap: least, contact: found.contact, radians: swing, at: found.at(s, corners, swing) };
}
