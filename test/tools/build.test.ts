import { spawn } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { bundleProgram, putInPlace } from "../../tools/build.mjs";
import { root } from "../../tools/ensure.mjs";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "latewood build "));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe("a made folder takes its place", () => {
  const make = (name: string, word: string) => {
    const path = join(folder, name);
    mkdirSync(path);
    writeFileSync(join(path, "word"), word);
    return path;
  };
  const place = () => join(folder, "place");

  test.each(["nothing", "a folder with files in it"])("where there was %s", (was) => {
    if (was !== "nothing") {
      make("place", "old");
      writeFileSync(join(place(), "left over"), "");
    }
    putInPlace(make("made", "new"), place());
    expect(readdirSync(place())).toEqual(["word"]);
    expect(readFileSync(join(place(), "word"), "utf8")).toBe("new");
  });

  test("and what was there stays when there is nothing to put there", () => {
    make("place", "old");
    expect(() => putInPlace(join(folder, "not made"), place())).toThrow("ENOENT");
    expect(readFileSync(join(place(), "word"), "utf8")).toBe("old");
  });
});

test("many that put theirs in the same place at once all end well", {
  timeout: 60_000,
}, async () => {
  // Each in a process of its own: within one, nothing could come in between.
  const script = `
    import { mkdirSync, writeFileSync } from "node:fs";
    import { putInPlace } from ${JSON.stringify(pathToFileURL(join(root, "tools", "build.mjs")).href)};
    const [mine, place] = process.argv.slice(-2);
    for (let i = 0; i < 150; i++) {
      mkdirSync(mine + i);
      writeFileSync(mine + i + "/word", "whole");
      putInPlace(mine + i, place);
    }`;
  const [file, place] = [join(folder, "put.mjs"), join(folder, "place")];
  writeFileSync(file, script);
  const codes = await Promise.all(
    ["a", "b", "c", "d"].map((name) => {
      const argv = [file, join(folder, name), place];
      const child = spawn(process.execPath, argv, { stdio: ["ignore", "ignore", "inherit"] });
      return new Promise((settle) => child.on("close", settle));
    }),
  );
  expect(codes).toEqual([0, 0, 0, 0]);
  expect(readFileSync(join(place, "word"), "utf8")).toBe("whole");
});

test("the program carries neither the kernel nor what draws, which would weigh on every start", async () => {
  const files = await bundleProgram();
  const text = new TextDecoder().decode(files["latewood.mjs"]);
  expect(Object.keys(files)).toEqual(["latewood.mjs", "parts/press.mjs"]);
  expect(text).not.toMatch(/"(manifold-3d|pdfkit|@gltf-transform\/core)"/);
  expect(text).toContain('import("./parts/press.mjs")');
  expect(text).toContain("latewood serve");
  expect(text).not.toContain("manifold.wasm");
  expect(text).not.toContain("WebGLRenderer");
  // Its binaries lie in its own folder, where it must be found when it runs.
  expect(text).toContain('import("@photostructure/sqlite")');
});

describe("the build as a command", () => {
  /** A copy of what is built and what builds it, on the packages that are installed here. */
  const copy = () => {
    const names = ["src", "tools", "package.json", "package-lock.json", "tsconfig.json"];
    for (const name of [...names, "vite.config.ts"]) {
      cpSync(join(root, name), join(folder, name), { recursive: true });
    }
    symlinkSync(join(root, "node_modules"), join(folder, "node_modules"), "junction");
  };
  const run = (...args: readonly string[]) => {
    const child = spawn(process.execPath, [join(folder, "tools", "build.mjs"), ...args]);
    let said = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.on("data", (piece) => {
        said += piece;
      });
    }
    return new Promise<{ code: number | null; said: string }>((settle, fail) => {
      child.on("error", fail);
      child.on("close", (code) => settle({ code, said }));
    });
  };
  const made = () => readdirSync(join(folder, "dist")).sort();
  const program = () => readFileSync(join(folder, "dist", "latewood.mjs"), "utf8");

  test("three at once all end well, and leave one whole build", { timeout: 60_000 }, async () => {
    copy();
    const all = await Promise.all([run("--force"), run("--force"), run("--force")]);
    for (const { code, said } of all) expect([code, said]).toEqual([0, expect.any(String)]);
    expect(made()).toEqual([".stamp", "latewood.mjs", "parts", "web"]);
    expect(readdirSync(join(folder, "dist", "web")).sort()).toEqual(["assets", "index.html"]);
    expect((await run()).said).toContain("up to date");
  });

  test("what does not compile is said, and costs nothing that was built", {
    timeout: 60_000,
  }, async () => {
    copy();
    expect((await run()).code).toBe(0);
    const was = program();
    const broken = "export const x = ;";
    for (const [file, says] of [
      ["src/cli/version.ts", "The program (src/cli) does not compile"],
      ["src/web/main.tsx", "The screen (src/web) does not compile"],
    ] as const) {
      writeFileSync(join(folder, file), broken);
      const { code, said } = await run();
      expect(code).toBe(1);
      expect(said).toContain(says);
      expect(said).not.toMatch(/^ +at .*build\.mjs/m);
      expect(made()).toEqual([".stamp", "latewood.mjs", "parts", "web"]);
      expect(program()).toBe(was);
    }
  });

  test("a folder that cannot be made is no fault of the sources", { timeout: 60_000 }, async () => {
    copy();
    writeFileSync(join(folder, "dist"), "a file in the way");
    const { code, said } = await run();
    expect(code).toBe(1);
    expect(said).not.toContain("does not compile");
    expect(said).toContain("dist");
  });
});
