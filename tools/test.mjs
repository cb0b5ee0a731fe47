// `npm test`: every gate, each run even when an earlier one failed. The last line of the output is
// the count, for machines to read.
import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "./build.mjs";
import { countLines } from "./count-lines.mjs";
import { ensure, inWords, root, Stop } from "./ensure.mjs";
import { browserRemedy, findBrowser } from "./find-browser.mjs";

const tally = { passed: 0, failed: 0, skipped: 0 };
const results = [];

/** Runs a package's command with this same Node, its output passed straight through. */
function runTool(packageName, args, command = packageName) {
  const folder = join(root, "node_modules", packageName);
  const { bin } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const script = join(folder, typeof bin === "string" ? bin : bin[command]);
  return new Promise((settle, fail) => {
    const child = spawn(process.execPath, [script, ...args], {
      cwd: root,
      stdio: ["ignore", "inherit", "inherit"],
    });
    child.on("error", fail);
    child.on("exit", (code) => settle(code === null ? 1 : code));
  });
}

/** Runs one gate. `work` throws on failure, or returns counts of its own to be added. */
async function gate(name, work) {
  console.log(`\n== ${name}`);
  const started = Date.now();
  let counts = { passed: 1, failed: 0, skipped: 0 };
  try {
    counts = (await work()) ?? counts;
  } catch (fault) {
    counts = { passed: 0, failed: 1, skipped: 0 };
    console.log(inWords(fault));
  }
  for (const key of Object.keys(tally)) tally[key] += counts[key];
  const word = counts.failed > 0 ? "FAILED" : counts.passed > 0 ? "passed" : "skipped";
  results.push(`${word.padEnd(8)}${name}, ${((Date.now() - started) / 1000).toFixed(1)} s`);
  console.log(`== ${name}: ${word}`);
  return counts.failed === 0;
}

async function mustRun(packageName, args, command, remedy = "") {
  const code = await runTool(packageName, args, command);
  if (code !== 0) throw new Stop(`${command ?? packageName} ended with code ${code}. ${remedy}`);
}

/** Counts of a vitest report; a file that could not be loaded counts as one failure. */
function countReport(file, code) {
  const report = JSON.parse(readFileSync(file, "utf8"));
  const broken = report.testResults.filter(
    (suite) =>
      suite.status === "failed" && !suite.assertionResults.some((t) => t.status === "failed"),
  ).length;
  const passed = report.numPassedTests;
  const skipped = report.numPendingTests + report.numTodoTests;
  const failed = report.numFailedTests + broken;
  // An error outside any test shows in the exit code alone.
  return { passed, skipped, failed: failed === 0 && code !== 0 ? 1 : failed };
}

async function vitest(project) {
  const folder = mkdtempSync(join(tmpdir(), "latewood-test-"));
  const file = join(folder, "report.json");
  try {
    const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
    const code = await runTool("vitest", ["run", "--project", project, ...reporters]);
    if (!existsSync(file))
      throw new Stop(`vitest ended with code ${code} before any ${project} test.`);
    const counts = countReport(file, code);
    if (counts.passed + counts.failed === 0) throw new Stop(`No ${project} test ran at all.`);
    return counts;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function browserTests() {
  if (findBrowser()) return vitest("browser");
  if (process.env.CI) throw new Stop(browserRemedy());
  console.log(`The browser tests are skipped. ${browserRemedy()}`);
  return { passed: 0, failed: 0, skipped: 1 };
}

if (await gate("packages", ensure)) {
  await gate("format and lint", () =>
    mustRun("@biomejs/biome", ["ci"], "biome", "npm run format mends what can be mended."),
  );
  await gate("types", () => mustRun("typescript", ["--noEmit"], "tsc"));
  await gate("unused code", () => mustRun("knip", []));
  const built = await gate("build", async () => {
    if (!(await build())) console.log("dist is up to date");
  });
  await gate("tests", () => vitest("core"));
  await gate("browser tests", () => {
    if (!built) throw new Stop("There is no build to open in a browser.");
    return browserTests();
  });
}

console.log(`\n${results.join("\n")}\n`);
console.log(countLines(tally));
process.exitCode = tally.failed > 0 ? 1 : 0;
