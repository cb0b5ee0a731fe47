/** Shapes that are sent before the page is told to forget; some pieces' worth. */
const MOST_SENT = 300;

/** Names of the shapes that the page holds, as its worker knows: the worker alone decides. */
export type SentShapes = {
  readonly has: (name: string) => boolean;
  readonly add: (name: string) => void;
  /**
   * Forgets, once there are too many, all that are not among these.
   *
   * @param names  of the shapes of the piece that is worked on
   * @returns those that are kept, for the page to forget the others too; undefined when all are
   */
  readonly forgetBut: (names: readonly string[]) => readonly string[] | undefined;
};

/** @param most  how many may be kept before any is forgotten [1] */
export function createSentShapes(most = MOST_SENT): SentShapes {
  const sent = new Set<string>();
  return {
    has: (name) => sent.has(name),
    add: (name) => void sent.add(name),
    forgetBut: (names) => {
      if (sent.size <= most) return undefined;
      const keep = names.filter((name) => sent.has(name));
      sent.clear();
      for (const name of keep) sent.add(name);
      return keep;
    },
  };
}
