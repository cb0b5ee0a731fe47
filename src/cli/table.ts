/**
 * Rows with their columns aligned, two spaces between them and none at a line's end.
 *
 * @param rows  of as many cells each
 * @param right  places of the columns that stand to the right, from 0
 */
export function aligned(
  rows: readonly (readonly string[])[],
  right: readonly number[],
): readonly string[] {
  const count = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: count }, (_, i) =>
    Math.max(...rows.map((row) => row[i]?.length ?? 0)),
  );
  const set = (cell: string, i: number) =>
    right.includes(i) ? cell.padStart(widths[i] ?? 0) : cell.padEnd(widths[i] ?? 0);
  return rows.map((row) => row.map(set).join("  ").trimEnd());
}

/** Marks as they are read aloud: `L1–L4, R2`; three and more that follow each other as one. */
export function markText(marks: readonly string[]): string {
  const runs: string[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    if (run && isNext(run.at(-1) ?? "", mark)) run.push(mark);
    else runs.push([mark]);
  }
  return runs
    .map((run) => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(", ")))
    .join(", ");
}

function isNext(mark: string, other: string): boolean {
  const [letter, number] = [mark.slice(0, 1), Number(mark.slice(1))];
  return other === `${letter}${number + 1}`;
}
