import type { Result } from "../../reckon/index.ts";
import {
  cite,
  type Input,
  isWorked,
  notesOf,
  unprovenOf,
  type Worked,
} from "../../worked/index.ts";

/** A thing to be known about a figure before relying on it. */
export type Ground = { readonly kind: "note" | "unproven"; readonly says: string };

const opening = { published: "Rests on memory", practice: "Common practice" } as const;

/**
 * Whether an end of a range brings an assumption of its own. How widely boards differ is no answer
 * of the maker's, so that it is assumed shows nowhere else.
 */
const isOwn = (input: Input, worked: Worked) =>
  !isWorked(input) &&
  input.source.kind === "assumed" &&
  !Object.values(worked.inputs).includes(input);

function saying(inputs: readonly Input[]): string | undefined {
  const [first] = inputs;
  if (!first) return undefined;
  const { source } = first;
  const what = [...new Set(inputs.map(({ says }) => says))].join("; ");
  switch (source.kind) {
    case "published":
      return `${opening.published}: ${what} (${source.work}, ${source.place})`;
    case "practice":
      return `${opening.practice}, nobody vouches for it: ${what}`;
    case "assumed":
      return `Assumed: ${what} (${source.why})`;
    default:
      return undefined;
  }
}

/**
 * What a result stands on that its maker should know: the notes of its chain, and what in it rests
 * on memory, habit or assumption. The ends of a range count by what they add.
 */
export function groundOf({ worked, low, high }: Result): readonly Ground[] {
  const ends = [low, high].flatMap((end) => (end ? [end] : []));
  const notes = new Set([worked, ...ends].flatMap(notesOf));
  const unproven = new Set([
    ...unprovenOf(worked),
    ...ends.flatMap((end) => Object.values(end.inputs)).filter((input) => isOwn(input, worked)),
  ]);
  const bySource = new Map<string, Input[]>();
  for (const input of unproven) {
    const key = cite(input.source);
    bySource.set(key, [...(bySource.get(key) ?? []), input]);
  }
  return [
    ...[...notes].map((says) => ({ kind: "note" as const, says })),
    ...[...bySource.values()].flatMap((inputs) => {
      const says = saying(inputs);
      return says === undefined ? [] : [{ kind: "unproven" as const, says }];
    }),
  ];
}
