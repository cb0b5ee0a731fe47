import type { Answer } from "../reckon/index.ts";

/** What the exit codes of `reckon` say, for help texts. */
export const exitCodesText =
  "Exit code: 0 done, 1 a finding fails, 2 input that cannot be worked, 3 a fault in Latewood.\n";

/** Exit code of an answer. A design that fails is answered like any other, yet must not pass. */
export const exitCodeOf = ({ findings }: Pick<Answer, "findings">): 0 | 1 =>
  findings.some(({ verdict }) => verdict === "fails") ? 1 : 0;
