// Brings a bare clone to the point where everything else can run. Node built-ins only: it works
// before anything is installed, and says what to do when it cannot go on.
import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, realpathSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

export const root = resolve(dirname(fileURLToPath(import.meta.url)), "..");
const modules = join(root, "node_modules");
const stampFile = join(modules, ".latewood-installed");

/** A failure whose message already tells the reader what to do, so no stack is wanted. */
export class Stop extends Error {}

/** Whether this file was started by itself rather than imported. */
export function isMain(moduleUrl) {
  const started = process.argv[1];
  // Through realpath, since the folder may be reached by a link and the module's own url never is.
  return started !== undefined && realpathSync(resolve(started)) === fileURLToPath(moduleUrl);
}

/** Runs `work`, naming it before and giving the seconds it took after. */
export async function step(name, work) {
  const started = Date.now();
  console.log(`· ${name} …`);
  const seconds = () => `${((Date.now() - started) / 1000).toFixed(1)} s`;
  try {
    const result = await work();
    console.log(`  ${name}: done, ${seconds()}`);
    return result;
  } catch (fault) {
    console.log(`  ${name}: FAILED after ${seconds()}`);
    throw fault;
  }
}

function checkNode() {
  const [major, minor] = process.versions.node.split(".").map(Number);
  // 21 and the first 22s are newer than 20.19 yet lack what the bundler needs of it.
  const fits = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;
  if (fits) return;
  throw new Stop(
    `Latewood needs Node.js 20.19 or newer (of the 22s, 22.12 or newer); this is ${process.versions.node}.\n` +
      "Install the current long-term version of Node.js, open a new terminal and give the command again.",
  );
}

const readJson = (file) => JSON.parse(readFileSync(file, "utf8"));

// The Node version is left out on purpose: nothing installed is compiled against it, and somebody
// who changes between two Nodes should not install again each time.
function wantedStamp() {
  const lock = readFileSync(join(root, "package-lock.json"));
  const hash = createHash("sha256").update(lock).digest("hex");
  return `${hash} ${process.platform}-${process.arch}\n`;
}

function missingDependency() {
  const { dependencies, devDependencies } = readJson(join(root, "package.json"));
  return Object.keys({ ...dependencies, ...devDependencies }).find(
    (name) => !existsSync(join(modules, name, "package.json")),
  );
}

/** Whether npm's own record of what it installed here agrees with the lock file. */
function installedAsLocked() {
  const record = join(modules, ".package-lock.json");
  if (!existsSync(record)) return false;
  const installed = readJson(record).packages;
  const locked = Object.entries(readJson(join(root, "package-lock.json")).packages);
  const foreign = Object.values(installed).some((entry) => entry.os && !suitsOs(entry.os));
  return (
    !foreign &&
    locked.every(([path, entry]) => {
      if (path === "") return true;
      const found = installed[path];
      return found === undefined ? Boolean(entry.optional) : found.version === entry.version;
    })
  );
}

const suitsOs = (list) =>
  list.includes(process.platform) ||
  (list.every((name) => name.startsWith("!")) && !list.includes(`!${process.platform}`));

/** Why packages must be installed, or undefined when they need not be. */
function reasonToInstall() {
  if (!existsSync(modules)) return "nothing is installed yet";
  const missing = missingDependency();
  if (missing) return `${missing} is missing`;
  const wanted = wantedStamp();
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === wanted) return undefined;
  if (!installedAsLocked()) return "package-lock.json has changed";
  // Installed by hand with npm: as good as ours, so only note it.
  note(stampFile, wanted);
  return undefined;
}

/** The command and leading arguments which start npm on this machine. */
function npmCommand() {
  const here = dirname(process.execPath);
  const scripts = [
    process.env.npm_execpath,
    join(here, "node_modules", "npm", "bin", "npm-cli.js"),
    join(here, "..", "lib", "node_modules", "npm", "bin", "npm-cli.js"),
  ];
  const script = scripts.find(
    (path) => path && basename(path) === "npm-cli.js" && existsSync(path),
  );
  if (script) return { command: process.execPath, lead: [script], shell: false };
  // Node refuses to start a .cmd without a shell; the arguments below are fixed words.
  if (process.platform === "win32") return { command: "npm.cmd", lead: [], shell: true };
  return { command: "npm", lead: [], shell: false };
}

