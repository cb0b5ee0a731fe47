import type {
  Dimension,
  LeaderDimension,
  Point,
  RadiusDimension,
  StraightDimension,
} from "../drawing.ts";
import { CAPS, textLength } from "../lettering.ts";
import {
  CLEAR,
  dot,
  from,
  level,
  line,
  SIZE,
  type ToPaper,
  text,
  upright,
  type Ways,
} from "./dimension-kit.ts";
import type { Mark } from "./mark.ts";
import { runningMarks } from "./running-marks.ts";

/** An arrow's head [mm]. */
const HEAD = { long: 2.2, half: 0.38 } as const;
/** How far an extension line goes past its dimension line [mm]. */
const PAST = 1.5;
/** Between a figure and its line [mm]. */
const LIFT = 0.9;

/** What a dimension's figure says as the marks that show it. */
export function dimensionMarks(dimension: Dimension, toPaper: ToPaper): readonly Mark[] {
  switch (dimension.dimension) {
    case "straight":
      return straightMarks(dimension, toPaper);
    case "running":
      return runningMarks(dimension, toPaper);
    case "radius":
      return radiusMarks(dimension, toPaper);
    case "leader":
      return leaderMarks(dimension, toPaper);
  }
}

/** A head whose tip is at a point, looking along a direction: 1 forwards, −1 back. */
function head(tip: Point, ways: Ways, looks: 1 | -1): Mark {
  const back = -looks * HEAD.long;
  const points = [tip, from(tip, ways, back, HEAD.half), from(tip, ways, back, -HEAD.half)];
  return { mark: "fill", points, tone: "ink" };
}

function waysOf({ along }: StraightDimension, a: Point, b: Point): Ways {
  if (along === "across") return level;
  if (along === "up") return upright;
  const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const u: Point = [(b[0] - a[0]) / size, (b[1] - a[1]) / size];
  // Read from below or from the right.
  const isBack = u[0] < -1e-9 || (Math.abs(u[0]) <= 1e-9 && u[1] < 0);
  const w: Point = isBack ? [-u[0], -u[1]] : u;
  return { u: w, v: [-w[1], w[0]] };
}

function straightMarks(dimension: StraightDimension, toPaper: ToPaper): readonly Mark[] {
  const { along, stand, says } = dimension;
  const [a, b] = [toPaper(dimension.from), toPaper(dimension.to)];
  const ways = waysOf(dimension, a, b);
  const base = toPaper([stand.at, stand.at]);
  const aside =
    along === "aligned"
      ? dot(a, ways.v) + stand.off
      : along === "across"
        ? base[1] + stand.off
        : -(base[0] + stand.off);
  const onLine = (p: Point) => from(p, ways, 0, aside - dot(p, ways.v));
  const [low, high] = [a, b].sort((p, q) => dot(p, ways.u) - dot(q, ways.u)) as [Point, Point];
  const [p, q] = [onLine(low), onLine(high)];
  const span = dot(q, ways.u) - dot(p, ways.u);
  const extension = (point: Point, foot: Point): readonly Mark[] => {
    const reach = dot(foot, ways.v) - dot(point, ways.v);
    const side = Math.sign(reach);
    if (Math.abs(reach) < CLEAR) return [];
    return [line(from(point, ways, 0, side * CLEAR), from(foot, ways, 0, side * PAST))];
  };
  const turn = (Math.atan2(ways.u[1], ways.u[0]) * 180) / Math.PI;
  const wide = textLength(says, SIZE);
  const hasRoom = span >= 3 * HEAD.long;
  // Beside an upright line there is nothing that a figure a little longer would run into.
  const isInside = along === "up" ? hasRoom && span >= wide / 2 : span >= wide + 2 * HEAD.long + 1;
  const tail = 2 * HEAD.long;
  const at = isInside
    ? text(from(p, ways, span / 2, LIFT), says, turn)
    : along === "up"
      ? beside(from(p, ways, span / 2, 0), says, stand.off)
      : text(from(q, ways, (hasRoom ? 0 : tail) + 1.2, -(SIZE * CAPS) / 2), says, turn, "start");
  return [
    ...extension(low, p),
    ...extension(high, q),
    line(p, q),
    ...(hasRoom
      ? [head(p, ways, -1), head(q, ways, 1)]
      : [
          head(p, ways, 1),
          head(q, ways, -1),
          line(from(p, ways, -tail, 0), p),
          line(q, from(q, ways, tail, 0)),
        ]),
    at,
  ];
}

/** A figure too long for an upright line stands level beside it, away from the thing drawn. */
const beside = ([x, y]: Point, says: string, off: number): Mark =>
  text(
    [x + Math.sign(off) * (PAST + 0.8), y - (SIZE * CAPS) / 2],
    says,
    0,
    off < 0 ? "end" : "start",
  );

function radiusMarks(dimension: RadiusDimension, toPaper: ToPaper): readonly Mark[] {
  const { angle, measures, says } = dimension;
  const [cx, cy] = dimension.centre;
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const centre = toPaper(dimension.centre);
  const tip = toPaper([cx + measures * c, cy + measures * s]);
  const ways: Ways = { u: [c, s], v: [-s, c] };
  const knee = from(tip, ways, 5, 0);
  const side = c < 0 ? -1 : 1;
  return [
    line(centre, tip, knee, [knee[0] + 2 * side, knee[1]]),
    head(tip, ways, 1),
    text([knee[0] + 2.8 * side, knee[1] - (SIZE * CAPS) / 2], says, 0, side > 0 ? "start" : "end"),
  ];
}

/** Between a leader's knee and its text, the last of it clear [mm]. */
const SHELF = { long: 1.6, clear: 0.8 } as const;

function leaderMarks(dimension: LeaderDimension, toPaper: ToPaper): readonly Mark[] {
  const { at, via, shift, runs, of, says } = dimension;
  const tip = toPaper(at);
  const knee: Point = [tip[0] + shift[0], tip[1] + shift[1]];
  const corners = via.map(toPaper);
  const side = runs === "right" ? 1 : -1;
  const shelf: Point = [knee[0] + side * SHELF.long, knee[1]];
  const [x, y] = corners[0] ?? knee;
  const size = Math.hypot(tip[0] - x, tip[1] - y);
  const u: Point = size > 0 ? [(tip[0] - x) / size, (tip[1] - y) / size] : [0, -1];
  return [
    line(tip, ...corners, knee, shelf),
    head(tip, { u, v: [-u[1], u[0]] }, 1),
    text(
      [shelf[0] + side * SHELF.clear, shelf[1] - (SIZE * CAPS) / 2],
      `${of} ${says}`,
      0,
      runs === "right" ? "start" : "end",
    ),
  ];
}
