import { type Mm, mm } from "../units/index.ts";
import type { Hole, JointCutters, LeafHinge } from "./leaf-hardware.ts";
import type { Shop } from "./shop.ts";

/**
 * Holes in rows across a plate.
 *
 * @param rows  each out from the pin, and to both sides of the middle [mm]
 */
const holes = (...rows: readonly (readonly [from: number, aside: number])[]): readonly Hole[] =>
  rows.flatMap(([from, aside]) =>
    (aside === 0 ? [0] : [-aside, aside]).map((along) => ({ from: mm(from), along: mm(along) })),
  );

/**
 * Cutters of a pair.
 *
 * @param roundOver  radius as measured [mm]
 * @param cove  the same [mm]
 */
const pair = (name: string, roundOver: number, cove: number): JointCutters => ({
  name,
  roundOver: mm(roundOver),
  cove: mm(cove),
  straight: mm(8),
  coveLength: mm(cove + 8),
});

/** Invented hinges with usual sizes. */
const hinges: readonly LeafHinge[] = [
  {
    name: "table hinge 38",
    length: mm(38),
    barrel: mm(2.8),
    pinOverFace: mm(3.2),
    plate: mm(1.5),
    short: { reach: mm(25), holes: holes([10, 12], [19, 12]) },
    long: { reach: mm(48), holes: holes([19, 12], [30, 0], [42, 12]) },
    screwLength: mm(14),
    lead: mm(2),
  },
  {
    name: "deep table hinge 38",
    length: mm(38),
    barrel: mm(2.8),
    pinOverFace: mm(4.6),
    plate: mm(1.6),
    short: { reach: mm(25), holes: holes([10, 12], [19, 12]) },
    long: { reach: mm(48), holes: holes([19, 12], [30, 0], [42, 12]) },
    screwLength: mm(14),
    lead: mm(2),
  },
  {
    name: "back flap 38",
    length: mm(38),
    barrel: mm(3),
    pinOverFace: mm(0),
    plate: mm(1.6),
    short: { reach: mm(32), holes: holes([11, 12], [23, 12]) },
    long: { reach: mm(32), holes: holes([11, 12], [23, 12]) },
    screwLength: mm(14),
    lead: mm(2),
  },
];

const inch = (size: number): Mm => mm(size * 25.4);

/**
 * An invented small shop, which stands in until the maker's own is written down. Allowances,
 * clearances and errors: common practice, no source.
 */
export const demoShop: Shop = {
  name: "Demo shop: one bench, one bay",
  isDemo: true,
  chisels: [mm(6), inch(1 / 4), mm(8), inch(5 / 16), inch(3 / 8), mm(10), mm(12), inch(1 / 2)]
    .concat([mm(16), inch(5 / 8)])
    .sort((a, b) => a - b),
  extraLength: mm(25),
  extraWidth: mm(6),
  cheekClearance: mm(0.1),
  widthClearance: mm(0.5),
  depthClearance: mm(1.5),
  jointCutters: [
    pair("1/2 in pair", 12.7, 12.7),
    pair("3/8 in pair", 9.53, 9.55),
    pair("10 mm pair", 10, 10.02),
  ],
  leafHinges: hinges,
  armKerf: mm(1.2),
  ripKerf: mm(3),
  washers: [mm(0.5), mm(0.8), mm(1), mm(1.5)],
  pivotScrew: mm(6.35),
  pivotHole: mm(6.5),
  pivotHead: mm(12),
  pivotLength: mm(75),
  pinError: mm(0.1),
  setOutError: mm(0.05),
  cutterError: mm(0.03),
  thicknessError: mm(0.05),
};
