import type { Making, Refused } from "../kind.ts";
import { SLACK } from "../slack.ts";
import type { Hung } from "./hang.ts";
import { ROOM } from "./hinge-features.ts";
import { coveHeight, type PlainSizes, plainSizes } from "./plain-sizes.ts";
import type { JointSizes } from "./settle-joint.ts";

/** Least wood: under the round-over's centre, of a lip, of a fillet, over a barrel's groove, and past a plate [mm]. */
const LEAST = { low: 0.5, lip: 1, fillet: 0.5, groove: 1, past: 8 } as const;

type Sized = { readonly value: number };
/** Answers that a refusal may ask to be changed. */
type Asked = Readonly<Record<"leaf" | "width" | "top-thickness", Sized>>;

/** Joints for which there is no wood. */
export function refuseLeaves(joint: JointSizes, asked: Asked, { refuse, shop }: Making): void {
  const s = plainSizes(joint);
  const { rule } = s;
  const thicker = (code: string, reason: Refused["reason"], short: number) => {
    if (short <= SLACK) return;
    refuse({
      code,
      question: "top-thickness",
      reason,
      atLeast: s.t + short,
      values: [
        { key: "top.thickness", atLeast: s.t + short },
        ...(rule
          ? [
              { key: "leaf-joint.fillet", atMost: rule.fillet - short },
              { key: "leaf-joint.radius", atMost: rule.R - short },
            ]
          : []),
      ],
    });
  };
  if (rule && s.h < LEAST.low - SLACK) refuseOutside(s, joint, { refuse, shop });
  else {
    if (rule) {
      refuseMoulding(rule, s, { refuse });
      refuseCove(rule, s, { refuse, shop });
      thicker(
        "no-wood-under-round-over",
        (show) =>
          `Fillet and round-over leave ${show(Math.max(0, rule.b))} under the round-over’s centre; ${show(LEAST.low)} are needed.`,
        LEAST.low - rule.b,
      );
    }
    const over = s.t - (s.h + s.barrel + ROOM);
    thicker(
      "groove-through",
      (show) =>
        `The groove for a hinge’s barrel leaves ${show(Math.max(0, over))} of wood over it; ${show(LEAST.groove)} are needed.`,
      LEAST.groove - over,
    );
  }
  const long = s.dx + joint.hinge.long.reach - s.g + LEAST.past - asked.leaf.value;
  if (long > SLACK)
    refuse({
      code: "leaf-too-narrow",
      question: "leaf",
      reason: "The hinge’s long plate does not find room on the leaf.",
      atLeast: asked.leaf.value + long,
    });
  const short = 2 * (joint.hinge.short.reach + LEAST.past) - asked.width.value;
  if (short > SLACK)
    refuse({
      code: "top-too-narrow",
      question: "width",
      reason: "The hinges’ short plates do not find room on the fixed top.",
      atLeast: asked.width.value + short,
    });
}

type Refusing = Pick<Making, "refuse">;

/** A cove so much larger than its round-over that its centre lies under the wood. */
function refuseCove(
  rule: NonNullable<PlainSizes["rule"]>,
  s: PlainSizes,
  { refuse, shop }: Pick<Making, "refuse" | "shop">,
): void {
  const short = -coveHeight(s);
  if (short <= SLACK) return;
  const larger = rule.Rc - rule.R - short;
  const other = shop.jointCutters.find(({ cove, roundOver }) => cove - roundOver <= larger);
  refuse({
    code: "cove-too-large",
    ...(other
      ? { question: "cutters", use: other.name }
      : { question: "joint", use: "square edges" }),
    reason: (show) =>
      `A cove of ${show(rule.Rc)} under its lip goes ${show(short)} past the leaf’s underside, beside a round-over of ${show(rule.R)}.`,
    values: [
      { key: "leaf-joint.cove", atMost: rule.Rc - short },
      { key: "leaf-joint.radius", atLeast: rule.R + short },
      { key: "leaf-joint.fillet", atMost: rule.fillet - short },
    ],
  });
}

/**
 * A leaf that the maker made otherwise than the joint's fellows, with no wood for the joint.
 *
 * @param asked  of all leaves [mm]
 */
