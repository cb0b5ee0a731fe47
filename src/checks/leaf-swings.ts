import {
  bevelNeeded,
  coveClearance,
  lowerEdgeClearance,
  type RuleJoint,
  rubStarts,
  swingClearance,
  type Tightest,
  tightestPlace,
  undersideMargin,
} from "../motion/index.ts";
import { type Deg, type Mm, mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  Problem,
  type Worked,
  work,
} from "../worked/index.ts";
import type { Alike } from "./leaf-alike.ts";
import { told } from "./told.ts";

/** Less than this rubs as soon as finish or dust comes between; common practice. */
const LEAST = given("least clearance of a swinging leaf", mm(0.1), "mm", commonPractice);
/** A tie with that counts as reached [mm]. */
const HAIR = 1e-6;
/** Cut on beyond what just frees; common practice [mm]. */
const MORE_BEVEL = 0.3;

/** Whether a leaf swings through its whole way in a rule joint, and where it does not. */
export function leafSwings(alike: Alike): readonly Finding[] {
  const { section, first, id, lights, show } = alike;
  if (!section) return [];
  const nearest = swingClearance(section);
  const margin = leastClearance(section, nearest);
  const bevel = bevelFor(section, first ?? nearest);
  const isTight = margin.value < LEAST.value - HAIR;
  const verdict = first ? "fails" : isTight ? "watch" : "ok";
  const down = nearest.swing < LEVEL ? "level" : `${nearest.swing.toFixed(0)}° down`;
  const place = `${down}, at the ${nearest.contact}`;
  const says = {
    fails: first ? bindsSays(first, remedy(first, bevel, show)) : "",
    watch: `The leaf swings free, but with less than ${show(LEAST.value)} to spare ${place}: finish or dust can make it rub. To ease it, ${remedy(nearest, bevel, show)}.`,
    ok: "The leaf swings free all the way down.",
  }[verdict];
  return [
    told({
      ...{ id: id("swing"), group: "Fit and swing", verdict, says, margin, lights },
      severity: verdict === "ok" ? 0 : 1 + (LEAST.value - margin.value) / LEAST.value,
      why: [margin, ...beside(section, nearest), ...begins(section, first), ...(bevel ?? [])],
    }),
  ];
}

/** Nearer to level than this the leaf does not so much bind as not come up [°]. */
const LEVEL = 0.5;

const bindsSays = ({ swing, contact }: Tightest, mend: string): string =>
  swing < LEVEL
    ? `The leaf does not come up level: it meets the top at the ${contact}. To free it, ${mend}.`
    : `The leaf binds ${swing.toFixed(0)}° down, at the ${contact}: ${mend}.`;

/** The first-order working of what comes closest, and what turning the section itself adds to it. */
function leastClearance(section: RuleJoint, nearest: Tightest): Worked<Mm> {
  const first = firstOrder(section, nearest);
  const isOtherwise = first.value < 0 !== nearest.gap < 0;
  const e = given(
    "what the first order leaves out",
    mm(nearest.gap - first.value),
    "mm",
    derived(
      `found by turning the section: nearest ${nearest.swing.toFixed(1)}° down, at the ${nearest.contact}`,
    ),
  );
  return work({
    says: "least clearance through the swing",
    unit: "mm",
    formula: "a = G + e",
    inputs: { G: first, e },
    value: mm(first.value + e.value),
    source: derived("geometry of the joint’s section"),
    notes: isOtherwise
      ? [
          `by the first-order gap alone it would seem to ${first.value < 0 ? "bind" : "swing free"}; the section itself, turned, decides`,
        ]
      : [],
  });
}

function firstOrder(section: RuleJoint, { contact }: Tightest): Worked<Mm> {
  if (contact === "lower edge of the top") return lowerEdgeClearance(section);
  return contact === "lower corner of the leaf" ? undersideMargin(section) : coveClearance(section);
}

/** The other one of cove and lower edge, and where the cove's gap is least. */
const beside = (section: RuleJoint, { contact }: Tightest): readonly Worked[] => [
  ...(contact === "lower edge of the top" ? [] : [lowerEdgeClearance(section)]),
  ...(contact === "lower edge of the top" || contact === "lower corner of the leaf"
    ? [coveClearance(section)]
    : []),
  tightestPlace(section).swing,
];

function begins(section: RuleJoint, first: Tightest | undefined): readonly Worked<Deg>[] {
  if (!first) return [];
  const a = given(
    `first overlap on the way down, at the ${first.contact}`,
    first.swing,
    "°",
    derived(
      `found by turning the section; ${first.at.x.toFixed(1)} mm out from the round-over’s centre and ${first.at.y.toFixed(1)} mm above it`,
    ),
  );
  const found = work({
    says: "binds with the leaf down by",
    unit: "°",
    formula: "θ = a",
    inputs: { a },
    value: first.swing,
    source: derived("geometry of the joint’s section"),
  });
  const rub = first.contact === "lower edge of the top" ? rubStarts(section) : undefined;
  return rub ? [found, rub] : [found];
}

/** The bevel that frees a lower edge; none where another place is the tight one, or none would do. */
function bevelFor(section: RuleJoint, { contact }: Tightest): readonly [Worked<Mm>] | undefined {
  if (contact !== "lower edge of the top") return undefined;
  try {
    return [bevelNeeded(section)];
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return undefined;
  }
}

function remedy(
  { contact, swing }: Tightest,
  bevel: readonly [Worked<Mm>] | undefined,
  show: Alike["show"],
): string {
  // With the leaf level the pin's place does not matter yet.
  const isLevel = swing < LEVEL;
  switch (contact) {
    case "lower edge of the top":
      return bevel
        ? `bevel or round that edge by about ${show(bevel[0].value + MORE_BEVEL)}, never the leaf, or set the leaf out further`
        : "set the pin lower, or take a larger radius: no bevel of that edge frees it";
    case "lower corner of the leaf":
      return "set the pin higher, or take a larger radius";
    case "tip of the lip":
      return isLevel
        ? "thin the lip until it clears the round-over’s crown"
        : "move the pin towards the leaf or lower it, or thin the lip";
    case "foot of the round-over":
      return isLevel
        ? "set the leaf out further, or cut the cove as large as the round-over"
        : "lower the pin, or set the leaf out further";
    case "cove and round-over":
      return isLevel
        ? "set the leaf out further, or thin the lip"
        : "move the pin towards the leaf or lower it";
  }
}
