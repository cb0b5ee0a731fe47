import type { ArmPivot } from "../../piece/index.ts";
import { type LengthUnit, mm } from "../../units/index.ts";
import {
  blankDrawing,
  type Dimension,
  type Drawing,
  type Lettering,
  type Point,
  type Stroke,
} from "../drawing.ts";
import { drawnLength } from "../figures.ts";
import { lettering, sizes, textLength } from "../lettering.ts";
import type { ArmPattern } from "./arm-pattern.ts";
import { breakLine, clippedAcross } from "./clip-window.ts";
import { sized } from "./sized.ts";

/** A stretch of a pattern that goes on one strip, and the crosses that lie on it. */
export type Strip = {
  readonly from: number;
  readonly to: number;
  readonly crosses: readonly Cross[];
};

/** A place that two strips share: laid on each other there they are one pattern. */
export type Cross = { readonly name: string; readonly x: number };

/** What an arm's strip is drawn with. */
export type StripAsked = {
  readonly id: string;
  readonly units: LengthUnit;
  readonly view: "above" | "side";
  readonly strip: Strip;
};

/** Rows of dimensions under a strip and beside it, on paper [mm]. */
const ROW = { below: 11, beside: 7 } as const;
/** A length whose figure does not stand over its own line, on paper at true size [mm]. */
const SHORT = 18;
/** Half a cross [mm]. */
const HALF = 3;

/** One strip of an arm's pattern at true size, as it lies in its rail. */
export function armStrip(pattern: ArmPattern, pivot: ArmPivot, asked: StripAsked): Drawing {
  const { id, view, strip } = asked;
  const lines = pattern[view];
  const kept = (strokes: readonly Stroke[]) =>
    strokes.flatMap((stroke) =>
      stroke.shape === "arc"
        ? stroke.centre[0] >= strip.from && stroke.centre[0] <= strip.to
          ? [stroke]
          : []
        : clippedAcross(stroke, strip.from, strip.to),
    );
  const [low, high] = rangeOf(pattern, view);
  const says = view === "above" ? "from above" : "from outside";
  return {
    ...blankDrawing(id, `Pattern of an arm at true size, seen ${says}`, 1),
    isFine: true,
    strokes: {
      visible: kept(lines.visible),
      hidden: kept(lines.hidden),
      centre: kept(lines.centre),
      dimensions: [
        breakLine(strip.from, low, high, 1),
        breakLine(strip.to, low, high, 1),
        ...strip.crosses.flatMap(({ x }) => crossAt([x, middleOf(pattern, view)])),
      ],
    },
    texts: [
      ...strip.crosses.map(({ name, x }) =>
        lettering([x, middleOf(pattern, view)], name, {
          ...{ size: sizes.body, isBold: true, shift: [1.2, 1.2] },
        }),
      ),
      ...faceNames(pattern, asked),
    ],
    dimensions:
      view === "above"
        ? [...alongIn(pattern, asked), ...cuts(pattern, pivot, asked)]
        : heightsIn(pattern, asked),
  };
}

const rangeOf = (pattern: ArmPattern, view: "above" | "side"): readonly [number, number] =>
  view === "above" ? [0, pattern.thickness] : [pattern.floor, pattern.edge];

/** Where crosses lie: within the arm, off its middle, on which the pivot is. */
const middleOf = (pattern: ArmPattern, view: "above" | "side"): number =>
  view === "above" ? pattern.thickness * 0.6 : pattern.height * 0.6;

const crossAt = ([x, y]: Point): readonly Stroke[] => [
  { shape: "line", from: [x - HALF, y], to: [x + HALF, y] },
  { shape: "line", from: [x, y - HALF], to: [x, y + HALF] },
];

/** Past the tail's saw cut and its figure [mm]. */
const FACES = 22;

/** Which way round it lies, written along its sides. */
function faceNames(pattern: ArmPattern, { view, strip }: StripAsked): readonly Lettering[] {
  const [low, high] = rangeOf(pattern, view);
  const small = { size: sizes.small, tone: "graphite" } as const;
  const x = Math.max(strip.from, 0) + 14;
  const isFirst = strip.from <= 0;
  const [upper, lower] =
    view === "above" ? ["inner face of the rail", "outer face of the rail"] : ["upper edge", ""];
  const tail = lettering([strip.from + 1, high], "tail, swings in", {
    ...{ ...small, shift: [0, 2] },
  });
  const reach = lettering([strip.to - 1, high], "swings out", {
    ...{ ...small, shift: [0, 2], anchor: "end" },
  });
  const left = strip.to - 7 - textLength(reach.says, sizes.small);
  const isClear = strip.crosses.every((cross) => cross.x < left);
  // What a short strip has no room for stands on the one before it.
  const faces = x + FACES + textLength(upper ?? "", sizes.small) + 24 < strip.to;
  return [
    ...(faces ? [lettering([x + FACES, high], upper ?? "", { ...small, shift: [0, 2] })] : []),
    ...(faces && lower ? [lettering([x + FACES, low], lower, { ...small, shift: [0, -3.6] })] : []),
    ...(isFirst ? [tail] : []),
    ...(strip.to >= pattern.length && isClear ? [reach] : []),
  ];
}

