import { ask } from "../../asking/index.ts";
import {
  armDroop,
  bornePart,
  droopFromPlay,
  droopUntilTail,
  freeAngle,
  kerfNeeded,
  outOfLine,
  reachBeyondRail,
  type SwingArm,
  stopPlay,
  swingArmCautions,
  tailInside,
} from "../../motion/index.ts";
import type { Deg, Mm, Pct } from "../../units/index.ts";
import { type Finding, Problem, type Worked } from "../../worked/index.ts";
import { type Result, type Show, topic } from "../topic.ts";
import { usualLength } from "../usual-length.ts";

export const swingArm = topic({
  name: "swing-arm",
  title: "Swing arm under a leaf",
  tells: "how wide a cut an arm needs to turn out of its rail, how far it reaches and droops",
  asks: {
    leaf: ask.length("width of the leaf", {
      least: 50,
      most: 1500,
      example: { inch: '12"', mm: "300 mm" },
    }),
    reach: ask.length("arm from its pivot to the end that swings out", {
      least: 50,
      most: 1500,
      example: { inch: '10"', mm: "250 mm" },
    }),
    tail: ask.length("arm from its pivot to the end that swings in", {
      least: 50,
      most: 1500,
      example: { inch: '5"', mm: "125 mm" },
    }),
    thickness: ask.length("thickness of the rail", {
      least: 8,
      most: 80,
      example: { inch: '7/8"', mm: "22 mm" },
    }),
    height: ask.length("height of the arm", {
      least: 10,
      most: 200,
      example: { inch: '2"', mm: "50 mm" },
    }),
    overhang: usualLength("rail's face to the leaf's joint", 0, 300, '1 1/2"', "40 mm"),
    angle: ask.angle("angle of the ends from square, cut parallel", {
      least: 0,
      most: 45,
      example: "0",
      fallback: "0",
    }),
    offset: ask.length("pivot off the rail's middle, outwards", {
      least: -3,
      most: 3,
      example: "0",
      fallback: "0",
    }),
    kerf: usualLength("cut at the ends", 0, 10, '3/64"', "1.2 mm"),
    hole: usualLength("hole of the pivot", 2, 30, "0.256 in", "6.5 mm"),
    screw: usualLength("screw of the pivot", 2, 30, "0.25 in", "6.35 mm"),
    "tail-gap": usualLength("gap between tail and top", 0, 10, "0.008 in", "0.2 mm"),
  },
  answer({ leaf, overhang, kerf, height, hole, screw, ...sizes }, show) {
    const arm: SwingArm = sizes;
    refuseStub(sizes);
    const out = kerfNeeded(arm, "reach");
    const back = kerfNeeded(arm, "tail");
    const beyond = reachBeyondRail(arm);
    const part = bornePart(beyond, overhang, leaf);
    const droop = armDroop(
      droopFromPlay(sizes.reach, hole, screw, height),
      droopUntilTail(sizes.reach, sizes.tail, sizes["tail-gap"]),
    );
    const play = soonest(
      stopPlay(arm, "reach", kerf),
      sizes.angle.value > 0 ? stopPlay(arm, "tail", kerf) : undefined,
    );
    const step = sizes.angle.value > 0 && play ? outOfLine(sizes.reach, play) : undefined;
    const needed = out.value >= back.value ? out : back;
    const free = [freeAngle(arm, "reach"), freeAngle(arm, "tail")] as const;
    const results: readonly Result[] = [
      { name: "cut", says: "cut needed at the ends", worked: needed },
      { name: "beyond", worked: beyond },
      { name: "borne", worked: part, purpose: "about" },
      { name: "droop", worked: droop },
      { name: "tail-inside", worked: tailInside(arm) },
      {
        name: "free-angle",
        says: "ends turn without room from this angle on",
        worked: free[0].value >= free[1].value ? free[0] : free[1],
      },
      ...(step ? [{ name: "out-of-line", worked: step }] : []),
    ];
    return {
      results,
      findings: [
        turns(needed, kerf.value, show),
        reaches(part, beyond.value - overhang.value > leaf.value),
        sinks(droop, show),
        ...(step ? [stops(step, show)] : []),
      ],
      remarks: [
        sizes.angle.value > 0
          ? "Ends cut parallel stop the arm in its rail; opposed mitres, as on a picture frame, would bind both ways."
          : "Square ends turn either way: give the closed arm a stop.",
        "The arm's top flush with the rail's, or up to 0.3 mm (1/64 in) shy, never proud: under a top screwed down it jams. A thin wedge under the leaf, set at fitting, brings the leaf level.",
        "Droop matters more than bending: a long bearing, a close hole, washers, and a tail that bears on the top.",
      ],
      cautions: swingArmCautions,
    };
  },
});

