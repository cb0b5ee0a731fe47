import { filletDepth, pinHeight } from "../../motion/index.ts";
import { type HingeMounting, type LeafJoint, plainly } from "../../piece/index.ts";
import type { JointCutters, LeafHinge } from "../../shop/index.ts";
import { type Mm, mm } from "../../units/index.ts";
import { derived, type Given, given, type Worked, work } from "../../worked/index.ts";
import type { Making } from "../kind.ts";

/** What a leaf's joint is asked. */
export type JointAsked = {
  readonly form: "rule joint" | "square edges";
  readonly cutters: JointCutters;
  readonly hinge: LeafHinge;
  readonly mounting: HingeMounting;
  /** gap at the visible edge, closed [mm] */
  readonly setOut: Mm;
  /** fillet less lip [mm] */
  readonly crown: Mm;
  /** pin out from the visible edge of a rule joint [mm] */
  readonly pinOut: Mm;
  /** of the fixed top's lower edge [mm] */
  readonly bevel: Mm;
  /** of top and leaves [mm] */
  readonly thickness: Mm;
};

type Sized = Given<Mm> | Worked<Mm>;

/** A leaf joint's sizes, as all leaves of a piece share them. */
export type JointSizes = Pick<
  LeafJoint,
  "rule" | "thickness" | "setOut" | "pinOut" | "pinHeight" | "hinge" | "mounting"
>;

/** A pin may lie under the wood, and a set-out be nought [mm]. */
const LEAST_HEIGHT = -20;
const LEAST_OUT = -6;

const inShop = derived("measured, as the shop has it");

/** A size of a thing of the shop's: measured once for all pieces. */
const ofShop = (says: string, thing: string, size: Mm): Worked<Mm> =>
  work({
    says,
    unit: "mm",
    formula: "d = a",
    inputs: { a: given(`${thing}: ${says}`, size, "mm", inShop) },
    value: size,
    source: inShop,
  });

/** Settles the sizes of a leaf's joint: whatever is measured on the wood, the cutter or the hinge stands before. */
export function settleJoint(asked: JointAsked, { settleKnown }: Making): JointSizes {
  const { cutters, hinge, mounting } = asked;
  const size = (what: string, says: string, computed: Worked<Mm>, least = 0): Sized =>
    settleKnown(`leaf-joint.${what}`, `leaf joint: ${says}`, computed, least);
  const thickness = given("thickness of the top", asked.thickness, "mm");
  const over = size(
    "pin-over-face",
    "pin over the plates’ outer face",
    ofShop("pin over the plates’ outer face", hinge.name, hinge.pinOverFace),
  );
  const plate = size(
    "plate",
    "thickness of the hinge’s plates",
    ofShop("thickness of the plates", hinge.name, hinge.plate),
  );
  const measured: LeafHinge = { ...hinge, pinOverFace: over.value, plate: plate.value };
  const height = size(
    "pin-height",
    "pin over the underside",
    pinHeight(over, plate, mounting),
    LEAST_HEIGHT,
  );
  const setOut = size(
    "set-out",
    "leaf set out at the edge",
    plainly("leaf set out at the edge", asked.setOut),
  );
  const isRule = asked.form === "rule joint";
  const pinOut = size(
    "pin-out",
    "pin out from the visible edge",
    isRule ? plainly("pin towards the leaf", asked.pinOut) : inMiddle(setOut),
    LEAST_OUT,
  );
  const shared = { thickness, setOut, pinOut, pinHeight: height, hinge: measured, mounting };
  if (!isRule) return shared;
  const radius = size(
    "radius",
    "radius of the round-over",
    ofShop("radius of the round-over", cutters.name, cutters.roundOver),
    1,
  );
  return {
    ...shared,
    rule: {
      radius,
      cove: size(
        "cove",
        "radius of the cove",
        ofShop("radius of the cove", cutters.name, cutters.cove),
        1,
      ),
      fillet: size("fillet", "fillet", filletDepth(thickness, radius, height)),
      crownGap: size(
        "crown",
        "crown gap, fillet less lip",
        plainly("crown gap, fillet less lip", asked.crown),
        LEAST_OUT,
      ),
      bevel: size(
        "bevel",
        "bevel of the fixed top’s lower edge",
        plainly("bevel of the fixed top’s lower edge", asked.bevel),
      ),
      cutters: cutters.name,
    },
  };
}

/** Between square edges the pin stands over the middle of the gap. */
const inMiddle = (setOut: Sized): Worked<Mm> =>
  work({
    says: "pin over the middle of the gap",
    unit: "mm",
    formula: "d_x = g/2",
    inputs: { g: setOut },
    value: mm(setOut.value / 2),
    source: derived("geometry of the joint’s section"),
  });
