import { inches, mm, ratio } from "../../src/units/index.ts";
import {
  lateralLoad,
  leadHole,
  nailWithdrawal,
  screwNumbered,
  screwWithdrawal,
  screwWithdrawalAllowed,
  speciesNamed,
} from "../../src/wood/index.ts";
import { type Check, exact, series, share, within } from "./check.ts";

const AREA = "Screws and nails";
/** By the definitions of pound, gravity and inch. */
const POUND = 0.45359237 * 9.80665;

const ofOne = { gravity: ratio(1), diameter: mm(1), length: mm(1) };
const inchOfOne = { gravity: ratio(1), diameter: inches(1), length: inches(1) };
const pine = (gravity: number, diameterIn: number, lengthIn = 1) => ({
  gravity: ratio(gravity),
  diameter: inches(diameterIn),
  length: inches(lengthIn),
});

const chapter8 = series(AREA, "chapter 8");
const pulls = [
  chapter8("constant of Eq 8-10, wood screws", "108.25", "N/mm²", () => {
    return screwWithdrawal(ofOne).value;
  }),
  chapter8("constant of Eq 8-1, common nails", "54.12", "N/mm²", () => {
    return nailWithdrawal(ofOne).value;
  }),
  chapter8("lead hole in softwood, share of the root", "0.70", "1", () => {
    return leadHole(mm(10), true).value / 10;
  }),
  chapter8("lead hole in hardwood, share of the root", "0.90", "1", () => {
    return leadHole(mm(10), false).value / 10;
  }),
];

const nds = series(AREA, "nds");
const allowed = [
  nds("allowed pull, G 0.50, D 0.190 in, one inch of thread", "135", "lb", () => {
    return screwWithdrawalAllowed(pine(0.5, 0.19)).value / POUND;
  }),
  nds("constant of the allowed pull", "2850", "lb/in²", () => {
    return screwWithdrawalAllowed(inchOfOne).value / POUND;
  }),
  nds("ultimate over allowed pull", "5.5", "1", () => {
    return screwWithdrawal(ofOne).value / screwWithdrawalAllowed(ofOne).value;
  }),
];

const byHand = series(AREA, "chapter 8 by hand");
const powers = [
  byHand("Eq 8-10 at G 0.5: 108.25 / 4", "27.0625", "N", () => {
    return screwWithdrawal({ ...ofOne, gravity: ratio(0.5) }).value;
  }),
  byHand("Eq 8-1 at G 0.25: 54.12 / 32", "1.69125", "N", () => {
    return nailWithdrawal({ ...ofOne, gravity: ratio(0.25) }).value;
  }),
  // The older inch-pound forms are round to 50.
  byHand(
    "the SI constant of Eq 8-10, in inches and pounds",
    "15 700",
    "lb/in²",
    () => screwWithdrawal(inchOfOne).value / POUND,
    within(25),
  ),
  byHand(
    "the SI constant of Eq 8-1, in inches and pounds",
    "7 850",
    "lb/in²",
    () => nailWithdrawal(inchOfOne).value / POUND,
    within(25),
  ),
  byHand(
    "hinge screw No. 8, walnut of G 0.55, 5/8 in of thread, allowed",
    "88.37",
    "lb",
    () => screwWithdrawalAllowed(pine(0.55, 0.164, 0.625)).value / POUND,
    share(0.005),
  ),
];

/** Table 8-4 by a species of each group; its gravity lies in the group's range. */
const factors: readonly (readonly [group: string, key: string, nail: string, screw: string])[] = [
  ["hardwood of G 0.33 to 0.47", "basswood", "50.04", "23.17"],
  ["hardwood of G 0.48 to 0.56", "cherry-black", "69.50", "31.99"],
  ["hardwood of G 0.57 to 0.74", "maple-sugar", "94.52", "44.13"],
  ["softwood of G 0.29 to 0.42", "pine-eastern-white", "50.04", "23.17"],
  ["softwood of G 0.43 to 0.47", "hemlock-western", "62.55", "29.79"],
  ["softwood of G 0.48 to 0.52", "douglas-fir-coast", "76.45", "36.40"],
];
/** A diameter of 4 mm, whose powers 1.5 and 2 are 8 and 16. */
const lateral = factors.flatMap(([group, key, nail, screw]) =>
  (
    [
      ["nail", nail, 8],
      ["screw", screw, 16],
    ] as const
  ).map(([fastener, printed, power]) =>
    chapter8(`lateral factor of a ${fastener}, ${group}`, printed, "N/mm^n", () => {
      return (lateralLoad(fastener, speciesNamed(key), mm(4))?.value ?? Number.NaN) / power;
    }),
  ),
);

const shank = series(AREA, "table 8-9");
const shanks = (
  [
    ["4", "0.112"],
    ["5", "0.125"],
    ["6", "0.138"],
    ["7", "0.151"],
    ["8", "0.164"],
    ["9", "0.177"],
    ["10", "0.190"],
    ["11", "0.203"],
    ["12", "0.216"],
    ["14", "0.242"],
    ["16", "0.268"],
    ["18", "0.294"],
    ["20", "0.320"],
    ["24", "0.372"],
  ] as const
).map(([number, printed]) =>
  shank(`shank of No. ${number}, ours in mm, printed in inches`, printed, "in", () => {
    return screwNumbered(number, "cut").diameter.value / 25.4;
  }),
);

const rolledThread = series(AREA, "thread standard");
const rolled = (
  [
    ["4", "0.116"],
    ["6", "0.142"],
    ["8", "0.168"],
    ["10", "0.194"],
    ["12", "0.22"],
    ["14", "0.246"],
  ] as const
).map(([number, thread]) =>
  rolledThread(
    `rolled thread of No. ${number}, most`,
    thread,
    "in",
    () => screwNumbered(number, "rolled").diameter.value / 25.4,
    exact,
  ),
);

export const fastenerChecks: readonly Check[] = [
  ...pulls,
  ...allowed,
  ...powers,
  ...lateral,
  ...shanks,
  ...rolled,
];
