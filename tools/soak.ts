// `npm run soak [-- --seed N]`: the tests' properties over fresh strings, answers, pieces and
// mishaps, many more of them, with an account in docs/soak.md. Ends with 1 when any failed.
import { randomInt } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import fc from "fast-check";
import { reckon, topics } from "../src/reckon/index.ts";
import { isWorked, wholeChain } from "../src/worked/index.ts";
import {
  anyCommand,
  anyDimension,
  readAnyway,
  runAnyway,
  smallest,
  type Verdict,
} from "../test/fuzz/checks.ts";
import { anyString, type Chance, seeded } from "../test/fuzz/strings.ts";
import { recompute } from "../test/kit/evaluate.ts";
import { answersFor, bareOn, everyWorked, textsOf } from "../test/kit/questions.ts";
import { account, type Run, shown } from "./soak-account.ts";
import { storeRuns, tables } from "./soak-pieces.ts";

const STRINGS = 100_000;
const COMMANDS = 100_000;
const ANSWERS = 20_000;
const MOST_FAILURES = 20;

const newRun = (title: string, count: number): Run => ({
  title,
  count,
  came: new Map(),
  failures: [],
});

function tally(run: Run, verdicts: readonly Verdict[]): void {
  for (const { came } of verdicts) run.came.set(came, (run.came.get(came) ?? 0) + 1);
}

function progress(run: Run, done: number): void {
  if (done % 10_000 === 0) console.log(`${run.title}: ${done} of ${run.count}`);
}

/** What is wrong with a verdict, or that there was none: a crash. */
async function faultOf(
  look: () => Promise<readonly Verdict[]>,
): Promise<readonly [readonly Verdict[], string | undefined]> {
  try {
    const verdicts = [...(await look())];
    return [verdicts, verdicts.find((v) => v.wrong)?.wrong];
  } catch (crash) {
    return [[{ came: "crash" }], `crash: ${crash instanceof Error ? crash.message : crash}`];
  }
}

/** Times each case, and again the slowest few, of which the best of five counts: no pause of the machine. */
async function timed<T>(
  run: Run,
  next: () => T,
  look: (one: T) => Promise<readonly Verdict[]>,
  textOf: (one: T) => string,
  cutDown: (one: T, holds: (one: T) => Promise<boolean>) => Promise<T>,
): Promise<Run> {
  const times = new Float64Array(run.count);
  const slow: { readonly one: T; readonly time: number }[] = [];
  const once = async (one: T) => {
    const start = performance.now();
    const found = await faultOf(() => look(one));
    return { found, time: performance.now() - start };
  };
  for (let i = 0; i < run.count; i++) {
    const one = next();
    const { found, time } = await once(one);
    const [verdicts, wrong] = found;
    times[i] = time;
    slow.push({ one, time });
    if (slow.length > 400) slow.sort((a, b) => b.time - a.time).length = 30;
    tally(run, verdicts);
    if (wrong !== undefined && run.failures.length < MOST_FAILURES) {
      const least = await cutDown(one, async (o) => (await faultOf(() => look(o)))[1] === wrong);
      run.failures.push(`${textOf(least)}: ${wrong}`);
    }
    progress(run, i + 1);
  }
  const middle = times.sort()[Math.floor(run.count / 2)] ?? Number.NaN;
  const again = [];
  for (const { one } of slow.sort((a, b) => b.time - a.time).slice(0, 30)) {
    let best = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 5; i++) best = Math.min(best, (await once(one)).time);
    again.push({ ratio: best / middle, text: textOf(one) });
  }
  const [worst] = again.sort((a, b) => b.ratio - a.ratio);
  if (worst) run.slowest = worst;
  return run;
}

function strings(chance: Chance): Promise<Run> {
  return timed(
    newRun("strings at the readers", STRINGS),
    () => ({ text: anyString(chance), dimension: anyDimension(chance) }),
    async ({ text, dimension }) => readAnyway(text, dimension),
    ({ text, dimension }) => `${dimension} ${JSON.stringify(text)}`,
    async (one, holds) => ({
      ...one,
      text: await smallest(one.text, (text) => holds({ ...one, text })),
    }),
  );
}

function commands(chance: Chance): Promise<Run> {
  return timed(
    newRun("command lines", COMMANDS),
    () => anyCommand(chance),
    runAnyway,
    (argv) => JSON.stringify(argv),
    async (argv, holds) => {
      let best = argv;
      // The first two words must stay: a command other than reckon would be run in earnest.
      for (let i = 2; i < best.length; i++) {
        const put = (word: string) => best.map((w, j) => (j === i ? word : w));
        best = put(await smallest(best[i] ?? "", (word) => holds(put(word))));
      }
      return best;
    },
  );
}

function answers(seed: number): Run {
  const run = newRun("answers with every formula recomputed", ANSWERS);
  let done = 0;
  for (const [at, topic] of topics.entries()) {
    const share = Math.floor((ANSWERS * (at + 1)) / topics.length) - done;
    for (const typed of fc.sample(answersFor(topic), { numRuns: share, seed: seed + at })) {
      const side = done % 2 === 0 ? "inch" : "mm";
      const texts = textsOf(topic, typed, (v, u) => bareOn(side, v, u));
      const fail = (wrong: string) => {
        if (run.failures.length < MOST_FAILURES)
          run.failures.push(`${topic.name}, ${side} ${JSON.stringify(texts)}: ${wrong}`);
      };
      try {
        const outcome = reckon(topic, texts, side, (name) => name);
        if (outcome.ok) {
          const chain = everyWorked(outcome.answer).flatMap(wholeChain).filter(isWorked);
          for (const worked of chain) {
            const { agrees, computed, expected } = recompute(worked);
            tally(run, [{ came: "formula" }]);
            if (!agrees) fail(`${worked.formula} comes to ${computed}, not ${expected}`);
          }
        }
        tally(
          run,
          outcome.ok ? [{ came: "answered" }] : outcome.problems.map((p) => ({ came: p.code })),
        );
      } catch (crash) {
        fail(`crash: ${crash instanceof Error ? crash.message : crash}`);
      }
      progress(run, ++done);
    }
  }
  return run;
}

const { values } = parseArgs({ options: { seed: { type: "string" } } });
const seed = values.seed === undefined ? randomInt(2 ** 31) : Number(values.seed);
if (!Number.isInteger(seed)) throw new Error(`--seed ${values.seed} is no whole number`);
console.log(`seed ${seed}`);
const runs = [
  ...(await tables(seed)),
  ...(await storeRuns(seed)),
  await strings(seeded(seed)),
  await commands(seeded(seed + 1)),
  answers(seed),
];
const folder = resolve(import.meta.dirname, "../docs");
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, "soak.md"), account(seed, runs));
const failures = runs.flatMap((run) => run.failures);
for (const failure of failures) console.log(`FAILED ${shown(failure)}`);
console.log(`${failures.length} failed, seed ${seed}; see docs/soak.md`);
process.exitCode = failures.length > 0 ? 1 : 0;
