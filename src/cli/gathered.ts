import { Problem } from "../worked/index.ts";

/** What some work gives; a Problem that it throws is put with the others. */
export function gathered<T>(problems: Problem[], work: () => T): T | undefined {
  try {
    return work();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    problems.push(problem);
    return undefined;
  }
}

/** The same of work that takes its time. */
export async function settled<T>(
  problems: Problem[],
  work: () => Promise<T>,
): Promise<T | undefined> {
  try {
    return await work();
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    problems.push(problem);
    return undefined;
  }
}
