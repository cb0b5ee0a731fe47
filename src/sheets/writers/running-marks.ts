import type { Point, RunningDimension } from "../drawing.ts";
import { CAPS } from "../lettering.ts";
import {
  CLEAR,
  dot,
  from,
  level,
  line,
  pen,
  SIZE,
  type ToPaper,
  text,
  upright,
} from "./dimension-kit.ts";
import type { Mark } from "./mark.ts";
import { spreadOut } from "./spread-out.ts";

/** From one figure to the next, at least [mm]. */
const PITCH = 3.7;
/** How far extension lines lead on to their figures [mm]. */
const LEAD = 4;
/** Of the dot at each stop, and the ring at the origin [mm]. */
const DOT = 0.42;
const RING = 0.9;

/** A ring where the tape starts, a dot and a figure at each stop, figures moved apart where they crowd. */
export function runningMarks(dimension: RunningDimension, toPaper: ToPaper): readonly Mark[] {
  const { along, stand } = dimension;
  const ways = along === "across" ? level : upright;
  const origin = toPaper(dimension.origin);
  const base = toPaper([stand.at, stand.at]);
  const aside = along === "across" ? base[1] + stand.off : -(base[0] + stand.off);
  const side = stand.off > 0 === (along === "across") ? 1 : -1;
  const stops = [...dimension.stops]
    .map((stop) => ({ says: stop.says, point: toPaper(stop.at) }))
    .sort((s, t) => dot(s.point, ways.u) - dot(t.point, ways.u));
  const all = [{ says: "0", point: origin }, ...stops].sort(
    (s, t) => dot(s.point, ways.u) - dot(t.point, ways.u),
  );
  const wanted = all.map(({ point }) => dot(point, ways.u));
  const places = spreadOut(wanted, PITCH);
  const onLine = (p: Point) => from(p, ways, 0, aside - dot(p, ways.v));
  const marks = all.flatMap(({ says, point }, i): readonly Mark[] => {
    const foot = onLine(point);
    const shift = (places[i] ?? 0) - (wanted[i] ?? 0);
    const lead = from(foot, ways, shift, side * LEAD);
    const start = from(point, ways, 0, side * CLEAR);
    const isOrigin = point === origin;
    return [
      line(start, foot, from(foot, ways, 0, side * 1), lead),
      isOrigin
        ? { mark: "arc", centre: foot, radius: RING, from: 0, to: 360, pen }
        : { mark: "fill", points: disc(foot), tone: "ink" },
      figureAt(lead, says, along, side),
    ];
  });
  const [first, last] = [all[0], all.at(-1)];
  if (!first || !last) return [];
  return [line(onLine(first.point), onLine(last.point)), ...marks];
}

/** A running figure stands on end above or below a level line, and level beside an upright one. */
function figureAt(lead: Point, says: string, along: "across" | "up", side: number): Mark {
  const drop = (SIZE * CAPS) / 2;
  if (along === "up") {
    // To the left of an upright line is its positive side.
    return text([lead[0] - side * 0.8, lead[1] - drop], says, 0, side > 0 ? "end" : "start");
  }
  return text([lead[0] + drop, lead[1] + side * 0.8], says, 90, side > 0 ? "start" : "end");
}

const disc = ([x, y]: Point): readonly Point[] =>
  Array.from({ length: 12 }, (_, i): Point => {
    const angle = (i * Math.PI) / 6;
    return [x + DOT * Math.cos(angle), y + DOT * Math.sin(angle)];
  });
