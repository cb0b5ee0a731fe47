import type { Answers, Asks } from "../asking/index.ts";
import type { Change, Joint, Key, Motion, Part, Seasons } from "../piece/index.ts";
import type { Shop } from "../shop/index.ts";
import type { Mm } from "../units/index.ts";
import type { Species } from "../wood/index.ts";
import { type Given, Problem, type Worked } from "../worked/index.ts";

/** A design that cannot be made, and the change of one answer that would put it right. */
export class Refusal extends Problem {
  readonly mend: Change;

  constructor(code: string, place: string, reason: string, remedy: string, mend: Change) {
    super(code, place, reason, remedy);
    this.mend = mend;
  }
}

/** What a kind has to hand while it generates its parts. */
export type Making = {
  /** name of the assembly: the first word of its keys */
  readonly assembly: string;
  readonly species: Species;
  readonly seasons: Seasons;
  readonly shop: Shop;
  /** settles a value under the assembly: `leg/front-left.length`; of `least` or more [mm] */
  readonly settle: (key: Key, says: string, computed: Worked<Mm>, least?: number) => Mm;
  /** the same with its reasoning, for what is worked out of it further on; of `least` or more [mm] */
  readonly settleKnown: (
    key: Key,
    says: string,
    computed: Worked<Mm>,
    least?: number,
  ) => Given<Mm> | Worked<Mm>;
  /** whether a value was given by the maker, not computed */
  readonly isOwn: (key: Key) => boolean;
  /** puts a refusal on the list: an answer must be at least, or at most, so much, or another word */
  readonly refuse: (refusal: Refused) => void;
  /** whether anything was refused so far: what would be computed from it is nothing */
  readonly isRefused: () => boolean;
};

/** What would be right: at least or at most so much [mm], or another word. */
export type Bound =
  | { readonly atLeast: number }
  | { readonly atMost: number }
  | { readonly use: string };

/** Why an answer cannot stand, and what would be right for it. */
export type Refused = {
  readonly code: string;
  readonly question: string;
  /** with sizes as the piece's own side prints them */
  readonly reason: string | ((show: (size: number) => string) => string);
  /**
   * Values that are to blame before the answer, if the maker gave them: overridden, measured or cut
   * they no longer follow it. Each with what would be right for itself.
   */
  readonly values?: readonly ({ readonly key: Key } & Bound)[];
} & Bound;

/** What a kind generates; marks are given afterwards, over the whole piece. */
export type Made = {
  readonly parts: readonly Unmarked[];
  readonly joints: readonly Joint[];
  readonly motions: readonly Motion[];
};
/** What comes of a design that was refused. */
export const nothing: Made = { parts: [], joints: [], motions: [] };
export type Unmarked = Omit<Part, "mark">;

/** Whether a question of few words is answered with this one. */
export type IsAnswered = (question: string, word: string) => boolean;

/** A kind of furniture: its questions, how a maker groups them, and what they make. */
export type Kind<A extends Asks = Asks> = {
  readonly name: string;
  readonly title: string;
  readonly tells: string;
  readonly asks: A;
  readonly groups: readonly {
    readonly title: string;
    readonly asks: readonly (keyof A & string)[];
  }[];
  /** questions that mean nothing beside the other answers: a square leg has no foot */
  readonly idle?: (is: IsAnswered) => readonly (keyof A & string)[];
  readonly make: (given: Answers<A>, making: Making) => Made;
};

/** A kind whose answers have the types of its questions, put among the others. */
export const kind = <A extends Asks>(spec: Kind<A>): Kind => spec as unknown as Kind;

/**
 * The questions of a kind that mean nothing beside the answers that stand.
 *
 * @param texts  of its answers; what is left out takes its default
 */
export const idleAsks = (
  { asks, idle }: Kind,
  texts: Readonly<Record<string, string>>,
): readonly string[] =>
  idle?.((name, word) => {
    const question = asks[name];
    const text = texts[name] ?? question?.fallback;
    const read = typeof text === "string" ? question?.read(text, "mm", false) : undefined;
    return read?.ok === true && read.value === word;
  }) ?? [];
