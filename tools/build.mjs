// Builds the screen (vite, into dist/web) and the program (esbuild, into dist/latewood.mjs), only
// when something they are made from has changed.
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join, relative } from "node:path";
import { ensure, isFileFault, isMain, note, root, runMain, Stop, step } from "./ensure.mjs";

const dist = join(root, "dist");
const entry = join(root, "src", "cli", "main.ts");
const page = join(root, "src", "web", "index.html");
const program = join(dist, "latewood.mjs");
const builtPage = join(dist, "web", "index.html");
const stampFile = join(dist, ".stamp");

function sources() {
  const inSrc = readdirSync(join(root, "src"), { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile() && !found.name.endsWith(".md"))
    .map((found) => join(found.parentPath || found.path, found.name));
  const settings = [
    ...["vite.config.ts", "package.json", "package-lock.json"],
    ...["tools/build.mjs", "tools/no-node.mjs"],
  ];
  return [...inSrc, ...settings.map((name) => join(root, name))].sort();
}

function sourceHash() {
  const hash = createHash("sha256");
  for (const file of sources()) {
    hash
      .update(`${relative(root, file)}\0`)
      .update(readFileSync(file))
      .update("\0");
  }
  return hash.digest("hex");
}

function isFresh(hash) {
  return [program, builtPage].every((file) => existsSync(file)) && stamp() === hash;
}

function stamp() {
  try {
    return readFileSync(stampFile, "utf8");
  } catch (fault) {
    // Another build may take it away at any moment, so asking beforehand would not do.
    if (fault.code === "ENOENT") return undefined;
    throw fault;
  }
}

/**
 * Compiles the screen and writes it into a folder. Written here and not by vite, whose writing fails
 * with the same words as its compiling. It has no public folder to copy.
 */
async function buildWeb(folder) {
  if (!existsSync(page))
    throw new Stop("src/web/index.html is not there, so there is no screen to build.");
  const vite = await import("vite");
  let result;
  try {
    result = await vite.build({
      configFile: join(root, "vite.config.ts"),
      // The settings name it from the folder one stands in, which may be any.
      root: dirname(page),
      logLevel: "warn",
      publicDir: false,
      build: { write: false },
    });
  } catch (fault) {
    if (isFileFault(fault)) throw fault;
    throw new Stop(`The screen (src/web) does not compile:\n${fault.message}`);
  }
  for (const { output } of [result].flat()) {
    for (const made of output) {
      const file = join(folder, made.fileName);
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, made.type === "chunk" ? made.code : made.source);
    }
  }
}

/** Folder of what the program loads only when it is asked for, beside it. */
const PARTS = "parts";
/** The room that brings along what nothing else waits for: a bundle of its own. */
const apart = {
  entry: join(root, "src", "press", "index.ts"),
  name: `${PARTS}/press.mjs`,
  brings: ["manifold-3d", "@gltf-transform/core", "pdfkit"],
};

/** Leaves the room apart to its own bundle. */
const leftApart = {
  name: "left-apart",
  setup(build) {
    build.onResolve({ filter: /\/press\/index\.ts$/ }, ({ kind }) =>
      kind === "dynamic-import" ? { path: `./${apart.name}`, external: true } : undefined,
    );
  },
};

/** The program's files by their names, ready to be written; most packages are in it, and its version. */
export async function bundleProgram() {
  if (!existsSync(entry))
    throw new Stop("src/cli/main.ts is not there, so there is no program to build.");
  const esbuild = await import("esbuild");
  try {
    const [main, press] = [await bundled(esbuild, entry), await bundled(esbuild, apart.entry)];
    return { "latewood.mjs": main, [apart.name]: press };
  } catch (fault) {
    if (!Array.isArray(fault?.errors)) throw fault;
    throw new Stop(
      `The program (src/cli) does not compile: ${fault.errors.length} fault(s), above.`,
    );
  } finally {
    // Its helper process would otherwise live as long as `npm start` does.
    await esbuild.stop();
  }
}

