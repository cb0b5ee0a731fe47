import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { serve } from "../../src/cli/serve.ts";
import { startServer } from "../../src/server/index.ts";

function listener() {
  const heard = { out: "", err: "" };
  const io = {
    out: (text: string) => {
      heard.out += text;
    },
    err: (text: string) => {
      heard.err += text;
    },
  };
  return { heard, io };
}

describe("what cannot be read ends with 2, its place, and what would be right", () => {
  test.each([
    [["--port", "abc"], "--port", '"abc"', "5217"],
    [["--port=-1"], "--port", '"-1"', "65535"],
    [["--port", "65536"], "--port", '"65536"', "65535"],
    [["--port", "80.5"], "--port", '"80.5"', "65535"],
    [["--port="], "--port", '""', "65535"],
    [["--port"], "--port", "nothing", "65535"],
    [["--open", "--wide"], "argument 2", '"--wide"', "[--open]"],
    [["--open=yes"], "argument 1", '"--open=yes"', "[--open]"],
    [["here"], "argument 1", '"here"', "[--port N]"],
    [[""], "argument 1", '""', "[--port N]"],
  ])("%j", async (argv, place, read, right) => {
    const { heard, io } = listener();
    expect(await serve(argv, io)).toBe(2);
    expect(heard.out).toBe("");
    for (const part of [place, read, right]) expect(heard.err).toContain(part);
  });
});

test.each([[["--help"]], [["-h"]], [["--port", "80", "--help"]]])(
  "%j tells the options and serves nothing",
  async (argv) => {
    const { heard, io } = listener();
    // A folder that is not there: serving it would end with 3.
    expect(await serve(argv, io, join(tmpdir(), "latewood-is-not-here"))).toBe(0);
    expect(heard.err).toBe("");
    for (const part of ["--port N", "--open", "5217"]) expect(heard.out).toContain(part);
  },
);

test("help beside a fault is told the fault", async () => {
  const { heard, io } = listener();
  expect(await serve(["--help", "--wide"], io)).toBe(2);
  expect(heard.err).toContain("--wide");
});

test("without a built screen it says how to get one", async () => {
  const { heard, io } = listener();
  expect(await serve([], io, join(tmpdir(), "latewood-is-not-here"))).toBe(3);
  expect(heard.err).toContain("npm start");
});

test("a port in use is named, and nobody is blamed for it", async () => {
  const webRoot = mkdtempSync(join(tmpdir(), "latewood-serve-"));
  writeFileSync(join(webRoot, "index.html"), "here");
  const first = await startServer({ webRoot, port: 0 });
  const { heard, io } = listener();
  try {
    const ended = serve(["--port", String(first.port)], io, webRoot);
    await expect.poll(() => heard.out).toContain("Latewood is at");
    process.emit("SIGTERM");
    expect(await ended).toBe(0);
    expect(heard.out).toContain(`Port ${first.port} is in use`);
    expect(heard.out).not.toContain("another program");
  } finally {
    await first.close();
    rmSync(webRoot, { recursive: true });
  }
});

test("it serves until it is told to stop", async () => {
  const webRoot = mkdtempSync(join(tmpdir(), "latewood-serve-"));
  writeFileSync(join(webRoot, "index.html"), "here");
  const { heard, io } = listener();
  try {
    const ended = serve(["--port", "0"], io, webRoot);
    await expect.poll(() => heard.out).toMatch(/^Latewood is at http:\/\/localhost:\d+\/ {2}\(/);
    const url = /http\S+/.exec(heard.out)?.[0] ?? "";
    expect(await (await fetch(url)).text()).toBe("here");
    process.emit("SIGTERM");
    expect(await ended).toBe(0);
    await expect(fetch(url)).rejects.toThrow();
  } finally {
    rmSync(webRoot, { recursive: true });
  }
});
