import { type Caution, commonPractice, published } from "../worked/index.ts";

/** What moves can trap fingers: gaps to keep clear of, as the standards' preview has them. */
const fingers: Caution = {
  says: "Moving leaves and arms trap fingers: let no gap pass through 8 to 25 mm (5/16 to 1 in) as they move, and warn whoever lowers the leaf.",
  source: published(
    "EN 12521:2023",
    "shear and squeeze gaps, preview, via a survey of standards",
    "secondary",
  ),
};

export const ruleJointCautions: readonly Caution[] = [
  fingers,
  {
    says: "Large round-over and cove cutters: on a router table with fence and guard, in several passes, at the speed their diameter bears, against the cutter's turning. A leaf is fed along its edge, never freehand.",
    source: commonPractice,
  },
  {
    says: "Never force a rule joint: a pin on the wrong side binds, and the lip of the cove splits.",
    source: commonPractice,
  },
];

export const swingArmCautions: readonly Caution[] = [
  fingers,
  {
    says: "The safest way to cut an arm out: rip a strip off the rail, crosscut the arm out of it by hand or with a thin kerf, and glue the ends back in register. Next best are band saw and hand saw.",
    source: commonPractice,
  },
];
