import type { RuleJoint, Tightest, ToleranceStudy } from "../../motion/index.ts";
import { lipThickness, pinHeight } from "../../motion/index.ts";
import type { HingeMounting } from "../../piece/index.ts";
import type { McPct, Mm } from "../../units/index.ts";
import type { Finding, Given, Worked } from "../../worked/index.ts";
import type { Show } from "../topic.ts";

/** What a rule joint is judged by. */
type Judged = {
  readonly joint: RuleJoint;
  readonly first: Tightest | undefined;
  readonly clearance: Worked<Mm>;
  readonly gap: Worked<Mm>;
  readonly overlap: Worked<Mm>;
  readonly upTo: Worked<McPct>;
  readonly study: ToleranceStudy;
  readonly hinge: Given<Mm>;
  readonly plate: Given<Mm>;
  readonly mounting: HingeMounting;
  readonly to: Given<McPct>;
};

/** A thinner lip breaks easily, a wider gap is noticed: our own measures, so they only warn [mm]. */
const THIN_LIP = 2;
const WIDE_GAP = 1.2;
/** Of a hundred joints made so; past it a shop would rather aim better. */
const MANY = 10;

const finding = (
  id: string,
  group: Finding["group"],
  verdict: Finding["verdict"],
  says: string,
  ...why: readonly Worked[]
): Finding => ({ id: `leaf-joint/${id}`, group, verdict, says, why, lights: [] });

/** Only what binds or lies outside the wood fails: the rest is habit, and the year, and the eye. */
export function judgeJoint(of: Judged, show: Show): readonly Finding[] {
  return [swing(of), down(of), hinge(of, show), year(of, show), errors(of)];
}

function swing({ first, clearance }: Judged): Finding {
  if (!first)
    return finding("swing", "Fit and swing", "ok", "The leaf swings free all the way.", clearance);
  const mend = {
    "lower edge of the top":
      "bevel or round the lower edge of the fixed top, never the leaf, or set the leaf out further",
    "lower corner of the leaf": "set the pin higher or take a larger radius",
    "tip of the lip": "move the pin towards the leaf or lower it, or thin the lip",
    "foot of the round-over": "lower the pin, or move it towards the leaf",
    "cove and round-over": "move the pin towards the leaf or lower it",
  }[first.contact];
  return finding(
    "swing",
    "Fit and swing",
    "fails",
    `The leaf binds ${first.swing.toFixed(0)}° down, at the ${first.contact}: ${mend}.`,
    clearance,
  );
}

function down({ gap, overlap, joint, first }: Judged): Finding {
  if (first)
    return finding("down", "Fit and swing", "not-judged", "It binds before it is down.", gap);
  const low = typeof joint.centreHeight === "object" ? joint.centreHeight.value : 0;
  const [isSeenThrough, isWide] = [overlap.value < -low, gap.value > WIDE_GAP];
  const says = isSeenThrough
    ? "Leaf down, one sees through the joint to the hinge: raise the pin or move it towards the leaf."
    : isWide
      ? "Leaf down, a wide gap shows from above: the pin stands low or far out for this fillet."
      : "Leaf down, the joint looks closed.";
  const verdict = isSeenThrough || isWide ? "watch" : "ok";
  return finding("down", "Fit and swing", verdict, says, gap, overlap);
}

function hinge({ joint, hinge, plate, mounting }: Judged, show: Show): Finding {
  const height = pinHeight(hinge, plate, mounting);
  const lip = lipThickness(joint);
  if (height.value < 0)
    return finding(
      "hinge",
      "Joinery",
      "fails",
      "The pin lies outside the wood, where the arc wants it inside: let the plates in.",
      height,
    );
  if (lip.value <= 0)
    return finding("hinge", "Joinery", "fails", "The cove leaves no lip: cut it less high.", lip);
  return lip.value < THIN_LIP
    ? finding(
        "hinge",
        "Joinery",
        "watch",
        `The lip is only ${show(lip.value, "mm")} thick and breaks easily: thicker wood or a smaller radius leave more.`,
        lip,
      )
    : finding("hinge", "Joinery", "ok", "Pin within the wood, and a lip that holds.", height, lip);
}

/** Seasons rest on assumed moistures, so the worst that is said of them is to mind them. */
function year({ upTo, to, first }: Judged, show: Show): Finding {
  if (first)
    return finding("year", "Seasons", "not-judged", "It binds as made: the year is not judged.");
  const isFree = upTo.value >= to.value;
  const limit = show(upTo.value, "% MC");
  return finding(
    "year",
    "Seasons",
    "watch",
    isFree
      ? `Fitted as you say it swings up to ${limit}; the year's moistures are your reckoning.`
      : `It rubs above ${limit}, before the year's dampest: fit it in the damp season, or take quartersawn edges, or set it out a little more.`,
    upTo,
  );
}

function errors({ study, first }: Judged): Finding {
  if (first)
    return finding("errors", "Can this shop make it", "not-judged", "It binds as planned already.");
  const isOften = study.binding.value > MANY;
  return finding(
    "errors",
    "Can this shop make it",
    isOften ? "watch" : "not-judged",
    isOften
      ? "With errors of this size it binds too often: make a sample joint, and aim where there is more room."
      : "With errors of this size it seldom binds; how large yours are, only sample joints tell.",
    study.binding,
  );
}
