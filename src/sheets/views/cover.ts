/** How far a face is taken to reach over its own border, so that two that meet leave no slit [mm]. */
const OVER = 1e-6;
/** An edge has to lie so far behind a face to be hidden by it; its own faces do not hide it [mm]. */
const BEHIND = 1e-4;

/** Figures kept for each face: three borders as a·x + b·y + c, and its z as the same. */
const EACH = 12;

/** Faces turned to the eye, ready to be asked what they hide. */
export type Cover = {
  readonly count: number;
  readonly planes: Float64Array;
  /** left, bottom, right, top of each */
  readonly boxes: Float64Array;
};

/** Faces as planes and borders; those of no size are left out. */
export function coverOf(triangles: Float64Array): Cover {
  const most = triangles.length / 9;
  const planes = new Float64Array(EACH * most);
  const boxes = new Float64Array(4 * most);
  let count = 0;
  for (let t = 0; t < triangles.length; t += 9) {
    const [ax = 0, ay = 0, az = 0, bx = 0, by = 0, bz = 0, cx = 0, cy = 0, cz = 0] =
      triangles.subarray(t, t + 9);
    const area = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    if (area < 1e-9) continue;
    planes.set(border(ax, ay, bx, by), EACH * count);
    planes.set(border(bx, by, cx, cy), EACH * count + 3);
    planes.set(border(cx, cy, ax, ay), EACH * count + 6);
    const u = ((bz - az) * (cy - ay) - (cz - az) * (by - ay)) / area;
    const v = ((cz - az) * (bx - ax) - (bz - az) * (cx - ax)) / area;
    planes.set([u, v, az - u * ax - v * ay], EACH * count + 9);
    boxes.set(
      [Math.min(ax, bx, cx), Math.min(ay, by, cy), Math.max(ax, bx, cx), Math.max(ay, by, cy)],
      4 * count,
    );
    count++;
  }
  return { count, planes: planes.slice(0, EACH * count), boxes: boxes.slice(0, 4 * count) };
}

/** Distance of a point to the left of the line from one to the other: inside, for a face's border. */
function border(x0: number, y0: number, x1: number, y1: number): readonly number[] {
  const [dx, dy] = [x1 - x0, y1 - y0];
  const size = Math.hypot(dx, dy);
  return [-dy / size, dx / size, (dy * x0 - dx * y0) / size];
}

export type Ends = readonly [number, number, number, number, number, number];

/**
 * Which stretch of an edge a face hides, as shares of the edge's length; undefined when none.
 *
 * @param face  which one, from 0 [1]
 */
export function hiddenBy(
  { planes }: Cover,
  face: number,
  [x0, y0, z0, x1, y1, z1]: Ends,
): readonly [number, number] | undefined {
  let from = 0;
  let to = 1;
  const at = EACH * face;
  // Each condition is straight along the edge, so it holds from one place on, or up to one.
  for (let i = 0; i < 4; i++) {
    const a = planes[at + 3 * i] ?? 0;
    const b = planes[at + 3 * i + 1] ?? 0;
    const c = planes[at + 3 * i + 2] ?? 0;
    const isDepth = i === 3;
    const first = a * x0 + b * y0 + c + (isDepth ? -z0 - BEHIND : OVER);
    const last = a * x1 + b * y1 + c + (isDepth ? -z1 - BEHIND : OVER);
    if (first <= 0 && last <= 0) return undefined;
    if (first >= 0 && last >= 0) continue;
    const cross = first / (first - last);
    if (first < 0) from = Math.max(from, cross);
    else to = Math.min(to, cross);
    if (from >= to) return undefined;
  }
  return [from, to];
}
