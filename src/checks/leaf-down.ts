import { gapFromAbove, lipOverlap, type RuleJoint } from "../motion/index.ts";
import { type Mm, mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  type Worked,
  work,
} from "../worked/index.ts";
import { type Alike, plainOf, waits } from "./leaf-alike.ts";
import { told } from "./told.ts";

/** A wider gap is noticed from above; our own measure. */
const WIDE = given("widest gap that is not noticed", mm(1.2), "mm", commonPractice);

/** How the joint looks from above when the leaf hangs down. */
export function leafDown(alike: Alike): readonly Finding[] {
  const { section, first, id, lights, show } = alike;
  if (!section) return [];
  const group = "Fit and swing";
  if (first) return [waits(alike, "down", group, "It binds before it is down.")];
  const gap = under(gapFromAbove(section));
  const cover = covered(section);
  const isSeenThrough = cover.value < 0;
  const isWide = gap.value < 0;
  const says = isSeenThrough
    ? `With the leaf down one sees daylight, and the hinge, between lip and round-over: raise the pin or move it towards the leaf.`
    : isWide
      ? `With the leaf down a gap of ${show(WIDE.value - gap.value)} shows from above, along the whole joint: the pin stands low, or far out, for this fillet.`
      : "With the leaf down the joint looks closed from above.";
  const margin = isSeenThrough ? cover : gap;
  const measure = isSeenThrough ? plainOf(section.centreHeight) : WIDE.value;
  return [
    told({
      ...{ id: id("down"), group, says, margin, lights },
      verdict: isSeenThrough || isWide ? "watch" : "ok",
      severity: isSeenThrough || isWide ? 1 - margin.value / measure : 0,
      why: [gap, cover],
    }),
  ];
}

const under = (G: Worked<Mm>): Worked<Mm> =>
  work({
    says: "gap seen from above, under what is noticed",
    unit: "mm",
    formula: "a = w − G",
    inputs: { w: WIDE, G },
    value: mm(WIDE.value - G.value),
    source: derived("arithmetic"),
  });

/** How far the lip's end and the edge below the round-over still cover each other. */
function covered(section: RuleJoint): Worked<Mm> {
  const o = lipOverlap(section);
  const b = section.centreHeight;
  const low = typeof b === "object" ? b : given("round-over’s centre over the underside", b, "mm");
  return work({
    says: "lip’s end over the fixed top’s lower edge, leaf down",
    unit: "mm",
    formula: "a = o + b",
    inputs: { o, b: low },
    value: mm(o.value + low.value),
    source: derived("geometry of the joint’s section"),
  });
}
