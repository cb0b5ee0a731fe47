import type { Sizes } from "./rule-joint.ts";

const FAR = Number.POSITIVE_INFINITY;

/**
 * The least that leaf and top come near each other over the swing: the number alone, for those who ask
 * a great many joints. It looks at the same few places as `leastOverSwing`, but finds each by lengths
 * instead of angles, and makes nothing on its way.
 *
 * @returns gap [mm], negative where they overlap; how deep, is then told by one of two faces at an edge
 */
export const leastGap = (s: Sizes): number =>
  Math.min(
    coveOverRound(s),
    cornerOfTop(s, s.R, 0),
    cornerOfTop(s, s.R - s.u, -s.b),
    tipOfLip(s),
    cornerOfLeaf(s),
  );

/** How far a point of the top is from the leaf's cove and wall, both as the closed leaf has them. */
function toLeaf(s: Sizes, qx: number, qy: number): number {
  const x = qx - s.g;
  const y = qy - (s.k - s.c);
  if (y <= 0) return s.Rc - x;
  const isPastLip = x * Math.sqrt(s.Rc * s.Rc - s.trim * s.trim) < s.trim * y;
  return isPastLip ? FAR : s.Rc - Math.sqrt(x * x + y * y);
}

/** The same for the place (wx, wy) from the pin, if a corner turns through it that starts at (vx, vy). */
const leafAt = (s: Sizes, vx: number, vy: number, wx: number, wy: number): number =>
  vx * wy - vy * wx < 0 || vx * wx + vy * wy < 0 ? FAR : toLeaf(s, s.dx + wx, s.dy + wy);

/** A corner of the top, seen from the leaf: it turns upwards about the pin, through a quarter. */
function cornerOfTop(s: Sizes, px: number, py: number): number {
  const vx = px - s.dx;
  const vy = py - s.dy;
  const rr = vx * vx + vy * vy;
  const r = Math.sqrt(rr);
  const up = Math.max(-r, Math.min(r, s.k - s.c - s.dy));
  const out = Math.sqrt(Math.max(0, rr - up * up));
  const ox = s.dx - s.g;
  const oy = s.dy - (s.k - s.c);
  const o = Math.sqrt(ox * ox + oy * oy);
  return Math.min(
    toLeaf(s, px, py),
    toLeaf(s, s.dx - vy, s.dy + vx),
    leafAt(s, vx, vy, r, 0),
    leafAt(s, vx, vy, out, up),
    leafAt(s, vx, vy, -out, up),
    o > 0 ? leafAt(s, vx, vy, (r * ox) / o, (r * oy) / o) : FAR,
  );
}

/** How far a place of the lip's tip is from the round-over and the edge below it. */
function toTop(s: Sizes, x: number, y: number): number {
  if (y >= 0) return x > -1e-9 ? Math.sqrt(x * x + y * y) - s.R : FAR;
  const out = x - s.R;
  return -s.u * out - s.b * y > 0
    ? (s.b * out - s.u * y) / Math.sqrt(s.b * s.b + s.u * s.u)
    : Math.sqrt(out * out + y * y);
}

const topAt = (s: Sizes, vx: number, vy: number, wx: number, wy: number): number =>
  vx * wy - vy * wx > 0 || vx * wx + vy * wy < 0 ? FAR : toTop(s, s.dx + wx, s.dy + wy);

/** The lip's tip turns downwards about the pin. */
function tipOfLip(s: Sizes): number {
  const px = s.g + s.trim;
  const py = s.k - s.c + Math.sqrt(s.Rc * s.Rc - s.trim * s.trim);
  const vx = px - s.dx;
  const vy = py - s.dy;
  const rr = vx * vx + vy * vy;
  const r = Math.sqrt(rr);
  const up = Math.max(-r, Math.min(r, -s.dy));
  const out = Math.sqrt(Math.max(0, rr - up * up));
  const o = Math.sqrt(s.dx * s.dx + s.dy * s.dy);
  return Math.min(
    toTop(s, px, py),
    toTop(s, s.dx + vy, s.dy - vx),
    topAt(s, vx, vy, out, up),
    topAt(s, vx, vy, -out, up),
    o > 0 ? topAt(s, vx, vy, (-r * s.dx) / o, (-r * s.dy) / o) : FAR,
  );
}

/** The leaf's lower corner turns in under the top. */
function cornerOfLeaf(s: Sizes): number {
  const vx = s.g + s.Rc - s.dx;
  const vy = -s.b - s.dy;
  const edge = s.R - s.u;
  const start = s.dx + vx < edge ? -s.b - s.dy - vy : FAR;
  const end = s.dx + vy < edge ? -s.b - s.dy + vx : FAR;
  // Where it passes in under the edge.
  const wx = edge - s.dx;
  const down = vx * vx + vy * vy - wx * wx;
  const wy = -Math.sqrt(Math.max(0, down));
  const isPassed = down >= 0 && vx * wy - vy * wx <= 0 && vx * wx + vy * wy >= 0;
  return Math.min(start, end, isPassed ? -s.b - s.dy - wy : FAR);
}

/** Gap on the line between the arcs' centres, the leaf down by an angle of this cosine and sine. */
function facing(s: Sizes, cos: number, sin: number): number {
  const vx = s.g - s.dx;
  const vy = s.k - s.c - s.dy;
  const x = s.dx + vx * cos + vy * sin;
  const y = s.dy - vx * sin + vy * cos;
  const off = Math.sqrt(x * x + y * y);
  if (off < 1e-12) return s.c - off;
  // Seen from the leaf the same line has turned back up.
  const isWithinLip = y * sin - x * cos >= (s.trim / s.Rc) * off;
  return x <= 0 && y <= 0 && isWithinLip ? s.c - off : FAR;
}

/** The arcs are nearest where the line between their centres meets both. */
function coveOverRound(s: Sizes): number {
  const vx = s.g - s.dx;
  const vy = s.k - s.c - s.dy;
  const turn = Math.sqrt((vx * vx + vy * vy) * (s.dx * s.dx + s.dy * s.dy));
  // Down until the cove's centre lies farthest out, in line with the pin.
  const cos = vx * s.dx + vy * s.dy;
  const sin = vy * s.dx - vx * s.dy;
  return Math.min(
    facing(s, 1, 0),
    facing(s, 0, 1),
    turn > 0 && cos >= 0 && sin >= 0 ? facing(s, cos / turn, sin / turn) : FAR,
  );
}
