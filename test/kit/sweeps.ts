import {
  cross,
  dot,
  into,
  minus,
  norm,
  outOf,
  plus,
  times,
  unit,
  type Vec3,
} from "../../src/geometry/index.ts";
import {
  type Motion,
  type Part,
  type Piece,
  pathsOf,
  posedAt,
  statesOf,
} from "../../src/piece/index.ts";
import { LEAST_CLASH, type Solids } from "../../src/solid/index.ts";
import { deg } from "../../src/units/index.ts";
import type { Finding } from "../../src/worked/index.ts";

/** Two parts of a piece in one place, and when: standing in a state, or on the way. */
export type Overlap = {
  readonly a: string;
  readonly b: string;
  /** `closed`, or `front leaf at 43°` */
  readonly when: string;
  /** [mm³] */
  readonly volume: number;
  /** middle of what both take up, in the piece [mm] */
  readonly middle: Vec3;
};

/** From one pose of the way to the next at most [°]. */
const STEP_DEG = 2;
/**
 * Shared on the way by less than this is rounding [mm³]: faces that run past each other flush, such
 * as a leaf's edge with no set-out or an arm in its opening, share slivers as long as the part and
 * some millionths of a millimetre thick. A bind as deep as a tenth of a fine chord, as long as one
 * hinge, is more than three times as much.
 */
const LEAST_SWEPT = 1e-2;

/** Every two parts that share room in a state that the piece may be left in, or on the way to one. */
export const overlapsOf = (piece: Piece, solids: Solids): readonly Overlap[] => [
  ...standingOverlaps(piece, solids),
  ...sweptOverlaps(piece, solids),
];

type Clash = ReturnType<Solids["interference"]>[number];

const overlapOf = ({ a, b, volume, bounds }: Clash, when: string): Overlap => ({
  ...{ a, b, when, volume },
  middle: times(plus(bounds.from, bounds.to), 0.5),
});

function standingOverlaps({ parts, motions }: Piece, solids: Solids): readonly Overlap[] {
  return statesOf(motions).flatMap(({ key, turns }) =>
    solids
      .interference(posedAt(parts, motions, turns), { least: LEAST_CLASH })
      .map((clash) => overlapOf(clash, key)),
  );
}

/** Along every step of every path; a step that is another's likeness or mirror is walked once. */
function sweptOverlaps(piece: Piece, solids: Solids): readonly Overlap[] {
  const { parts, motions } = piece;
  const walked = new Set<string>();
  return pathsOf(motions).flatMap((path) =>
    path.flatMap(({ motion, from, to, others }): readonly Overlap[] => {
      const isCarried = ({ key }: Part) => motion.carries.includes(key);
      const count = Math.ceil(Math.abs(to - from) / STEP_DEG);
      const turns = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
      const carried = parts.filter(isCarried);
      const moving = turns.map((by) => posedAt(carried, motions, { [motion.key]: deg(by) }));
      const near = within(moving, carried, solids);
      const standing = posedAt(parts, motions, others).filter(
        (part) => !isCarried(part) && near(part),
      );
      const seen = likeness(motion, carried, standing, solids);
      const walk = `${from.toFixed(6)} to ${to.toFixed(6)}: ${seen}`;
      if (walked.has(walk)) return [];
      walked.add(walk);
      return solids
        .swept(standing, moving, { least: LEAST_SWEPT })
        .map((clash) =>
          overlapOf(clash, `${motion.says} at ${(turns[clash.at] ?? 0).toFixed(0)}°`),
        );
    }),
  );
}

type Bounds = { readonly from: Vec3; readonly to: Vec3 };

/** The box round all of some points. */
const boxRound = (points: readonly Vec3[]): Bounds => {
  const of = (pick: (...n: number[]) => number): Vec3 => [
    pick(...points.map((p) => p[0])),
    pick(...points.map((p) => p[1])),
    pick(...points.map((p) => p[2])),
  ];
  return { from: of(Math.min), to: of(Math.max) };
};

/** Corners in the piece of a box in a part's own frame. */
const boxCorners = ({ pose }: Part, { from, to }: Bounds): readonly Vec3[] =>
  [from, to].flatMap(([x]) =>
    [from, to].flatMap(([, y]) => [from, to].map(([, , z]) => outOf(pose, [x, y, z]))),
  );

/** Whether a part lies in the box round what moves, so that it may meet it. */
function within(
  moving: readonly (readonly Part[])[],
  carried: readonly Part[],
  solids: Solids,
): (part: Part) => boolean {
  const boxes = carried.map((part) => solids.of(part).bounds);
  const all = boxRound(
    moving.flatMap((parts) =>
      parts.flatMap((part, i) => (boxes[i] ? boxCorners(part, boxes[i]) : [])),
    ),
  );
  return (part) => {
    const own = boxRound(boxCorners(part, solids.of(part).bounds));
    return ([0, 1, 2] as const).every((i) => own.from[i] < all.to[i] && all.from[i] < own.to[i]);
  };
}

/**
 * A name that two walks share when all their corners lie alike round the axis, or as in a glass that
 * stands square to it: turning about the axis looks the same there.
 */
function likeness(
  { axis }: Motion,
  carried: readonly Part[],
  standing: readonly Part[],
  solids: Solids,
): string {
  const [first] = carried;
  if (!first) throw new Error("a motion carries nothing");
  const across = (v: Vec3): Vec3 => minus(v, times(axis.along, dot(axis.along, v)));
  // An arm's own length tells which way it lies, a leaf's middle: its length runs with the axis.
  const long = across(first.pose.x);
  const x = unit(
    norm(long) > 0.5 ? long : across(minus(outOf(first.pose, solids.of(first).centre), axis.at)),
  );
  const frame = { origin: axis.at, x, y: cross(axis.along, x), z: axis.along };
  const sums = [1, -1].map((side) => {
    let [a, b] = [0, 0];
    for (const part of [...carried, ...standing]) {
      const { positions } = solids.of(part);
      for (let i = 0; i < positions.length; i += 3) {
        const corner: Vec3 = [positions[i] ?? 0, positions[i + 1] ?? 0, positions[i + 2] ?? 0];
        const [u, v, w] = into(frame, outOf(part.pose, corner));
        const places = [u, v, side * w].map((n) => Math.round(n * 1000 + 0.137));
        a = (a + places.reduce((sum, n) => Math.imul(sum ^ n, 0x9e3779b1), 1)) | 0;
        b = (b + places.reduce((sum, n) => Math.imul(sum + n, 0x85ebca6b) ^ (sum >>> 13), 7)) | 0;
      }
    }
    return `${a} ${b}`;
  });
  return sums.sort().join(" / ");
}

/** Groups of findings that may answer for two parts in one place. */
const ANSWERING: readonly Finding["group"][] = [
  "Fit and swing",
  "Joinery",
  "Can this shop make it",
];

/** The overlaps that no finding answers for: one that fails, and lights one of the two parts. */
export const unexplained = (
  overlaps: readonly Overlap[],
  findings: readonly Finding[],
): readonly Overlap[] =>
  overlaps.filter(
    ({ a, b }) =>
      !findings.some(
        ({ verdict, group, lights }) =>
          verdict === "fails" &&
          ANSWERING.includes(group) &&
          lights.some((key) => key === a || key === b),
      ),
  );

/** An overlap in words, for whoever reads that a test failed. */
export const overlapSaid = ({ a, b, when, volume, middle }: Overlap): string =>
  `${a} and ${b}, ${when}: ${volume.toFixed(3)} mm³ about ${middle.map((n) => n.toFixed(1)).join(", ")}`;
