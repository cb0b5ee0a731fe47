import { fitted, isInSight, type Place, resized, type Size, type View, ways } from "./view.ts";

/** Where the piece is seen from, and when that is set anew without being asked. */
export type Watch = {
  readonly view: () => View;
  readonly points: () => readonly Place[];
  readonly move: (change: (view: View) => View) => void;
  readonly fitAll: () => void;
  /** The piece has changed. */
  readonly look: (points: readonly Place[]) => void;
  readonly resize: (size: Size) => void;
};

/** A piece that has grown or shrunk by more than this is fitted anew. */
const MUCH = 1.12;

/** @param onChange  told whenever the view is another */
export function createWatch(onChange: () => void): Watch {
  let view: View = { ...ways.corner, target: [0, 0, 0], mmPerPx: 2, hold: "fitted" };
  let points: readonly Place[] = [];
  let size: Size = { width: 0, height: 0 };
  let fittedSpan = 0;

  const move = (change: (view: View) => View) => {
    view = change(view);
    onChange();
  };
  const fitAll = () => {
    if (points.length > 0 && size.width > 0) fittedSpan = spanOf(points);
    move((v) => fitted(v, points, size));
  };
  return {
    view: () => view,
    points: () => points,
    move,
    fitAll,
    look: (given) => {
      const wasInSight = isInSight(view, points, size);
      points = given;
      const grown = spanOf(points) / fittedSpan;
      const isOther = !(grown < MUCH && grown > 1 / MUCH);
      const hasLeft = wasInSight && !isInSight(view, points, size);
      // A small change shows best when the rest stands still; a view set by hand is left alone.
      if (view.hold !== "moved" && (isOther || hasLeft)) fitAll();
    },
    resize: (next) => {
      const from = size;
      size = next;
      if (view.hold === "fitted") fitAll();
      else move((v) => resized(v, from, next));
    },
  };
}

/** The longest way through the box of all points. */
function spanOf(points: readonly Place[]): number {
  const reach = (i: 0 | 1 | 2) => {
    const places = points.map((point) => point[i]);
    return points.length === 0 ? 0 : Math.max(...places) - Math.min(...places);
  };
  return Math.hypot(reach(0), reach(1), reach(2));
}
