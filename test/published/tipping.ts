import type { PlanPoint } from "../../src/geometry/index.ts";
import {
  edgeReach,
  footHolding,
  tippingLoad,
  tippingLoadAt,
  tippingPush,
} from "../../src/mechanics/index.ts";
import { kg, mm } from "../../src/units/index.ts";
import { type Check, exact, halfDigit, series, share, within } from "./check.ts";

const AREA = "Tipping";
const reference = series(AREA, "turning cases");
const textbook = series(AREA, "textbook");

type Spot = readonly [x: number, y: number];

const FEET = [
  [-190, -430],
  [190, -430],
  [190, 430],
  [-190, 430],
] as const;

type Case = readonly [
  says: string,
  gates: readonly Spot[],
  massKg: number,
  centreX: number,
  load: Spot,
  forceN: string,
  leaningKg: string,
  backMm: string,
  outMm: string,
];

const cases: readonly Case[] = [
  ["both leaves up, load at a leaf's edge", [], 18, 0, [470, 0], "119.82", "12.214", "190", "280"],
  ["both leaves down, load at the fixed edge", [], 18, 0, [195, 0], "6710", "684", "190", "5"],
  ["one leaf up, load at its corner", [], 18, 22, [470, 450], "105.95", "10.8", "168", "280"],
  [
    "gate open, load mid edge",
    [[436, 0]],
    20,
    37.8,
    [470, 0],
    "2297.8",
    "234.24",
    "345.63",
    "29.512",
  ],
  [
    "two gates open, load at the leaf's corner",
    [
      [436, -250],
      [436, 250],
    ],
    22,
    48,
    [470, 400],
    "658.9",
    "67.166",
    "430.88",
    "141.13",
  ],
  ["one heavy leaf up", [], 24, 54.25, [640, 0], "71.024", "7.24", "135.75", "450"],
];

const at = ([x, y]: Spot): PlanPoint => ({ x: mm(x), y: mm(y) });

/** The centre of gravity is printed to a hundredth, and so is the arm reckoned from it. */
const TWICE_ROUNDED = within(0.01);

/** The cases were worked with 9.81 m/s²; in kilograms leaning no gravity enters. */
const reckoned = cases.flatMap(
  ([says, gates, massKg, centreX, load, forceN, leaningKg, backMm, outMm]) => {
    const tips = () =>
      tippingLoadAt(
        { feet: [...FEET, ...gates].map(at), mass: kg(massKg), centre: at([centreX, 0]) },
        at(load),
      );
    const force = () => tips()?.value ?? Number.NaN;
    /** From the foot line that gives way, as its formula names them. */
    const arm = (name: "a" | "b") => () => tips()?.inputs[name]?.value ?? Number.NaN;
    return [
      reference(`${says}: load`, forceN, "N", force, share(0.005)),
      reference(`${says}: leaning`, leaningKg, "kg", () => force() / 9.80665, halfDigit),
      reference(`${says}: arm back`, backMm, "mm", arm("a"), TWICE_ROUNDED),
      reference(`${says}: arm out`, outMm, "mm", arm("b"), TWICE_ROUNDED),
    ];
  },
);

/** Fixed table 38 kg on feet at ±300 mm; leaf 5.5 kg, its middle 650 mm out; load 550 mm past. */
function raisedLeaf(hanging: number): number {
  const mass = 38 + 5.5 + hanging;
  const centre = (5.5 * 650 - hanging * 400) / mass;
  const feet = [-300, 300].flatMap((x) => [at([x, -400]), at([x, 400])]);
  const stance = { feet, mass: kg(mass), centre: at([centre, 0]) };
  return tippingLoadAt(stance, at([850, 0]))?.value ?? Number.NaN;
}
const WORKED = share(0.005);

export const tippingChecks: readonly Check[] = [
  ...reckoned,
  textbook("one leaf, raised: load at its edge", "169.0", "N", () => raisedLeaf(0), WORKED),
  textbook("two leaves, one raised", "237.7", "N", () => raisedLeaf(5.5), WORKED),
  textbook(
    "38 kg, half base 300 mm, push at 730 mm",
    "153.2",
    "N",
    () => tippingPush(kg(38), mm(300), mm(730)).value,
    WORKED,
  ),
  textbook(
    "one kilogram on equal arms: standard gravity",
    "9.80665",
    "N",
    () => tippingLoad(kg(1), mm(100), mm(100)).value,
    exact,
  ),
  // Feet 380 mm apart, the load 50 mm in from the edge of a top 1040 mm wide: the first case's arms.
  reference(
    "both leaves up: arm back",
    "190",
    "mm",
    () => footHolding(mm(380), mm(0)).value,
    exact,
  ),
  reference("one leaf up: arm back", "168", "mm", () => footHolding(mm(380), mm(22)).value, exact),
  reference(
    "both leaves up: arm out",
    "280",
    "mm",
    () => edgeReach(mm(1040), mm(50), mm(380)).value,
    exact,
  ),
];