export function refuseLeaf(
  joint: JointSizes,
  { side, thickness, width, length }: Hung,
  asked: Readonly<Record<"thickness" | "width", number>>,
  { refuse }: Refusing,
): void {
  const s = plainSizes(joint);
  const lip = s.rule ? s.rule.lip + thickness - s.t : LEAST.lip;
  const over = s.rule ? LEAST.groove : thickness - (s.h + s.barrel + ROOM);
  const thin = Math.max(LEAST.lip - lip, LEAST.groove - over);
  if (thin > SLACK)
    refuse({
      code: "leaf-too-thin",
      question: "top-thickness",
      reason: (show) => `The ${side} leaf, ${show(thickness)} thick, has no wood for its joint.`,
      atLeast: asked.thickness + thin,
      values: [{ key: `leaf/${side}.thickness`, atLeast: thickness + thin }],
    });
  const narrow = s.dx + joint.hinge.long.reach - s.g + LEAST.past - width.value;
  if (narrow > SLACK)
    refuse({
      code: "leaf-too-narrow",
      question: "leaf",
      reason: `The hinge’s long plate does not find room on the ${side} leaf.`,
      atLeast: asked.width + narrow,
      values: [{ key: `leaf/${side}.width`, atLeast: width.value + narrow }],
    });
  const short = 2 * (joint.hinge.length + 2 * LEAST.past) - length;
  if (short > SLACK)
    refuse({
      code: "leaf-too-short",
      question: "length",
      reason: `Two hinges do not find room on the ${side} leaf.`,
      atLeast: length + short,
      values: [{ key: `leaf/${side}.length`, atLeast: length + short }],
    });
}

/** A pin that lies outside the wood, where the round-over's centre must be. */
function refuseOutside(
  s: PlainSizes,
  { hinge, mounting }: JointSizes,
  { refuse, shop }: Pick<Making, "refuse" | "shop">,
): void {
  const least = LEAST.low - s.h;
  // Laid on the face a thinner plate raises the pin, but no higher than it stands over that face.
  const isDeep = s.e >= LEAST.low && mounting === "on the face";
  const values = [
    { key: "leaf-joint.pin-height", atLeast: LEAST.low },
    { key: "leaf-joint.pin-over-face", atLeast: s.e + least },
    ...(isDeep ? [{ key: "leaf-joint.plate", atMost: s.plate - least }] : []),
  ];
  const reason = (show: (size: number) => string) =>
    `The pin of “${hinge.name}” would lie ${show(s.h)} over the underside, and a rule joint turns about one in the wood.`;
  const other = shop.leafHinges.find(({ pinOverFace }) => pinOverFace >= LEAST.low);
  refuse(
    isDeep
      ? { code: "pin-outside", question: "mounting", reason, use: "let in", values }
      : other && other.name !== hinge.name
        ? { code: "pin-outside", question: "hinge", reason, use: other.name, values }
        : { code: "pin-outside", question: "joint", reason, use: "square edges", values },
  );
}

/** A fillet too shallow for its lip, and a bevel that takes the whole tongue. */
function refuseMoulding(
  rule: NonNullable<PlainSizes["rule"]>,
  s: PlainSizes,
  { refuse }: Refusing,
): void {
  const crown = rule.fillet - rule.lip;
  const thin = Math.max(LEAST.lip - rule.lip, LEAST.fillet - rule.fillet);
  if (thin > SLACK)
    refuse({
      code: "no-lip",
      question: "top-thickness",
      reason: (show) =>
        `The cove leaves a lip of ${show(Math.max(0, rule.lip))}; ${show(LEAST.lip)} are needed.`,
      atLeast: s.t + thin,
      values: [
        { key: "leaf-joint.fillet", atLeast: rule.fillet + thin },
        { key: "leaf-joint.pin-height", atMost: s.h - thin },
        { key: "leaf-joint.radius", atMost: rule.R - thin },
        // Under nought the leaf would stand over the top.
        ...(crown >= thin ? [{ key: "leaf-joint.crown", atMost: crown - thin }] : []),
        { key: "top.thickness", atLeast: s.t + thin },
      ],
    });
  const most = (rule.R - Math.max(0, s.dx)) / 2;
  if (rule.bevel > most + SLACK)
    refuse({
      code: "bevel-too-wide",
      question: "bevel",
      reason: (show) =>
        `A bevel of ${show(rule.bevel)} takes most of the tongue; ${show(most)} is the most.`,
      atMost: most,
      values: [{ key: "leaf-joint.bevel", atMost: most }],
    });
}
