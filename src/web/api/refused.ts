/** What went wrong with a request, as the server says it. */
export type Said = {
  readonly code: string;
  readonly place: string;
  readonly reason: string;
  readonly remedy: string;
};

/** The server said no, or could not be asked. */
export class Refused extends Error {
  readonly said: readonly Said[];
  /** whether trying again later may help: nobody answered, or the store was busy */
  readonly isPassing: boolean;
  constructor(said: readonly Said[], isPassing: boolean) {
    super(said.map((s) => `${s.reason} ${s.remedy}`).join(" "));
    this.said = said;
    this.isPassing = isPassing;
  }
}

export const isPassing = (fault: unknown): fault is Refused =>
  fault instanceof Refused && fault.isPassing;

/** Whatever was thrown, in words for the screen. */
export const saidBy = (fault: unknown): readonly Said[] =>
  fault instanceof Refused
    ? fault.said
    : [
        {
          code: "fault",
          place: "the page",
          reason: String(fault),
          remedy: "Load the page again; what was kept is safe.",
        },
      ];

/** A passing silence of the server is waited out so long between tries [ms]. */
export const RETRY_MS = 2000;

/**
 * Asks again and again until there is an answer.
 *
 * @param ask  the request
 * @param waitOut  tells why there is none yet, and waits
 * @throws whatever will not pass
 */
export async function patiently<T>(
  ask: () => Promise<T>,
  waitOut: (said: readonly Said[]) => Promise<void>,
): Promise<T> {
  for (;;) {
    try {
      return await ask();
    } catch (fault) {
      if (!isPassing(fault)) throw fault;
      await waitOut(fault.said);
    }
  }
}
