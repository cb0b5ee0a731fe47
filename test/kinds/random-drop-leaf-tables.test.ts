import fc from "fast-check";
import { expect, test } from "vitest";
import { dropLeafDocument } from "../kit/drop-leaf-tables.ts";
import { judgeTable } from "../kit/table-run.ts";
import { optionsOf } from "../kit/tables.ts";

test("a thousand random drop-leaf tables hold together, and every refusal’s remedy mends it", () => {
  const came = new Map<string, number>();
  let count = 0;
  fc.assert(
    fc.property(dropLeafDocument, (document) => {
      const verdict = judgeTable(document);
      count++;
      for (const word of verdict.came) came.set(word, (came.get(word) ?? 0) + 1);
      expect(verdict.faults).toEqual([]);
    }),
    { numRuns: 1000 },
  );
  const share = (word: string) => (came.get(word) ?? 0) / count;
  expect(share("refused")).toBeLessThan(0.3);
  const options = optionsOf("drop-leaf-table");
  expect(options.length).toBeGreaterThan(30);
  expect(options.filter((word) => share(word) < 0.03)).toEqual([]);
}, 240_000);
