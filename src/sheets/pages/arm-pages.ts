import { swingArmCautions } from "../../motion/index.ts";
import type { ArmPivot, Part, Piece } from "../../piece/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { lettering, sizes, wrapped } from "../lettering.ts";
import { type Area, fieldOf } from "../sheet.ts";
import { type ArmPattern, armPattern } from "../views/arm-pattern.ts";
import { armStrip, type Cross, type Strip } from "../views/arm-strip.ts";
import { paperBox } from "../writers/box-of.ts";
import { armFigures } from "./arm-figures.ts";
import { cautionRows, figureRows, type Rows } from "./figure-rows.ts";
import { markList } from "./mark-list.ts";
import { type Page, type Setting, writing } from "./page.ts";
import { type Begun, columnsOf, spreadOver } from "./word-columns.ts";

/** Arms of one pattern, one of which is drawn. */
type Alike = {
  readonly parts: readonly Part[];
  readonly pivot: ArmPivot;
  readonly pattern: ArmPattern;
};

/** Beside a strip for its dimensions, between strips, and for the name over each [mm]. */
const ROOM = { left: 18, right: 3, between: 5, name: 6 } as const;
/** Two strips share so much [mm]. */
const SHARED = 40;
/** Crosses stand a whole number of these from the pivot, and four from each other [mm]. */
const STEPS: Readonly<Record<LengthUnit, number>> = { mm: 5, inch: 6.35 };

/** The arms' patterns at true size, from above and from outside; one sheet or two for those that are alike. */
export function armPages(piece: Piece, setting: Setting): readonly Page[] {
  return alikeOf(piece).flatMap((alike, i) => pagesOf(alike, i, setting));
}

function alikeOf(piece: Piece): readonly Alike[] {
  const kinds = new Map<string, Alike>();
  const arms = piece.joints.flatMap((joint) => {
    if (joint.kind !== "pivot") return [];
    const part = piece.parts.find(({ key }) => key === joint.pivot.arm);
    if (!part) throw new Error(`${joint.pivot.arm} is no part`);
    return [{ part, pivot: joint.pivot }];
  });
  // Those that are not mirrored first: the pattern is theirs.
  for (const { part, pivot } of [...arms].sort((a, b) => mirrored(a.part) - mirrored(b.part))) {
    const { blank, features } = part;
    const like = JSON.stringify([blank, features, pivot.kerf, pivot.opening, pivot.washers]);
    const known = kinds.get(like);
    kinds.set(
      like,
      known
        ? { ...known, parts: [...known.parts, part] }
        : { parts: [part], pivot, pattern: armPattern(piece, pivot) },
    );
  }
  return [...kinds.values()];
}

const mirrored = ({ isMirrored }: Part): number => (isMirrored ? 1 : 0);

function pagesOf(alike: Alike, n: number, setting: Setting): readonly Page[] {
  const { parts, pivot, pattern } = alike;
  const field = fieldOf(setting.paper);
  const room = field.right - field.left - ROOM.left - ROOM.right;
  const strips = stripsOf(pattern, room, STEPS[setting.units]);
  const id = n === 0 ? "arms" : `arms-${n + 1}`;
  const head = headOf(parts, strips.length > 1, field);
  const area = { ...field, top: head.below };
  const sheets = stacked(alike, strips, area, { id, setting });
  const columns = sheets.map((sheet) => columnsOf(sheet, field));
  const blocks: readonly ((at: Area) => Rows)[] = [
    ...armFigures(pivot, pattern, setting.units).map(
      (group) => (at: Area) => figureRows([group], at),
    ),
    (at) =>
      cautionRows(
        swingArmCautions.map(({ says }) => says),
        at,
      ),
  ];
  const blank: Begun = {
    placed: [],
    texts: [],
    below: area.top,
    last: { ...area, right: area.left },
  };
  const spread = spreadOver(blocks, columns, columnsOf(blank, field));
  return [...sheets, ...(spread.length > sheets.length ? [blank] : [])].map((sheet, i): Page => {
    const words = spread[i] ?? [];
    const name = i === 0 ? id : `${id}-${"bcdefgh"[i - 1]}`;
    return {
      ...{ id: name, shows: "Pattern of the arms, true size", scale: "1:1" },
      placed: [
        ...sheet.placed,
        writing(
          `${name}-words`,
          [...head.texts, ...sheet.texts, ...words.flatMap(({ texts }) => texts)],
          words.flatMap(({ rules }) => rules),
        ),
      ],
    };
  });
}

