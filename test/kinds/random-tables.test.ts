import fc from "fast-check";
import { expect, test } from "vitest";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { createWorkup } from "../../src/workup/index.ts";
import { judgedRun } from "../kit/judged-run.ts";
import { kernel } from "../kit/solids.ts";
import { solidFaults } from "../kit/table-run.ts";
import { tableDocument } from "../kit/tables.ts";

test(
  "a thousand random tables hold together, and every refusal's remedy mends it",
  () => judgedRun(tableDocument, "plain-table", 1000),
  240_000,
);

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
