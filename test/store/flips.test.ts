import { expect, test } from "vitest";
import { type Flip, flipRun } from "./flips.ts";

const of = (came: ReadonlyMap<Flip, number>, flip: Flip) => came.get(flip) ?? 0;

test("a byte changed anywhere, with a backup: a true state opens, and what is missing is said", async () => {
  const { came, faults } = await flipRun(60, 20260101, true);
  expect(faults).toEqual([]);
  expect(of(came, "mended, nothing lost")).toBeGreaterThan(5);
}, 60_000);

test.each([true, false])(
  "a byte changed in what the file says of its own tables, with a backup: %s",
  async (hasBackup) => {
    const { came, faults } = await flipRun(40, 20260103, hasBackup, "inverse TEXT NOT NULL");
    expect(faults).toEqual([]);
    expect([...came.values()].reduce((sum, n) => sum + n, 0)).toBe(40);
  },
  60_000,
);

test("a byte changed anywhere, without a backup: likewise, or it is refused", async () => {
  const { came, faults } = await flipRun(60, 20260102, false);
  expect(faults).toEqual([]);
  expect(of(came, "mended, nothing lost")).toBeGreaterThan(5);
}, 60_000);
