import { printQuantity } from "../units/index.ts";
import { type Finding, printText, toJson, type Worked } from "../worked/index.ts";
import { exitCodeOf } from "./exit-code.ts";
import type { Io } from "./io.ts";
import { doubtsJson, figureJson } from "./json.ts";
import { doubtsOf, verdictWords } from "./report.ts";
import { type Asked, headJson, headLines, workedPiece } from "./worked-piece.ts";

/**
 * `latewood check PIECE …`: what speaks against a piece, worst first.
 *
 * @param argv  the words behind `check`
 * @param io  where to write
 * @returns exit code: 0 done, 1 a finding fails, 2 bad input or a design that cannot be made
 */
export const check = (argv: readonly string[], io: Io): Promise<number> =>
  workedPiece(
    "check",
    "every judgement on a piece, worst first",
    { lines, json, code: exitCodeOf },
    argv,
    io,
  );

function lines(asked: Asked): readonly string[] {
  const { findings } = asked.workup;
  const said = new Set<string>();
  return [
    ...headLines(asked),
    "",
    ...findings.flatMap((finding) => [
      `  ${verdictWords[finding.verdict]} ${finding.says}`,
      ...figuresOf(finding).flatMap((worked) => figureLines(worked, asked, said)),
    ]),
    ...(findings.length === 0 ? ["  Nothing is judged of a piece like this yet."] : []),
  ];
}

/** The margin first; what it comes from where there is none. */
const figuresOf = ({ margin, why }: Finding): readonly Worked[] => [
  ...new Set(margin ? [margin, ...why] : why),
];

/** One line, or the whole chain; a doubt is told once. */
function figureLines(
  worked: Worked,
  { units, working }: Asked,
  said: Set<string>,
): readonly string[] {
  const doubts = doubtsOf(worked).filter((doubt) => !said.has(doubt));
  for (const doubt of doubts) said.add(doubt);
  return [
    `    ${printQuantity(worked.value, worked.unit, units)}  ${worked.says}`,
    ...doubts.map((doubt) => `    ${doubt}`),
    ...(working ? printText(worked, units).split("\n") : []).map((line) => `      ${line}`),
  ];
}

const json = (asked: Asked) => ({
  ...headJson(asked),
  findings: asked.workup.findings.map((finding) => {
    const { id, group, verdict, says, margin, why, lights } = finding;
    return {
      ...{ id, group, verdict, says, lights },
      ...(margin ? { margin: { ...figureJson(margin), ...doubtsJson(margin) } } : {}),
      why: why.map((worked) => ({ ...figureJson(worked), ...doubtsJson(worked) })),
      ...(asked.working ? { working: figuresOf(finding).map(toJson) } : {}),
    };
  }),
});
