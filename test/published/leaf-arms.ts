import {
  armDroop,
  armProud,
  droopFromPlay,
  droopUntilTail,
  edgeDrift,
  farthestReach,
  floorClearance,
  freeAngle,
  hangsInside,
  kerfNeeded,
  type LeafShape,
  leafCentre,
  outOfLine,
  reachBeyondRail,
  restAngle,
  type SwingArm,
  screwClearance,
  sideClearance,
  stopPlay,
  sweptRadius,
  swingPastUpright,
  tailForce,
  tailInside,
  washerStack,
} from "../../src/motion/index.ts";
import { deg, inches, mm, newtons, type Row, readTable } from "../../src/units/index.ts";
import { type Check, series, within } from "./check.ts";
import * as data from "./data/leaves-and-arms.ts";
import { columns, jointOf } from "./leaf.ts";

const maker = series("Rule joint of a leaf", "drop leaf sums");
const at = (row: Row, column: string) => mm(Number(row[column] ?? 0));

const shapeOf = (row: Row): LeafShape => (row.shape === "rect" ? "rectangle" : "half ellipse");
const centre = (row: Row) => leafCentre(at(row, "W"), shapeOf(row));
const drift = (row: Row) => edgeDrift(jointOf(row), centre(row), at(row, "W"));
const room = (row: Row, inwards: ReturnType<typeof mm>) =>
  sideClearance(at(row, "v"), hangsInside(jointOf(row)), inwards).value;

const hanging = readTable(data.hanging);
const leafName = (row: Row) => `leaf ${row.W} wide, t ${row.t}, ${row.shape}, pin ${row.dx ?? 0}`;
/** One leaf stands there twice, with two places of its arm. */
const leaves = readTable(data.leaves).filter((row, i, all) => row.W !== all[i - 1]?.W);
const hangingChecks = [
  ...columns(hanging, leafName, "mm", [
    ["inside", "under face inside the fillet", (r) => hangsInside(jointOf(r)).value],
    ["floor", "over the floor", (r) => floorClearance(jointOf(r), at(r, "H"), at(r, "W")).value],
    ["drift", "edge further in than plumb", (r) => drift(r).value],
    [
      "within",
      "edge inside the fillet, hanging free",
      (r) => -room({ ...r, v: "0" }, drift(r).value),
    ],
    ["plumb", "room beside it, plumb", (r) => room(r, mm(0))],
    ["free", "room beside it, hanging free", (r) => room(r, drift(r).value)],
  ]),
  ...columns(hanging, leafName, "°", [
    ["rest", "hangs at rest", (r) => restAngle(jointOf(r), centre(r)).value],
    ["past", "swing past upright, c 0.4", (r) => pastUpright(r)],
  ]),
  ...columns(leaves, leafName, "°", [
    ["rest", "hangs at rest, pin in the middle", (r) => restAngle(jointOf(r), centre(r)).value],
  ]),
  ...columns(leaves, leafName, "mm", [
    ["floor", "over the floor", (r) => floorClearance(jointOf(r), at(r, "H"), at(r, "W")).value],
  ]),
];

const pastUpright = (row: Row) => swingPastUpright(at(row, "R"), mm(at(row, "R") + 0.4)).value;

const armOf = (row: Row): SwingArm => ({
  reach: at(row, "a1"),
  tail: at(row, "a2"),
  thickness: at(row, "w"),
  offset: at(row, "off"),
  angle: deg(Number(row.angle)),
});

/** The end that stops an arm sooner. */
function play(row: Row) {
  const found = (["reach", "tail"] as const).flatMap(
    (end) => stopPlay(armOf(row), end, at(row, "kerf")) ?? [],
  );
  return found.sort((a, b) => a.value - b.value)[0];
}

const arms = readTable(data.arms);
const armName = (r: Row) => `arm ${r.a1}/${r.a2} in ${r.w}, pivot off ${r.off}, ends ${r.angle}°`;
const withSize = (rows: readonly Row[], column: string) =>
  rows.filter((row) => Number(row[column]) > 1e-6 || row[column] === "0");
