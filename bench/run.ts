// `npm run bench`: what the costly steps cost, as ratios against something every machine does, and
// writes bench/results.md. Ratios travel from machine to machine; milliseconds do not.
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join, resolve } from "node:path";
import { editing } from "./editing.ts";
import { leaves } from "./leaves.ts";
import { lastKept, type Timing, time, timeEach } from "./measure.ts";
import { pageLoad } from "./page.ts";
import { memoryOver, pieces } from "./pieces.ts";
import { reading } from "./reading.ts";
import { solids } from "./solids.ts";
import type { Spread } from "./spread.ts";
import { sums } from "./sums.ts";

const root = resolve(import.meta.dirname, "..");
const program = join(root, "dist", "latewood.mjs");

/** A fixed text of one kilobyte, and what it costs to read it. */
const oneKilobyte = JSON.stringify({
  rows: Array.from({ length: 45 }, (_, i) => [i, `board ${i}`]),
})
  .padEnd(1024)
  .slice(0, 1024);

function starting(): readonly Timing[] {
  const node = (args: readonly string[]) => () => {
    const { status } = spawnSync(process.execPath, args, { stdio: "ignore" });
    if (status !== 0) throw new Error(`node ${args[0]} ended with ${status}`);
  };
  const bare = timeEach("node that does nothing, from the shell and back", 15, node(["-e", "0"]));
  if (!existsSync(program)) return [bare];
  const sum = ["reckon", "emc", "--temperature=21C", "--humidity=45"];
  return [
    bare,
    timeEach("the built program, help, cold", 15, node([program, "--help"])),
    timeEach("the built program, one sum, cold", 15, node([program, ...sum])),
  ];
}

function table(timings: readonly Timing[], base: Timing): readonly string[] {
  return [
    `| what | median | times “${base.name}” |`,
    "| --- | ---: | ---: |",
    ...timings.map(({ name, medianMs }) => {
      const ratio = (medianMs / base.medianMs).toPrecision(3);
      return `| ${name} | ${shown(medianMs)} | ${Number(ratio)} |`;
    }),
    "",
  ];
}

function spreadTable(spreads: readonly Spread[], of: Timing): readonly string[] {
  return [
    `| what | median | 19 in 20 under | times “${of.name}” | runs |`,
    "| --- | ---: | ---: | ---: | ---: |",
    ...spreads.map(({ name, medianMs, p95Ms, runs }) => {
      const ratio = (medianMs / of.medianMs).toPrecision(3);
      return `| ${name} | ${shown(medianMs)} | ${shown(p95Ms)} | ${Number(ratio)} | ${runs} |`;
    }),
    "",
  ];
}

const shown = (ms: number): string =>
  ms >= 1 ? `${ms.toPrecision(3)} ms` : `${(ms * 1000).toPrecision(3)} µs`;

const git = (...args: readonly string[]): string =>
  execFileSync("git", args, { cwd: root, encoding: "utf8" }).trim();

console.log("JSON.parse of 1 kB, then what is read, printed, worked and started");
const base = time("JSON.parse of 1 kB", () => JSON.parse(oneKilobyte));
const steps = [...reading(), ...sums(), ...(await solids())];
const { spreads, triangles } = await pieces();
const leafSpreads = await leaves();
const memory = await memoryOver(10_000);
const [bare, ...starts] = starting();
if (lastKept() === undefined || !bare) throw new Error("nothing was measured");

const isClean = git("status", "--porcelain", "--", "src") === "";
const commit = `${git("rev-parse", "--short", "HEAD")}${isClean ? "" : " with changes"}`;
const lines = [
  "# Bench",
  "",
  "Written by `npm run bench`. Each figure is the median of 31 rounds in one run; the ratio sets it",
  "against a step every machine does, measured in the same run. Shared machines are noisy: a change",
  "of less than a sixth says nothing.",
  "",
  `${new Date().toISOString().slice(0, 10)}, commit ${commit}, ${cpus()[0]?.model ?? "a processor"}, ${cpus().length} cores, Node ${process.version}.`,
  "",
  ...table([base, ...steps], base),
  "Random plain tables, and the demo table with one dimension changed:",
  "",
  ...spreadTable(spreads, base),
  triangles,
  "",
  "The demo drop-leaf table:",
  "",
  ...spreadTable(leafSpreads, base),
  `Memory over ${memory.built} shapes built: ${memory.firstMB} MB resident at a tenth of the way, ${memory.lastMB} MB at the end.`,
  "",
  ...(starts.length > 0
    ? ["Starting, median of 15:", "", ...table([bare, ...starts], bare)]
    : ["The built program was not there to be started: `npm run build` makes it.", ""]),
];
const edits = await editing(join(root, "dist", "web"));
if (edits.length > 0) lines.push("In a browser:", "", ...spreadTable(edits, base));
const page = await pageLoad(join(root, "dist", "web"));
if (page) {
  lines.push(
    `The page: ${page.files.map(({ kind, kB, gzipKB }) => `${kind} ${kB} kB (${gzipKB} kB gzipped)`).join(", ")}.`,
    "From a fresh profile to the first answer set, median of 7:",
    "",
    ...table([page.blank, page.cold], page.blank),
  );
}
writeFileSync(join(root, "bench", "results.md"), lines.join("\n"));
console.log(lines.join("\n"));
