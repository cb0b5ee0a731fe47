import type { SwingArm } from "../motion/index.ts";
import type { ArmPivot, LeafJoint, Motion, Part, Piece } from "../piece/index.ts";

/** An arm with its pivot, its motion, and the leaf that it bears. */
export type Arm = {
  readonly pivot: ArmPivot;
  readonly motion: Motion;
  readonly part: Part;
  readonly leaf: LeafJoint;
};

/** Every joint of a leaf. */
const leafJointsOf = ({ joints }: Piece): readonly LeafJoint[] =>
  joints.flatMap((joint) => (joint.kind === "leaf" ? [joint.leaf] : []));

/** Every arm of a piece. */
export function armsOf(piece: Piece): readonly Arm[] {
  const { joints, motions, parts } = piece;
  const leaves = leafJointsOf(piece);
  return joints.flatMap((joint): readonly Arm[] => {
    if (joint.kind !== "pivot") return [];
    const { pivot } = joint;
    const motion = motions.find(({ key }) => key === pivot.motion);
    const part = parts.find(({ key }) => key === pivot.arm);
    const leaf = leaves.find((one) => one.motion === pivot.bears);
    return motion && part && leaf ? [{ pivot, motion, part, leaf }] : [];
  });
}

/** An arm as the formulas of `motion` take it. */
export const swingArmOf = ({ reach, tail, thickness, offset, angle }: ArmPivot): SwingArm => ({
  ...{ reach, tail, thickness, offset, angle },
});
