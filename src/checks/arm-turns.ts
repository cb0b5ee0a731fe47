import { kerfNeeded, type Passing, passing } from "../motion/index.ts";
import { type Piece, posedAt } from "../piece/index.ts";
import { deg } from "../units/index.ts";
import { type Finding, Problem, type Worked } from "../worked/index.ts";
import { type Arm, armsOf, swingArmOf } from "./arms-of.ts";
import { measuredOnCuts, told } from "./told.ts";
import { woodOf } from "./wood-of.ts";

/** Less air than this and a closed arm is a press fit; common practice [mm]. */
const EASE = 0.3;
/** Less air than this to whatever an arm passes; common practice [mm]. */
const BESIDE = 2;

/** Whether every arm turns out of its rail, and past all else, its fellows in and out. */
export function armsTurn(piece: Piece): readonly Finding[] {
  const arms = armsOf(piece);
  if (arms.length === 0) return [];
  return [outOfRails(piece, arms), pastOthers(piece, arms)];
}

type Passed = { readonly arm: Arm; readonly found: Passing };

/** The one that comes nearest, or runs in soonest. */
const worst = (all: readonly Passed[]): Passed | undefined =>
  [...all].sort((a, b) => a.found.gap - b.found.gap)[0];

function outOfRails(piece: Piece, arms: readonly Arm[]): Finding {
  const passed = arms.flatMap((arm): readonly Passed[] => {
    const rail = piece.parts.find(({ key }) => key === arm.pivot.rail);
    const found =
      rail && passing(arm.motion, [woodOf(arm.part)], [woodOf(rail)], deg(0), arm.motion.most);
    return found ? [{ arm, found }] : [];
  });
  const tight = worst(passed);
  const group = "Fit and swing";
  if (!tight)
    return told({
      ...{ id: "arm/turns", group, verdict: "not-judged" },
      says: "No arm lies beside its rail’s wood.",
    });
  const { found, arm } = tight;
  const margin = measuredOnCuts(`${arm.motion.says} from its rail, at the tightest`, found.gap);
  const verdict = found.gap < 0 ? "fails" : found.gap < EASE ? "watch" : "ok";
  const says = {
    fails: `The ${arm.motion.says} cannot turn out of its rail: it binds ${found.turn.toFixed(0)}° out. A wider cut at its ends, or ends at an angle, frees it.`,
    watch: "The arms just turn out of their rails: ease their corners, or cut a little wider.",
    ok: "The arms turn out of their rails and back.",
  }[verdict];
  return told({
    ...{ id: "arm/turns", group, verdict, says, margin },
    severity: verdict === "ok" ? 0 : 1 + (EASE - found.gap) / EASE,
    why: [margin, ...neededAt(arm)],
    lights: passed
      .filter((p) => p.found.gap < EASE || p === tight)
      .flatMap((p) => [p.arm.part.key, p.arm.pivot.rail]),
  });
}

/** What the formula asks of the cuts, beside what the parts showed. */
function neededAt({ pivot }: Arm): readonly Worked[] {
  try {
    return [kerfNeeded(swingArmOf(pivot), "reach"), kerfNeeded(swingArmOf(pivot), "tail")];
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return [];
  }
}

/** Past everything but its own rail, with the other arms in, and then out. */
function pastOthers(piece: Piece, arms: readonly Arm[]): Finding {
  const allOut = Object.fromEntries(arms.map(({ motion }) => [motion.key, motion.most]));
  const wood = new Map(piece.parts.map((part) => [part.key, woodOf(part)]));
  const out = posedAt(
    piece.parts.filter(({ role }) => role === "arm"),
    piece.motions,
    allOut,
  ).map(woodOf);
  const passed = arms.flatMap((arm): readonly Passed[] => {
    const others = piece.parts.flatMap(({ key, role }) => {
      const one = wood.get(key);
      return one && key !== arm.pivot.rail && role !== "leaf" ? [one] : [];
    });
    const standing = [...others, ...out].filter(({ key }) => key !== arm.part.key);
    const own = wood.get(arm.part.key);
    const found = own && passing(arm.motion, [own], standing, deg(0), arm.motion.most);
    return found ? [{ arm, found }] : [];
  });
  const nearest = worst(passed);
  const group = "Fit and swing";
  if (!nearest)
    return told({
      ...{ id: "arm/passes", group, verdict: "ok", lights: arms.map(({ part }) => part.key) },
      says: "Nothing lies in the arms’ way.",
    });
  const { found, arm } = nearest;
  const other = piece.parts.find(({ key }) => key === found.standing);
  const name = other?.name ?? found.standing;
  const margin = measuredOnCuts(`${arm.motion.says} from the ${name}, at the nearest`, found.gap);
  const verdict = found.gap < 0 ? "fails" : found.gap < BESIDE ? "watch" : "ok";
  const mend =
    other?.role === "arm"
      ? "shorter tails, a wider frame, or pivots set apart along the table, let both stand open"
      : other?.role === "top"
        ? "it stands proud of its rail: plane it, or take a washer out"
        : "a shorter tail, or a pivot set farther from it, lets it by";
  const says = {
    fails: `The ${arm.motion.says} meets the ${name} when it is ${found.turn.toFixed(0)}° out: ${mend}.`,
    watch: `The ${arm.motion.says} goes by the ${name} with little room.`,
    ok: "The arms go clear of one another and of all else.",
  }[verdict];
  return told({
    ...{ id: "arm/passes", group, verdict, says, margin },
    severity: verdict === "ok" ? 0 : 1 + (BESIDE - found.gap) / BESIDE,
    lights: verdict === "ok" ? arms.map(({ part }) => part.key) : [arm.part.key, found.standing],
  });
}
