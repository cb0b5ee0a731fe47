import type { Lettering, Stroke } from "../drawing.ts";
import { lettering } from "../lettering.ts";
import { type Area, fieldOf } from "../sheet.ts";
import { type Page, type Setting, writing } from "./page.ts";

/** A piece of text in a row: so far from the row's left end. */
export type Cell = Omit<Lettering, "at" | "turn" | "shift"> & { readonly x: number };

/** A line of a running text or table. */
export type Row = {
  readonly cells: readonly Cell[];
  /** from the base line above it to its own [mm] */
  readonly drop: number;
  /** stays with the row after it */
  readonly isHead: boolean;
  /** a hair line under it */
  readonly isRuled: boolean;
};

export type Flowed = {
  readonly id: string;
  readonly shows: string;
  /** side by side on a sheet [columns] */
  readonly columns: number;
  /** at the head of each sheet's first column, and of every further one */
  readonly head: readonly Row[];
  readonly rows: readonly Row[];
};

/** Between columns, and from a column's top to its first base line, at most [mm]. */
const GUTTER = 9;
const HEAD_DROP = 4.2;

/**
 * How long a line of a flow is.
 *
 * @param columns  side by side on a sheet [1]
 * @returns length [mm]
 */
export function columnWidth({ paper }: Setting, columns: number): number {
  const { left, right } = fieldOf(paper);
  return (right - left - GUTTER * (columns - 1)) / columns;
}

/** Rows run down column after column, on as many pages as they need. */
export function flowed(flow: Flowed, setting: Setting): readonly Page[] {
  const field = fieldOf(setting.paper);
  const room = field.top - field.bottom - dropOf(flow.head);
  const columns = broken(flow.rows, room);
  const wide = columnWidth(setting, flow.columns);
  const pages: Page[] = [];
  for (let i = 0; i < Math.max(1, columns.length); i += flow.columns) {
    const id = pages.length === 0 ? flow.id : `${flow.id}-${pages.length + 1}`;
    const written = columns.slice(i, i + flow.columns).map((rows, n) => {
      const left = field.left + n * (wide + GUTTER);
      return columnOf([...flow.head, ...rows], { ...field, left, right: left + wide });
    });
    const texts = written.flatMap((one) => one.texts);
    const rules = written.flatMap((one) => one.rules);
    const shows = pages.length === 0 ? flow.shows : `${flow.shows}, continued`;
    pages.push({ id, shows, scale: "", placed: [writing(id, texts, rules)] });
  }
  return pages;
}

const dropOf = (rows: readonly Row[]) => rows.reduce((sum, { drop }) => sum + drop, 0);

/** Rows parted into columns no longer than their room; a heading goes where its first row goes. */
function broken(rows: readonly Row[], room: number): readonly (readonly Row[])[] {
  const columns: Row[][] = [[]];
  let left = room;
  for (const group of groups(rows)) {
    const need = dropOf(group);
    const column = columns.at(-1) ?? [];
    if (need > left && column.length > 0) {
      columns.push([...group]);
      left = room - need;
    } else {
      column.push(...group);
      left -= need;
    }
  }
  return columns;
}

function groups(rows: readonly Row[]): readonly (readonly Row[])[] {
  const found: Row[][] = [];
  let isOpen = false;
  for (const row of rows) {
    if (isOpen) found.at(-1)?.push(row);
    else found.push([row]);
    isOpen = row.isHead;
  }
  return found;
}

function columnOf(rows: readonly Row[], { left, right, top }: Area) {
  const texts: Lettering[] = [];
  const rules: Stroke[] = [];
  let y = top;
  for (const [i, { cells, drop, isRuled }] of rows.entries()) {
    // What parts a row from the one before it is not wanted at the head of a column.
    y -= i === 0 ? Math.min(drop, HEAD_DROP) : drop;
    const base = y;
    texts.push(...cells.map(({ x, says, ...rest }) => lettering([left + x, base], says, rest)));
    if (isRuled) rules.push({ shape: "line", from: [left, y - 1.3], to: [right, y - 1.3] });
  }
  return { texts, rules };
}

type Said = Partial<Omit<Cell, "x" | "says">>;

/**
 * A cell of a row.
 *
 * @param x  from the row's left end [mm]
 */
export function cell(x: number, says: string, said: Said = {}): Cell {
  const { at: _at, shift: _shift, turn: _turn, ...plain } = lettering([0, 0], says, said);
  return { ...plain, x };
}

/**
 * A row of cells.
 *
 * @param drop  from the base line above it to its own [mm]
 */
export const row = (
  cells: readonly Cell[],
  drop: number,
  {
    isHead = false,
    isRuled = false,
  }: { readonly isHead?: boolean; readonly isRuled?: boolean } = {},
): Row => ({ cells, drop, isHead, isRuled });