const fileRemedies = [
  [/ENOSPC|EDQUOT/, "The disk is full. Free about 500 MB and give the command again."],
  [
    /EROFS/,
    "This folder is on a disk that may only be read. Copy it to one that may be written, and give the command again there.",
  ],
  [
    /EACCES|EPERM|EBUSY/,
    "Files here may not be written, or another program holds them. Close editors and servers that use this folder, make sure it belongs to you (no sudo), and give the command again.",
  ],
];

const remedies = [
  ...fileRemedies,
  [
    /ENOTFOUND|EAI_AGAIN|ETIMEDOUT|ECONNRE|ENETUNREACH|ERR_SOCKET|network|CERT|E40[37]/i,
    "The packages could not be fetched. Check the internet connection, and npm's proxy settings if there is a proxy (npm config get proxy), and give the command again. Once installed, Latewood needs no internet.",
  ],
  [/EUSAGE|in sync/, "package.json and package-lock.json disagree. Run: npm install"],
  [/EINTEGRITY/, "A download arrived damaged. Run: npm cache clean --force, and try again."],
  [
    /^cannot start npm|npm.*is not recognized/m,
    "npm was not found. It comes with Node.js: install Node.js again.",
  ],
];

function runNpm(args) {
  const { command, lead, shell } = npmCommand();
  return new Promise((settle) => {
    let heard = "";
    const child = spawn(command, [...lead, ...args], {
      cwd: root,
      shell,
      stdio: ["ignore", "pipe", "pipe"],
    });
    const started = Date.now();
    const pulse = setInterval(
      () => console.log(`  … still installing, ${Math.round((Date.now() - started) / 1000)} s`),
      10_000,
    );
    const passOn = (to) => (chunk) => {
      heard = (heard + chunk).slice(-20_000);
      to.write(chunk);
    };
    child.stdout.on("data", passOn(process.stdout));
    child.stderr.on("data", passOn(process.stderr));
    const end = (code, more = "") => {
      clearInterval(pulse);
      settle({ code, heard: heard + more });
    };
    child.on("error", (fault) => end(1, `\ncannot start npm: ${fault.message}`));
    child.on("close", (code) => end(code === null ? 1 : code));
  });
}

async function install() {
  const { code, heard } = await runNpm(["ci", "--include=dev"]);
  const missing = code === 0 ? missingDependency() : undefined;
  if (code !== 0 || missing) {
    const known = remedies.find(([sign]) => sign.test(heard));
    throw new Stop(
      `npm ci ${missing ? `left out ${missing}` : `ended with code ${code}`}.\n` +
        (known ? known[1] : "npm's own words are above. Delete node_modules and try again."),
    );
  }
  note(stampFile, wantedStamp());
}

/** Checks Node and installs what is missing. Throws Stop with a remedy when it cannot. */
export async function ensure() {
  checkNode();
  const reason = reasonToInstall();
  if (reason) await step(`install packages (${reason}; about half a minute)`, install);
}

/** What to do about a fault of the disk, or undefined when it is a fault of another kind. */
function fileRemedy(fault) {
  // A process that may not be started or ended gives the same codes.
  if (typeof fault?.code !== "string" || /^(kill|spawn)/.test(fault.syscall)) return undefined;
  return fileRemedies.find(([sign]) => sign.test(fault.code))?.[1];
}

/** Whether a fault lies with the disk or with who may write there, and not with what was written. */
export const isFileFault = (fault) => fileRemedy(fault) !== undefined;

/** A fault as the reader should see it: with what to do where that is known, else with its stack. */
export function inWords(fault) {
  if (fault instanceof Stop) return fault.message;
  const remedy = fileRemedy(fault);
  if (remedy) return `${fault.path ?? "A file"} could not be used (${fault.code}).\n${remedy}`;
  return String(fault?.stack ?? fault);
}

/**
 * Writes a note to a later run. Where it cannot be written nothing is lost but that run's time, so
 * it is no reason to stop.
 */
export function note(file, text) {
  try {
    writeFileSync(file, text);
  } catch (fault) {
    if (!isFileFault(fault)) throw fault;
  }
}

/** Runs a tool's main function; what is known how to mend ends it with words alone. */
export async function runMain(main) {
  try {
    process.exitCode = (await main()) || 0;
  } catch (fault) {
    console.error(`\n${inWords(fault)}`);
    process.exitCode = 1;
  }
}

if (isMain(import.meta.url)) {
  await runMain(async () => {
    await ensure();
    console.log("Node and packages are in order.");
  });
}
