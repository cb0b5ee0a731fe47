import type { Piece } from "../../piece/index.ts";
import type { CutList, CutRow } from "../../stock/index.ts";
import { type LengthUnit, type Mm, type Purpose, printQuantity } from "../../units/index.ts";
import { drawnLength } from "../figures.ts";
import { shortened, sizes, wrapped } from "../lettering.ts";
import { cell, columnWidth, flowed, type Row, row } from "./flow.ts";
import { markList } from "./mark-list.ts";
import type { Page, Setting } from "./page.ts";
import { valueRows } from "./value-rows.ts";

/** Columns: where each begins, or ends when its figures stand to the right, in shares of the sheet. */
const columns = [
  { at: 0, isRight: false, name: "Mark" },
  { at: 0.16, isRight: false, name: "Part" },
  { at: 0.38, isRight: true, name: "Pcs" },
  { at: 0.48, isRight: true, name: "Length" },
  { at: 0.565, isRight: true, name: "Width" },
  { at: 0.65, isRight: true, name: "Thickness" },
  { at: 0.74, isRight: true, name: "Rough length" },
  { at: 0.83, isRight: true, name: "Width" },
  { at: 0.885, isRight: true, name: "From" },
  { at: 0.94, isRight: true, name: "bd ft" },
  { at: 1, isRight: true, name: "Mass" },
] as const;
const NAME_SHARE = 0.19;

/** The cut list, what to buy, and the figures that are not the computed ones. */
export function cutListPages(piece: Piece, cutList: CutList, setting: Setting): readonly Page[] {
  const wide = columnWidth(setting, 1);
  const { units } = setting;
  const { small } = sizes;
  const title = row([cell(0, "Cut list", { size: sizes.heading, isBold: true })], sizes.heading);
  const said =
    "Finished sizes are before features are cut, tenons included; rough sizes are sawn out first: length and width, and the thickness sold that it comes from.";
  const remark = row([cell(0, said, { size: small, tone: "graphite" })], 5);
  const heads = tableRow(
    columns.map(({ name }) => name),
    wide,
    { drop: 6, isBold: true, isRuled: true },
  );
  const rows = cutList.rows.flatMap((one) => rowsOf(one, wide, units));
  const head = [title, remark, heads];
  const end = [...totals(cutList, units), ...valueRows(piece, wide, units)];
  const page = { id: "cut-list", shows: "Cut list", columns: 1 };
  return flowed({ ...page, head, rows: [...rows, ...end] }, setting);
}

type Cast = { readonly drop: number; readonly isBold?: boolean; readonly isRuled?: boolean };

function tableRow(texts: readonly string[], wide: number, { drop, isBold, isRuled }: Cast): Row {
  const { body } = sizes;
  const cells = columns.flatMap(({ at, isRight }, i) => {
    const says = texts[i] ?? "";
    const anchor = isRight ? "end" : "start";
    return says === ""
      ? []
      : [cell(at * wide, says, { size: body, isBold: isBold ?? false, anchor } as const)];
  });
  return row(cells, drop, { isRuled: isRuled ?? false });
}

function rowsOf(one: CutRow, wide: number, units: LengthUnit): readonly Row[] {
  const { finished, rough, quarter, layers, mirrored } = one;
  const figure = (purpose: Purpose) => (length: Mm) => drawnLength(length, units, purpose);
  const [layout, sawn] = [figure("layout"), figure("rough")];
  const notes = [
    ...(mirrored.length > 0 ? [`${markList(mirrored)} mirrored`] : []),
    ...(layers > 1 ? [`in ${layers} layers`] : []),
  ].join(", ");
  const room = NAME_SHARE * wide;
  const marks = wrapped(markList(one.marks), sizes.body, 0.15 * wide);
  const main = [
    marks[0] ?? "",
    shortened(one.name, sizes.body, room),
    String(one.pieces),
    ...[finished.length, finished.width, finished.thickness].map(layout),
    ...[rough.length, rough.width].map(sawn),
    quarter?.name ?? sawn(rough.thickness),
    printQuantity(one.boardFeet.value, "bd ft", units, "enough").replace(" bd ft", ""),
    printQuantity(one.mass, "kg", units, "about"),
  ];
  const more = Math.max(marks.length - 1, notes === "" ? 0 : 1);
  return [
    { ...tableRow(main, wide, { drop: 5.8, isRuled: more === 0 }), isHead: more > 0 },
    ...Array.from({ length: more }, (_, i) => ({
      ...tableRow([marks[i + 1] ?? "", i === 0 ? shortened(notes, sizes.body, room) : ""], wide, {
        drop: 4.2,
        isRuled: i === more - 1,
      }),
      isHead: i < more - 1,
    })),
  ];
}

function totals({ byThickness, mass }: CutList, units: LengthUnit): readonly Row[] {
  const { body } = sizes;
  const bought = byThickness
    .map(
      ({ quarter, boardFeet }) =>
        `${printQuantity(boardFeet, "bd ft", units, "enough")} of ${quarter}`,
    )
    .join(", ");
  return [
    row(
      [
        cell(0, `To buy at the rough sizes, without what laying out wastes: ${bought}.`, {
          size: body,
        }),
      ],
      8,
    ),
    row(
      [
        cell(0, `It weighs ${printQuantity(mass, "kg", units, "about")}, without screws.`, {
          size: body,
        }),
      ],
      5,
    ),
  ];
}
