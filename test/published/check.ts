import { type SourceKey, sources } from "./sources.ts";

/** How far the computed value may lie from the printed one. */
export type Tolerance =
  | { readonly how: "half the last printed digit" }
  | { readonly how: "absolute"; readonly by: number }
  | { readonly how: "relative"; readonly by: number };

/** A value somebody else printed, and how our code comes to it. */
export type Check = {
  readonly area: string;
  readonly source: SourceKey;
  readonly says: string;
  /** as printed, figures only: `-0.2385`, `119 500`, `5/384` */
  readonly printed: string;
  readonly unit: string;
  readonly tolerance: Tolerance;
  /** our value in that unit */
  readonly compute: () => number;
};

export type Verdict = {
  readonly computed: number;
  readonly expected: number;
  readonly error: number;
  /** how far off it may be, in the check's unit */
  readonly allowed: number;
  readonly passes: boolean;
};

export const halfDigit: Tolerance = { how: "half the last printed digit" };
export const within = (by: number): Tolerance => ({ how: "absolute", by });
export const share = (by: number): Tolerance => ({ how: "relative", by });
/** For values exact by definition or geometry: only the machine's own rounding is let through. */
export const exact = share(1e-12);

/** A printed value as a number; spaces part thousands, and a constant may be a fraction. */
export function printedValue(printed: string): number {
  const [over, under = "1"] = printed.replace(/\s/g, "").split("/");
  const value = Number(over) / Number(under);
  if (over === "" || under === "" || !Number.isFinite(value)) {
    throw new Error(`“${printed}” is not a printed value`);
  }
  return value;
}

/** Half of the last printed digit: `43.3` gives 0.05. */
export function printedTolerance(printed: string): number {
  if (!/^-?[\d\s]+(\.\d+)?$/.test(printed)) {
    throw new Error(`“${printed}” has no last digit to halve`);
  }
  return 0.5 * 10 ** -(printed.split(".")[1]?.length ?? 0);
}

function allowedFor({ tolerance, printed }: Check): number {
  switch (tolerance.how) {
    case "half the last printed digit":
      return printedTolerance(printed);
    case "absolute":
      return tolerance.by;
    case "relative":
      return tolerance.by * Math.abs(printedValue(printed));
  }
}

/** Runs a check. A value that lies on the edge of its tolerance counts as within it. */
export function judge(check: Check): Verdict {
  const expected = printedValue(check.printed);
  const computed = check.compute();
  const error = Math.abs(computed - expected);
  const allowed = allowedFor(check);
  // What the machine rounds on the way: `0.15 - 0.1` is a hair over half a digit of `0.1`.
  const hair = 1e-12 * Math.max(Math.abs(expected), allowed);
  return { computed, expected, error, allowed, passes: error <= allowed + hair };
}

/** Begins a run of checks of one area that rest on one source. */
export const series =
  (area: string, source: SourceKey) =>
  (
    says: string,
    printed: string,
    unit: string,
    compute: () => number,
    tolerance: Tolerance = halfDigit,
  ): Check => ({ area, source, says, printed, unit, tolerance, compute });

export const isFromOutside = (check: Check): boolean => sources[check.source].proves === "value";
