// Builds the screen (vite, into dist/web) and the program (esbuild, into dist/latewood.mjs), only
// when something they are made from has changed.
import { createHash } from "node:crypto";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join, relative } from "node:path";
import { ensure, isMain, root, runMain, Stop, step } from "./ensure.mjs";

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
  const settings = ["vite.config.ts", "package.json", "package-lock.json", "tools/build.mjs"];
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
  return (
    [program, builtPage, stampFile].every((file) => existsSync(file)) &&
    readFileSync(stampFile, "utf8") === hash
  );
}

async function buildWeb() {
  if (!existsSync(page))
    throw new Stop("src/web/index.html is not there, so there is no screen to build.");
  const vite = await import("vite");
  try {
    await vite.build({ configFile: join(root, "vite.config.ts"), logLevel: "warn" });
  } catch (fault) {
    throw new Stop(`The screen (src/web) does not compile:\n${fault.message}`);
  }
}

async function buildProgram() {
  if (!existsSync(entry))
    throw new Stop("src/cli/main.ts is not there, so there is no program to build.");
  const esbuild = await import("esbuild");
  const hasShebang = readFileSync(entry, "utf8").startsWith("#!");
  try {
    await esbuild.build({
      entryPoints: [entry],
      outfile: program,
      bundle: true,
      platform: "node",
      format: "esm",
      target: "node20",
      banner: hasShebang ? {} : { js: "#!/usr/bin/env node" },
      // esbuild prints each fault with its place itself.
      logLevel: "warning",
      absWorkingDir: root,
    });
  } catch (fault) {
    throw new Stop(
      `The program (src/cli) does not compile: ${fault.errors?.length ?? 1} fault(s), above.`,
    );
  }
  // Its helper process would otherwise live as long as `npm start` does.
  await esbuild.stop();
  chmodSync(program, 0o755);
}

/**
 * Builds what is stale and returns whether anything was. Throws Stop when the compile fails; the
 * stamp is removed first, so that a failed build is never taken for a fresh one.
 */
export async function build({ force = false } = {}) {
  const hash = sourceHash();
  if (!force && isFresh(hash)) return false;
  rmSync(stampFile, { force: true });
  mkdirSync(dist, { recursive: true });
  await step("build the screen", buildWeb);
  await step("build the program", buildProgram);
  writeFileSync(stampFile, hash);
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
