import { resolve } from "node:path";

/** One kind of thing that was thrown, and what came of it. */
export type Run = {
  readonly title: string;
  readonly count: number;
  readonly came: Map<string, number>;
  readonly failures: string[];
  /** the slowest one's time over the middle one's */
  slowest?: { readonly ratio: number; readonly text: string };
  /** of one of them, on the machine that ran it [ms] */
  readonly longest?: number;
};

const root = `${resolve(import.meta.dirname, "..")}/`;

/** A text that may be very long, in a line of a table; places in this folder are told from here. */
export function shown(text: string): string {
  const own = text.replaceAll(root, "");
  return own.length > 160 ? `${own.slice(0, 160)}…` : own;
}

/** What came of a soak, as the page docs/soak.md. */
export function account(seed: number, runs: readonly Run[]): string {
  const parts = runs.flatMap(({ title, count, came, failures, slowest, longest }) => [
    `## ${count} ${title}`,
    "",
    failures.length === 0 ? "None failed." : `**${failures.length} failed**, cut down:`,
    ...failures.map((f) => `- \`${shown(f).replaceAll("`", "'")}\``),
    "",
    ...(slowest
      ? [
          `The slowest took ${slowest.ratio.toFixed(1)} times as long as the middle one: \`${shown(slowest.text).replaceAll("`", "'")}\``,
          "",
        ]
      : []),
    ...(longest === undefined ? [] : [`The longest took ${Math.ceil(longest)} ms.`, ""]),
    "| came to | times |",
    "| --- | ---: |",
    ...[...came].sort((a, b) => b[1] - a[1]).map(([code, n]) => `| ${code} | ${n} |`),
    "",
  ]);
  return [
    "# Soak",
    "",
    "What came of random pieces, mishaps, strings and answers: nothing may crash, every refusal must say",
    "where and what would be right and its remedy must mend it, parts must fit and none stand in",
    "another, every figure must be finite, every formula shown must come to the figure beside it, and",
    "no edit that was acknowledged may be lost. Written by `npm run soak`; a seed gives the same again.",
    "",
    `Run on ${new Date().toISOString().slice(0, 10)} with seed ${seed}, Node ${process.version}.`,
    "",
    ...parts,
  ].join("\n");
}
