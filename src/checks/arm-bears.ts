import {
  armDroop,
  armProud,
  bornePart,
  droopFromPlay,
  droopUntilTail,
  outOfLine,
  reachBeyondRail,
  stopPlay,
} from "../motion/index.ts";
import type { ArmPivot, Piece } from "../piece/index.ts";
import { type Mm, mm, type Pct, pct } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  known,
  type Worked,
  work,
} from "../worked/index.ts";
import { type Arm, armsOf, swingArmOf } from "./arms-of.ts";
import { told } from "./told.ts";

/** An arm may stand so far under its rail's edge; common practice. */
const SHY = given(
  "most that an arm may stand under the rail’s edge",
  mm(0.3),
  "mm",
  commonPractice,
);
/** What a plane takes off: less over the edge does not jam [mm]. */
const FLUSH = 0.02;
/** Of the leaf's width; common practice. */
const HALF = given("least of the leaf’s width that frames bear", pct(50), "%", commonPractice);
const SINKS = given("most that an arm’s end may sink", mm(0.5), "mm", commonPractice);
const IN_LINE = given("most that a closed arm may stand out of line", mm(1), "mm", commonPractice);
const RAIL_LEFT = given("least of a rail under an arm", mm(25), "mm", commonPractice);

/** Whether the arms lie flush, reach far enough, hold level, stop in line, and leave a rail. */
export function armsBear(piece: Piece): readonly Finding[] {
  const arms = armsOf(piece);
  const [first] = arms;
  if (!first) return [];
  const lights = arms.map(({ part }) => part.key);
  const { pivot } = first;
  return [
    flush(pivot, lights),
    reaches(first, lights),
    sinks(pivot, lights),
    ...stops(pivot, lights),
    railLeft(
      piece,
      pivot,
      arms.map((arm) => arm.pivot.rail),
    ),
  ];
}

/**
 * What is left to a limit.
 *
 * @returns margin, below nought past it, in the limit's own unit
 */
const short = <V extends Mm | Pct>(
  says: string,
  has: Worked<V>,
  most: Worked<V> | ReturnType<typeof given<V>>,
): Worked =>
  work({
    says,
    unit: has.unit,
    formula: "m = g − a",
    inputs: { g: most, a: has },
    value: (most.value - has.value) as number as V,
    source: derived("arithmetic"),
  });

const underneath = ({ opening, height }: ArmPivot): Worked<Mm> => {
  const D = known(opening, "depth of the opening in the rail", "mm");
  const h = known(height, "height of the arm", "mm");
  return work({
    says: "room under the arm in its opening",
    unit: "mm",
    formula: "u = D − h",
    inputs: { D, h },
    value: mm(D.value - h.value),
    source: derived("geometry of the arm in its rail"),
  });
};

/** How far the arm's top lies over its rail's edge; below nought under it. */
function proudOf(pivot: ArmPivot): Worked<Mm> {
  const stack = pivot.washers.reduce((sum, one) => sum + one, 0);
  const washers = given(
    "washers under the arm, together",
    mm(stack),
    "mm",
    derived("the shop’s own"),
  );
  const none = given(
    "counterbore for the washers",
    mm(0),
    "mm",
    derived("washers lie on the wood"),
  );
  return armProud(underneath(pivot), none, washers);
}

function flush(pivot: ArmPivot, lights: readonly string[]): Finding {
  const proud = proudOf(pivot);
  const shy = work({
    says: "arm’s top under the rail’s edge",
    unit: "mm",
    formula: "s = 0 − p",
    inputs: { p: proud },
    value: mm(0 - proud.value),
    source: derived("definition"),
  });
  const verdict = proud.value > FLUSH ? "fails" : shy.value > SHY.value ? "watch" : "ok";
  const says = {
    fails:
      "The arms stand proud of their rails, and jam under a top that is screwed down: plane them, or take a washer out.",
    watch:
      "The arms lie low in their rails: the leaf sinks that far before they bear it, unless washers or the wedge make it up.",
    ok: "The arms lie flush with their rails, or a hair under.",
  }[verdict];
  return told({
    ...{ id: "arm/flush", group: "Fit and swing", verdict, says, lights },
    margin: short("arm’s top, to the most it may lie low", shy, SHY),
    severity: verdict === "ok" ? 0 : 1 + Math.abs(proud.value) / SHY.value,
  });
}

