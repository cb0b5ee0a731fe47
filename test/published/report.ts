import { type Check, judge, type Verdict } from "./check.ts";
import { type KnownHow, type SourceKey, sources } from "./sources.ts";

type Judged = Verdict & { readonly check: Check };

/** Six figures: what the platform's own arithmetic leaves over must not show. */
function figure(n: number, digits = 6): string {
  // Through twelve figures first, so that a hair under a half rounds as the half does.
  const value = Number(Number(n.toPrecision(12)).toPrecision(digits));
  return Math.abs(value) >= 1e-6 || value === 0
    ? String(value)
    : value.toExponential(Math.max(0, digits - 1));
}

/** An error of the platform's rounding alone is shown as none. */
const isNone = ({ error, expected, computed }: Verdict): boolean =>
  error <= 1e-9 * Math.max(Math.abs(expected), Math.abs(computed), 1e-9);

const shareOf = (judged: Judged): number =>
  isNone(judged) ? 0 : Math.round((100 * judged.error) / judged.allowed);

const toleranceText = ({ check, allowed }: Judged): string => {
  const { tolerance } = check;
  const figures = `± ${figure(allowed, 2)}`;
  switch (tolerance.how) {
    case "half the last printed digit":
      return `${figures}, half digit`;
    case "absolute":
      return figures;
    case "relative":
      return tolerance.by < 1e-9 ? "exact" : `${figures}, ${figure(tolerance.by * 100, 2)} %`;
  }
};

const tableRow = (cells: readonly (string | number)[]): string =>
  `| ${cells.map((cell) => String(cell).replaceAll("|", "\\|")).join(" | ")} |`;

const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]) =>
  [tableRow(head), tableRow(head.map(() => "---")), ...rows.map(tableRow)].join("\n");

function countsBySource(all: readonly Judged[]): string {
  const keys = Object.keys(sources) as SourceKey[];
  const rows = keys.flatMap((key) => {
    const own = all.filter(({ check }) => check.source === key);
    const worst = Math.max(0, ...own.map(shareOf));
    const { cites, known } = sources[key];
    return own.length === 0 ? [] : [[cites, known, own.length, `${worst} %`]];
  });
  return table(["Source", "How known", "Checks", "Largest error, share of tolerance"], rows);
}

function countsByKnowledge(all: readonly Judged[]): string {
  const meaning: Readonly<Record<KnownHow, string>> = {
    "read second-hand": "printed there; read in a copy or a quotation, not in the work itself",
    definition: "exact, or a rounding of what is exact",
    textbook: "worked on paper from statics, geometry or arithmetic",
    "independent computation": "by programs written apart from this one",
    "read second-hand, then worked by hand":
      "the equation is printed, its figure is not: shows a mistyped constant, not a wrong equation",
  };
  const rows = (Object.keys(meaning) as KnownHow[]).map((known) => {
    const own = all.filter(({ check }) => sources[check.source].known === known);
    return [known, meaning[known], own.length];
  });
  return table(["How known", "Which means", "Checks"], rows);
}

function area(name: string, all: readonly Judged[]): string {
  const rows = all
    .filter(({ check }) => check.area === name)
    .map((judged) => [
      judged.check.says,
      judged.check.source,
      `${judged.check.printed} ${judged.check.unit === "1" ? "" : judged.check.unit}`.trim(),
      figure(judged.computed),
      isNone(judged) ? "0" : figure(judged.error, 2),
      toleranceText(judged),
    ]);
  const head = ["What", "Source", "Expected", "Computed", "Error", "Tolerance"];
  return `## ${name}\n\n${table(head, rows)}`;
}

function keyToSources(all: readonly Judged[]): string {
  const used = new Set(all.map(({ check }) => check.source));
  const rows = [...used].map((key) => [key, sources[key].cites]);
  return table(["Short name", "Source"], rows);
}

/** The page of published values, as it ought to be for these checks. */
export function verificationPage(checks: readonly Check[]): string {
  const all = checks.map((check): Judged => ({ ...judge(check), check }));
  const failing = all.filter((judged) => !judged.passes).length;
  const areas = [...new Set(checks.map((check) => check.area))];
  return `${[
    "# Published values",
    "Written by `npm run verify`; `npm test` fails when it is stale. What is expected was printed by somebody else, or worked on paper or by other programs; the tables say which. Values from memory, values of vendors, and values our own code gave are never expected values.",
    `${all.length} checks, ${failing} failing.`,
    countsByKnowledge(all),
    "## By source",
    countsBySource(all),
    "Short names used below:",
    keyToSources(all),
    "## Left out, and why",
    leftOut,
    ...areas.map((name) => area(name, all)),
  ].join("\n\n")}\n`;
}

const leftOut = [
  "Greatest moisture of G 0.30 and 0.90, printed as 267 and 44 %: the printed equation gives 268 and 46.",
  "An allowed pull printed as 109 lb: its formula gives 109.7.",
  "The flatsawn coefficient of sycamore, printed 0.00296: its printed shrinkage gives 0.00297.",
  "Coefficients of trade groups and of imported woods: they do not follow from one species' shrinkage.",
  "Gravities at 12 % of Table 5-3b from green gravity and shrinkage: Eq 4-11 meets 34 of 72 species to the printed digit, for the three were measured apart.",
  "Shrinkage of grand and subalpine fir in the extension table: it differs from the handbook's, and neither is in our table.",
  "Charts of router and lathe speeds, glue makers' pressures, depth of a router pass: trade pages and manuals, no standard.",
  "Roots of cut-thread screws: a private page. Root of two thirds, shank hole of seven eighths, trends of Table 5-14, spreading rates: from memory.",
]
  .map((line) => `- ${line}`)
  .join("\n");
