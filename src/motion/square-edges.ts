import { type Deg, deg, type Mm, mm } from "../units/index.ts";
import { derived, type Known, known, type Worked, work } from "../worked/index.ts";
import type { Spot } from "./corners.ts";

/** A leaf joint between square edges, seen across: x out from the top's edge, y up from the underside. */
type SquareEdges = {
  /** of top and leaf [mm] */
  readonly thickness: Known<Mm>;
  /** gap between the edges, closed [mm] */
  readonly setOut: Known<Mm>;
  /** pin out from the top's edge [mm] */
  readonly pinOut: Known<Mm>;
  /** pin over the underside, below nought when it lies under it [mm] */
  readonly pinHeight: Known<Mm>;
};

/** The edges of two square members that can run into the other one. */
type SquareContact =
  | "lower edge of the leaf"
  | "upper edge of the leaf"
  | "lower edge of the top"
  | "upper edge of the top";

/** Where a leaf between square edges first binds. */
export type SquareBind = {
  /** leaf down by this [°] */
  readonly swing: Deg;
  readonly contact: SquareContact;
  /** place of that edge then [mm] */
  readonly at: Spot;
};

const RIGHT = Math.PI / 2;
/** Members that overlap by less than this only touch [mm]. */
const TOUCH = 1e-6;

const sizesOf = ({ thickness, setOut, pinOut, pinHeight }: SquareEdges) => ({
  t: known(thickness, "thickness", "mm"),
  g: known(setOut, "leaf set out at the edge", "mm"),
  d_x: known(pinOut, "pin out from the top’s edge", "mm"),
  h: known(pinHeight, "pin over the underside", "mm"),
});

/** An edge of one member, as the other one's region lies: that at x ≤ 0, between heights 0 and t. */
type Turning = {
  /** the pin out from the other's edge */
  readonly out: number;
  readonly h: number;
  /** where the turning edge starts: the gap out from the other's, at this height */
  readonly g: number;
  readonly y: number;
  readonly t: number;
};

/** Swing at which a turning edge enters the other member; undefined when it never does. */
function entersAt({ out, h, g, y, t }: Turning): number | undefined {
  const r = Math.hypot(g - out, y - h);
  const start = Math.atan2(y - h, g - out);
  const place = (swing: number): Spot => ({
    x: out + r * Math.cos(start - swing),
    y: h + r * Math.sin(start - swing),
  });
  const isInside = (swing: number) => {
    const at = place(swing);
    return -at.x > TOUCH && at.y > TOUCH && t - at.y > TOUCH;
  };
  // It crosses the lines that bound the other at these swings alone; between two it is in or out.
  const across = Math.abs(out) <= r ? Math.acos(-out / r) : undefined;
  const levels = [-h, t - h].filter((up) => Math.abs(up) <= r).map((up) => Math.asin(up / r));
  const crossings = [
    ...(across === undefined ? [] : [across, -across]),
    ...levels.flatMap((a) => [a, Math.PI - a]),
  ]
    .map((direction) => start - direction)
    .map((swing) => swing - 2 * Math.PI * Math.floor(swing / (2 * Math.PI)))
    .filter((swing) => swing < RIGHT);
  const swings = [0, ...crossings, RIGHT].sort((a, b) => a - b);
  return swings.find((from, i) => {
    const to = swings[i + 1];
    return to !== undefined && isInside((from + to) / 2);
  });
}

/**
 * Where a leaf between square edges first binds on its way down: exact, for a corner enters the other
 * member only as it crosses one of its faces. Undefined when it swings free.
 */
export function squareBind(edges: SquareEdges): SquareBind | undefined {
  const s = sizesOf(edges);
  const [t, g, out, h] = [s.t.value, s.g.value, s.d_x.value, s.h.value];
  const turned = (y: number, swing: number): Spot => ({
    x: out + (g - out) * Math.cos(swing) + (y - h) * Math.sin(swing),
    y: h - (g - out) * Math.sin(swing) + (y - h) * Math.cos(swing),
  });
  const found = [0, t].flatMap((y) => {
    const end = y === 0 ? "lower" : "upper";
    const leaf = entersAt({ out, h, g, y, t });
    // Seen from the leaf the top turns towards it just so, from the other side.
    const top = entersAt({ out: g - out, h, g, y, t });
    return [
      { swing: leaf, contact: `${end} edge of the leaf` as const, at: turned(y, leaf ?? 0) },
      { swing: top, contact: `${end} edge of the top` as const, at: { x: 0, y } },
    ];
  });
  const [first] = found
    .flatMap(({ swing, ...rest }) => (swing === undefined ? [] : [{ swing, ...rest }]))
    .sort((a, b) => a.swing - b.swing);
  return first && { ...first, swing: deg((first.swing * 180) / Math.PI) };
}

/**
 * How much higher the pin could lie before the lower edges of leaf and top run into each other: over
 * the gap it may stand as high as it is from the farther edge.
 *
 * @returns room [mm], negative where they bind
 */
export function squareRoom(edges: SquareEdges): Worked<Mm> {
  const { g, d_x, h } = sizesOf(edges);
  const [gap, out, high] = [g.value, d_x.value, h.value];
  const whole = {
    says: "room between the lower edges as they turn",
    unit: "mm",
    inputs: { g, d_x, h },
    source: derived("geometry of the joint’s section"),
  } as const;
  const low = Math.max(0, high);
  if (out < 0)
    return work({
      ...whole,
      formula: "a = g − d_x − √(d_x² + max(0, h)²)",
      value: mm(gap - out - Math.sqrt(out ** 2 + low ** 2)),
    });
  if (out > gap)
    return work({
      ...whole,
      formula: "a = d_x − √((d_x − g)² + max(0, h)²)",
      value: mm(out - Math.sqrt((out - gap) ** 2 + low ** 2)),
    });
  return work({
    ...whole,
    formula: "a = max(d_x, g − d_x) − h",
    value: mm(Math.max(out, gap - out) - high),
  });
}

/**
 * Gap seen from above between the top's edge and a leaf that hangs down on square edges.
 *
 * @returns gap [mm]
 */
export function squareGapDown(edges: SquareEdges): Worked<Mm> {
  const { d_x, h } = sizesOf(edges);
  return work({
    says: "gap seen from above, leaf down",
    unit: "mm",
    formula: "G = d_x − h",
    inputs: { d_x, h },
    value: mm(d_x.value - h.value),
    source: derived("geometry of the joint’s section"),
  });
}
