import type { Worked } from "./worked.ts";

/** The groups in which findings are shown. */
type Group =
  | "Fit and swing"
  | "Seasons"
  | "Strength"
  | "Stands firm"
  | "Joinery"
  | "Can this shop make it";

/** Nothing unjudged counts as ok; what rests on memory or habit is at most `watch`. */
type Verdict = "ok" | "watch" | "fails" | "not-judged";

/** A judgement on a design. */
export type Finding = {
  readonly id: string;
  readonly group: Group;
  readonly verdict: Verdict;
  readonly says: string;
  readonly margin?: Worked;
  /** how far it is past its limit, in multiples of that; about 1 at the limit [1] */
  readonly severity?: number;
  readonly why: readonly Worked[];
  /** keys of the parts, features and joints it speaks of */
  readonly lights: readonly string[];
};
