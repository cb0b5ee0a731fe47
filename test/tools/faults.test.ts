import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { inWords, isFileFault, note, Stop } from "../../tools/ensure.mjs";

const fault = (code: string, more: object = { path: "dist", syscall: "open" }) =>
  Object.assign(new Error(`${code}: some words`), { code, ...more });

describe("a fault of the disk is told with what to do, and without a stack", () => {
  test.each([
    ["EACCES", "belongs to you"],
    ["EPERM", "belongs to you"],
    ["EBUSY", "another program holds"],
    ["EROFS", "may only be read"],
    ["ENOSPC", "full"],
    ["EDQUOT", "full"],
  ])("%s", (code, remedy) => {
    const words = inWords(fault(code));
    expect(words).toMatch(/^dist could not be used/);
    for (const part of [code, remedy]) expect(words).toContain(part);
    expect(words).not.toMatch(/^ +at /m);
    expect(isFileFault(fault(code))).toBe(true);
  });
});

test("a Stop is told in its own words", () => {
  expect(inWords(new Stop("Do this."))).toBe("Do this.");
});

test.each([
  ["ours", new Error("ours")],
  ["a missing file", fault("ENOENT")],
  ["a process that may not be ended", fault("EPERM", { syscall: "kill" })],
])("%s keeps its stack", (_, other) => {
  expect(isFileFault(other)).toBe(false);
  expect(inWords(other)).toBe(other.stack);
});

describe("a note to a later run", () => {
  test("is written", () => {
    const folder = mkdtempSync(join(tmpdir(), "latewood-note-"));
    try {
      note(join(folder, "note"), "text");
      expect(readFileSync(join(folder, "note"), "utf8")).toBe("text");
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test.skipIf(!existsSync("/dev/full"))("is left out quietly where the disk is full", () => {
    expect(() => note("/dev/full", "text")).not.toThrow();
  });

  test("is not left out for a fault of ours", () => {
    expect(() => note(join(tmpdir(), "latewood-is-not-here", "note"), "text")).toThrow("ENOENT");
  });
});
