import type { Mutant } from "./mutants.ts";

/** Numbers of a file, by the text of the line they stand in, that no check can be asked to prove. */
type LeftOut = {
  readonly file: string;
  readonly line: RegExp;
  /** of that line only this number; all of them when absent */
  readonly raw?: string;
  readonly why: string;
};

const MEMORY = "from memory: no expected value may be had from there";
const TRADE =
  "a trade page, maker's advice or a private page: no expected value may be had from there";
const PRACTICE = "common practice, nobody's figure";
const METHOD = "a step of the search, or a limit of use: another number gives the same answer";

const rows: readonly LeftOut[] = [
  { file: "src/wood/strength.ts", line: /^(stiffness|bending): \{ dry/, why: MEMORY },
  { file: "src/wood/strength.ts", line: /trend\.dry \/ 600/, why: MEMORY },
  { file: "src/wood/fasteners.ts", line: /\(2 \/ 3\)/, why: MEMORY },
  { file: "src/wood/fasteners.ts", line: /\(7 \/ 8\)/, why: MEMORY },
  { file: "src/making/finish.ts", line: /: \[\d+, \d+\],$/, why: MEMORY },
  { file: "src/making/clamps.ts", line: /^hardwood: \[175, 250\]/, why: TRADE },
  { file: "src/making/clamps.ts", line: /^softwood: \[100, 150\]/, raw: "150", why: TRADE },
  { file: "src/making/clamps.ts", line: /^const forces = /, why: TRADE },
  { file: "src/making/lathe.ts", line: /^\{ upTo:/, why: TRADE },
  { file: "src/making/router.ts", line: /^\{ upTo:/, why: TRADE },
  { file: "src/making/router.ts", line: /^inches\(1 \/ 8\)/, why: TRADE },
  { file: "src/making/router.ts", line: /inches\(1 \/ 4\)/, why: PRACTICE },
  { file: "src/making/router.ts", line: /Math\.min\(r\.value, D\.value/, why: PRACTICE },
  { file: "src/making/lathe.ts", line: /SLENDER/, why: PRACTICE },
  { file: "src/wood/emc.ts", line: /equilibriumMoisture\(T, rhPct\(99\)\)/, why: METHOD },
  { file: "src/wood/emc.ts", line: /const middle = /, why: METHOD },
];

const used = new Set<LeftOut>();

/** Why this number is not counted; undefined when it is. */
export function leftOutReason({ file, text, raw }: Mutant): string | undefined {
  const row = rows.find(
    (r) => r.file === file && r.line.test(text) && (r.raw === undefined || r.raw === raw),
  );
  if (row) used.add(row);
  return row?.why;
}

/** Rows that fit no line any more: the code has moved on. */
export const unusedReasons = (): readonly string[] =>
  rows.filter((row) => !used.has(row)).map(({ file, line, why }) => `${file} ${line}: ${why}`);
