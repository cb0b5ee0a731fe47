import type { Cover, Ends } from "./cover.ts";

/** Faces by the squares of the view that they touch, so that an edge meets only those near it. */
export type Grid = {
  /** faces that may hide some of an edge, each once */
  readonly near: (edge: Ends) => readonly number[];
};

/** About so many faces to a square. */
const FACES_EACH = 2;
/** A square has at least this side [mm]. */
const LEAST_SIDE = 1;

/** Lays a grid over faces seen in a view. */
export function gridOf(cover: Cover): Grid {
  const { count, boxes } = cover;
  if (count === 0) return { near: () => [] };
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < boxes.length; i += 4) {
    left = Math.min(left, boxes[i] ?? 0);
    bottom = Math.min(bottom, boxes[i + 1] ?? 0);
    right = Math.max(right, boxes[i + 2] ?? 0);
    top = Math.max(top, boxes[i + 3] ?? 0);
  }
  const area = Math.max(right - left, 1) * Math.max(top - bottom, 1);
  const side = Math.max(LEAST_SIDE, Math.sqrt((area * FACES_EACH) / count));
  const columns = Math.floor((right - left) / side) + 1;
  const rows = Math.floor((top - bottom) / side) + 1;
  const squares: number[][] = Array.from({ length: columns * rows }, () => []);
  const column = (x: number) => Math.min(columns - 1, Math.max(0, Math.floor((x - left) / side)));
  const row = (y: number) => Math.min(rows - 1, Math.max(0, Math.floor((y - bottom) / side)));
  for (let face = 0; face < count; face++) {
    const [l = 0, b = 0, r = 0, t = 0] = boxes.subarray(4 * face, 4 * face + 4);
    for (let y = row(b); y <= row(t); y++)
      for (let x = column(l); x <= column(r); x++) squares[y * columns + x]?.push(face);
  }
  // Which edge a face was last met for, so that none is handed out twice.
  const met = new Int32Array(count).fill(-1);
  let asked = 0;
  return {
    near: ([x0, y0, , x1, y1]) => {
      const found: number[] = [];
      asked++;
      const take = (x: number, y: number) => {
        for (const face of squares[y * columns + x] ?? []) {
          if (met[face] === asked) continue;
          met[face] = asked;
          found.push(face);
        }
      };
      // Column by column, the rows the edge passes in each, and one more for rounding.
      const isRising = x1 >= x0;
      const [xa, ya, xb, yb] = isRising ? [x0, y0, x1, y1] : [x1, y1, x0, y0];
      const slope = xb > xa ? (yb - ya) / (xb - xa) : 0;
      for (let x = column(xa); x <= column(xb); x++) {
        const from = Math.max(xa, left + x * side);
        const to = Math.min(xb, left + (x + 1) * side);
        const isUpright = column(xa) === column(xb);
        const low = isUpright ? ya : ya + (from - xa) * slope;
        const high = isUpright ? yb : ya + (to - xa) * slope;
        const first = Math.max(0, row(Math.min(low, high)) - 1);
        const last = Math.min(rows - 1, row(Math.max(low, high)) + 1);
        for (let y = first; y <= last; y++) take(x, y);
      }
      return found;
    },
  };
}
