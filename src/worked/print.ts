import type { LengthUnit, UnitName } from "../units/index.ts";
import { cite } from "./source.ts";
import { type Step, stepsOf } from "./steps.ts";
import { type Input, isWorked, type Worked } from "./worked.ts";

/**
 * The whole chain as text for a terminal or a printed sheet.
 *
 * @param worked  the answer
 * @param units  the side to print results on
 * @param known  chains that were told before, and are not told again
 */
export function printText(
  worked: Worked,
  units: LengthUnit,
  known: readonly Worked[] = [],
): string {
  return stepsOf(worked, units, known).map(textOf).join("\n");
}

function textOf(step: Step): string {
  const indent = "  ".repeat(step.depth);
  const same = step.figure === step.result;
  const lines = [`${step.symbol} = ${step.result}${same ? "" : ` [${step.figure}]`}  ${step.says}`];
  if (step.formula) lines.push(`  ${step.formula}`, `  ${step.filled}`);
  lines.push(`  ${step.source}`, ...step.notes.map((note) => `  note: ${note}`));
  return lines.map((line) => indent + line).join("\n");
}

export type WorkedJson = {
  readonly says: string;
  readonly value: number;
  readonly unit: UnitName;
  readonly source: string;
  readonly symbol?: string;
  readonly formula?: string;
  readonly inputs?: Readonly<Record<string, WorkedJson>>;
  readonly notes?: readonly string[];
};

/** The whole chain as plain data in inside units, full precision. */
export function toJson(input: Input): WorkedJson {
  const { says, value, unit, source } = input;
  const end = { says, value, unit, source: cite(source) };
  if (!isWorked(input)) return end;
  const { symbol, formula, notes } = input;
  const inputs = Object.fromEntries(Object.entries(input.inputs).map(([k, v]) => [k, toJson(v)]));
  return { ...end, symbol, formula, inputs, ...(notes.length > 0 ? { notes } : {}) };
}

/**
 * The whole chain as an HTML list; every text is escaped, so it may stand in any page.
 *
 * @param worked  the answer
 * @param units  the side to print results on
 */
export function printHtml(worked: Worked, units: LengthUnit): string {
  return `<ol class="working">${stepsOf(worked, units).map(htmlOf).join("")}</ol>`;
}

function htmlOf(step: Step): string {
  const part = (tag: string, name: string, text: string) =>
    `<${tag} class="${name}">${escaped(text)}</${tag}>`;
  return [
    `<li data-depth="${step.depth}">`,
    `<p>${part("i", "symbol", step.symbol)} = ${part("b", "result", step.result)} `,
    `${part("span", "says", step.says)}</p>`,
    step.formula ? `<p>${part("span", "formula", step.formula)}</p>` : "",
    step.filled ? `<p>${part("span", "filled", step.filled)}</p>` : "",
    `<p>${part("cite", "source", step.source)}</p>`,
    ...step.notes.map((note) => part("p", "note", note)),
    "</li>",
  ].join("");
}

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};
const escaped = (text: string) => text.replace(/[&<>"']/g, (c) => entities[c] ?? c);
