import { Refusal } from "../kinds/index.ts";
import { Problem } from "../worked/index.ts";

/** Places that mean the file as a whole. */
const WHOLE = ["the file", "the piece", "the shop’s file"];

/**
 * A problem within a file, with the file named before its place; a refusal stays one.
 *
 * @param path  as typed
 */
export function inFile(path: string, problem: Problem): Problem {
  const { code, reason, remedy } = problem;
  const place = WHOLE.includes(problem.place) ? path : `${path}, ${problem.place}`;
  return problem instanceof Refusal
    ? new Refusal(code, place, reason, remedy, problem.mend)
    : new Problem(code, place, reason, remedy);
}
