import { expect } from "vitest";
import { Problem } from "../../src/worked/index.ts";

/** The code of the Problem that something throws; any other end fails the test. */
export async function codeOf(work: () => unknown): Promise<string> {
  try {
    await work();
  } catch (fault) {
    if (!(fault instanceof Problem)) throw fault;
    for (const words of [fault.place, fault.reason, fault.remedy]) expect(words).not.toBe("");
    return fault.code;
  }
  return "nothing was thrown";
}