async function bundled(esbuild, from) {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  const isProgram = from === entry && !readFileSync(entry, "utf8").startsWith("#!");
  const { outputFiles } = await esbuild.build({
    entryPoints: [from],
    // Only to name the file; writing it is no part of compiling.
    outfile: program,
    write: false,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    // These bring files of their own, binaries and WASM, and look for them beside themselves. The
    // program itself reaches the kernel only by what it leaves unused, which falls away.
    external: ["@photostructure/sqlite", ...(from === entry ? [] : apart.brings)],
    plugins: [leftApart],
    banner: isProgram ? { js: "#!/usr/bin/env node" } : {},
    define: { LATEWOOD_VERSION: JSON.stringify(version) },
    // esbuild prints each fault with its place itself.
    logLevel: "warning",
    absWorkingDir: root,
  });
  return outputFiles[0].contents;
}

/**
 * Renames a folder to its place, whatever stands there. A folder cannot be renamed onto one with
 * files in it, so that one steps aside first; another build may put its own there in between, and
 * then that one does.
 */
export function putInPlace(made, place) {
  for (let attempt = 1; ; attempt += 1) {
    const aside = `${made}-old-${attempt}`;
    const wasThere = renameIfThere(place, aside);
    try {
      renameSync(made, place);
      return;
    } catch (fault) {
      // Filled again, and perhaps free by now. Windows says EPERM, as of files that are held open.
      const isFilled =
        ["ENOTEMPTY", "EEXIST"].includes(fault.code) ||
        (fault.code === "EPERM" && existsSync(place));
      if (isFilled && attempt < 100) continue;
      if (wasThere && !existsSync(place)) renameSync(aside, place);
      throw fault;
    }
  }
}

/** Not mkdirSync's own recursive way, which calls a read-only disk a missing folder. */
function makeFolder(folder) {
  try {
    mkdirSync(folder);
  } catch (fault) {
    if (fault.code !== "EEXIST" || !statSync(folder).isDirectory()) throw fault;
  }
}

function renameIfThere(from, to) {
  try {
    renameSync(from, to);
    return true;
  } catch (fault) {
    if (fault.code === "ENOENT") return false;
    throw fault;
  }
}

/** Takes away what builds left that were cut short; one of the last hour may still be at work. */
function tidy() {
  for (const name of readdirSync(dist).filter((name) => name.startsWith(".new-"))) {
    const left = join(dist, name);
    const madeAt = statSync(left, { throwIfNoEntry: false })?.mtimeMs ?? 0;
    if (Date.now() - madeAt > 3_600_000) rmSync(left, { recursive: true, force: true });
  }
}

/**
 * Builds what is stale and returns whether anything was. Throws Stop when the compile fails; what
 * was built before then stays as it is. Built beside and renamed, so that neither a running server
 * nor a second build at the same time ever meets half of one.
 */
export async function build({ force = false } = {}) {
  const hash = sourceHash();
  if (!force && isFresh(hash)) return false;
  makeFolder(dist);
  tidy();
  const beside = mkdtempSync(join(dist, ".new-"));
  try {
    const web = join(beside, "web");
    await step("build the screen", () => buildWeb(web));
    await step("build the program", async () => {
      mkdirSync(join(beside, PARTS));
      for (const [name, contents] of Object.entries(await bundleProgram()))
        writeFileSync(join(beside, name), contents, { mode: 0o755 });
    });
    // Gone while the two are of different builds, should this be cut short between them.
    rmSync(stampFile, { force: true });
    putInPlace(web, join(dist, "web"));
    putInPlace(join(beside, PARTS), join(dist, PARTS));
    renameSync(join(beside, "latewood.mjs"), program);
    note(stampFile, hash);
  } finally {
    rmSync(beside, { recursive: true, force: true });
  }
  return true;
}

if (isMain(import.meta.url)) {
  await runMain(async () => {
    await ensure();
    const built = await build({ force: process.argv.includes("--force") });
    console.log(
      built
        ? "Built dist/web and dist/latewood.mjs."
        : "dist is up to date; nothing was built (--force builds).",
    );
  });
}
