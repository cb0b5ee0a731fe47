import { type Frame, minus, plus, turnedAbout, type Vec3 } from "../geometry/index.ts";
import { type Deg, deg } from "../units/index.ts";
import type { Key, Part } from "./part.ts";

/** Something that turns: a leaf on its hinges, an arm on its pivot. Parts' poses have it at 0. */
export type Motion = {
  readonly key: Key;
  readonly kind: "leaf" | "arm";
  /** `front leaf` */
  readonly says: string;
  /** what it is called at 0, and at its other end: `up` and `down`, `in` and `out` */
  readonly ends: readonly [at0: string, atMost: string];
  /** a point of its axis in the piece, and its direction: it turns right-handed about it */
  readonly axis: { readonly at: Vec3; readonly along: Vec3 };
  /** how far it turns from 0 to where it comes to rest [°] */
  readonly most: Deg;
  /** keys of the parts that go with it */
  readonly carries: readonly Key[];
  /** of a leaf: the arms that must be out before it is let go of when it is up */
  readonly heldBy: readonly Key[];
};

/** How far each motion is turned, by its key; 0 where none is named [°]. */
export type Turns = Readonly<Record<Key, Deg>>;

/** A way that a piece stands. */
export type State = { readonly key: Key; readonly says: string; readonly turns: Turns };

/** One motion turned from one place to another, all others standing still [°]. */
export type Step = {
  readonly motion: Motion;
  /** [°] */
  readonly from: Deg;
  /** [°] */
  readonly to: Deg;
  /** how the others stand meanwhile */
  readonly others: Turns;
};

/** A part's frame, turned. */
const turnedFrame = ({ origin, x, y, z }: Frame, { axis }: Motion, by: number): Frame => {
  const about = (v: Vec3) => turnedAbout(axis.along, v, by);
  return {
    origin: plus(axis.at, about(minus(origin, axis.at))),
    x: about(x),
    y: about(y),
    z: about(z),
  };
};

/** Anything that stands somewhere: a part, or what a picture has of one. */
type Posed = Pick<Part, "key" | "pose">;

/**
 * Parts as they stand when motions are turned; those that nothing carries are the same objects.
 *
 * @param parts  with their poses at 0
 * @param turns  how far each motion is turned [°]
 */
export const posedAt = <P extends Posed>(
  parts: readonly P[],
  motions: readonly Motion[],
  turns: Turns,
): readonly P[] =>
  parts.map((part) => {
    const motion = motions.find(({ carries }) => carries.includes(part.key));
    const by = motion && turns[motion.key];
    if (!motion || !by) return part;
    return { ...part, pose: turnedFrame(part.pose, motion, (by * Math.PI) / 180) };
  });

const leavesOf = (motions: readonly Motion[]) => motions.filter(({ kind }) => kind === "leaf");

/** How all stands when just these leaves are up, on their arms. */
function turnsWith(motions: readonly Motion[], up: readonly Motion[]): Turns {
  return Object.fromEntries(
    motions.map((motion) => {
      const isUp =
        motion.kind === "leaf"
          ? up.includes(motion)
          : up.some(({ heldBy }) => heldBy.includes(motion.key));
      return [motion.key, (motion.kind === "leaf") === isUp ? deg(0) : motion.most];
    }),
  );
}

/**
 * The states that a piece may be left in: every leaf down with its arms in, or up on them; all down
 * first. A piece without motions has one.
 */
export function statesOf(motions: readonly Motion[]): readonly State[] {
  const leaves = leavesOf(motions);
  // As bits of a number: each leaf up or down, in all ways.
  const subsets = Array.from({ length: 2 ** leaves.length }, (_, bits) =>
    leaves.filter((_leaf, i) => Math.floor(bits / 2 ** i) % 2 === 1),
  );
  return subsets.map((up): State => {
    const all = up.length === leaves.length;
    const says =
      leaves.length === 0
        ? "as it stands"
        : up.length === 0
          ? "closed"
          : all && up.length > 1
            ? "all leaves up"
            : `${up.map((leaf) => leaf.says).join(" and ")} up`;
    const key =
      up.length === 0 ? "closed" : up.map(({ says: s }) => s.replace(/ /g, "-")).join("+");
    return { key, says, turns: turnsWith(motions, up) };
  });
}

/**
 * Every way from one state to another by one leaf: up with the leaf, then its arms out, one after the
 * other. Down is the same backwards.
 */
export function pathsOf(motions: readonly Motion[]): readonly (readonly Step[])[] {
  const leaves = leavesOf(motions);
  return statesOf(motions).flatMap(({ turns }) =>
    leaves
      .filter(({ key }) => turns[key] !== 0)
      .map((leaf) => {
        const arms = motions.filter(({ key }) => leaf.heldBy.includes(key));
        let now = turns;
        return [leaf, ...arms].map((motion): Step => {
          const from = now[motion.key] ?? deg(0);
          const to = motion.kind === "leaf" ? deg(0) : motion.most;
          const step = { motion, from, to, others: now };
          now = { ...now, [motion.key]: to };
          return step;
        });
      }),
  );
}

/** Past this a leaf counts as raised, and an arm as turned out of the way of one that hangs [°]. */
const RAISED = 30;

/** What is unsafe about how a piece stands: leaves that nothing holds, arms under hanging leaves. */
export const unsafeAt = (motions: readonly Motion[], turns: Turns): readonly string[] =>
  leavesOf(motions).flatMap((leaf) => {
    const down = turns[leaf.key] ?? 0;
    const arms = motions.filter(({ key }) => leaf.heldBy.includes(key));
    const isOut = (arm: Motion) => (turns[arm.key] ?? 0) >= arm.most - 1;
    if (down < leaf.most - RAISED && !arms.every(isOut))
      return [`The ${leaf.says} is up and not all of its arms are out: let go, it falls.`];
    const isStruck = down > 1 && arms.some((arm) => (turns[arm.key] ?? 0) > 1);
    return isStruck
      ? [
          `An arm is out under the ${leaf.says}, which is not level: the arm goes in before the leaf.`,
        ]
      : [];
  });
