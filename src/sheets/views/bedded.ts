import type { Point, Stroke } from "../drawing.ts";
import { clippedOutline } from "./clip-area.ts";
import type { Bed, Profile } from "./leaf-profile.ts";

/** A profile with its beds cut out of it from below. */
export type Bedded = {
  /** sides of what wood is left */
  readonly sides: readonly Stroke[];
  /** sides that lie behind the cut, where no hinge is */
  readonly behind: readonly Stroke[];
  /** for a hatch: what two of them hold is not wood */
  readonly outlines: readonly (readonly Point[])[];
};

/** Two places nearer than this are one [mm]. */
const SAME = 1e-4;
/** Lower than any wood [mm]. */
const UNDER = -1e3;

/** Takes the beds out of a profile. */
export function bedded({ outline, sides, beds }: Profile): Bedded {
  const steps = stepsOf(beds);
  const isOut = (p: Point) =>
    steps.some(({ from, to, depth }) => inside(p[0], from, to) && p[1] < depth - SAME);
  const edges = steps.flatMap((step) => wallsOf(step, steps));
  const parted = sides.map((side) => {
    const pieces = piecesOf(side, edges);
    const lost = pieces.filter(({ middle }) => isOut(middle));
    return lost.length === 0
      ? { kept: [side], lost: [] }
      : {
          kept: pieces.filter(({ middle }) => !isOut(middle)).map(({ stroke }) => stroke),
          lost: lost.map(({ stroke }) => stroke),
        };
  });
  const rim = outline.map((p, i) => [p, outline[(i + 1) % outline.length] ?? p] as const);
  const walls = edges.flatMap(([from, to]) =>
    piecesOf({ shape: "line", from, to }, rim)
      .filter(({ middle }) => isWithin(outline, middle))
      .map(({ stroke }) => stroke),
  );
  return {
    sides: [...parted.flatMap(({ kept }) => kept), ...walls],
    behind: parted.flatMap(({ lost }) => lost),
    outlines: [
      outline,
      ...steps
        .map(({ from, to, depth }) =>
          clippedOutline(outline, { left: from, right: to, bottom: UNDER, top: depth }),
        )
        .filter((one) => one.length > 2),
    ],
  };
}

const inside = (x: number, from: number, to: number) => x > from - SAME && x < to + SAME;

/** Beds that may overlap, as stretches side by side, each with its depth. */
function stepsOf(beds: readonly Bed[]): readonly Bed[] {
  const ends = [...new Set(beds.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  return ends.slice(1).flatMap((to, i): readonly Bed[] => {
    const from = ends[i] ?? to;
    const over = beds.filter((bed) => bed.from < to - SAME && bed.to > from + SAME);
    return over.length === 0 ? [] : [{ from, to, depth: Math.max(...over.map((b) => b.depth)) }];
  });
}

type Edge = readonly [from: Point, to: Point];

/** A stretch's ceiling, and its walls up from where its neighbours' ceilings are. */
function wallsOf({ from, to, depth }: Bed, steps: readonly Bed[]): readonly Edge[] {
  const beside = (x: number) =>
    steps.find((one) => Math.abs((x === from ? one.to : one.from) - x) < SAME)?.depth ?? UNDER;
  const wall = (x: number): readonly Edge[] => {
    const low = beside(x);
    return low < depth - SAME
      ? [
          [
            [x, low],
            [x, depth],
          ],
        ]
      : [];
  };
  return [
    [
      [from, depth],
      [to, depth],
    ],
    ...wall(from),
    ...wall(to),
  ];
}

type PieceOf = { readonly stroke: Stroke; readonly middle: Point };

/** A side cut where edges cross it; a curve in its short steps. */
function piecesOf(side: Stroke, edges: readonly Edge[]): readonly PieceOf[] {
  return runsOf(side).flatMap(([a, b]): readonly PieceOf[] => {
    const at = (t: number): Point => [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
    const cuts = edges.flatMap((edge) => crossing([a, b], edge)).sort((s, t) => s - t);
    const ends = [0, ...cuts, 1];
    const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return ends.slice(1).flatMap((to, i): readonly PieceOf[] => {
      const from = ends[i] ?? 0;
      if ((to - from) * size < SAME) return [];
      const stroke: Stroke = { shape: "line", from: at(from), to: at(to) };
      return [{ stroke, middle: at((from + to) / 2) }];
    });
  });
}

/** Steps of a curve where it has to be cut. */
const STEPS = 36;

function runsOf(side: Stroke): readonly Edge[] {
  switch (side.shape) {
    case "line":
      return [[side.from, side.to]];
    case "path":
      return side.points.slice(1).map((to, i): Edge => [side.points[i] ?? to, to]);
    case "arc": {
      const { centre, radius, from, to } = side;
      const at = (i: number): Point => {
        const angle = ((from + ((to - from) * i) / STEPS) * Math.PI) / 180;
        return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
      };
      return Array.from({ length: STEPS }, (_, i): Edge => [at(i), at(i + 1)]);
    }
  }
}

/** Where along the first edge the second crosses it, as a share. */
function crossing([a, b]: Edge, [p, q]: Edge): readonly number[] {
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], q[0] - p[0], q[1] - p[1]];
  const area = ux * vy - uy * vx;
  if (Math.abs(area) < 1e-12) return [];
  const [wx, wy] = [p[0] - a[0], p[1] - a[1]];
  const t = (wx * vy - wy * vx) / area;
  const s = (wx * uy - wy * ux) / area;
  return t > 0 && t < 1 && s > -1e-9 && s < 1 + 1e-9 ? [t] : [];
}

/** Whether a point lies in an outline and not on its rim. */
function isWithin(outline: readonly Point[], [x, y]: Point): boolean {
  const round: readonly Point[] = [
    [x - SAME, y],
    [x + SAME, y],
    [x, y - SAME],
    [x, y + SAME],
  ];
  return round.every((p) => holds(outline, p));
}

function holds(outline: readonly Point[], [x, y]: Point): boolean {
  let isIn = false;
  for (const [i, [x0, y0]] of outline.entries()) {
    const [x1, y1] = outline[(i + 1) % outline.length] ?? [x0, y0];
    if (y0 <= y !== y1 <= y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) isIn = !isIn;
  }
  return isIn;
}
