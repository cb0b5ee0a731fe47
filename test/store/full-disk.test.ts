import { execFileSync } from "node:child_process";
import { expect, test } from "vitest";
import { bundled } from "./bundle.ts";
import { newFolder } from "./folders.ts";

/** Runs a command where a folder is a disk of its own, which nobody else sees and which ends with it. */
const onSmallDisk = (folder: string, command: readonly string[]) => {
  const script = 'mount -t tmpfs -o size=400k none "$0" && exec "$@"';
  return execFileSync("unshare", ["-Urm", "sh", "-c", script, folder, ...command], {
    encoding: "utf8",
    stdio: ["ignore", "pipe", "pipe"],
  });
};

function hasSmallDisks(): boolean {
  try {
    onSmallDisk(newFolder(), ["true"]);
    return true;
  } catch {
    // No Linux, or one that lets no user mount; trouble.test.ts has SQLite's own limit instead.
    return false;
  }
}

test.skipIf(!hasSmallDisks())("a disk that is really full loses nothing confirmed", async () => {
  const child = await bundled(new URL("./full-child.ts", import.meta.url));
  try {
    const disk = newFolder();
    const account = JSON.parse(onSmallDisk(disk, [process.execPath, child.file, disk]));
    expect(account).toEqual({
      met: "disk-full",
      backup: "disk-full",
      steps: expect.any(Number),
      sameOpen: true,
      sameReopened: true,
      after: "done",
      unsound: [],
    });
    expect(account.steps).toBeGreaterThan(2);
  } finally {
    child.remove();
  }
});
