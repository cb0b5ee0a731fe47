import {
  firstContact,
  type RuleJoint,
  type SquareBind,
  sectionOf,
  squareBind,
  type Tightest,
} from "../motion/index.ts";
import type { Joint, Key, LeafJoint, Part, Piece } from "../piece/index.ts";
import { type Mm, printQuantity } from "../units/index.ts";
import type { Finding, Known } from "../worked/index.ts";

/** Leaf joints of a piece that share all that is judged of them: they are judged once. */
export type Alike = {
  /** any of them */
  readonly leaf: LeafJoint;
  /** undefined between square edges */
  readonly section: RuleJoint | undefined;
  /** where a rule joint first binds; undefined when it swings free */
  readonly first: Tightest | undefined;
  /** where a leaf between square edges first binds */
  readonly bind: SquareBind | undefined;
  /** what hangs on it */
  readonly part: Part;
  /** a finding's name, with the joint's own where a piece has several sorts */
  readonly id: (name: string) => string;
  /** keys of leaves, top and joints */
  readonly lights: readonly Key[];
  /** prints a length [mm] in the maker's units */
  readonly show: (size: number) => string;
};

type Hinged = Extract<Joint, { readonly kind: "leaf" }>;

/** A piece's leaf joints, those alike together. */
export function alikeLeaves(piece: Piece): readonly Alike[] {
  const sorts = new Map<string, { readonly joints: Hinged[]; readonly part: Part }>();
  for (const joint of piece.joints) {
    if (joint.kind !== "leaf") continue;
    const part = piece.parts.find(({ key }) => key === joint.leaf.leaf);
    if (!part) continue;
    const name = JSON.stringify([sizesOf(joint.leaf), part.blank.thickness, part.sawn]);
    const sort = sorts.get(name) ?? { joints: [], part };
    sort.joints.push(joint);
    sorts.set(name, sort);
  }
  return [...sorts.values()].flatMap(({ joints, part }): readonly Alike[] => {
    const [joint] = joints;
    if (!joint) return [];
    const { leaf } = joint;
    const section = sectionOf(leaf);
    const own = sorts.size > 1 ? `/${joint.key.split("/").at(-1)}` : "";
    return [
      {
        ...{ leaf, section, part },
        first: section && firstContact(section),
        bind: section ? undefined : squareBind(leaf),
        id: (name) => `leaf/${name}${own}`,
        lights: [...joints.map((one) => one.leaf.leaf), leaf.top, ...joints.map(({ key }) => key)],
        show: (size) => printQuantity(size, "mm", piece.units),
      },
    ];
  });
}

/**
 * A size without its reasoning.
 *
 * @param size  worked or plain [mm]
 */
export const plainOf = (size: Known<Mm>): number => (typeof size === "object" ? size.value : size);

const sizesOf = ({
  rule,
  thickness,
  leafWidth,
  setOut,
  pinOut,
  pinHeight,
  mounting,
}: LeafJoint) => [
  mounting,
  ...[thickness, leafWidth, setOut, pinOut, pinHeight].map(plainOf),
  ...(rule ? [rule.radius, rule.cove, rule.fillet, rule.crownGap, rule.bevel].map(plainOf) : []),
];

/** A finding that waits for another to be mended. */
export const waits = (
  { id, lights }: Alike,
  name: string,
  group: Finding["group"],
  says: string,
): Finding => ({ id: id(name), group, verdict: "not-judged", says, why: [], lights });
