import { blankDrawing, type Drawing, type Lettering, type Point, type Stroke } from "../drawing.ts";
import { lettering, sizes } from "../lettering.ts";
import { breakLine, clippedAcross } from "./clip-window.ts";
import { acrossDimensions, alongDimensions, sizeDimensions } from "./part-dimensions.ts";
import { centresOf } from "./part-places.ts";
import {
  edgeBase,
  heightOf,
  heights,
  type PartAsked,
  type PartView,
  type Seen,
  type SeenPart,
  type Window,
} from "./part-seen.ts";

/** A part's face and, beside it, its edge, with dimensions that start at its reference. */
export function partDrawing(part: SeenPart, asked: PartAsked): Drawing {
  const seen: Seen = { ...part, asked };
  const { look } = part;
  const { window } = asked;
  const lines = (of: "visible" | "hidden"): readonly Stroke[] => {
    const all = asked.views.flatMap((view) => {
      const up = view === "face" ? 0 : edgeBase(seen);
      return part.lines[view][of].map((stroke) => lifted(stroke, up));
    });
    return window ? all.flatMap((stroke) => clippedAcross(stroke, window.from, window.to)) : all;
  };
  return {
    ...blankDrawing(
      asked.id,
      `${part.part.name}: ${look.face} face and ${look.edge} edge`,
      asked.scale,
    ),
    strokes: {
      visible: lines("visible"),
      hidden: lines("hidden"),
      ...(window ? {} : { centre: asked.views.flatMap((view) => centresIn(seen, view)) }),
      ...(window ? { dimensions: breaks(seen, window) } : {}),
    },
    texts: viewNames(seen),
    dimensions: window
      ? acrossDimensions(seen, window)
      : [...alongDimensions(seen), ...sizeDimensions(seen), ...acrossDimensions(seen)],
  };
}

/** Crosses over the middles of holes that a view looks into. */
const centresIn = (seen: Seen, view: PartView): readonly Stroke[] =>
  centresOf(seen.part, view).flatMap(({ x, place, across, up }) => {
    const y = heightOf(seen, view, place);
    const past = 1.6 * seen.asked.scale;
    return [
      { shape: "line", from: [x - across - past, y], to: [x + across + past, y] },
      { shape: "line", from: [x, y - up - past], to: [x, y + up + past] },
    ];
  });

const sideNames = { show: "Show face", back: "Back", lower: "Lower edge", upper: "Upper edge" };

/** Which side each view shows, written where no dimension runs: between the two, or above the one. */
function viewNames(seen: Seen): readonly Lettering[] {
  const { look, asked } = seen;
  const from = asked.window?.from ?? 0;
  return asked.views.map((view) => {
    const [low, high] = heights(seen, view);
    const isUpper = asked.views.length > 1 && (view === "edge") !== look.isEdgeBelow;
    return lettering([from, isUpper ? low : high], sideNames[look[view]], {
      ...{ size: sizes.small, tone: "graphite", shift: [0.5, isUpper ? -3.3 : 1.6] },
    });
  });
}

function lifted(stroke: Stroke, up: number): Stroke {
  const lift = ([x, y]: Point): Point => [x, y + up];
  switch (stroke.shape) {
    case "line":
      return { ...stroke, from: lift(stroke.from), to: lift(stroke.to) };
    case "path":
      return { ...stroke, points: stroke.points.map(lift) };
    case "arc":
      return { ...stroke, centre: lift(stroke.centre) };
  }
}

function breaks(seen: Seen, { end, from, to }: Window): readonly Stroke[] {
  const x = end === "left" ? to : from;
  return seen.asked.views.map((view) => {
    const [low, high] = heights(seen, view);
    return breakLine(x, low, high, seen.asked.scale);
  });
}
