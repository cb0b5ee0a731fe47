import {
  barrelGroove,
  bevelNeeded,
  clearanceNeeded,
  coveClearance,
  coveGap,
  filletDepth,
  firstContact,
  firstHole,
  gapFromAbove,
  highestCentre,
  lipOverlap,
  lipRise,
  lipThickness,
  longestScrew,
  lowerEdgeClearance,
  outerFaceDepth,
  plateRecess,
  type RuleJoint,
  rubStarts,
  seasonalClosing,
  swingClearance,
  swingPastUpright,
  swollenJoint,
  undersideLimit,
  undersideMargin,
  woodOverGroove,
} from "../../src/motion/index.ts";
import {
  deg,
  inches,
  mcPct,
  mm,
  perPct,
  type Row,
  ratio,
  readTable,
} from "../../src/units/index.ts";
import { type Check, series, share, within } from "./check.ts";
import * as data from "./data/rule-joints.ts";

const AREA = "Rule joint of a leaf";
const jointCase = series(AREA, "rule joint cases");
const maker = series(AREA, "drop leaf sums");

/** A row's figure in millimetres; nothing where the row has no such column. */
const at = (row: Row, column: string) => mm(Number(row[column] ?? 0));

/** The older section: cove about the round-over's centre and larger by c, lip thinner by as much. */
export function jointOf(row: Row, other: Partial<RuleJoint> = {}): RuleJoint {
  const [R, c, t, f] = [at(row, "R"), at(row, "c"), at(row, "t"), at(row, "f")];
  return {
    radius: R,
    cove: mm(R + c),
    setOut: mm(0),
    crownGap: c,
    pinOut: at(row, "dx"),
    pinUp: at(row, "dy"),
    thickness: t,
    centreHeight: mm(t - R - f),
    bevel: at(row, "u"),
    ...other,
  };
}

/** Least clearance as those cases reckon it: what there is, less the most that is used up. */
function clearanceLeft(row: Row, joint: RuleJoint): number {
  const used = clearanceNeeded(at(row, "R"), at(row, "dx"), at(row, "dy")).value;
  return Math.min(at(row, "c") - used, lowerEdgeClearance(joint).value);
}

const nameOf = (row: Row) =>
  `R ${row.R}, t ${row.t}, c ${row.c}, pin ${row.dx ?? 0}, ${row.dy ?? 0}${row.u && row.u !== "0" ? `, bevel ${row.u}` : ""}`;

type Column = readonly [column: string, says: string, compute: (row: Row) => number];
type Allowed = Parameters<typeof jointCase>[4];

/** A check for each figure of a column; what a row leaves as a dash is none. */
export const columns = (
  rows: readonly Row[],
  name: (row: Row) => string,
  unit: string,
  list: readonly Column[],
  allowed?: Allowed,
): readonly Check[] =>
  rows.flatMap((row) =>
    list.flatMap(([column, says, compute]) => {
      const printed = row[column];
      if (printed === undefined) throw new Error(`no column ${column}`);
      if (printed === "-") return [];
      return [jointCase(`${name(row)}: ${says}`, printed, unit, () => compute(row), allowed)];
    }),
  );

const swings = readTable(data.swings);
const isFree = (row: Row) => row.contact === "-";
const contactOf = (row: Row) => firstContact(jointOf(row))?.swing ?? Number.NaN;

const swingChecks = [
  ...columns(swings, nameOf, "mm", [
    [
      "cove",
      "used up by the pin's place",
      (r) => clearanceNeeded(at(r, "R"), at(r, "dx"), at(r, "dy")).value,
    ],
    ["lower", "needed at the lower edge", (r) => at(r, "c") - lowerEdgeClearance(jointOf(r)).value],
    ["under", "needed under the top", (r) => at(r, "c") - undersideMargin(jointOf(r)).value],
    ["least", "clearance left", (r) => clearanceLeft(r, jointOf(r))],
    ["gap", "gap from above, leaf down", (r) => gapFromAbove(jointOf(r)).value],
    ["overlap", "lip's overlap, leaf down", (r) => lipOverlap(jointOf(r)).value],
  ]),
  ...columns(
    swings.filter(isFree),
    nameOf,
    "mm",
    [["poly", "least clearance, by polygons", (r) => swingClearance(jointOf(r)).gap]],
    within(0.0013),
  ),
  ...columns(
    swings.filter((row) => !isFree(row)),
    nameOf,
    "°",
    [["contact", "first contact, by polygons", contactOf]],
    within(0.0045),
  ),
  ...columns(swings, nameOf, "°", [
    ["limit", "leaf meets the underside", (r) => undersideLimit(jointOf(r))?.value ?? Number.NaN],
  ]),
];

