import {
  barrelGroove,
  lipThickness,
  longestScrew,
  outerFaceDepth,
  woodOverGroove,
} from "../motion/index.ts";
import { type Mm, mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  known,
  type Worked,
  work,
} from "../worked/index.ts";
import { type Alike, plainOf } from "./leaf-alike.ts";
import { fullFrom } from "./leaf-plates.ts";
import { told } from "./told.ts";

const GROUP = "Joinery";
/** Room round a barrel in its groove; common practice. */
const ROOM = given("room round the barrel", mm(0.5), "mm", commonPractice);
/** Wood over a barrel's groove: so much holds, less is weak, and less still breaks through when it is cut; common practice [mm]. */
const OVER_GROOVE = { good: mm(6), weak: 4, breaks: 1.5 } as const;
/** Wood over a screw's point; common practice. */
const COVER = given("least wood over a screw’s point", mm(2), "mm", commonPractice);
/** A thinner lip breaks easily; common practice. */
const LIP = given("least of a lip", mm(2), "mm", commonPractice);
/** Full wood from the cove to a screw's hole, measured from its edge; common practice [mm]. */
const BESIDE_COVE = 2;

/** Whether the wood holds what a hinge asks of it. */
export const leafHinge = (alike: Alike): readonly Finding[] => [
  overGroove(alike),
  cover(alike),
  ...underCove(alike),
  ...lip(alike),
];

/** What of a size is over the least that is wanted of it. */
const over = (a: Worked<Mm>, least: ReturnType<typeof given<Mm>>): Worked<Mm> =>
  work({
    says: `${a.says}, over the least`,
    unit: "mm",
    formula: "m = a − g",
    inputs: { a, g: least },
    value: mm(a.value - least.value),
    source: derived("arithmetic"),
  });

function overGroove({ leaf, id, lights, show }: Alike): Finding {
  const groove = barrelGroove(leaf.pinHeight, leaf.hinge.barrel, ROOM);
  const left = woodOverGroove(leaf.thickness, groove);
  const good = given("wood that holds over a groove", OVER_GROOVE.good, "mm", commonPractice);
  const margin = over(left, good);
  const verdict = left.value < OVER_GROOVE.breaks ? "fails" : margin.value < 0 ? "watch" : "ok";
  const says = {
    fails: `The groove for the barrels leaves ${show(left.value)} of wood under the face: it breaks through. Thicker wood, or a hinge with a thinner barrel.`,
    watch:
      left.value < OVER_GROOVE.weak
        ? `Only ${show(left.value)} of wood is left over the barrels’ groove: it shows through, and splits when the leaf is leaned on.`
        : `The barrels’ groove leaves ${show(left.value)} of wood over it, which is little.`,
    ok: "There is wood enough over the hinges’ barrels.",
  }[verdict];
  return told({
    ...{ id: id("groove"), group: GROUP, verdict, says, margin, lights },
    severity: verdict === "ok" ? 0 : 1 - margin.value / good.value,
  });
}

function cover({ leaf, part, id, lights, show }: Alike): Finding {
  const thinnest = mm(Math.min(plainOf(leaf.thickness), part.blank.thickness));
  const t = given("thickness of the thinner of top and leaf", thinnest, "mm", derived("as made"));
  const q = outerFaceDepth(leaf.pinHeight, leaf.hinge.pinOverFace);
  const L = given("length of the screws", leaf.hinge.screwLength, "mm", derived("the hinge’s"));
  const left = work({
    says: "wood over the screws’ points",
    unit: "mm",
    formula: "a = t − q − L",
    inputs: { t, q, L },
    value: mm(t.value - q.value - L.value),
    source: derived("geometry of the joint’s section"),
  });
  const longest = longestScrew(t, q, COVER);
  const margin = over(left, COVER);
  const verdict = left.value < 0 ? "fails" : margin.value < 0 ? "watch" : "ok";
  const says = {
    fails: `The hinges’ screws come out of the face: take them no longer than ${show(longest.value)}.`,
    watch: `The hinges’ screws end ${show(left.value)} under the face, where a drop of glue or a sander finds them: take them no longer than ${show(longest.value)}.`,
    ok: "The hinges’ screws stay in the wood.",
  }[verdict];
  return told({
    ...{ id: id("screws"), group: GROUP, verdict, says, margin, lights },
    severity: verdict === "ok" ? 0 : 1 - margin.value / COVER.value,
    why: verdict === "ok" ? [margin] : [margin, longest],
  });
}

/** Screws of the long plate that stand in the hollow of the cove, where the tongue comes. */
function underCove({ leaf, id, lights, show }: Alike): readonly Finding[] {
  const { rule, hinge } = leaf;
  if (!rule) return [];
  const first = mm(Math.min(...hinge.long.holes.map(({ from }) => from)));
  const measured = derived("the hinge, as the shop has it");
  const s = given("first hole of the long plate from the pin", first, "mm", measured);
  const margin = work({
    says: "first screw of the long plate past the cove",
    unit: "mm",
    formula: "a = s + d_x − g − R_c",
    inputs: {
      s,
      d_x: known(leaf.pinOut, "pin out from the visible edge", "mm"),
      g: known(leaf.setOut, "leaf set out at the edge", "mm"),
      R_c: known(rule.cove, "radius of the cove", "mm"),
    },
    value: mm(first + plainOf(leaf.pinOut) - plainOf(leaf.setOut) - plainOf(rule.cove)),
    source: derived("geometry of the joint’s section"),
  });
  const wanted = hinge.lead / 2 + BESIDE_COVE;
  const verdict = margin.value < 0 ? "fails" : margin.value < wanted ? "watch" : "ok";
  const bare = hinge.long.holes.filter(({ from }) => from < fullFrom(leaf)).length;
  const says = {
    fails: `${bare} ${bare === 1 ? "screw" : "screws"} of the long plate would stand in the hollow of the cove, where the top’s tongue comes up: take a hinge whose holes begin at least ${show(first + wanted - margin.value)} from the pin, or a smaller radius.`,
    watch: `The long plate’s first screw stands hard by the cove, and can split its edge off: bore that hole well, or take a hinge whose holes begin further out.`,
    ok: "The long plate’s screws find full wood.",
  }[verdict];
  return [
    told({
      ...{ id: id("long-plate"), group: GROUP, verdict, says, margin, lights },
      severity: verdict === "ok" ? 0 : 1 + (wanted - margin.value) / wanted,
    }),
  ];
}

function lip({ section, part, id, lights, show }: Alike): readonly Finding[] {
  if (!section) return [];
  const thickness = given("thickness of the leaf", part.blank.thickness, "mm", derived("as made"));
  const thick = lipThickness({ ...section, thickness });
  const margin = over(thick, LIP);
  const isThin = margin.value < 0;
  return [
    told({
      ...{ id: id("lip"), group: GROUP, verdict: isThin ? "watch" : "ok", margin, lights },
      severity: isThin ? 1 - margin.value / LIP.value : 0,
      says: isThin
        ? `The leaf’s lip is only ${show(thick.value)} thick and breaks easily: thicker wood or a smaller radius leaves more.`
        : "The leaf’s lip is thick enough to bear it.",
    }),
  ];
}
