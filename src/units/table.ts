/** A row of a printed table: cell texts by column name. */
export type Row = Readonly<Record<string, string>>;

/**
 * Reads a table laid out as text: a head line, then one line a row, cells parted by `|`.
 * Figures stay as printed; whoever loads the table converts them.
 *
 * @param text  the table, blank lines ignored
 * @returns its rows; throws an Error when a row has not as many cells as the head
 */
export function readTable(text: string): readonly Row[] {
  const [head = [], ...lines] = text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => line.split("|").map((cell) => cell.trim()));
  return lines.map((cells) => {
    if (cells.length !== head.length) {
      throw new Error(
        `a table row has ${cells.length} cells, not ${head.length}: ${cells.join(" | ")}`,
      );
    }
    return Object.fromEntries(head.map((name, i) => [name, cells[i] ?? ""]));
  });
}

/** A cell's figure; undefined where the table prints a dash. */
export function figure(row: Row, column: string): number | undefined {
  const cell = row[column];
  if (cell === undefined) throw new Error(`the table has no column ${column}`);
  return cell === "-" ? undefined : Number(cell);
}
