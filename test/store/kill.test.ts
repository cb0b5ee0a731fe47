import { expect, test } from "vitest";
import { killRun } from "./kill.ts";

test.skipIf(process.platform === "win32")(
  "a dozen kills at moments of chance: nothing confirmed is lost, nothing is half there",
  async () => {
    const seed = Number(process.env.LATEWOOD_SEED ?? Date.now() % 1_000_000);
    console.log(`killed with the seed ${seed}; LATEWOOD_SEED=${seed} runs the same again`);
    const account = await killRun(12, seed);
    expect(account.faults).toEqual([]);
    expect(account).toMatchObject({ kills: 12, lost: 0, halves: 0, damaged: 0 });
    // Kills that all came before the first step would prove nothing.
    expect(account.acknowledged).toBeGreaterThan(20);
  },
  60_000,
);
