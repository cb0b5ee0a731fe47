import type { Part } from "../../piece/index.ts";
import type { Drawing, Lettering, Point } from "../drawing.ts";
import { lettering, sizes } from "../lettering.ts";
import type { Area, Placed } from "../sheet.ts";
import { partDrawing } from "../views/part-drawing.ts";
import { jointReach } from "../views/part-places.ts";
import type { PartView, SeenPart, Window } from "../views/part-seen.ts";
import { paperBox } from "../writers/box-of.ts";
import type { Setting } from "./page.ts";
import { scaleFor, scaleText } from "./scales.ts";

type End = "left" | "right";

export type Detail = { readonly placed: readonly Placed[]; readonly name: Lettering };

/** Between two views of a joint, and for the name over them, on paper [mm]. */
const GAP = 6;
const HEAD = 7;

/** Ends with a joint worth drawing larger; one where both are alike. */
export function jointEnds(part: Part): readonly End[] {
  const ends = (["left", "right"] as const).filter((end) => jointReach(part, end) > 0);
  const tenons = part.features.filter((f) => f.feature === "tenon");
  const [one, other] = tenons.map(({ key, end, ...rest }) => JSON.stringify(rest));
  const areAlike = ends.length === 2 && tenons.length === 2 && one === other;
  return areAlike ? ["left"] : ends;
}

/** A part, and the name its drawings begin with. */
export type Detailed = { readonly seen: SeenPart; readonly id: string };

/** The joints at a part's ends, drawn larger, with the places across them. */
export function detailsOf(one: Detailed, ends: readonly End[], area: Area, setting: Setting) {
  const wide = (area.right - area.left) / Math.max(1, ends.length);
  return ends.map((end, i): Detail => {
    const left = area.left + i * wide;
    const place = { ...area, left, right: left + wide };
    const detail = detailOf(one, end, place, setting);
    const { part } = one.seen;
    const isBoth =
      ends.length === 1 && jointReach(part, "left") > 0 && jointReach(part, "right") > 0;
    const which = isBoth
      ? "Both ends, seen at the left"
      : `${end === "left" ? "Left" : "Right"} end`;
    const name = lettering([left, area.top - 3], `${which}, ${scaleText(detail.scale)}`, {
      ...{ size: sizes.body, isBold: true },
    });
    return { placed: detail.placed, name };
  });
}

type Drawn = { readonly drawing: Drawing; readonly box: Area };

/** Both views of one end, over or beside each other, whichever comes out larger. */
function detailOf({ seen, id }: Detailed, end: End, area: Area, { units }: Setting) {
  const { length, width } = seen.part.blank;
  const reach = Math.min(length, jointReach(seen.part, end) + Math.max(12, 0.25 * width));
  const window: Window =
    end === "left" ? { end, from: 0, to: reach } : { end, from: length - reach, to: length };
  const order: readonly PartView[] = seen.look.isEdgeBelow ? ["face", "edge"] : ["edge", "face"];
  const drawn = (scale: number) =>
    order.map((view): Drawn => {
      const name = `${id}-${end}-${view}`;
      const drawing = partDrawing(seen, {
        ...{ id: name, units, scale, window, views: [view], detailed: [] },
      });
      return { drawing, box: paperBox(drawing) };
    });
  const room = { wide: area.right - area.left, high: area.top - area.bottom - HEAD };
  const fits = (isBeside: boolean) => (scale: number) => {
    const boxes = drawn(scale).map(({ box }) => box);
    const [wides, highs] = [boxes.map(wideOf), boxes.map(highOf)];
    const [wide, high] = isBeside
      ? [sum(wides) + GAP, Math.max(...highs)]
      : [Math.max(...wides), sum(highs) + GAP];
    return wide <= room.wide && high <= room.high;
  };
  const [stacked, beside] = [scaleFor(units, fits(false)), scaleFor(units, fits(true))];
  const isBeside = beside < stacked;
  const scale = Math.min(stacked, beside);
  return { scale, placed: arranged(drawn(scale), isBeside, { ...area, top: area.top - HEAD }) };
}

const wideOf = ({ left, right }: Area) => right - left;
const highOf = ({ bottom, top }: Area) => top - bottom;
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

/** One after the other; over each other their ends stand in one line. */
function arranged(all: readonly Drawn[], isBeside: boolean, { left, top }: Area) {
  const most = Math.max(...all.map(({ box }) => -box.left));
  let [x, y] = [left, top];
  return all.map(({ drawing, box }): Placed => {
    const at: Point = isBeside ? [x - box.left, y - box.top] : [x + most, y - box.top];
    if (isBeside) x += wideOf(box) + GAP;
    else y -= highOf(box) + GAP;
    return { drawing, at };
  });
}
