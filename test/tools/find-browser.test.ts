import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { root } from "../../tools/ensure.mjs";
import { browserRemedy, findBrowser } from "../../tools/find-browser.mjs";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "latewood browser "));
});
afterAll(() => rmSync(folder, { recursive: true }));
afterEach(() => vi.unstubAllEnvs());

/** A program of a browser's name; Windows, where it is not asked, has no such programs either. */
function candidate(lines: string, mode = 0o755): string {
  const file = join(folder, "chromium-browser");
  rmSync(file, { force: true });
  writeFileSync(file, `#!/bin/sh\n${lines}\n`, { mode });
  vi.stubEnv("LATEWOOD_BROWSER", file);
  return file;
}

describe.skipIf(process.platform === "win32")("a candidate is asked for its version", () => {
  test("and taken when it tells one", () => {
    const file = candidate('[ "$1" = --version ] && echo "Chromium 123.0.4 built on a bench"');
    expect(findBrowser()).toBe(file);
  });

  test.each([
    ["says how to get a browser, and fails", "echo 'requires version 1.2 of a snap'; exit 1"],
    ["says how to get a browser, and ends well", "echo 'install the snap'"],
    ["says it to standard error", "echo 'Chromium 123.0.4' >&2"],
    ["ends by a signal", "echo 'Chromium 123.0.4'; kill -9 $$"],
  ])("and passed over when it %s", (_, lines) => {
    const file = candidate(lines);
    expect(findBrowser()).toBeUndefined();
    for (const part of [file, "--version"]) expect(browserRemedy()).toContain(part);
    const told = spawnSync(process.execPath, [join(root, "tools", "find-browser.mjs")], {
      encoding: "utf8",
    });
    expect([told.status, told.stdout]).toEqual([1, ""]);
    expect(told.stderr).toContain(file);
  });

  test("and passed over when it may not be started", () => {
    candidate("echo 'Chromium 123.0.4'", 0o644);
    expect(findBrowser()).toBeUndefined();
  });
});

test("a named browser that is missing is said to be", () => {
  vi.stubEnv("LATEWOOD_BROWSER", join(folder, "nowhere"));
  expect(findBrowser()).toBeUndefined();
  expect(browserRemedy()).toContain("is not there");
});
