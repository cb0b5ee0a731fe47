import fc from "fast-check";
import { expect, test } from "vitest";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { createWorkup } from "../../src/workup/index.ts";
import { dropLeafDocument } from "../kit/drop-leaf-tables.ts";
import { kernel } from "../kit/solids.ts";
import { overlapSaid, overlapsOf, unexplained } from "../kit/sweeps.ts";
import { shapeFaults } from "../kit/table-run.ts";

const TABLES = 150;

test("random drop-leaf tables as solids: sound, and swept free unless a finding says why not", () => {
  const solids = createSolids(kernel);
  const work = createWorkup(demoShop);
  let [built, free] = [0, 0];
  for (let seed = 1; built < TABLES; seed++) {
    const [document] = fc.sample(dropLeafDocument, { numRuns: 1, seed });
    const outcome = document && work(document);
    if (!outcome?.ok) continue;
    built++;
    const { workup } = outcome;
    expect(shapeFaults(workup, solids), `seed ${seed}`).toEqual([]);
    const overlaps = overlapsOf(workup.piece, solids);
    if (overlaps.length === 0) free++;
    const unsaid = unexplained(overlaps, workup.findings).map(overlapSaid);
    expect(unsaid, `seed ${seed}`).toEqual([]);
  }
  expect(free / built).toBeGreaterThan(0.5);
  expect(free).toBeLessThan(built);
  solids.free();
}, 240_000);
