import type { Mark, Pen, Point, Tone } from "../../sheets/index.ts";

/** Lines drawn with one pen, as one path: a page holds a few hundred such, where marks are thousands. */
type Strokes = { readonly pen: Pen; readonly d: string };
type Fills = { readonly tone: Tone; readonly d: string };
export type Written = Extract<Mark, { mark: "text" }>;

export type Paths = {
  readonly fills: readonly Fills[];
  readonly strokes: readonly Strokes[];
  readonly texts: readonly Written[];
};

/**
 * Marks on paper as an SVG has them, which counts downwards: paths of one pen or tone each, and texts.
 *
 * @param height  of the paper [mm]
 */
export function pathsFor(marks: readonly Mark[], height: number): Paths {
  const fills = new Map<Tone, string[]>();
  const strokes = new Map<string, { readonly pen: Pen; readonly ways: string[] }>();
  const texts: Written[] = [];
  const stroke = (pen: Pen, way: string) => {
    const name = [pen.tone, pen.width, ...pen.dash].join(" ");
    const known = strokes.get(name) ?? { pen, ways: [] };
    known.ways.push(way);
    strokes.set(name, known);
  };
  for (const mark of marks) {
    switch (mark.mark) {
      case "line":
        stroke(mark.pen, wayOf(mark.points, mark.isClosed, height));
        break;
      case "arc":
        stroke(mark.pen, arcOf(mark, height));
        break;
      case "fill":
        fills.set(mark.tone, [...(fills.get(mark.tone) ?? []), wayOf(mark.points, true, height)]);
        break;
      case "text":
        texts.push(mark);
    }
  }
  return {
    fills: [...fills].map(([tone, ways]) => ({ tone, d: ways.join("") })),
    strokes: [...strokes.values()].map(({ pen, ways }) => ({ pen, d: ways.join("") })),
    texts,
  };
}

/** To a thousandth of a millimetre. */
const plain = (n: number): string => String(Math.round(n * 1000) / 1000 + 0);

const wayOf = (points: readonly Point[], isClosed: boolean, height: number): string =>
  `${points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${plain(x)} ${plain(height - y)}`).join("")}${isClosed ? "Z" : ""}`;

/** In two halves, since one way round a whole circle would end where it began and be nothing. */
function arcOf(
  { centre, radius, from, to }: Extract<Mark, { mark: "arc" }>,
  height: number,
): string {
  const at = (angle: number): string => {
    const a = (angle * Math.PI) / 180;
    return `${plain(centre[0] + radius * Math.cos(a))} ${plain(height - centre[1] - radius * Math.sin(a))}`;
  };
  const on = (angle: number) => `A${plain(radius)} ${plain(radius)} 0 0 0 ${at(angle)}`;
  return `M${at(from)}${on((from + to) / 2)}${on(to)}`;
}