const marksIn = (parts: readonly Part[]) => parts.map(({ mark }) => mark).sort();

/** Marks, and which way up the pattern goes on the rail. */
function headOf(parts: readonly Part[], isSplit: boolean, { left, right, top }: Area) {
  const marks = (isMirrored: boolean) =>
    markList(marksIn(parts.filter((one) => one.isMirrored === isMirrored)));
  const turned = marks(true);
  const says = [
    "As it lies closed in its rail: from above the lower line is on the rail’s outer face, the face that is seen, and the upper edge is the rail’s.",
    ...(turned === "" ? [] : [`For ${turned} the same, mirrored: trace it through the sheet.`]),
    ...(isSplit
      ? ["Neighbouring strips share a stretch: lay each cross on the one of its name."]
      : []),
  ].join(" ");
  const { heading, body } = sizes;
  let y = top - heading * 1.15;
  const title = lettering([left, y], `${markList(marksIn(parts))}: arms, true size`, {
    ...{ size: heading, isBold: true },
  });
  const lines = wrapped(says, body, right - left).map((line, i) => {
    y -= body * (i === 0 ? 1.6 : 1.35);
    return lettering([left, y], line, { size: body });
  });
  return { texts: [title, ...lines], below: y - 3 };
}

/** A pattern parted into strips no longer than their room, each with the crosses it shares. */
function stripsOf({ from, to, pivot }: ArmPattern, room: number, step: number): readonly Strip[] {
  const count = Math.max(1, Math.ceil((to - from - SHARED) / (room - SHARED)));
  const starts = Array.from({ length: count }, (_, i) => from + i * (room - SHARED));
  const crosses = starts.slice(1).map((start, i): readonly Cross[] => {
    const near = Math.round((start + SHARED / 2 - pivot.x) / step);
    return [-2, 2].map((way, k) => ({
      name: String.fromCharCode(A + 2 * i + k),
      x: pivot.x + (near + way) * step,
    }));
  });
  return starts.map((start, i) => ({
    from: start,
    to: Math.min(to, start + room),
    crosses: [...(crosses[i - 1] ?? []), ...(crosses[i] ?? [])],
  }));
}

const A = 65;

/** Strips under each other, first all from above, each with its name, on as many sheets as they need. */
function stacked(
  { pattern, pivot }: Alike,
  strips: readonly Strip[],
  area: Area,
  { id, setting }: { readonly id: string; readonly setting: Setting },
): readonly Begun[] {
  const all = (["above", "side"] as const).flatMap((view) =>
    strips.map((strip, i) => ({ view, strip, i })),
  );
  const sheets: Begun[] = [];
  for (const { view, strip, i } of all) {
    const drawing = armStrip(pattern, pivot, {
      ...{ id: `${id}-${view}-${i + 1}`, units: setting.units, view, strip },
    });
    const box = paperBox(drawing);
    const high = ROOM.name + box.top - box.bottom;
    const under = sheets.at(-1);
    const isOn = under && under.below - high >= area.bottom;
    const top = isOn ? under.below : area.top;
    const at = [area.left + ROOM.left - strip.from, top - ROOM.name - box.top] as const;
    const says = view === "above" ? "From above" : "From outside";
    const part = strips.length > 1 ? `, strip ${i + 1} of ${strips.length}` : "";
    const name = lettering([area.left, top - sizes.body], `${says}${part}`, {
      ...{ size: sizes.body, isBold: true },
    });
    const sheet: Begun = {
      placed: [...(isOn ? under.placed : []), { drawing, at }],
      texts: [...(isOn ? under.texts : []), name],
      below: top - high - ROOM.between,
      last: { top, right: at[0] + box.right },
    };
    if (isOn) sheets.pop();
    sheets.push(sheet);
  }
  return sheets;
}
