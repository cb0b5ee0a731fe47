import type { Problem } from "../worked/index.ts";
import type { Io } from "./io.ts";
import { problemJson } from "./json.ts";
import { printProblems } from "./report.ts";

/** Tells what is wrong in words, and to a program that asked for JSON as data too. */
export function complain(io: Io, json: boolean, problems: readonly Problem[]): 2 {
  if (json) io.out(`${JSON.stringify({ problems: problems.map(problemJson) })}\n`);
  printProblems(io, problems);
  return 2;
}
