import { performance } from "node:perf_hooks";

/** Median time of one call [milliseconds], and what it is set against. */
export type Timing = { readonly name: string; readonly medianMs: number };

const ROUNDS = 31;
const ROUND_MS = 12;

/** Where results go, so that no call is left out because nothing uses it. */
let kept: unknown;
export const lastKept = (): unknown => kept;

/**
 * Times calls in rounds of about equal length, the first only to warm up. The median of the rounds
 * stands: on a machine that does other things besides, the mean would tell of those.
 */
export function time(name: string, call: () => unknown): Timing {
  const times: number[] = [];
  let calls = 1;
  for (let round = 0; round <= ROUNDS; round++) {
    const start = performance.now();
    for (let i = 0; i < calls; i++) kept = call();
    const each = (performance.now() - start) / calls;
    if (round > 0) times.push(each);
    calls = Math.max(1, Math.round(ROUND_MS / Math.max(each, 1e-6)));
  }
  return { name, medianMs: median(times) };
}

/** Times something that is slow by itself, such as starting a program, so many times. */
export function timeEach(name: string, times: number, call: () => void): Timing {
  const all = Array.from({ length: times }, () => {
    const start = performance.now();
    call();
    return performance.now() - start;
  });
  return { name, medianMs: median(all) };
}

function median(values: readonly number[]): number {
  const middle = [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
  if (middle === undefined) throw new Error("nothing was measured");
  return middle;
}
