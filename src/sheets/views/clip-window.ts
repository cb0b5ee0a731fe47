import type { Point, Stroke } from "../drawing.ts";

/**
 * What of a line or path lies between two uprights.
 *
 * @param from  the left upright [mm]
 * @param to  the right one [mm]
 */
export function clippedAcross(stroke: Stroke, from: number, to: number): readonly Stroke[] {
  if (stroke.shape === "arc") return [stroke];
  const points = stroke.shape === "line" ? [stroke.from, stroke.to] : stroke.points;
  const isClosed = stroke.shape === "path" && stroke.isClosed;
  if (points.every(([x]) => x >= from && x <= to)) return [stroke];
  const runs: Point[][] = [];
  const count = isClosed ? points.length : points.length - 1;
  for (let i = 0; i < count; i++) {
    const [a, b] = [points[i], points[(i + 1) % points.length]];
    const kept = a && b ? between(a, b, from, to) : undefined;
    if (!kept) continue;
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && last[0] === kept[0][0] && last[1] === kept[0][1]) run.push(kept[1]);
    else runs.push([...kept]);
  }
  return runs.map((run): Stroke => {
    const [start, end] = [run[0], run.at(-1)];
    return run.length === 2 && start && end
      ? { shape: "line", from: start, to: end }
      : { shape: "path", points: run, isClosed: false };
  });
}

function between(
  a: Point,
  b: Point,
  from: number,
  to: number,
): readonly [Point, Point] | undefined {
  const run = b[0] - a[0];
  if (run === 0) return a[0] >= from && a[0] <= to ? [a, b] : undefined;
  const [s, t] = [(from - a[0]) / run, (to - a[0]) / run].sort((p, q) => p - q) as [number, number];
  const [low, high] = [Math.max(0, s), Math.min(1, t)];
  if (low >= high) return undefined;
  const at = (k: number): Point =>
    k === 0 ? a : k === 1 ? b : [a[0] + k * run, a[1] + k * (b[1] - a[1])];
  return [at(low), at(high)];
}

/**
 * The thin line with a kink where something is broken off.
 *
 * @param x  where it stands [mm]
 * @param low  lower end of what is broken [mm]
 * @param high  upper end [mm]
 * @param scale  of the drawing, for the kink keeps its size on paper [1]
 */
export function breakLine(x: number, low: number, high: number, scale: number): Stroke {
  const middle = (low + high) / 2;
  const [kink, past] = [1.2 * scale, 2 * scale];
  return {
    shape: "path",
    isClosed: false,
    points: [
      [x, low - past],
      [x, middle - kink],
      [x + kink, middle - kink / 2],
      [x - kink, middle + kink / 2],
      [x, middle + kink],
      [x, high + past],
    ],
  };
}
