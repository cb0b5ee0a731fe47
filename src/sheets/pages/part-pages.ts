import type { Part, Piece } from "../../piece/index.ts";
import type { Solids } from "../../solid/index.ts";
import type { CutList, CutRow } from "../../stock/index.ts";
import { drawnLength } from "../figures.ts";
import { lettering, sizes, wrapped } from "../lettering.ts";
import { type Area, fieldOf, type Placed } from "../sheet.ts";
import { partDrawing } from "../views/part-drawing.ts";
import { type PartAsked, type SeenPart, seenPart } from "../views/part-seen.ts";
import { paperBox } from "../writers/box-of.ts";
import { markList } from "./mark-list.ts";
import { type Page, type Setting, writing } from "./page.ts";
import { detailsOf, jointEnds } from "./part-details.ts";
import { partNotes } from "./part-notes.ts";
import { scaleFor, scaleText } from "./scales.ts";

type Sketched = {
  readonly row: CutRow;
  readonly part: Part;
  /** of all its fellows, each once */
  readonly names: readonly string[];
  readonly seen: SeenPart;
};

/** Legs, rails, tops and leaves have a sheet each; what is smaller shares one by twos. */
export function partPages(
  { parts }: Piece,
  { rows }: CutList,
  solids: Solids,
  setting: Setting,
): readonly Page[] {
  const all = rows.map((row): Sketched => {
    const fellows = parts.filter(({ key }) => row.keys.includes(key));
    const part = fellows.find(({ isMirrored }) => !isMirrored) ?? fellows[0];
    if (!part) throw new Error(`the cut list's row ${row.name} has no part`);
    const pattern = { ...part, isMirrored: false };
    const names = [...new Set(fellows.map(({ name }) => name))];
    return { row, part: pattern, names, seen: seenPart(pattern, solids.of(pattern)) };
  });
  const isLarge = ({ part }: Sketched) => ["leg", "rail", "top", "leaf"].includes(part.role);
  const small = all.filter((one) => !isLarge(one));
  const pairs = small.flatMap((one, i) => (i % 2 === 0 ? [[one, small[i + 1]] as const] : []));
  return [
    ...all.filter(isLarge).map((one) => wholePage(one, setting)),
    ...pairs.map(([one, other]) => sharedPage(other ? [one, other] : [one], setting)),
  ];
}

const idOf = ({ row }: Sketched) => `part-${(row.marks[0] ?? "").toLowerCase()}`;
/** A row of strips is drawn as the panel they make. */
const nameOf = ({ row, names }: Pick<Sketched, "row" | "names">) =>
  row.isGluedUp ? names.join(", ") : row.name;
const titleOf = (one: Pick<Sketched, "row" | "names">) =>
  `${markList(one.row.marks)}: ${nameOf(one)}`;

function wholePage(one: Sketched, setting: Setting): Page {
  const field = fieldOf(setting.paper);
  const head = heading(one, field, setting);
  const ends = jointEnds(one.part);
  const share = ends.length > 0 ? 0.62 : 0.75;
  const notesLeft = ends.length > 0 ? field.right - 74 : field.left;
  // Words may want more room than the larger drawings of the ends, or there are none of those.
  const words = heightOf(noteTexts(one, { ...field, left: notesLeft, top: 0 }, setting)) + 10;
  const middle = Math.max(
    head.below - (head.below - field.bottom) * share,
    Math.min(field.bottom + words, head.below - LEAST_SKETCH),
  );
  const detailed = ends.length > 0 ? (["left", "right"] as const) : [];
  const whole = sketch(one, { ...field, top: head.below, bottom: middle }, setting, detailed);
  const rest: Area = { ...field, top: whole.below - 6 };
  const details = detailsOf(
    { seen: one.seen, id: idOf(one) },
    ends,
    { ...rest, right: notesLeft - 6 },
    setting,
  );
  const notes = noteTexts(one, { ...rest, left: notesLeft }, setting);
  return {
    id: idOf(one),
    shows: titleOf(one),
    scale: scaleText(whole.drawing.scale),
    placed: [
      whole.placed,
      ...details.flatMap(({ placed }) => placed),
      writing(`${idOf(one)}-notes`, [...head.texts, ...details.map(({ name }) => name), ...notes]),
    ],
  };
}

