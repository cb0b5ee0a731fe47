import { outOf } from "../geometry/index.ts";
import { type Piece, posedAt, statesOf, type Weighing } from "../piece/index.ts";
import { Problem } from "../worked/index.ts";

/** Answers to a quick sum's questions, as they are typed. */
type Texts = Readonly<Record<string, string>>;

type Sized = number | { readonly value: number };
/** @param size  worked or plain [1] */
const of = (size: Sized): number => (typeof size === "object" ? size.value : size);
/** @param size  worked or plain [mm] */
const length = (size: Sized): string => `${of(size)} mm`;
const moisture = (size: Sized): string => `${of(size)} %`;

const sums: Readonly<Record<string, (piece: Piece, weighing: Weighing) => Texts>> = {
  "leaf-joint": leafJoint,
  "swing-arm": swingArm,
  tip,
};

/** Quick sums that a piece can answer, by name. */
export const sumsOfPieces: readonly string[] = Object.keys(sums);

/**
 * What a piece answers a quick sum with: its sizes in force.
 *
 * @param topic  its name, one of `sumsOfPieces`
 * @throws Problem "piece-has-none" when the piece has no such joint or arm
 */
export function answersOf(topic: string, piece: Piece, weighing: Weighing): Texts {
  const sum = sums[topic];
  if (!sum) throw new Error(`a piece does not answer ${topic}`);
  return sum(piece, weighing);
}

const hasNone = (what: string): Problem =>
  new Problem(
    "piece-has-none",
    "the piece",
    `It has no ${what}.`,
    "Give the sizes as options instead.",
  );

function leafJoint({ joints, seasons, species }: Piece): Texts {
  const found = joints.find((joint) => joint.kind === "leaf" && joint.leaf.rule !== undefined);
  const leaf = found?.kind === "leaf" ? found.leaf : undefined;
  if (!leaf?.rule) throw hasNone("rule joint");
  const { rule, hinge } = leaf;
  const middle = (holes: readonly { readonly from: number }[]) =>
    holes.reduce((sum, hole) => sum + hole.from, 0) / holes.length;
  return {
    thickness: length(leaf.thickness),
    radius: length(rule.radius),
    cove: length(rule.cove),
    fillet: length(rule.fillet),
    hinge: length(hinge.pinOverFace),
    mounting: leaf.mounting,
    plate: length(hinge.plate),
    "set-out": length(leaf.setOut),
    crown: length(rule.crownGap),
    "pin-out": length(leaf.pinOut),
    bevel: length(rule.bevel),
    screws: length(middle(hinge.short.holes) + middle(hinge.long.holes)),
    species: species.name,
    from: moisture(seasons.made),
    to: moisture(seasons.dampest),
  };
}

function swingArm({ joints }: Piece): Texts {
  const found = joints.find((joint) => joint.kind === "pivot");
  const pivot = found?.kind === "pivot" ? found.pivot : undefined;
  const leaf = joints.find((joint) => joint.kind === "leaf" && joint.leaf.motion === pivot?.bears);
  if (!pivot || leaf?.kind !== "leaf") throw hasNone("swing arm");
  return {
    leaf: length(leaf.leaf.leafWidth),
    reach: length(pivot.reach),
    tail: length(pivot.tail),
    thickness: length(pivot.thickness),
    height: length(pivot.height),
    overhang: length(pivot.overhang),
    angle: `${of(pivot.angle)}`,
    offset: length(pivot.offset),
    kerf: length(pivot.kerf),
    hole: length(pivot.hole),
    screw: length(pivot.screw),
  };
}

/** As it stands with one leaf up, when it tips soonest; a table without leaves as it stands. */
function tip(piece: Piece, weighing: Weighing): Texts {
  const { motions, parts } = piece;
  const states = statesOf(motions);
  const state = states[1] ?? states[0];
  const posed = posedAt(parts, motions, state?.turns ?? {});
  const isLevel = (key: string) =>
    motions.every((m) => !m.carries.includes(key) || !state?.turns[m.key]);
  const corners = (which: (part: (typeof parts)[number]) => boolean) =>
    posed
      .filter(which)
      .flatMap(({ blank, pose }) =>
        [0, blank.length].flatMap((x) =>
          [0, blank.width].flatMap((y) => [0, blank.thickness].map((z) => outOf(pose, [x, y, z]))),
        ),
      );
  const boards = corners(({ role, key }) => role === "top" || (role === "leaf" && isLevel(key)));
  const legs = corners(({ role }) => role === "leg");
  if (boards.length === 0 || legs.length === 0) throw hasNone("top on legs");
  const middles = posedAt(
    Object.entries(weighing.parts).map(([key, { centre }]) => ({
      key,
      pose: { origin: centre, x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] } as const,
    })),
    motions,
    state?.turns ?? {},
  );
  const aside =
    middles.reduce(
      (sum, { key, pose }) => sum + pose.origin[1] * (weighing.parts[key]?.mass.value ?? 0),
      0,
    ) / weighing.mass.value;
  const far = (points: typeof boards, axis: 0 | 1 | 2) =>
    Math.max(...points.map((point) => Math.abs(point[axis])));
  return {
    mass: `${weighing.mass.value} kg`,
    feet: length(2 * far(legs, 1)),
    top: length(2 * far(boards, 1)),
    "feet-long": length(2 * far(legs, 0)),
    "top-long": length(2 * far(boards, 0)),
    height: length(Math.max(...boards.map(([, , z]) => z))),
    offset: length(Math.abs(aside)),
  };
}