const misplaced = readTable(data.misplaced);
const movedName = (row: Row) => `set wrong: ${nameOf(row)}`;
const square = (row: Row) => jointOf(row, { bevel: mm(0) });
const misplacedChecks = [
  ...columns(misplaced, movedName, "mm", [
    ["relieved", "clearance left", (r) => clearanceLeft(r, jointOf(r))],
    ["square", "clearance left, edge square", (r) => clearanceLeft(r, square(r))],
    ["gap", "gap from above, leaf down", (r) => gapFromAbove(jointOf(r)).value],
    ["overlap", "lip's overlap, leaf down", (r) => lipOverlap(jointOf(r)).value],
    ["rise", "lip's rise", (r) => lipRise(jointOf(r)).value],
  ]),
  ...columns(misplaced, movedName, "°", [["contact", "first contact", contactOf]], within(0.0002)),
];

const limits = readTable(data.limits).map((row) => ({ ...row, dx: "0", dy: "0", u: "0" }));
const middleName = (row: Row) => `R ${row.R}, t ${row.t}, c ${row.c}, pin in the middle`;
const limitChecks = [
  ...columns(limits, middleName, "mm", [
    [
      "needed",
      "needed at the lower edge",
      (r) => at(r, "c") - lowerEdgeClearance(jointOf(r)).value,
    ],
    ["bmax", "highest centre", (r) => highestCentre(mm(at(r, "R") + at(r, "c")), at(r, "c")).value],
    ["bevel", "bevel needed", (r) => bevelNeeded(jointOf(r)).value],
    ["margin", "room under the top", (r) => undersideMargin(jointOf(r)).value],
  ]),
  ...columns(limits, middleName, "°", [
    ["rub", "lower edge starts to rub", (r) => rubStarts(jointOf(r))?.value ?? Number.NaN],
    [
      "past",
      "swing past upright",
      (r) => swingPastUpright(at(r, "R"), mm(at(r, "R") + at(r, "c"))).value,
    ],
    ["limit", "leaf meets the underside", (r) => undersideLimit(jointOf(r))?.value ?? Number.NaN],
  ]),
];

const [BARREL, PLATE, ROOM] = [mm(3.175), mm(2), mm(0.5)];
const faceDepth = (r: Row) => outerFaceDepth(at(r, "b"), at(r, "over"));
const groove = (r: Row) => barrelGroove(at(r, "b"), BARREL, ROOM);
const hingeChecks = columns(readTable(data.hinges), nameOf, "mm", [
  ["q", "plates' face inside the underside", (r) => faceDepth(r).value],
  ["recess", "recess for the plates", (r) => plateRecess(faceDepth(r), PLATE).value],
  ["groove", "groove for the barrel", (r) => groove(r).value],
  ["wood", "wood over the groove", (r) => woodOverGroove(at(r, "t"), groove(r)).value],
  [
    "hole",
    "first hole of the long plate",
    (r) => firstHole(mm(at(r, "R") + at(r, "c")), at(r, "dx"), mm(8)).value,
  ],
  ["screw", "longest screw", (r) => longestScrew(at(r, "t"), faceDepth(r), mm(3)).value],
]);

/** A cutter set too high makes the fillet deeper, or the lip thinner; the pin stays where it was. */
function jointAsCut(row: Row): RuleJoint {
  const [round, cove, t, R] = [at(row, "round"), at(row, "cove"), at(row, "t"), at(row, "R")];
  return jointOf(row, {
    pinUp: round,
    crownGap: mm(at(row, "c") + round + cove),
    centreHeight: mm(t - R - at(row, "f") - round),
    // Those cases look at the cove and the round-over alone.
    bevel: mm(2),
  });
}
const cutName = (row: Row) =>
  `R ${row.R}, t ${row.t}, c ${row.c}, cutters high by ${row.round} and ${row.cove}`;
