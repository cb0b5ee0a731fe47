import type { Lettering } from "../drawing.ts";
import type { Area, Placed } from "../sheet.ts";
import type { Rows } from "./figure-rows.ts";

/** A column of words, and what is kept between columns [mm]. */
const COLUMN = 74;
const GUTTER = 8;

/** What is on one sheet so far, and what is left of it for words. */
export type Begun = {
  readonly placed: readonly Placed[];
  readonly texts: readonly Lettering[];
  /** how far down it is drawn on, and the last strip's own upper edge and right end */
  readonly below: number;
  readonly last: { readonly top: number; readonly right: number };
};

/** Columns for words: beside a sheet's last strip, and under it. */
export function columnsOf({ below, last }: Begun, field: Area): readonly Area[] {
  const isBeside = last.right + GUTTER + COLUMN <= field.right;
  const beside: Area = { ...field, left: field.right - COLUMN, top: last.top };
  const end = isBeside ? beside.left - GUTTER : field.right;
  const count = Math.max(0, Math.floor((end - field.left + GUTTER) / (COLUMN + GUTTER)));
  const under = Array.from({ length: count }, (_, i): Area => {
    const left = field.left + i * (COLUMN + GUTTER);
    return { ...field, left, right: left + COLUMN, top: below };
  });
  return [...(isBeside ? [beside] : []), ...under];
}

/** Blocks of words put into the first columns that hold them; a sheet more where none does. */
export function spreadOver(
  blocks: readonly ((at: Area) => Rows)[],
  columns: readonly (readonly Area[])[],
  more: readonly Area[],
): readonly (readonly Rows[])[] {
  const left = [...columns, more].map((list) => [...list]);
  const written: Rows[][] = left.map(() => []);
  for (const block of blocks) {
    const found = left.some((list, sheet) => {
      const i = list.findIndex((area) => block(area).below >= area.bottom);
      const area = list[i];
      if (!area) return false;
      const rows = block(area);
      list[i] = { ...area, top: rows.below };
      written[sheet]?.push(rows);
      return true;
    });
    if (!found) throw new Error("a sheet is too small for the words about a drawing");
  }
  return written.at(-1)?.length === 0 ? written.slice(0, -1) : written;
}