/** Lengths along the arm, from one place on a strip to the next: ends on the pivot's line, pivot, crosses. */
function alongIn(pattern: ArmPattern, { id, units, strip }: StripAsked): readonly Dimension[] {
  const { slants, thickness, pivot } = pattern;
  const at = ({ back, show }: (typeof slants)["left"]) =>
    back + ((show - back) * pivot.z) / thickness;
  const y = thickness - pivot.z;
  const own = [
    { name: "tail", x: at(slants.left) },
    { name: "pivot", x: pivot.x },
    { name: "reach", x: at(slants.right) },
  ];
  // A cross hard by one of these is measured by it: the little between them would have no room.
  const crosses = strip.crosses.filter((c) => own.every(({ x }) => Math.abs(c.x - x) > SHORT));
  const places = [...own, ...crosses]
    .filter(({ x }) => x >= strip.from && x <= strip.to)
    .sort((a, b) => a.x - b.x);
  return places.slice(1).map(({ name, x }, i): Dimension => {
    const before = places[i] ?? { name, x };
    const measures = mm(x - before.x);
    return {
      ...{ dimension: "straight", id: `${id}.${before.name}-${name}`, along: "across" },
      ...{ from: [before.x, y], to: [x, y], stand: { at: 0, off: -ROW.below }, measures },
      says: drawnLength(measures, units, "fit"),
    };
  });
}

/** The saw's cut at each end, square to it, and the rail's thickness. */
function cuts(
  { slants, thickness, from }: ArmPattern,
  pivot: ArmPivot,
  { id, units, strip }: StripAsked,
): readonly Dimension[] {
  const kerf = sized(pivot.kerf);
  const thick: Dimension = {
    ...{ dimension: "straight", id: `${id}.thickness`, along: "up" },
    ...{ from: [from, 0], to: [from, thickness], stand: { at: from, off: -ROW.beside } },
    measures: mm(thickness),
    says: drawnLength(mm(thickness), units, "fit"),
  };
  const cut = (end: "left" | "right"): Dimension => {
    const { back, show } = slants[end];
    const way = end === "left" ? -1 : 1;
    const size = Math.hypot(thickness, back - show);
    const y = thickness * 0.8;
    const edge: Point = [show + ((back - show) * y) / thickness, y];
    const far: Point = [
      edge[0] + (way * kerf * thickness) / size,
      edge[1] - (way * kerf * (back - show)) / size,
    ];
    return {
      ...{ dimension: "leader", id: `${id}.cut-${end}`, of: "cut", along: "aligned" },
      ...{ from: edge, to: far, at: [(edge[0] + far[0]) / 2, (edge[1] + far[1]) / 2], via: [] },
      ...{ shift: [-way * 5, thickness - y + 6.5], runs: end === "left" ? "right" : "left" },
      measures: mm(kerf),
      says: drawnLength(mm(kerf), units, "fit"),
    };
  };
  return [
    ...(strip.from <= from ? [thick] : []),
    ...(strip.from <= 0 ? [cut("left")] : []),
    ...(strip.to >= Math.max(slants.right.back, slants.right.show) ? [cut("right")] : []),
  ];
}

/** Arm, opening, and what lies between, on the strip with the tail. */
function heightsIn(
  { height, floor, edge, from, bore }: ArmPattern,
  { id, units, strip }: StripAsked,
): readonly Dimension[] {
  if (strip.from > from) return [];
  const up = (name: string, low: number, high: number, off: number): Dimension => ({
    ...{ dimension: "straight", id: `${id}.${name}`, along: "up", from: [from, low] },
    ...{ to: [from, high], stand: { at: from, off }, measures: mm(high - low) },
    says: drawnLength(mm(high - low), units, "fit"),
  });
  const all = [up("opening", floor, edge, -ROW.beside), up("height", 0, height, -2 * ROW.beside)];
  if (!(floor < -0.05)) return all;
  const x = bore.from[0] + (bore.sink?.diameter ?? bore.diameter) / 2;
  return [
    ...all,
    {
      ...{ dimension: "leader", id: `${id}.under`, of: "under the arm", along: "up" },
      ...{ from: [x, floor], to: [x, 0], at: [x, floor / 2], via: [], shift: [6, -5.5] },
      ...{ runs: "right", measures: mm(-floor), says: drawnLength(mm(-floor), units, "fit") },
    },
  ];
}
