import type { Stroke } from "../drawing.ts";
import { chained } from "./chained.ts";
import { type Lines, less, merged, type Segment, type Stretch } from "./stretches.ts";

/** Two lines whose directions differ by less run alike [rad]. */
const ALIKE = 1e-6;
/** Two lines that are nearer than this are one [mm]. */
const NEAR = 1e-3;
/** Two stretches of a line with less between them are one [mm]. */
const GAP = 2e-3;

/** A segment by the line it lies on: that line's direction and distance from 0, and the stretch. */
type OnLine = {
  readonly angle: number;
  readonly off: number;
  readonly from: number;
  readonly to: number;
  readonly isVisible: boolean;
};

/** Everything that lies on one line joined; hidden stretches under visible ones left out. */
export function joinedUp(visible: readonly Segment[], hidden: readonly Segment[]): Lines {
  const all = [
    ...visible.map((segment) => onLine(segment, true)),
    ...hidden.map((segment) => onLine(segment, false)),
  ];
  const seen: Segment[] = [];
  const unseen: Segment[] = [];
  for (const alike of runs(all, (one) => one.angle, ALIKE))
    for (const line of runs(alike, (one) => one.off, NEAR)) {
      const [first] = line;
      if (!first) continue;
      const stretches = (isVisible: boolean) =>
        merged(
          line.filter((one) => one.isVisible === isVisible).map((one) => [one.from, one.to]),
          GAP,
        );
      const ink = stretches(true);
      seen.push(...ink.map((stretch) => segmentOf(first, stretch)));
      unseen.push(...less(stretches(false), ink, GAP).map((stretch) => segmentOf(first, stretch)));
    }
  return { visible: strokes(seen), hidden: strokes(unseen) };
}

function onLine([x0, y0, x1, y1]: Segment, isVisible: boolean): OnLine {
  // From the left to the right, an upright one upwards; what is upright but for rounding is upright.
  const upright = Math.abs(x1 - x0) < 1e-7;
  const isBack = upright ? y1 < y0 : x1 < x0;
  const [dx, dy] = isBack ? [x0 - x1, y0 - y1] : [x1 - x0, y1 - y0];
  const angle = upright ? Math.PI / 2 : Math.atan2(dy, dx);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const [a, b] = [c * x0 + s * y0, c * x1 + s * y1];
  return { angle, off: c * y0 - s * x0, from: Math.min(a, b), to: Math.max(a, b), isVisible };
}

function segmentOf({ angle, off }: OnLine, [from, to]: Stretch): Segment {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * from - s * off, s * from + c * off, c * to - s * off, s * to + c * off];
}

/** A list in order of a figure, broken where the next one is farther than `gap`. */
function runs<T>(list: readonly T[], figure: (one: T) => number, gap: number): readonly T[][] {
  const found: T[][] = [];
  let before = -Infinity;
  for (const one of [...list].sort((a, b) => figure(a) - figure(b))) {
    if (figure(one) - before > gap) found.push([]);
    found.at(-1)?.push(one);
    before = figure(one);
  }
  return found;
}

/** Rounding leaves −0 and dust, which would tell equal drawings apart. */
const clean = (n: number) => Math.round(n * 1e6) / 1e6 + 0;

const strokes = (segments: readonly Segment[]): readonly Stroke[] =>
  chained(
    segments.map((segment) => {
      const [x0, y0, x1, y1] = segment.map(clean) as [number, number, number, number];
      return [x0, y0, x1, y1];
    }),
  );
