// The part of the soak that is about pieces and the store: random tables without solids and with,
// kills under a stream of edits, flipped bits.
import fc from "fast-check";
import { demoShop } from "../src/shop/index.ts";
import { createKernel, createSolids } from "../src/solid/index.ts";
import { createWorkup } from "../src/workup/index.ts";
import { judgeTable, solidFaults } from "../test/kit/table-run.ts";
import { tableDocument } from "../test/kit/tables.ts";
import { flipRun } from "../test/store/flips.ts";
import { killRun } from "../test/store/kill.ts";
import type { Run } from "./soak-account.ts";

const TABLES = 3000;
const SOLID_EVERY = 5;
const KILLS = 300;
const FLIPS = 300;

const newRun = (title: string, count: number): Run => ({
  title,
  count,
  came: new Map(),
  failures: [],
});
const tally = (run: Run, word: string, n = 1) =>
  void run.came.set(word, (run.came.get(word) ?? 0) + n);

/** Random tables, every fifth of those that can be made as solids too. */
export async function tables(seed: number): Promise<readonly Run[]> {
  const run = newRun("random tables, refusals mended until they can be made", TABLES);
  const solid = newRun("of those as solids: sound, as heavy as reckoned, no two in one place", 0);
  const solids = createSolids(await createKernel());
  const work = createWorkup(demoShop);
  let drawn = 0;
  for (const [at, document] of fc.sample(tableDocument, { numRuns: TABLES, seed }).entries()) {
    const { came, faults } = judgeTable(document);
    for (const word of came) tally(run, word);
    run.failures.push(...faults.map((fault) => `table ${at}: ${fault}`));
    const outcome = at % SOLID_EVERY === 0 ? work(document) : undefined;
    if (outcome?.ok) {
      drawn++;
      const wrong = solidFaults(outcome.workup, solids);
      tally(solid, wrong.length === 0 ? "sound" : "unsound");
      solid.failures.push(...wrong.map((fault) => `table ${at}: ${fault}`));
    }
    if ((at + 1) % 500 === 0) console.log(`${run.title}: ${at + 1} of ${TABLES}`);
  }
  solids.free();
  return [run, { ...solid, count: drawn }];
}

/** The store killed at random moments, and its file damaged a bit at a time. */
export async function storeRuns(seed: number): Promise<readonly Run[]> {
  const kills = newRun("kills of the store under a stream of edits", KILLS);
  const account = await killRun(KILLS, seed);
  tally(kills, "edits acknowledged", account.acknowledged);
  tally(kills, "acknowledged and lost", account.lost);
  tally(kills, "half made", account.halves);
  tally(kills, "chains damaged", account.damaged);
  kills.failures.push(...account.faults);
  const runs = [kills];
  for (const hasBackup of [true, false]) {
    const title = `flipped bits in the store’s file, ${hasBackup ? "with" : "without"} a backup`;
    const flips = newRun(title, FLIPS);
    const { came, faults } = await flipRun(FLIPS, seed, hasBackup);
    for (const [word, n] of came) tally(flips, word, n);
    flips.failures.push(...faults);
    runs.push(flips);
  }
  return runs;
}