const stopped = arms.filter((row) => row.play !== "no stop");
const armChecks = [
  ...columns(withSize(arms, "k1"), armName, "mm", [
    ["k1", "cut needed, reaching end", (r) => kerfNeeded(armOf(r), "reach").value],
    ["k2", "cut needed, tail", (r) => kerfNeeded(armOf(r), "tail").value],
  ]),
  ...columns(
    arms,
    armName,
    "mm",
    [
      [
        "poly1",
        "cut needed, reaching end, by polygons",
        (r) => kerfNeeded(armOf(r), "reach").value,
      ],
      ["poly2", "cut needed, tail, by polygons", (r) => kerfNeeded(armOf(r), "tail").value],
    ],
    within(0.002),
  ),
  ...columns(arms, armName, "°", [
    ["free1", "angle that frees the reaching end", (r) => freeAngle(armOf(r), "reach").value],
    ["free2", "angle that frees the tail", (r) => freeAngle(armOf(r), "tail").value],
  ]),
  ...columns(stopped, armName, "°", [
    ["play", "turns past closed", (r) => play(r)?.value ?? Number.NaN],
  ]),
  ...columns(stopped, armName, "mm", [
    ["line", "out of line", (r) => outOfLine(at(r, "a1"), play(r) ?? deg(0)).value],
  ]),
  ...columns(arms, armName, "mm", [
    ["far", "longest corner beyond the rail", (r) => farthestReach(armOf(r)).value],
    ["full", "beyond the rail, whole width", (r) => reachBeyondRail(armOf(r)).value],
    ["tail", "tail inside", (r) => tailInside(armOf(r)).value],
  ]),
];

const fromPlay = (r: Row) =>
  droopFromPlay(at(r, "a1"), at(r, "hole"), at(r, "screw"), at(r, "bearing"));
const untilTail = (r: Row) => droopUntilTail(at(r, "a1"), at(r, "a2"), at(r, "gap"));
const droopName = (r: Row) => `arm ${r.a1}/${r.a2}, hole ${r.hole}, screw ${r.screw}`;
const droops = readTable(data.droops);
const stack = (r: Row) =>
  washerStack(
    mm(Number(r.kerf) + Number(r.bore) + Number(r.proud)),
    (r.at ?? "").split(",").map((t) => mm(Number(t))),
  );
const washerName = (r: Row) => `cut ${r.kerf} under the arm, ${r.proud} proud, washers ${r.at}`;
const bearingChecks = [
  ...columns(droops, droopName, "mm", [
    ["play", "droop from play", (r) => fromPlay(r).value],
    ["tail", "droop until the tail holds", (r) => untilTail(r).value],
    ["droop", "droop", (r) => armDroop(fromPlay(r), untilTail(r)).value],
  ]),
  ...columns(droops, droopName, "N", [
    [
      "force",
      "tail's force at 50 N",
      (r) => tailForce(newtons(50), at(r, "a1"), at(r, "a2")).value,
    ],
  ]),
  ...columns(
    readTable(data.screws),
    (r) => `screw at ${r.x}, ${r.y} from the pivot`,
    "mm",
    [
      [
        "room",
        "clear of the tail, by polygons",
        (r) => screwClearance(at(r, "x"), mm(-at(r, "y")), at(r, "head"), at(r, "a2"), at(r, "w")),
      ],
    ],
    within(0.004),
  ),
  ...columns(readTable(data.pairs), (r) => `tails ${r.tail1}, ${r.tail2}, ${r.apart} apart`, "mm", [
    [
      "swept",
      "swept radii together",
      (r) =>
        sweptRadius(at(r, "tail1"), at(r, "w1")).value +
        sweptRadius(at(r, "tail2"), at(r, "w2")).value,
    ],
  ]),
  ...columns(readTable(data.washers), washerName, "mm", [
    ["sum", "best sum", (r) => stack(r).lift],
    ["short", "still missing", (r) => stack(r).short],
    [
      "top",
      "arm over the rail",
      (r) => armProud(at(r, "kerf"), at(r, "bore"), stack(r).lift).value,
    ],
  ]),
  ...columns(readTable(data.washers), washerName, "pieces", [
    ["count", "washers", (r) => stack(r).washers.length],
  ]),
];

/** A table 29 in high, 3/4 in top, pin 1/8 in up. */
const overFloor = (leaf: number) =>
  floorClearance(jointOf({ R: "12.7", c: "0", t: "19.05", f: "3.175" }), inches(29), inches(leaf))
    .value / 25.4;

export const leafArmChecks: readonly Check[] = [
  ...hangingChecks,
  ...armChecks,
  ...bearingChecks,
  maker("29 in table, 24 in leaf: over the floor", "4.375", "in", () => overFloor(24)),
  maker("29 in table, 20 in leaf: over the floor", "8.375", "in", () => overFloor(20)),
];
