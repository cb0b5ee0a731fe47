import { outOf, type Vec3 } from "../geometry/index.ts";
import { type Passing, passing } from "../motion/index.ts";
import { type Motion, type Part, type Piece, posedAt } from "../piece/index.ts";
import { deg, type Mm, mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  type Worked,
  work,
} from "../worked/index.ts";
import { measuredOnCuts, told } from "./told.ts";
import { woodOf } from "./wood-of.ts";

/** Nearer than this at rest a leaf leans on what stands by it [mm]. */
const LEANS = 0.05;
/** Less air than this between a hanging leaf and what stands by it; common practice [mm]. */
const AIR = given("least air beside a hanging leaf", mm(2), "mm", commonPractice);
/** And over the floor; common practice [mm]. */
const OVER_FLOOR = given("least of a leaf over the floor", mm(25), "mm", commonPractice);

/** Whether each leaf hangs down clear of legs, feet, rails and arms, and of the floor. */
export const leavesHang = (piece: Piece): readonly Finding[] =>
  piece.motions
    .filter(({ kind }) => kind === "leaf")
    .flatMap((motion) => {
      const leaf = piece.parts.find(({ key }) => motion.carries.includes(key));
      return leaf ? [beside(piece, motion, leaf), overFloor(piece, motion, leaf)] : [];
    });

function beside(piece: Piece, motion: Motion, leaf: Part): Finding {
  const standing = piece.parts.filter(
    ({ role, key }) => role !== "top" && role !== "leaf" && key !== leaf.key,
  );
  const found = passing(motion, [woodOf(leaf)], standing.map(woodOf), deg(0), motion.most);
  const id = `leaf/hangs/${motion.says.replace(/ /g, "-")}`;
  const group = "Fit and swing";
  if (!found)
    return told({
      ...{ id, group, verdict: "ok", lights: [leaf.key] },
      says: `Nothing stands where the ${motion.says} hangs.`,
    });
  const name = piece.parts.find(({ key }) => key === found.standing)?.name ?? found.standing;
  const lights = [leaf.key, found.standing];
  if (found.gap < 0) return struck(piece, motion, found, name, { id, group, lights });
  const margin = over(
    measuredOnCuts(`${motion.says} from the ${name}, at the nearest`, found.gap),
    AIR,
  );
  const isTight = margin.value < 0;
  return told({
    ...{ id, group, lights, margin, verdict: isTight ? "watch" : "ok" },
    severity: isTight ? 1 - margin.value / AIR.value : 0,
    says: !isTight
      ? `The ${motion.says} hangs clear of what stands by it.`
      : found.gap < LEANS
        ? `The ${motion.says} comes to rest against the ${name}: a little more overhang lets it hang free.`
        : `Hanging down, the ${motion.says} all but touches the ${name}.`,
  });
}

function struck(
  { units }: Piece,
  motion: Motion,
  { gap, turn, at }: Passing,
  name: string,
  said: Pick<Finding, "id" | "group" | "lights">,
): Finding {
  const margin = measuredOnCuts(`${motion.says} into the ${name}, past where it meets it`, gap);
  const high = Math.round(at[2]);
  const where = units === "inch" ? `${(high / 25.4).toFixed(0)} in` : `${high} mm`;
  return told({
    ...said,
    margin,
    verdict: "fails",
    severity: 2 + (motion.most - turn) / motion.most,
    says: `The ${motion.says} strikes the ${name} when it is ${turn.toFixed(0)}° down, about ${where} above the floor: more overhang beyond the legs, or a narrower leaf, lets it down.`,
  });
}

function overFloor(piece: Piece, motion: Motion, leaf: Part): Finding {
  const lowest = Math.min(
    ...[0.5, 0.75, 0.9, 1].flatMap((share) => {
      const turned = posedAt([leaf], piece.motions, { [motion.key]: deg(share * motion.most) });
      return turned.flatMap((part) => cornersOf(part).map(([, , z]) => z));
    }),
  );
  const margin = over(measuredOnCuts(`${motion.says} over the floor`, mm(lowest)), OVER_FLOOR);
  const verdict = lowest < 0 ? "fails" : margin.value < 0 ? "watch" : "ok";
  const says = {
    fails: `The ${motion.says} is wider than the table is high: it stands on the floor before it is down.`,
    watch: `Hanging down, the ${motion.says} all but sweeps the floor.`,
    ok: `The ${motion.says} hangs clear of the floor.`,
  }[verdict];
  return told({
    id: `leaf/floor/${motion.says.replace(/ /g, "-")}`,
    group: "Fit and swing",
    ...{ verdict, says, margin },
    severity: verdict === "ok" ? 0 : 1 - margin.value / OVER_FLOOR.value,
    lights: [leaf.key],
  });
}

const cornersOf = ({ blank, pose }: Part): readonly Vec3[] =>
  [0, blank.length].flatMap((x) =>
    [0, blank.width].flatMap((y) => [0, blank.thickness].map((z) => outOf(pose, [x, y, z]))),
  );

/** What of a distance is over the least that is wanted of it. */
const over = (has: Worked<Mm>, least: ReturnType<typeof given<Mm>>): Worked<Mm> =>
  work({
    says: `${has.says}, over the least`,
    unit: "mm",
    formula: "m = a − g",
    inputs: { a: has, g: least },
    value: mm(has.value - least.value),
    source: derived("arithmetic"),
  });
