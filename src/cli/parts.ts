import type { CutRow } from "../stock/index.ts";
import { type Mm, printLength, printQuantity } from "../units/index.ts";
import { printText, toJson } from "../worked/index.ts";
import type { Io } from "./io.ts";
import { doubtsJson, figureJson } from "./json.ts";
import { doubtsOf } from "./report.ts";
import { aligned, markText } from "./table.ts";
import { type Asked, headJson, headLines, workedPiece } from "./worked-piece.ts";

/**
 * `latewood parts PIECE …`: the cut list by mark.
 *
 * @param argv  the words behind `parts`
 * @param io  where to write
 * @returns exit code: 0 done, 2 bad input or a design that cannot be made
 */
export const parts = (argv: readonly string[], io: Io): Promise<number> =>
  workedPiece(
    "parts",
    "the cut list, equal parts together, by their marks",
    { lines, json, code: () => 0 },
    argv,
    io,
  );

/** Two lines a row: finished above, and below it what it is sawn out at. */
const HEAD = [
  ["Mark", "Part", "Pcs", "Length", "Width", "Thickness", "Mass"],
  ["", "", "", "rough", "rough", "sawn from", "board feet"],
];
const PCS = 2;

function lines(asked: Asked): readonly string[] {
  const { workup, working } = asked;
  const { rows } = workup.cutList;
  const table = aligned([...HEAD, ...rows.flatMap((row) => rowCells(row, asked))], [PCS]);
  const said = (i: number) => table.slice(2 + 2 * i, 4 + 2 * i);
  const chain = (row: CutRow) => [...printText(row.boardFeet, asked.units).split("\n"), ""];
  return [
    ...headLines(asked),
    "",
    ...table.slice(0, 2).map(indented),
    ...rows.flatMap((row, i) => [
      ...said(i).map(indented),
      ...(working ? chain(row).map((line) => `      ${line}`) : []),
    ]),
    "",
    ...totals(asked).map(indented),
  ];
}

const indented = (line: string) => `  ${line}`;

function rowCells(row: CutRow, { units }: Asked): readonly (readonly string[])[] {
  const { finished, rough, layers, quarter, between } = row;
  const layout = (length: Mm) => printLength(length, { units, purpose: "layout" });
  const sawn = (length: Mm) => printLength(length, { units, purpose: "enough" });
  const notes = [
    ...(row.mirrored.length > 0 ? [`mirrored: ${markText(row.mirrored)}`] : []),
    ...(layers > 1 ? [`in ${layers} layers`] : []),
    ...(between === undefined ? [] : [`${layout(between)} between shoulders`]),
  ];
  const [marks, more] = inTwo(markText(row.marks));
  return [
    [
      marks,
      row.name,
      String(row.pieces),
      ...[finished.length, finished.width, finished.thickness].map(layout),
      printQuantity(row.mass, "kg", units, "about"),
    ],
    [
      more,
      notes.join(", "),
      "",
      ...[rough.length, rough.width].map(sawn),
      quarter.name,
      printQuantity(row.boardFeet.value, "bd ft", units, "enough"),
    ],
  ];
}

/** More marks than the column should be wide go on below its first line. */
const NARROW = 9;
function inTwo(marks: string): readonly [string, string] {
  const at = marks.lastIndexOf(", ");
  if (marks.length <= NARROW || at < 0) return [marks, ""];
  return [marks.slice(0, at + 1), marks.slice(at + 2)];
}

/** Board feet by the thickness they are bought in, and what it all weighs. */
function totals({ workup, units, working }: Asked): readonly string[] {
  const { cutList, weighing } = workup;
  const doubts = new Set(
    [...cutList.rows.map((row) => row.boardFeet), weighing.mass].flatMap(doubtsOf),
  );
  return [
    "To buy at the rough sizes, without what laying out on boards wastes:",
    ...aligned(
      [...cutList.byThickness, { quarter: "together", boardFeet: cutList.boardFeet }].map(
        ({ quarter, boardFeet }) => [
          `  ${quarter}`,
          printQuantity(boardFeet, "bd ft", units, "enough"),
        ],
      ),
      [1],
    ),
    ...(cutList.hardware.length > 0
      ? [
          "Bought:",
          ...aligned(
            cutList.hardware.map(({ what, count }) => [`  ${count}`, what]),
            [0],
          ),
        ]
      : []),
    `It weighs ${printQuantity(cutList.mass, "kg", units, "about")}, without screws.`,
    ...(working
      ? printText(weighing.mass, units)
          .split("\n")
          .map((line) => `    ${line}`)
      : []),
    ...doubts,
  ];
}

const json = (asked: Asked) => {
  const { cutList, weighing } = asked.workup;
  return {
    ...headJson(asked),
    rows: cutList.rows.map(({ boardFeet, mass, quarter, ...row }) => ({
      ...row,
      quarter: quarter.name,
      boardFeet: boardFeet.value,
      massKg: mass,
      ...doubtsJson(boardFeet),
      ...(asked.working ? { working: toJson(boardFeet) } : {}),
    })),
    byThickness: cutList.byThickness,
    hardware: cutList.hardware,
    boardFeet: cutList.boardFeet,
    mass: {
      ...figureJson(weighing.mass),
      ...doubtsJson(weighing.mass),
      ...(asked.working ? { working: toJson(weighing.mass) } : {}),
    },
  };
};
