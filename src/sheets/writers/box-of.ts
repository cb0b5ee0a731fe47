import type { Drawing, Point } from "../drawing.ts";
import { textLength } from "../lettering.ts";
import type { Area } from "../sheet.ts";
import type { Mark } from "./mark.ts";
import { drawingMarks } from "./marks-of.ts";

/** How far type reaches above and below its base line, in type sizes. */
const RISE = 0.72;
const DROP = 0.22;

/** The least upright rectangle round all marks of a drawing whose 0, 0 lies at 0, 0 of the paper. */
export function paperBox(drawing: Drawing): Area {
  const points = drawingMarks({ drawing, at: [0, 0] }).flatMap((group) =>
    group.marks.flatMap(cornersOf),
  );
  const box = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
  for (const [x, y] of points) {
    box.left = Math.min(box.left, x);
    box.bottom = Math.min(box.bottom, y);
    box.right = Math.max(box.right, x);
    box.top = Math.max(box.top, y);
  }
  return points.length === 0 ? { left: 0, bottom: 0, right: 0, top: 0 } : box;
}

function cornersOf(mark: Mark): readonly Point[] {
  switch (mark.mark) {
    case "text":
      return textCorners(mark);
    case "arc":
      return arcCorners(mark);
    default:
      return mark.points;
  }
}

/** Its ends, and where between them it is farthest left, right, up and down. */
function arcCorners({ centre, radius, from, to }: Extract<Mark, { mark: "arc" }>) {
  const quarters = Array.from({ length: 8 }, (_, i) => 90 * (Math.floor(from / 90) + i));
  return [from, ...quarters.filter((angle) => angle > from && angle < to), to].map(
    (angle): Point => {
      const a = (angle * Math.PI) / 180;
      return [centre[0] + radius * Math.cos(a), centre[1] + radius * Math.sin(a)];
    },
  );
}

function textCorners(mark: Extract<Mark, { mark: "text" }>): readonly Point[] {
  const { at, says, size, anchor, turn, isBold } = mark;
  const wide = textLength(says, size, isBold);
  const start = { start: 0, middle: -wide / 2, end: -wide }[anchor];
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return [start, start + wide].flatMap((u) =>
    [-DROP * size, RISE * size].map((v): Point => [at[0] + u * c - v * s, at[1] + u * s + v * c]),
  );
}
