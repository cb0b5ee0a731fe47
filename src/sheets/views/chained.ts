import type { Point, Stroke } from "../drawing.ts";
import type { Segment } from "./stretches.ts";

/** Segments that meet within this are taken to meet [mm]. */
const MEET = 1e-3;
/** They are one curve while they turn by less: cosine of 25°. */
const SMOOTH = Math.cos((25 * Math.PI) / 180);

type End = { readonly segment: number; readonly isFirst: boolean };

/**
 * Short segments that follow a curve, made one path, so that dashes run on along it. Lines that
 * merely meet in a corner stay apart.
 */
export function chained(segments: readonly Segment[]): readonly Stroke[] {
  const nextOf = neighbours(segments);
  const isUsed = new Array<boolean>(segments.length).fill(false);
  const walk = (start: End): readonly Point[] => {
    const points: Point[] = [];
    let at: End | undefined = start;
    while (at && !isUsed[at.segment]) {
      isUsed[at.segment] = true;
      const far: End = { segment: at.segment, isFirst: !at.isFirst };
      points.push(pointAt(segments, far));
      at = nextOf.get(nameOf(far));
    }
    return points;
  };
  return segments.flatMap((_, segment): readonly Stroke[] => {
    if (isUsed[segment]) return [];
    const last: End = { segment, isFirst: false };
    const onward = walk({ segment, isFirst: true });
    const back = nextOf.get(nameOf({ segment, isFirst: true }));
    const before = back ? walk(back) : [];
    const points = [
      ...[...before].reverse(),
      pointAt(segments, { ...last, isFirst: true }),
      ...onward,
    ];
    const [from, to] = [points[0], points.at(-1)];
    if (!from || !to) return [];
    if (points.length === 2) return [{ shape: "line", from, to }];
    const isClosed = Math.hypot(to[0] - from[0], to[1] - from[1]) < MEET;
    return [{ shape: "path", points: isClosed ? points.slice(0, -1) : points, isClosed }];
  });
}

const nameOf = ({ segment, isFirst }: End) => 2 * segment + (isFirst ? 0 : 1);

function pointAt(segments: readonly Segment[], { segment, isFirst }: End): Point {
  const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = segments[segment] ?? [];
  return isFirst ? [x0, y0] : [x1, y1];
}

/** The end that goes on smoothly from each end, where exactly two segments meet. */
function neighbours(segments: readonly Segment[]): ReadonlyMap<number, End> {
  const meeting = new Map<string, End[]>();
  const ends = segments.flatMap((_, segment): readonly End[] => [
    { segment, isFirst: true },
    { segment, isFirst: false },
  ]);
  for (const end of ends) {
    const [x, y] = pointAt(segments, end);
    const place = `${Math.round(x / MEET)} ${Math.round(y / MEET)}`;
    meeting.set(place, [...(meeting.get(place) ?? []), end]);
  }
  const next = new Map<number, End>();
  for (const [a, b, more] of meeting.values()) {
    if (!a || !b || more || a.segment === b.segment) continue;
    const [p, q] = [outward(segments, a), outward(segments, b)];
    if (-(p[0] * q[0] + p[1] * q[1]) < SMOOTH) continue;
    next.set(nameOf(a), b);
    next.set(nameOf(b), a);
  }
  return next;
}

/** The direction in which a segment leaves through one of its ends. */
function outward(segments: readonly Segment[], end: End): Point {
  const at = pointAt(segments, end);
  const far = pointAt(segments, { ...end, isFirst: !end.isFirst });
  const size = Math.hypot(at[0] - far[0], at[1] - far[1]);
  return [(at[0] - far[0]) / size, (at[1] - far[1]) / size];
}
