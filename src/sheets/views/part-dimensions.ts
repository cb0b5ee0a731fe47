import type { Part } from "../../piece/index.ts";
import { type LengthUnit, mm, type Purpose } from "../../units/index.ts";
import type { Dimension, Point, Stop } from "../drawing.ts";
import { drawnLength } from "../figures.ts";
import { type Across, acrossOf, alongOf, jointReach } from "./part-places.ts";
import {
  heightOf,
  heights,
  type PartAsked,
  type PartView,
  ROW,
  type Seen,
  type Window,
} from "./part-seen.ts";

/** Nearer than this, two places are one [mm]. */
const SAME = 0.005;

const straight = (
  asked: PartAsked,
  id: string,
  from: Point,
  to: Point,
  stand: { readonly at: number; readonly off: number },
): Dimension => {
  const measures = mm(Math.abs(to[1] - from[1]));
  const says = drawnLength(measures, asked.units, "layout");
  const name = `${asked.id}.${id}`;
  return { dimension: "straight", id: name, along: "up", from, to, stand, measures, says };
};

/** Along the grain, from the left end: outside each view, the whole length outside the face's. */
export function alongDimensions(seen: Seen): readonly Dimension[] {
  const { part, look, asked } = seen;
  return asked.views.flatMap((view): readonly Dimension[] => {
    const all = placesAlong(part, view);
    if (all.length === 0) return [];
    const isAbove = (view === "face") === look.isEdgeBelow;
    const [low, high] = heights(seen, view);
    const at = isAbove ? high : low;
    return [
      {
        ...{ dimension: "running", id: `${asked.id}.along-${view}`, along: "across" },
        origin: [0, at],
        stops: all.map((x) => stopAt([x, at], x, asked.units, "layout")),
        stand: { at, off: isAbove ? ROW - 2 : 2 - ROW },
      },
    ];
  });
}

/** Places along the grain that are told beside a view, from the left end [mm]; none is told twice. */
function placesAlong(part: Part, view: PartView): readonly number[] {
  const places = part.features.flatMap((feature) => alongOf(feature, part));
  const seenIn = (one: PartView) => places.filter((place) => place.view === one).map(({ x }) => x);
  const face = [...seenIn("face"), part.blank.length];
  if (view === "face") return distinct(face);
  const isNew = (x: number) => face.every((other) => Math.abs(other - x) > SAME);
  return distinct(seenIn("edge").filter(isNew));
}

const stopAt = (at: Point, distance: number, units: LengthUnit, purpose: Purpose): Stop => ({
  at,
  measures: mm(distance),
  says: drawnLength(mm(distance), units, purpose),
});

/** Width and thickness at the left; what tapers leave of them at the right. */
export function sizeDimensions(seen: Seen): readonly Dimension[] {
  const { part, asked } = seen;
  const { length } = part.blank;
  const taken = (face: string): number =>
    part.features.reduce(
      (sum, f) => (f.feature === "taper" && f.face === face ? sum + f.depth : sum),
      0,
    );
  return asked.views.flatMap((view) => {
    const whole = view === "face" ? part.blank.width : part.blank.thickness;
    const [low, high] = heights(seen, view);
    const [below, above] = view === "face" ? ["lower", "upper"] : ["back", "show"];
    const foot = [taken(below ?? ""), whole - taken(above ?? "")].map((n) =>
      heightOf(seen, view, n),
    );
    const [from = 0, to = 0] = foot.sort((a, b) => a - b);
    const left = straight(asked, `${view}-size`, [0, low], [0, high], { at: 0, off: -ROW });
    if (to - from > whole - 0.05) return [left];
    const stand = { at: length, off: ROW };
    return [left, straight(asked, `${view}-foot`, [length, from], [length, to], stand)];
  });
}

/** Across the grain from the reference: what is worked between the ends, or at the end in a window. */
export function acrossDimensions(seen: Seen, window?: Window): readonly Dimension[] {
  const { part, asked } = seen;
  const { reference, blank } = part;
  const places = part.features
    .flatMap((feature) => acrossOf(feature, part))
    .filter(({ x }) => (window ? isIn(x, window) : !isDetailed(x, seen)));
  return asked.views.flatMap((view): readonly Dimension[] => {
    const from = startOf(view, reference, blank);
    const own = places.filter((one) => one.view === view).map(({ place }: Across) => place);
    const distances = distinct(own.map((place) => Math.abs(place - from))).filter((n) => n > SAME);
    if (distances.length === 0) return [];
    const isLeft = window?.end === "left";
    const at = isLeft ? 0 : blank.length;
    const sign = from === 0 ? 1 : -1;
    const isTapered = part.features.some((f) => f.feature === "taper");
    const off = isLeft ? -ROW : !window && isTapered ? 2 * ROW : ROW;
    return [
      {
        ...{ dimension: "running", id: `${asked.id}.across-${view}`, along: "up" },
        origin: [at, heightOf(seen, view, from)],
        stops: distances.map((distance) => {
          const height = heightOf(seen, view, from + sign * distance);
          return stopAt([at, height], distance, asked.units, "fit");
        }),
        stand: { at, off },
      },
    ];
  });
}

/** Where places across are counted from: the reference edge in y, the reference face in z. */
function startOf(
  view: PartView,
  { face, edge }: Part["reference"],
  { width, thickness }: Part["blank"],
): number {
  const sides = [face, edge];
  return view === "face"
    ? sides.includes("upper")
      ? width
      : 0
    : sides.includes("show")
      ? thickness
      : 0;
}

const isIn = (x: number, { from, to }: Window) => x >= from - 1e-6 && x <= to + 1e-6;

const isDetailed = (x: number, { part, asked }: Seen): boolean => {
  const { length } = part.blank;
  return asked.detailed.some((end) => {
    const reach = jointReach(part, end);
    return end === "left" ? x <= reach : x >= length - reach;
  });
};

/** In order, each once. */
const distinct = (all: readonly number[]): readonly number[] =>
  [...all].sort((a, b) => a - b).filter((n, i, list) => i === 0 || n - (list[i - 1] ?? 0) > SAME);
