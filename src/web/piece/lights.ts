import type { Key, Piece } from "../../piece/index.ts";

/** The parts that keys speak of: a part itself, those that a joint ties, those that a motion carries. */
export const partsLit = (
  { parts, joints, motions }: Pick<Piece, "parts" | "joints" | "motions">,
  keys: readonly Key[],
): readonly Key[] => [
  ...new Set(
    keys.flatMap((key) => [
      ...parts.filter((part) => part.key === key).map((part) => part.key),
      ...joints.filter((joint) => joint.key === key).flatMap((joint) => joint.parts),
      ...motions.filter((motion) => motion.key === key).flatMap((motion) => motion.carries),
    ]),
  ),
];
