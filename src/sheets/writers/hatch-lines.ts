import type { Hatch, Point } from "../drawing.ts";

/** Shorter than this a line is none [mm]. */
const NOTHING = 1e-6;

/**
 * The parallel lines that fill a hatch, in the drawing's own millimetres: within its outlines, holes
 * left out.
 *
 * @param scale  of the drawing, for the lines' distance is that on paper [1]
 */
export function hatchLines(
  { outlines, angle, gap }: Hatch,
  scale: number,
): readonly (readonly [Point, Point])[] {
  const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  const turned = outlines.map((outline) =>
    outline.map(([x, y]): Point => [c * x + s * y, c * y - s * x]),
  );
  const heights = turned.flat().map(([, y]) => y);
  const step = gap * scale;
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const lines: (readonly [Point, Point])[] = [];
  // Off the whole steps, so that a side that lies along one is not met.
  for (let n = Math.floor(low / step); (n + 0.382) * step < high; n++) {
    const y = (n + 0.382) * step;
    const meets = turned.flatMap((outline) => crossings(outline, y)).sort((a, b) => a - b);
    for (let i = 0; i + 1 < meets.length; i += 2) {
      // Where two outlines share a side there is nothing between them.
      if ((meets[i + 1] ?? 0) - (meets[i] ?? 0) < NOTHING) continue;
      const back = (x: number): Point => [c * x - s * y, s * x + c * y];
      lines.push([back(meets[i] ?? 0), back(meets[i + 1] ?? 0)]);
    }
  }
  return lines;
}

const crossings = (outline: readonly Point[], y: number): readonly number[] =>
  outline.flatMap(([x0, y0], i) => {
    const [x1, y1] = outline[(i + 1) % outline.length] ?? [x0, y0];
    return y0 <= y === y1 <= y ? [] : [x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)];
  });
