export function countLines(tally: {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: number;
}): string;
