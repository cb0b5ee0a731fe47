import { kindNamed, newDocument } from "../../src/kinds/index.ts";
import type { PieceDocument } from "../../src/piece/index.ts";
import { demoShop, type Shop } from "../../src/shop/index.ts";
import { mm } from "../../src/units/index.ts";

/** A fault as a maker might bring it into a drop-leaf table: an answer, or a size of their own. */
export type Planted = {
  readonly answers?: Readonly<Record<string, string>>;
  readonly overrides?: Readonly<Record<string, string>>;
  readonly shop?: Shop;
};

const base = newDocument(kindNamed("drop-leaf-table"), "Planted", "mm");

/** The drop-leaf table as it is offered, with a fault planted in it. */
export const plantedIn = ({ answers = {}, overrides = {} }: Planted): PieceDocument => ({
  ...base,
  assemblies: { table: { ...base.assemblies.table, ...answers, kind: "drop-leaf-table" } },
  overrides,
});

/** What can go wrong with a drop-leaf table, one of each sort. */
export const faults = {
  /** 0.8 mm over the round's centre, which stays where the fillet put it */
  pinHigh: {
    overrides: { "table/leaf-joint.pin-height": "4 mm", "table/leaf-joint.fillet": "3.1 mm" },
  },
  /** let in, with the fillet that suits hinges on the face: the pin stands a plate's thickness high */
  letIn: { overrides: { "table/leaf-joint.fillet": "4.6 mm" } },
  /** on the face, with the fillet that suits hinges let in flush: the pin stands as much too low */
  onFace: {
    answers: { mounting: "on the face" },
    overrides: { "table/leaf-joint.fillet": "3.1 mm" },
  },
  /** 2 mm of the opening are left over the arm, and no washer is so thin */
  armLow: {
    overrides: { "table/arms.opening": "40 mm" },
    shop: { ...demoShop, washers: [mm(3)] },
  },
  /** the opening is 1 mm shallower than the arm is high */
  armProud: { overrides: { "table/arms.opening": "37 mm" } },
  /** two tails of 150 mm each, in a frame 298 mm wide */
  armsMeet: {
    answers: { width: "330 mm", arms: "one", "arm-tail": "150 mm", "arm-reach": "150 mm" },
  },
  /** legs right under the joint, so that the leaf turns into them */
  legStruck: { answers: { "side-overhang": "0 mm", setback: "10 mm" } },
} as const satisfies Readonly<Record<string, Planted>>;