function sharedPage(all: readonly Sketched[], setting: Setting): Page {
  const field = fieldOf(setting.paper);
  const wide = (field.right - field.left - 10) / 2;
  const blocks = all.map((one, i) => {
    const left = field.left + i * (wide + 10);
    const area = { ...field, left, right: left + wide };
    const head = heading(one, area, setting);
    const noteRoom = 10 + 4.4 * noteTexts(one, area, setting).length;
    const whole = sketch(
      one,
      { ...area, top: head.below, bottom: area.bottom + noteRoom },
      setting,
      [],
    );
    const notes = noteTexts(one, { ...area, top: whole.below - 6 }, setting);
    const scale = lettering([area.right, head.below + 3], scaleText(whole.drawing.scale), {
      ...{ size: sizes.body, anchor: "end" },
    });
    return {
      scale: scaleText(whole.drawing.scale),
      placed: [whole.placed, writing(`${idOf(one)}-notes`, [...head.texts, scale, ...notes])],
    };
  });
  const scales = [...new Set(blocks.map(({ scale }) => scale))];
  return {
    id: all.map(idOf).join("-"),
    shows: [...new Set(all.map(nameOf))].join("; "),
    scale: scales.length === 1 ? (scales[0] ?? "") : "as noted",
    placed: blocks.flatMap(({ placed }) => placed),
  };
}

/** However much is written about a part, its own drawing keeps so much of the sheet's height [mm]. */
const LEAST_SKETCH = 45;

/** How far down from 0 lines of words go [mm]. */
const heightOf = (texts: readonly { readonly at: readonly [number, number] }[]): number =>
  Math.max(0, ...texts.map(({ at }) => -at[1]));

/** Marks and name, how many, how large. */
function heading({ row, part, names }: Sketched, { left, right, top }: Area, { units }: Setting) {
  const { length, width, thickness } = part.blank;
  const size = [length, width, thickness].map((n) => drawnLength(n, units, "layout")).join(" × ");
  const mirrored = row.mirrored.length > 0 ? `; ${markList(row.mirrored)} mirrored` : "";
  const strips = row.isGluedUp ? `, of ${part.strips.length} strips` : "";
  const line = `${row.marks.length} ${row.marks.length === 1 ? "part" : "parts"}${strips}, ${size}${mirrored}.`;
  const { heading: head, body } = sizes;
  const titles = wrapped(titleOf({ row, names }), head, right - left, true);
  let y = top;
  const texts = [
    ...titles.map((says) => {
      y -= head * 1.15;
      return lettering([left, y], says, { size: head, isBold: true });
    }),
    ...wrapped(line, body, right - left).map((says) => {
      y -= body * 1.5;
      return lettering([left, y], says, { size: body });
    }),
  ];
  return { texts, below: y - 3 };
}

/** Both views of a part with all its dimensions, as large as its area lets it. */
function sketch(one: Sketched, area: Area, { units }: Setting, detailed: PartAsked["detailed"]) {
  const drawn = (scale: number) => {
    const views = ["face", "edge"] as const;
    const drawing = partDrawing(one.seen, { id: idOf(one), units, scale, views, detailed });
    return { drawing, box: paperBox(drawing) };
  };
  const [wide, high] = [area.right - area.left, area.top - area.bottom];
  const scale = scaleFor(units, (s) => {
    const { box } = drawn(s);
    return box.right - box.left <= wide && box.top - box.bottom <= high;
  });
  const { drawing, box } = drawn(scale);
  const spare = Math.max(0, wide - (box.right - box.left));
  const placed: Placed = {
    drawing,
    at: [area.left - box.left + spare / 2, area.top - box.top],
  };
  return { drawing, placed, below: area.top - (box.top - box.bottom) };
}

function noteTexts({ part }: Sketched, { left, right, top }: Area, { units }: Setting) {
  const { body } = sizes;
  let y = top;
  return partNotes(part, units).flatMap((note) =>
    wrapped(note, body, right - left - 2).map((says, i) => {
      y -= i === 0 ? body * 1.6 : body * 1.3;
      return lettering([left + (i === 0 ? 0 : 2), y], says, { size: body });
    }),
  );
}
