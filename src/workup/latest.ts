/** A request's answer, or that a newer request came before it was ready. */
export type Latest<R> =
  | { readonly isDropped: false; readonly answer: R }
  | { readonly isDropped: true };

/**
 * Lets only the newest request through: whoever asks again while an older request is under way
 * makes that one stop at its next rest, and it is dropped.
 *
 * @param work  does the work; it awaits `rest` between its steps, and ends when that tells it to
 * @param pause  lets others have their turn, a new request among them
 */
export function latestOnly<A, R>(
  work: (asked: A, rest: () => Promise<boolean>) => Promise<R>,
  pause: () => Promise<void>,
): (asked: A) => Promise<Latest<R>> {
  let newest = 0;
  return async (asked) => {
    const own = ++newest;
    const isNewest = () => own === newest;
    const rest = async () => {
      await pause();
      return isNewest();
    };
    if (!(await rest())) return { isDropped: true };
    const answer = await work(asked, rest);
    return isNewest() ? { isDropped: false, answer } : { isDropped: true };
  };
}
