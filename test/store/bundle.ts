import { mkdtempSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

/** A program in one file, so that starting it takes a tenth of a second. */
export async function bundled(entry: URL): Promise<{ file: string; remove: () => void }> {
  const folder = mkdtempSync(join(tmpdir(), "latewood-child-"));
  const file = join(folder, "child.mjs");
  const sqlite = createRequire(import.meta.url).resolve("@photostructure/sqlite");
  await build({
    entryPoints: [fileURLToPath(entry)],
    outfile: file,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "warning",
    plugins: [
      {
        name: "sqlite-by-address",
        setup: ({ onResolve }) =>
          onResolve({ filter: /^@photostructure\/sqlite$/ }, () => ({
            path: pathToFileURL(sqlite).href,
            external: true,
          })),
      },
    ],
  });
  return { file, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
