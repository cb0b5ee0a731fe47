import { type SpawnOptions, spawn } from "node:child_process";
import {
  closeSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bundleProgram } from "../../tools/build.mjs";
import { root } from "../../tools/ensure.mjs";
import { linesOf } from "../kit/cli.ts";

let folder: string;
let program: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "latewood program "));
  program = join(folder, "latewood.mjs");
  mkdirSync(join(folder, "parts"));
  for (const [name, contents] of Object.entries(await bundleProgram()))
    writeFileSync(join(folder, name), contents);
});
afterAll(() => rmSync(folder, { recursive: true }));

const start = (
  argv: readonly string[],
  stdio: SpawnOptions["stdio"] = ["ignore", "pipe", "pipe"],
) => spawn(process.execPath, [program, ...argv], { stdio });

function ended(child: ReturnType<typeof start>) {
  const heard = { out: "", err: "" };
  child.stdout?.on("data", (piece) => {
    heard.out += piece;
  });
  child.stderr?.on("data", (piece) => {
    heard.err += piece;
  });
  return new Promise<{ code: number | null; out: string; err: string }>((settle, fail) => {
    child.on("error", fail);
    child.on("close", (code) => settle({ code, ...heard }));
  });
}

test.each(["version", "--version"])("%s is that of package.json", async (word) => {
  const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
  expect(await ended(start([word]))).toEqual({ code: 0, out: `${version}\n`, err: "" });
});

describe("streams that fail are the input's trouble or the reader's, not a fault of ours", () => {
  const batch = ["reckon", "emc", "--batch"];
  const rows = `temperature,humidity\n${"20 C,50\n".repeat(20)}`;

  test("standard input that may not be read", async () => {
    const writeOnly = openSync(join(folder, "write-only"), "w");
    try {
      const { code, out, err } = await ended(start(batch, [writeOnly, "pipe", "pipe"]));
      expect(code).toBe(2);
      expect(linesOf(out)).toMatchObject([{ row: 0, problems: [{ code: "input-unread" }] }]);
      expect(err).toMatch(/^standard input: .*read/);
    } finally {
      closeSync(writeOnly);
    }
  });

  test.skipIf(!existsSync("/dev/full"))("standard output that is full", async () => {
    const full = openSync("/dev/full", "w");
    try {
      const { code, err } = await ended(start(["help"], ["ignore", full, "pipe"]));
      expect(code).toBe(2);
      expect(err).toMatch(/^standard output: .*ENOSPC/);
    } finally {
      closeSync(full);
    }
  });

  test("a reader that has seen enough", async () => {
    const child = start(batch, ["pipe", "pipe", "pipe"]);
    const end = ended(child);
    // Writing goes on to a program that is gone; whether that is refused is not in question here.
    child.stdin?.on("error", () => {});
    child.stdout?.once("data", () => {
      child.stdout?.destroy();
      for (let i = 0; i < 1000; i++) child.stdin?.write("20 C,50\n");
      child.stdin?.end();
    });
    child.stdin?.write(rows);
    expect(await end).toMatchObject({ code: 0, err: "" });
  });

  test("input that goes on behind what cannot be read", async () => {
    const child = start(batch, ["pipe", "pipe", "pipe"]);
    const end = ended(child);
    child.stdin?.on("error", () => {});
    // Not ended: the program must not wait for what it will not read.
    child.stdin?.write("[\n");
    expect((await end).code).toBe(2);
  });
});