const cutRows = readTable(data.cutterHeights).map((row) => ({ ...row, dx: "0", dy: "0" }));
const cutChecks = [
  ...columns(cutRows, cutName, "mm", [
    ["lip", "lip", (r) => lipThickness(jointAsCut(r)).value],
    ["formula", "least gap, first order", (r) => coveClearance(jointAsCut(r)).value],
    ["gap", "gap from above, leaf down", (r) => gapFromAbove(jointAsCut(r)).value],
    ["overlap", "lip's overlap, leaf down", (r) => lipOverlap(jointAsCut(r)).value],
  ]),
  ...columns(
    cutRows,
    cutName,
    "mm",
    [["poly", "least clearance, by polygons", (r) => swingClearance(jointAsCut(r)).gap]],
    within(0.0005),
  ),
];

/** No section is named there; the first-order gap hangs on none, and polygons hardly. */
const screws = { short: mm(16), long: mm(45) };
const yearly = (row: Row): RuleJoint =>
  swollenJoint(
    jointOf({ ...row, R: "12.7", t: "22.225", f: "6.35", u: "2" }),
    screws,
    ratio(Number(row.strain) / 100),
  );
const yearName = (row: Row) => `c ${row.c}, pin out ${row.dx}, strain ${row.strain} %`;
const years = readTable(data.seasons);
const yearChecks = [
  ...columns(years, yearName, "mm", [
    [
      "change",
      "the fillet's gap changes by",
      (r) => -seasonalClosing(screws, perPct(Number(r.strain) / 100), mcPct(8), mcPct(9)).value,
    ],
    ["top", "pin from the round-over's centre", (r) => Number(yearly(r).pinOut)],
    ["formula", "least gap, first order", (r) => coveClearance(yearly(r)).value],
  ]),
];

const pairs = readTable(data.cutterPairs);
/** The same section with its inches in millimetres. */
const pairOf = (row: Row, c: string): Row => ({
  ...row,
  c,
  t: String(Number(row.t) * 25.4),
  R: String(Number(row.R) * 25.4),
});
const pairName = (row: Row) => `R ${row.R} in, t ${row.t} in, pin 1/8 in up`;
const pairChecks = [
  ...columns(pairs, pairName, "mm", [
    ["f", "fillet", (r) => pairFillet(pairOf(r, "0"))],
    [
      "needed",
      "needed at the lower edge",
      (r) => -lowerEdgeClearance(jointOf(pairOf(r, "0"))).value,
    ],
    ["margin", "room under the top", (r) => undersideMargin(jointOf(pairOf(r, "0"))).value],
    ["lip", "lip at c 0.4", (r) => lipThickness(jointOf(pairOf(r, "0.4"))).value],
  ]),
  // Printed to five figures, the last of them rounded twice.
  ...columns(
    pairs,
    pairName,
    "mm",
    [["bevel", "bevel at c 0.25", (r) => bevelNeeded(jointOf(pairOf(r, "0.25"))).value]],
    within(0.00001),
  ),
];
const pairFillet = (row: Row) => filletDepth(at(row, "t"), at(row, "R"), at(row, "b")).value;

/** A pin moved 1/32 in towards the leaf, on a 1/2 in radius without any clearance. */
const moved = jointOf(
  { R: "12.7", c: "0", t: "19.05", f: "3.175", u: "3", dy: "0" },
  {
    pinOut: inches(1 / 32),
  },
);
const inInches = (value: number) => value / 25.4;

export const leafChecks: readonly Check[] = [
  ...swingChecks,
  ...misplacedChecks,
  ...limitChecks,
  ...hingeChecks,
  ...cutChecks,
  ...yearChecks,
  ...pairChecks,
  maker("3/4 in top, 1/2 in radius, pin 1/8 in up: fillet", "0.125", "in", () =>
    inInches(filletDepth(inches(0.75), inches(0.5), inches(0.125)).value),
  ),
  maker(
    "pin 1/32 in out, leaf half down, half way up the round-over: gap, first order",
    "0.02210",
    "in",
    () => inInches(coveGap(moved, deg(45), deg(90)).value),
  ),
  maker(
    "the same, leaf down, foot of the round-over: gap, first order",
    "1/32",
    "in",
    () => inInches(coveGap(moved, deg(0), deg(90)).value),
    share(1e-9),
  ),
];
