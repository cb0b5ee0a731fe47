import fc from "fast-check";
import { expect, test } from "vitest";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { createWorkup } from "../../src/workup/index.ts";
import { kernel } from "../kit/solids.ts";
import { judgeTable, solidFaults } from "../kit/table-run.ts";
import { optionsOf, tableDocument } from "../kit/tables.ts";

test("a thousand random tables hold together, and every refusal's remedy mends it", () => {
  const came = new Map<string, number>();
  let count = 0;
  fc.assert(
    fc.property(tableDocument, (document) => {
      const verdict = judgeTable(document);
      count++;
      for (const word of verdict.came) came.set(word, (came.get(word) ?? 0) + 1);
      expect(verdict.faults).toEqual([]);
    }),
    { numRuns: 1000 },
  );
  const share = (word: string) => (came.get(word) ?? 0) / count;
  expect(share("refused")).toBeLessThan(0.3);
  const options = optionsOf("plain-table");
  expect(options.length).toBeGreaterThan(10);
  expect(options.filter((word) => share(word) < 0.03)).toEqual([]);
}, 240_000);

test("a hundred and fifty of them as solids: sound, as heavy as reckoned, none within another", () => {
  const solids = createSolids(kernel);
  const work = createWorkup(demoShop);
  let built = 0;
  for (let seed = 1; built < 150; seed++) {
    const [document] = fc.sample(tableDocument, { numRuns: 1, seed });
    const outcome = document && work(document);
    if (!outcome?.ok) continue;
    built++;
    expect(solidFaults(outcome.workup, solids), `seed ${seed}`).toEqual([]);
  }
  solids.free();
}, 240_000);
