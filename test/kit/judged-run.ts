import fc from "fast-check";
import { expect } from "vitest";
import type { PieceDocument } from "../../src/piece/index.ts";
import { judgeTable } from "./table-run.ts";
import { optionsOf } from "./tables.ts";

/** No more of random tables may be refused, and no option may come less often. */
const MOST_REFUSED = 0.3;
const LEAST_OPTION = 0.03;

/**
 * Judges random tables of a kind, and holds how many were refused and how often each option came.
 *
 * @param runs  how many tables
 */
export function judgedRun(
  documents: fc.Arbitrary<PieceDocument>,
  kind: string,
  runs: number,
): void {
  const came = new Map<string, number>();
  let count = 0;
  fc.assert(
    fc.property(documents, (document) => {
      const verdict = judgeTable(document);
      count++;
      for (const word of verdict.came) came.set(word, (came.get(word) ?? 0) + 1);
      expect(verdict.faults).toEqual([]);
    }),
    { numRuns: runs },
  );
  const share = (word: string) => (came.get(word) ?? 0) / count;
  expect(share("refused")).toBeLessThan(MOST_REFUSED);
  const options = optionsOf(kind);
  expect(options.length).toBeGreaterThan(10);
  expect(options.filter((word) => share(word) < LEAST_OPTION)).toEqual([]);
}