/** Ends shorter than the rail is thick are no arm, and its formulas do not hold for them. */
function refuseStub(arm: {
  readonly reach: { readonly value: Mm };
  readonly tail: { readonly value: Mm };
  readonly thickness: { readonly value: Mm };
}): void {
  const least = 1.5 * arm.thickness.value + 6;
  const short = (["reach", "tail"] as const).find((end) => arm[end].value < least);
  if (short)
    throw new Problem(
      "arm-too-short",
      `${short}, thickness`,
      "So short an end cannot turn out of so thick a rail.",
      "Make it more than one and a half times as long as the rail is thick.",
    );
}

const soonest = (a: Worked<Deg> | undefined, b: Worked<Deg> | undefined) =>
  a && b ? (a.value <= b.value ? a : b) : (a ?? b);

/** A little over what geometry asks for, so that a closed arm is not a press fit [mm]. */
const EASE = 0.3;

const finding = (
  id: string,
  group: Finding["group"],
  verdict: Finding["verdict"],
  says: string,
  why: Worked,
): Finding => ({ id: `swing-arm/${id}`, group, verdict, says, why: [why], lights: [] });

function turns(needed: Worked<Mm>, kerf: number, show: Show): Finding {
  const verdict = kerf < needed.value ? "fails" : kerf < needed.value + EASE ? "watch" : "ok";
  const says = {
    fails: `The arm cannot turn out of its rail: cut at least ${show(needed.value, "mm")}, or angle the ends.`,
    watch: "The arm just turns: ease its corners, or cut a little wider.",
    ok: "The arm turns out of its rail and back.",
  }[verdict];
  return finding("turns", "Fit and swing", verdict, says, needed);
}

/** From half to two thirds of the leaf is what frames do; no rule was proved, so it only warns. */
function reaches(part: Worked<Pct>, isLong: boolean): Finding {
  const isShort = part.value < 50;
  const says = isLong
    ? "The arm ends beyond the leaf."
    : isShort
      ? "The arm bears less than half the leaf: reach further, or use two arms and expect more sag."
      : "The arm bears the leaf as usual frames do, half to two thirds of its width or more.";
  return finding("reach", "Strength", isShort || isLong ? "watch" : "not-judged", says, part);
}

function sinks(droop: Worked<Mm>, show: Show): Finding {
  const isMuch = droop.value > 0.5;
  const says = isMuch
    ? `Its end sinks ${show(droop.value, "mm")} before it bears: a closer hole, a longer bearing, or a closer tail.`
    : "Its end hardly sinks before it bears.";
  return finding("droop", "Fit and swing", isMuch ? "watch" : "ok", says, droop);
}

function stops(step: Worked<Mm>, show: Show): Finding {
  const isSeen = Math.abs(step.value) > 1;
  const says = isSeen
    ? `Closed, its end may stand ${show(step.value, "mm")} out of line before the cut stops it: refill the cut with veneer, or give it a stop.`
    : "Its ends stop it in line with the rail.";
  return finding("line", "Fit and swing", isSeen ? "watch" : "ok", says, step);
}
