import { execFileSync } from "node:child_process";
import { copyFileSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { createKernel, solidOf } from "../../src/solid/index.ts";
import { bore, partOf } from "./samples.ts";

const wasm = createRequire(import.meta.url).resolve("manifold-3d/manifold.wasm");
const volume = 540 * 100 * 20;

describe("loading", () => {
  test("twice from one place gives one kernel", async () => {
    const kernel = await createKernel();
    expect(await createKernel()).toBe(kernel);
    expect(solidOf(kernel, partOf([540, 100, 20])).volume).toBe(volume);
  });

  test.each([
    ["a path", wasm],
    ["a URL", pathToFileURL(wasm).href],
  ])("from %s", async (_, wasmUrl) => {
    const kernel = await createKernel({ wasmUrl });
    expect(solidOf(kernel, partOf([540, 100, 20])).volume).toBe(volume);
  });

  test("from where there is none fails, and is tried again when it is asked for again", async () => {
    // The loader says so on the console too.
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const folder = mkdtempSync(join(tmpdir(), "latewood-kernel-"));
    const wasmUrl = join(folder, "later.wasm");
    await expect(createKernel({ wasmUrl })).rejects.toThrow();
    copyFileSync(wasm, wasmUrl);
    const kernel = await createKernel({ wasmUrl });
    expect(solidOf(kernel, partOf([540, 100, 20])).volume).toBe(volume);
    expect(said).toHaveBeenCalled();
    said.mockRestore();
    rmSync(folder, { recursive: true });
  });
});

describe("in a program bundled into one file", () => {
  let folder = "";
  const program = () => join(folder, "program.mjs");
  const run = (...args: readonly string[]) =>
    execFileSync(process.execPath, [program(), ...args], { encoding: "utf8", cwd: tmpdir() });

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "latewood-bundle-"));
    const entry = `
      import { createKernel, solidOf, writeGlb } from "./src/solid/index.ts";
      const part = ${JSON.stringify(partOf([540, 100, 20], [bore()]))};
      const wasmUrl = process.argv[2];
      const kernel = await createKernel(wasmUrl ? { wasmUrl } : {});
      const solid = solidOf(kernel, part);
      const glb = await writeGlb([{ part, solid, timber: { name: "oak", colour: "#c8a068" } }]);
      console.log(JSON.stringify([solid.volume, glb.byteLength]));`;
    const { outputFiles } = await build({
      stdin: { contents: entry, resolveDir: resolve(import.meta.dirname, "../..") },
      ...{ bundle: true, platform: "node", format: "esm", target: "node20", write: false },
    });
    writeFileSync(program(), outputFiles?.[0]?.contents ?? "");
    copyFileSync(wasm, join(folder, "manifold.wasm"));
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test("the WASM is found beside it, or where it is said to be", async () => {
    const here = solidOf(await createKernel(), partOf([540, 100, 20], [bore()])).volume;
    const beside = JSON.parse(run());
    expect(beside[0]).toBe(here);
    expect(beside[1]).toBeGreaterThan(1000);
    renameSync(join(folder, "manifold.wasm"), join(folder, "elsewhere.wasm"));
    expect(JSON.parse(run(join(folder, "elsewhere.wasm")))).toEqual(beside);
    expect(JSON.parse(run(pathToFileURL(join(folder, "elsewhere.wasm")).href))).toEqual(beside);
  });
});
