import { outOf } from "../../geometry/index.ts";
import type { Part, Piece } from "../../piece/index.ts";
import type { Solids } from "../../solid/index.ts";
import { type LengthUnit, mm } from "../../units/index.ts";
import { blankDrawing, type Dimension, type Drawing, type Point, type Stroke } from "../drawing.ts";
import { drawnLength } from "../figures.ts";
import { cameras, type ViewName, viewNames } from "./camera.ts";
import { bodiesOf, type Extent, type View, viewOf } from "./view.ts";

/** Rows of dimension lines beside a view, on paper [mm]. */
export const ROWS = { first: 8, second: 16, third: 24 } as const;

/** A view of the whole piece before it has a scale. */
export type PieceView = View & {
  readonly name: ViewName;
  /** where it folds: its leaves as they hang, and how far the whole then reaches */
  readonly folded?: { readonly leaves: readonly Stroke[]; readonly extent: Extent };
};

/** The lines of a whole piece in one of its views. */
export const pieceView = (piece: Piece, solids: Solids, name: ViewName): PieceView => ({
  ...viewOf(bodiesOf(piece.parts, solids), cameras[name]),
  name,
});

/** A view of a piece that folds, with its leaves as they hang when it is folded. */
export function foldingView(open: Piece, folded: Piece, solids: Solids, name: ViewName): PieceView {
  const view = pieceView(open, solids, name);
  const extent = reachOf(folded.parts, name);
  const leaves = folded.parts.filter(({ role }) => role === "leaf");
  if (leaves.length === 0 || !extent) return view;
  const { visible } = viewOf(bodiesOf(leaves, solids), cameras[name]);
  return { ...view, folded: { leaves: visible, extent } };
}

/** What the whole-piece drawings show and how. */
export type Shown = {
  readonly units: LengthUnit;
  /** how many millimetres one on paper stands for [1] */
  readonly scale: number;
  /** hidden edges too, dashed */
  readonly hidden: boolean;
};

/** A view of the whole piece with its overall dimensions. */
export function pieceDrawing(piece: Piece, view: PieceView, shown: Shown): Drawing {
  const { name, visible, hidden, folded } = view;
  return {
    ...blankDrawing(name, `${viewNames[name]} of ${piece.document.name}`, shown.scale),
    strokes: {
      visible,
      ...(shown.hidden ? { hidden } : {}),
      ...(folded ? { centre: folded.leaves } : {}),
    },
    dimensions: overallDimensions(piece, view, shown.units),
  };
}

function overallDimensions(
  { parts }: Piece,
  { name, extent, folded }: PieceView,
  units: LengthUnit,
): readonly Dimension[] {
  const legs = reachOf(
    parts.filter(({ role }) => role === "leg"),
    name,
  );
  const rails = reachOf(
    parts.filter(({ role }) => role === "rail"),
    name,
  );
  const top = reachOf(
    parts.filter(({ role }) => role === "top"),
    name,
  );
  const dimension = measuring(name, units);
  const across = (id: string, e: Extent, off: number) =>
    dimension(id, "across", [e.left, e.bottom], [e.right, e.bottom], extent.bottom, -off);
  const isWider = (e: Extent) => e.left - extent.left > 0.05 || extent.right - e.right > 0.05;
  const rows = [
    ...(legs && isWider(legs) ? [["over-legs", legs] as const] : []),
    ...(folded ? [["folded", folded.extent] as const] : []),
    ["overall", extent] as const,
  ];
  const acrossRows = rows.map(([id, reach], i) => across(id, reach, ROWS.first * (i + 1)));
  if (name === "end") return acrossRows;
  if (name !== "front") return [];
  const up = (id: string, low: number, high: number, off: number) =>
    dimension(
      id,
      "up",
      [off < 0 ? extent.left : extent.right, low],
      [off < 0 ? extent.left : extent.right, high],
      off < 0 ? extent.left : extent.right,
      off,
    );
  return [
    ...acrossRows,
    up("height", extent.bottom, extent.top, -ROWS.first),
    ...(rails ? [up("under-rails", extent.bottom, rails.bottom, ROWS.first)] : []),
    ...(top ? [up("top", top.bottom, top.top, ROWS.first)] : []),
  ];
}

const measuring =
  (view: ViewName, units: LengthUnit) =>
  (
    id: string,
    along: "across" | "up",
    from: Point,
    to: Point,
    at: number,
    off: number,
  ): Dimension => {
    const measures = mm(along === "across" ? to[0] - from[0] : to[1] - from[1]);
    return {
      ...{ dimension: "straight", id: `${view}.${id}`, along, from, to, stand: { at, off } },
      measures,
      says: drawnLength(measures, units, "layout"),
    };
  };

/** How far parts reach in a view, by their blanks; undefined for none. */
function reachOf(parts: readonly Part[], name: ViewName): Extent | undefined {
  const camera = cameras[name];
  const points = parts.flatMap(({ blank, pose }) =>
    [0, blank.length].flatMap((x) =>
      [0, blank.width].flatMap((y) =>
        [0, blank.thickness].map((z): Point => {
          const p = outOf(pose, [x, y, z]);
          const on = (axis: typeof camera.x) => p[0] * axis[0] + p[1] * axis[1] + p[2] * axis[2];
          return [on(camera.x), on(camera.y)];
        }),
      ),
    ),
  );
  if (points.length === 0) return undefined;
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return {
    left: Math.min(...xs),
    bottom: Math.min(...ys),
    right: Math.max(...xs),
    top: Math.max(...ys),
  };
}
