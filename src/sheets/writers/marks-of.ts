import { type Drawing, type Layer, layers, type Point, type Stroke } from "../drawing.ts";
import type { Placed, Sheet } from "../sheet.ts";
import type { ToPaper } from "./dimension-kit.ts";
import { dimensionMarks } from "./dimension-marks.ts";
import { hatchLines } from "./hatch-lines.ts";
import type { Mark, MarkGroup, Pen } from "./mark.ts";
import { penFor, pens } from "./pens.ts";

/** Everything on a sheet, layer by layer, as it comes on paper; what is empty is left out. */
export const marksOf = ({ placed }: Sheet): readonly MarkGroup[] => placed.flatMap(drawingMarks);

/** Everything of one drawing where it is placed. */
export const drawingMarks = (placed: Placed): readonly MarkGroup[] =>
  layers.flatMap((layer): readonly MarkGroup[] => {
    const marks = layerMarks(placed, layer);
    const { id, says } = placed.drawing;
    const isSaid = layer === "visible" && says !== "";
    return marks.length === 0
      ? []
      : [{ id: `${id}.${layer}`, says: isSaid ? says : undefined, marks }];
  });

function layerMarks({ drawing, at }: Placed, layer: Layer): readonly Mark[] {
  const { scale, dimensions, hatches, texts } = drawing;
  const toPaper: ToPaper = ([x, y]) => [at[0] + x / scale, at[1] + y / scale];
  const strokes = strokeMarks(drawing, layer, toPaper);
  switch (layer) {
    case "dimensions":
      return [...strokes, ...dimensions.flatMap((one) => dimensionMarks(one, toPaper))];
    case "hatch":
      return [
        ...strokes,
        ...hatches
          .flatMap((hatch) => hatchLines(hatch, scale))
          .map((points) => lineMark(points.map(toPaper), false, pens.hatch)),
      ];
    case "text":
      return texts.map(({ at: place, shift, ...rest }): Mark => {
        const [x, y] = toPaper(place);
        return { ...rest, mark: "text", at: [x + shift[0], y + shift[1]] };
      });
    default:
      return strokes;
  }
}

function strokeMarks(
  { strokes, scale, isFine }: Drawing,
  layer: Layer,
  toPaper: ToPaper,
): readonly Mark[] {
  if (layer === "text") return [];
  const pen = penFor(layer, isFine);
  return (strokes[layer] ?? []).map((stroke) => strokeMark(stroke, pen, scale, toPaper));
}

function strokeMark(stroke: Stroke, pen: Pen, scale: number, toPaper: ToPaper): Mark {
  switch (stroke.shape) {
    case "line":
      return lineMark([toPaper(stroke.from), toPaper(stroke.to)], false, pen);
    case "path":
      return lineMark(stroke.points.map(toPaper), stroke.isClosed, pen);
    case "arc": {
      const { centre, radius, from, to } = stroke;
      return { mark: "arc", centre: toPaper(centre), radius: radius / scale, from, to, pen };
    }
  }
}

const lineMark = (points: readonly Point[], isClosed: boolean, pen: Pen): Mark => ({
  mark: "line",
  points,
  isClosed,
  pen,
});
