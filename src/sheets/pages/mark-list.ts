/** Marks as they are read aloud: `L1–L4, R2`; three and more that follow each other as one. */
export function markList(marks: readonly string[]): string {
  const runs: string[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && follows(last, mark)) run.push(mark);
    else runs.push([mark]);
  }
  return runs
    .map((run) => (run.length > 2 ? `${run[0]}–${run.at(-1)}` : run.join(", ")))
    .join(", ");
}

const follows = (mark: string, next: string): boolean =>
  next === `${mark.slice(0, 1)}${Number(mark.slice(1)) + 1}`;
