import { type Key, type Motion, type State, statesOf, type Turns } from "../../piece/index.ts";
import { deg } from "../../units/index.ts";

/**
 * How far each motion is turned, as a share of how far it turns: so a leaf that hangs goes on hanging
 * when an edit lets it hang a little farther. What is not in it stands as it does in the last state.
 */
export type Stance = Readonly<Record<Key, number>>;

/** What is moved by one hand: a leaf, or all the arms that bear one. */
export type Mover = {
  readonly key: Key;
  readonly kind: Motion["kind"];
  /** `front leaf`, `arms of the front leaf` */
  readonly says: string;
  readonly motions: readonly Motion[];
};

/** Each leaf, and after it its arms, which go together. */
export function moversOf(motions: readonly Motion[]): readonly Mover[] {
  const leaves = motions.filter(({ kind }) => kind === "leaf");
  const borne = leaves.flatMap((leaf): readonly Mover[] => {
    const arms = motions.filter(({ key }) => leaf.heldBy.includes(key));
    const word = arms.length > 1 ? "arms" : "arm";
    return [
      mover([leaf], leaf.says),
      ...(arms.length > 0 ? [mover(arms, `${word} of the ${leaf.says}`)] : []),
    ];
  });
  const taken = borne.flatMap((one) => one.motions);
  const alone = motions.filter((motion) => !taken.includes(motion));
  return [...borne, ...alone.map((motion) => mover([motion], motion.says))];
}

const mover = (motions: readonly Motion[], says: string): Mover => {
  const [first] = motions;
  if (!first) throw new Error(`nothing moves as ${says}`);
  return { key: first.key, kind: first.kind, says, motions };
};

/** The turns of a stance, for the motions that there are [°]. */
export function turnsOf(motions: readonly Motion[], stance: Stance): Turns {
  const usual = statesOf(motions).at(-1)?.turns ?? {};
  return Object.fromEntries(
    motions.map(({ key, most }) => {
      const share = stance[key];
      return [key, share === undefined ? (usual[key] ?? deg(0)) : deg(share * most)];
    }),
  );
}

/** The stance of a state. */
export const stanceOf = (motions: readonly Motion[], { turns }: State): Stance =>
  Object.fromEntries(motions.map(({ key, most }) => [key, (turns[key] ?? 0) / most]));

/** The whole steps of a mover's scrubber, a degree or so each [pieces]. */
export const stepsOf = ({ motions }: Mover): number => Math.round(motions[0]?.most ?? 0);

/** Where a mover stands on its scrubber, from 0 to its steps [pieces]. */
export function stepOf(of: Mover, turns: Turns): number {
  const [first] = of.motions;
  return first ? Math.round(((turns[first.key] ?? 0) / first.most) * stepsOf(of)) : 0;
}

/**
 * The stance when a mover is set to a place on its scrubber.
 *
 * @param step  from 0 to its steps [pieces]
 */
export const moved = (stance: Stance, of: Mover, step: number): Stance => ({
  ...stance,
  ...Object.fromEntries(of.motions.map(({ key }) => [key, step / stepsOf(of)])),
});

/** `up`, `41° down`, `down`. */
export function standsAt(of: Mover, turns: Turns): string {
  const [first] = of.motions;
  if (!first) return "";
  const step = stepOf(of, turns);
  const [at0, atMost] = first.ends;
  return step === 0 ? at0 : step === stepsOf(of) ? atMost : `${step}° ${atMost}`;
}

/** Turns that differ by less are the same to the eye [°]. */
const SAME = 0.5;

/** The state that a piece stands in, where it is one. */
export const stateAt = (motions: readonly Motion[], turns: Turns): State | undefined =>
  statesOf(motions).find((state) =>
    motions.every(({ key }) => Math.abs((turns[key] ?? 0) - (state.turns[key] ?? 0)) < SAME),
  );

/**
 * The state so many steps on from how a piece stands; from between states, the first or the last.
 *
 * @param by  back where it is below nought [pieces]
 */
export function stateFrom(motions: readonly Motion[], turns: Turns, by: 1 | -1): State | undefined {
  const states = statesOf(motions);
  const now = stateAt(motions, turns);
  const at = states.findIndex(({ key }) => key === now?.key);
  if (at === -1) return states.at(by > 0 ? 0 : -1);
  return states[(at + by + states.length) % states.length];
}
