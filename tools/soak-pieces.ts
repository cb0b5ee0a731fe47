// The part of the soak that is about pieces and the store: random tables without solids and with,
// kills under a stream of edits, flipped bits.
import fc from "fast-check";
import type { PieceDocument } from "../src/piece/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { createKernel, createSolids, type Solids } from "../src/solid/index.ts";
import { createWorkup, type Workup } from "../src/workup/index.ts";
import { dropLeafDocument } from "../test/kit/drop-leaf-tables.ts";
import { overlapSaid, overlapsOf, unexplained } from "../test/kit/sweeps.ts";
import { judgeTable, shapeFaults, solidFaults } from "../test/kit/table-run.ts";
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

/** A sort of tables, and what is looked at in those that are made as solids too. */
type Sort = {
  readonly title: string;
  readonly solidTitle: string;
  readonly documents: fc.Arbitrary<PieceDocument>;
  readonly look: (workup: Workup, solids: Solids) => Looked;
};
type Looked = { readonly came: string; readonly wrong: readonly string[] };

const plain: Sort = {
  title: "random tables, refusals mended until they can be made",
  solidTitle: "of those as solids: sound, as heavy as reckoned, no two in one place",
  documents: tableDocument,
  look: (workup, solids) => {
    const wrong = solidFaults(workup, solids);
    return { came: wrong.length === 0 ? "sound" : "unsound", wrong };
  },
};

const dropLeaf: Sort = {
  title: "random drop-leaf tables, refusals mended until they can be made",
  solidTitle: "of those as solids, swept along every way of leaves and arms",
  documents: dropLeafDocument,
  look: (workup, solids) => {
    const overlaps = overlapsOf(workup.piece, solids);
    const unsaid = unexplained(overlaps, workup.findings).map(overlapSaid);
    const came =
      overlaps.length === 0
        ? "swept free"
        : unsaid.length === 0
          ? "not free, and a finding says why"
          : "not free, and nothing says why";
    return { came, wrong: [...shapeFaults(workup, solids), ...unsaid] };
  },
};

/** Random tables of both kinds, every fifth of those that can be made as solids too. */
export async function tables(seed: number, count = TABLES): Promise<readonly Run[]> {
  const solids = createSolids(await createKernel());
  const runs = [plain, dropLeaf].flatMap((sort) => tablesOf(sort, seed, count, solids));
  solids.free();
  return runs;
}

function tablesOf(sort: Sort, seed: number, count: number, solids: Solids): readonly Run[] {
  const run = newRun(sort.title, count);
  const solid = newRun(sort.solidTitle, 0);
  const work = createWorkup(demoShop);
  const longest = { judged: 0, solid: 0 };
  const timed = <T>(of: keyof typeof longest, task: () => T): T => {
    const start = performance.now();
    const made = task();
    longest[of] = Math.max(longest[of], performance.now() - start);
    return made;
  };
  let drawn = 0;
  for (const [at, document] of fc.sample(sort.documents, { numRuns: count, seed }).entries()) {
    const { came, faults } = timed("judged", () => judgeTable(document));
    for (const word of came) tally(run, word);
    run.failures.push(...faults.map((fault) => `table ${at}: ${fault}`));
    const outcome = at % SOLID_EVERY === 0 ? work(document) : undefined;
    if (outcome?.ok) {
      drawn++;
      const seen = timed("solid", () => sort.look(outcome.workup, solids));
      tally(solid, seen.came);
      solid.failures.push(...seen.wrong.map((fault) => `table ${at}: ${fault}`));
    }
    if ((at + 1) % 500 === 0) console.log(`${run.title}: ${at + 1} of ${count}`);
  }
  return [
    { ...run, longest: longest.judged },
    { ...solid, count: drawn, longest: longest.solid },
  ];
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
