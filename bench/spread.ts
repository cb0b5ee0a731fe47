/** What a step took, many times over [milliseconds]. */
export type Spread = {
  readonly name: string;
  readonly medianMs: number;
  readonly p95Ms: number;
  readonly runs: number;
};

/** Times of one step, put together. */
export function spread(name: string, times: readonly number[]): Spread {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(sorted.length * share)] ?? Number.NaN;
  return { name, medianMs: at(0.5), p95Ms: at(0.95), runs: times.length };
}

/** How long some work takes [milliseconds]. */
export function took(work: () => unknown): number {
  const from = performance.now();
  work();
  return performance.now() - from;
}
