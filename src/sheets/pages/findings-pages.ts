import type { LengthUnit } from "../../units/index.ts";
import { type Finding, type Step, stepsOf, type Worked } from "../../worked/index.ts";
import type { Tone } from "../drawing.ts";
import { setFractions } from "../figures.ts";
import { sizes, textLength, wrapped } from "../lettering.ts";
import { cell, columnWidth, flowed, type Row, row } from "./flow.ts";
import type { Page, Setting } from "./page.ts";

const verdicts: Readonly<Record<Finding["verdict"], readonly [says: string, tone: Tone]>> = {
  fails: ["Fails", "crayon"],
  watch: ["Watch", "ochre"],
  "not-judged": ["Not judged", "graphite"],
  ok: ["Holds", "sage"],
};

const COLUMNS = 2;
/** How far each step of a working stands in, and at most [mm]. */
const INDENT = 3;
const MOST_INDENT = 15;
const HANG = 3;

/**
 * Every finding, worst first, as it is printed for someone to check: with its whole working, but where
 * it holds with the last step alone, or nobody would leaf through the rest.
 */
export function findingsPages(findings: readonly Finding[], setting: Setting): readonly Page[] {
  const wide = columnWidth(setting, COLUMNS);
  const told: Worked[] = [];
  const rows = findings.flatMap((finding, i): readonly Row[] => {
    const chains = [...new Set([...(finding.margin ? [finding.margin] : []), ...finding.why])];
    const working = chains.flatMap((chain) => {
      const steps = stepsOf(chain, setting.units, told);
      told.push(chain);
      const shown = finding.verdict === "ok" ? steps.filter(({ depth }) => depth === 0) : steps;
      return shown.flatMap((step) => stepRows(step, setting.units, wide));
    });
    const repeats = chains.length > 0 && working.length === 0;
    return [...headRows(finding, wide, i === 0), ...(repeats ? [toldAbove] : []), ...working];
  });
  const head = [
    row(
      [cell(0, "Findings, with their working", { size: sizes.heading, isBold: true })],
      sizes.heading,
    ),
    row([cell(0, "What holds is told by its last step; the screen shows all of them.", NOTE)], 4.6),
  ];
  const page = { id: "findings", shows: "Findings, with their working", columns: COLUMNS };
  return flowed({ ...page, head: [], rows: [...head, ...rows] }, setting);
}

const NOTE = { size: sizes.small, tone: "graphite" } as const;
const toldAbove: Row = row([cell(0, "Its working stands above.", NOTE)], 4);

/** The verdict as a word, and what it says; kept together with the first line of its working. */
function headRows(
  { verdict, says, group }: Finding,
  wide: number,
  isFirst: boolean,
): readonly Row[] {
  const { body, small } = sizes;
  const [word, tone] = verdicts[verdict];
  const indent = textLength(word, body, true) + 2.5;
  const lines = wrapped(setFractions(says), body, wide - indent, true);
  return [
    ...lines.map((line, i) =>
      row(
        [
          ...(i === 0 ? [cell(0, word, { size: body, isBold: true, tone })] : []),
          cell(indent, line, { size: body, isBold: true }),
        ],
        i === 0 ? (isFirst ? 6 : 8.5) : 4.2,
        { isHead: true },
      ),
    ),
    row([cell(indent, group, { size: small, tone: "graphite" })], 4, { isHead: true }),
  ];
}

/** One step: its result and what it is; below, its formula, the figures in it, and its source. */
function stepRows(step: Step, units: LengthUnit, wide: number): readonly Row[] {
  const { small } = sizes;
  const x = Math.min(step.depth * INDENT, MOST_INDENT);
  const result = units === "inch" ? setFractions(step.result) : step.result;
  const figure = step.figure === step.result ? "" : ` [${step.figure}]`;
  const lines = (says: string, at: number, tone: Tone, drop: number): readonly Row[] =>
    wrapped(says, small, wide - at - HANG).map((line, i) =>
      row([cell(at + (i === 0 ? 0 : HANG), line, { size: small, tone })], i === 0 ? drop : 3.6),
    );
  return [
    ...lines(`${step.symbol} = ${result}${figure}   ${setFractions(step.says)}`, x, "ink", 4.4),
    ...(step.formula ? lines(step.formula, x + HANG, "ink", 3.6) : []),
    ...(step.filled ? lines(step.filled, x + HANG, "ink", 3.6) : []),
    ...lines(step.source, x + HANG, "graphite", 3.6),
    ...step.notes.flatMap((note) => lines(`Note: ${note}`, x + HANG, "ochre", 3.6)),
  ];
}
