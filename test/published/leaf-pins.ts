import { pinClearance, pinReach, safeRadius } from "../../src/motion/index.ts";
import { deg, mm, type Row, readTable } from "../../src/units/index.ts";
import { type Check, within } from "./check.ts";
import * as data from "./data/pin-places.ts";
import { aims } from "./data/rule-joints.ts";
import { columns, jointOf } from "./leaf.ts";

const nameOf = (row: Row) => `R ${row.R}, t ${row.t}, c ${row.c}, bevel ${row.u}`;

/** Share of places in a square, 3 mm each way in steps of 0.1, from which the leaf swings free. */
function safeShare(row: Row): number {
  const joint = jointOf(row);
  const steps = Array.from({ length: 61 }, (_, i) => mm(-3 + i / 10));
  const free = steps.flatMap((x) => steps.filter((y) => pinClearance(joint, x, y) >= 0));
  return free.length / steps.length ** 2;
}

/** Where a line from 0.6 mm out and 0.4 mm down meets the edge of the free region. */
function edge(row: Row, axis: "dx" | "dy"): number {
  const aim = { dx: 0.6, dy: -0.4 };
  const way = Number(row.way);
  const from = jointOf({ ...row, dx: String(aim.dx), dy: String(aim.dy) });
  const r = pinReach(from, deg(way), mm(6));
  const turn = axis === "dx" ? Math.cos : Math.sin;
  return aim[axis] + r * turn((way * Math.PI) / 180);
}

/** Among what does not bind, the lip must still overlap when the leaf is down. */
function aimRadius(row: Row): number {
  const section = { ...row, R: "12.7", t: "22.225", f: "6.35", u: "6" };
  const overlap = (Number(row.dx) + Number(row.dy)) / Math.SQRT2;
  const limit = (Number(row.limit) - Number(row.c) - Number(row.dx) + Number(row.dy)) / Math.SQRT2;
  return Math.min(overlap, limit, safeRadius(jointOf(section)).value);
}

export const pinPlaceChecks: readonly Check[] = [
  ...columns(
    readTable(data.safeShares),
    nameOf,
    "1",
    [["share", "share of pin places that swing free", safeShare]],
    within(0.001),
  ),
  ...columns(
    readTable(data.safeEdges),
    (row) => `${nameOf(row)}, towards ${row.way}°`,
    "mm",
    [
      ["dx", "edge of the free places, out", (row) => edge(row, "dx")],
      ["dy", "the same, up", (row) => edge(row, "dy")],
    ],
    within(0.002),
  ),
  ...columns(
    readTable(aims),
    (row) => `c ${row.c}, pin ${row.dx}, ${row.dy}, gap up to ${row.limit}`,
    "mm",
    [["radius", "pin may be off by", aimRadius]],
    within(0.002),
  ),
];
