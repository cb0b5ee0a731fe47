import { onSide } from "../asking/index.ts";
import { type Answer, type Result, sumsOfPieces, type Topic } from "../reckon/index.ts";
import { type LengthUnit, printQuantity } from "../units/index.ts";
import {
  cite,
  type Given,
  notesOf,
  type Problem,
  printText,
  unprovenOf,
  type Worked,
} from "../worked/index.ts";
import type { Io } from "./io.ts";

/** Every problem on two lines: where and why, then what would be right. */
export function printProblems(io: Io, problems: readonly Problem[]): void {
  for (const { place, reason, remedy } of problems) {
    io.err(`${onOneLine(`${place}: ${reason}`)}\n${onOneLine(`  ${remedy}`)}\n`);
  }
}

/** What was read from a file must neither break a line nor give the terminal orders. */
export const onOneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]/gu, "\uFFFD");

/**
 * An answer as text.
 *
 * @param topic  what was asked
 * @param given  the answers to its questions, as read
 * @param answer  what came out
 * @param units  the side to print on
 * @param working  whether to print each figure's whole chain
 */
export function answerText(
  topic: Topic,
  given: Readonly<Record<string, unknown>>,
  answer: Answer,
  units: LengthUnit,
  working: boolean,
): string {
  const width = Math.max(...answer.results.map((r) => nameOf(r).length));
  const lines = [topic.title, `  for ${givenText(topic, given, units)}`];
  const said = new Set<string>();
  for (const result of answer.results) {
    lines.push(`  ${nameOf(result).padEnd(width)}  ${valueText(result, units)}`);
    const doubts = doubtsOf(result.worked).filter((doubt) => !said.has(doubt));
    for (const doubt of doubts) said.add(doubt);
    lines.push(...doubts.map((doubt) => `    ${doubt}`));
    if (working) lines.push(...workingOf(result, units).map((l) => `      ${l}`), "");
  }
  for (const { verdict, says } of answer.findings) lines.push(`  ${verdictWords[verdict]} ${says}`);
  lines.push(...answer.remarks.map((remark) => `  ${remark}`));
  if (answer.cautions.length > 0) lines.push("Take care");
  lines.push(...answer.cautions.map((c) => `  ${c.says} (${cite(c.source)})`));
  return `${lines.join("\n")}\n`;
}

/** What was read, and what stood in, on the asker's side: a slip of the unit shows here. */
function givenText(
  topic: Topic,
  given: Readonly<Record<string, unknown>>,
  units: LengthUnit,
): string {
  return Object.keys(topic.asks)
    .filter((name) => given[name] !== undefined)
    .map((name) => `${name} ${readText(given[name], units)}`)
    .join(", ");
}

function readText(answer: unknown, units: LengthUnit): string {
  if (typeof answer !== "object" || answer === null) return String(answer);
  if ("value" in answer) {
    const { value, unit, source } = answer as Given;
    const text = printQuantity(value, unit, units);
    if (source.kind === "given") return text;
    return `${text} (${source.kind === "published" ? source.work : source.kind})`;
  }
  return (answer as { readonly name: string }).name;
}

/** Notes of a figure's whole chain, and what in it is not proven. */
export const doubtsOf = (worked: Worked): readonly string[] => [
  ...notesOf(worked),
  ...unprovenOf(worked)
    .filter(({ source }) => source.kind !== "practice")
    .map(({ says, source }) => `${says}: ${cite(source)}`),
];

/** The figure's chain, then what its range ends add to it. */
function workingOf({ worked, low, high }: Result, units: LengthUnit): readonly string[] {
  const ends = [low, high].filter((end) => end !== undefined && end.value !== worked.value);
  const hasEnds = low?.value !== high?.value;
  return [
    ...printText(worked, units).split("\n"),
    ...(hasEnds
      ? ends.flatMap((end) => (end ? printText(end, units, [worked]).split("\n") : []))
      : []),
  ];
}

export const verdictWords = {
  ok: "Proven.",
  watch: "Watch.",
  fails: "Stops.",
  "not-judged": "Not judged.",
};

const nameOf = (result: Result): string => result.says ?? result.worked.says;

function valueText({ worked, low, high, purpose }: Result, units: LengthUnit): string {
  const print = (value: number) => printQuantity(value, worked.unit, units, purpose);
  const value = print(worked.value);
  if (!low || !high || low.value === high.value) return value;
  const ends = [low, high].sort((a, b) => Math.abs(a.value) - Math.abs(b.value));
  return `${value}  (${ends.map((e) => print(e.value)).join(" to ")})`;
}

/** What a topic asks, as help. */
export function topicHelp(topic: Topic): string {
  const rows = Object.entries(topic.asks).map(([name, q]) => {
    const example = `'${onSide(q.example, "inch")}'`;
    const metric = onSide(q.example, "mm");
    const examples = q.kind === "choice" ? q.choices.join(" | ") : `${example} or '${metric}'`;
    const same = q.kind !== "choice" && onSide(q.example, "inch") === metric;
    const fallback =
      q.fallback === undefined
        ? q.optional
          ? "may be left out"
          : "needed"
        : `else ${onSide(q.fallback, "mm")}`;
    return [`--${name}`, `${q.says} (${fallback})`, same ? example : examples] as const;
  });
  const wide = (i: 0 | 1) => Math.max(...rows.map((r) => r[i].length));
  return [
    `latewood reckon ${topic.name}: ${topic.tells}.`,
    "",
    ...rows.map(([a, b, c]) => `  ${a.padEnd(wide(0))}  ${b.padEnd(wide(1))}  ${c}`),
    "",
    ...(sumsOfPieces.includes(topic.name)
      ? [
          "  --piece FILE     a piece that answers what is not given here; it is only read",
          "  --shop FILE      the shop's file that goes with it (else the demo shop)",
        ]
      : []),
    "  --units inch|mm  the side to print on, and of numbers without a unit (else mm)",
    "  --working        print each figure's whole chain",
    "  --json           millimetres, newtons, full precision",
    "  --batch          rows on standard input, CSV or JSON lines, columns named as the options",
    "",
  ].join("\n");
}