/** From half to two thirds of the leaf is what frames do; no rule was proved, so it only warns. */
function reaches(arm: Arm, lights: readonly string[]): Finding {
  const borne = bornePartOf(arm);
  const verdict = borne.value <= 0 ? "fails" : borne.value < HALF.value ? "watch" : "not-judged";
  const says = {
    fails: "The arms do not reach under the leaf: nothing holds it up.",
    watch:
      "The arms bear less than half of the leaf’s width: longer arms, or a narrower leaf, would bear it better.",
    "not-judged": "The arms bear the leaf as usual frames do, half of its width or more.",
  }[verdict];
  return told({
    ...{ id: "arm/reach", group: "Strength", verdict, says, lights },
    margin: work({
      says: "borne of the leaf’s width, over the least",
      unit: "%",
      formula: "m = p − g",
      inputs: { p: borne, g: HALF },
      value: pct(borne.value - HALF.value),
      source: derived("arithmetic"),
    }),
    severity: verdict === "not-judged" ? 0 : 2 - borne.value / HALF.value,
  });
}

/** Share of its leaf's width that an arm bears. */
const bornePartOf = ({ pivot, leaf }: Arm): Worked<Pct> =>
  bornePart(reachBeyondRail(swingArmOf(pivot)), pivot.overhang, leaf.leafWidth);

function sinks(pivot: ArmPivot, lights: readonly string[]): Finding {
  const proud = proudOf(pivot);
  const air = work({
    says: "gap between tail and top",
    unit: "mm",
    formula: "v = max(0, −p)",
    inputs: { p: proud },
    value: mm(Math.max(0, -proud.value)),
    source: derived("the top lies on the rail’s edge"),
  });
  const droop = armDroop(
    droopFromPlay(pivot.reach, pivot.hole, pivot.screw, pivot.height),
    droopUntilTail(pivot.reach, pivot.tail, air),
  );
  const isMuch = droop.value > SINKS.value;
  return told({
    ...{ id: "arm/droop", group: "Fit and swing", verdict: isMuch ? "watch" : "ok", lights },
    says: isMuch
      ? "An arm’s end sinks visibly before it bears: a closer hole, a higher arm, or a tail that lies nearer to the top."
      : "The arms’ ends hardly sink before they bear.",
    margin: short("an arm’s sinking, to the most it may", droop, SINKS),
    severity: isMuch ? droop.value / SINKS.value : 0,
  });
}

/** Ends at an angle stop a closed arm; square ones do not, and it wants a stop of its own. */
function stops(pivot: ArmPivot, lights: readonly string[]): readonly Finding[] {
  const isMitred = known(pivot.angle, "", "°").value > 0;
  const id = "arm/stop";
  const group = "Fit and swing";
  if (!isMitred)
    return [
      told({
        ...{ id, group, verdict: "not-judged", lights },
        says: "Square ends turn either way: give each closed arm a stop behind it.",
      }),
    ];
  const arm = swingArmOf(pivot);
  const plays = (["reach", "tail"] as const).flatMap((end) => stopPlay(arm, end, pivot.kerf) ?? []);
  const [play] = plays.sort((a, b) => a.value - b.value);
  if (!play)
    return [
      told({
        ...{ id, group, verdict: "watch", severity: 2, lights },
        says: "The cuts are so wide that the ends do not stop a closed arm: refill them with veneer, or give it a stop.",
      }),
    ];
  const step = outOfLine(pivot.reach, play);
  const isSeen = Math.abs(step.value) > IN_LINE.value;
  return [
    told({
      ...{ id, group, verdict: isSeen ? "watch" : "ok", lights },
      says: isSeen
        ? "Closed, an arm’s end may stand out of line before its cut stops it: refill the cut with veneer, or give it a stop."
        : "The ends of the arms stop them in line with their rails.",
      margin: short("a closed arm out of line, to the most it may be", step, IN_LINE),
      severity: isSeen ? Math.abs(step.value) / IN_LINE.value : 0,
    }),
  ];
}

/** A rail with its upper half cut away still has to hold the legs together. */
function railLeft({ parts }: Piece, pivot: ArmPivot, rails: readonly string[]): Finding {
  const widths = parts.filter(({ key }) => rails.includes(key)).map(({ blank }) => blank.width);
  const width = mm(Math.min(...widths));
  const D = known(pivot.opening, "depth of the opening in the rail", "mm");
  const left = work({
    says: "rail left under an arm, over the least",
    unit: "mm",
    formula: "m = R − D − max(g, D/2)",
    inputs: { R: given("width of the rail", width, "mm"), D, g: RAIL_LEFT },
    value: mm(width - D.value - Math.max(RAIL_LEFT.value, D.value / 2)),
    source: commonPractice,
  });
  const isThin = left.value < 0;
  return told({
    ...{ id: "arm/rail-left", group: "Strength", verdict: isThin ? "watch" : "ok" },
    says: isThin
      ? "Little of the rail is left under its arms: a wider rail, or lower arms, keep the frame stiff."
      : "Enough of the rails is left under their arms.",
    margin: left,
    severity: isThin ? 1 - left.value / RAIL_LEFT.value : 0,
    lights: [...new Set(rails)],
  });
}
