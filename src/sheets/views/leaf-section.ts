import type { LeafJoint, Piece } from "../../piece/index.ts";
import { type Deg, deg, type LengthUnit, type Mm, mm } from "../../units/index.ts";
import { blankDrawing, type Drawing, type Hatch, type Point, type Stroke } from "../drawing.ts";
import { bedded } from "./bedded.ts";
import { breakLine } from "./clip-window.ts";
import { leafDimensions } from "./leaf-dimensions.ts";
import { hingeLines } from "./leaf-hinge.ts";
import { leafProfile, topProfile } from "./leaf-profile.ts";
import { sized } from "./sized.ts";
import { turnedPoint, turnedStroke } from "./turned.ts";

/** How much of a joint is shown. */
type Shown = {
  /** in from the visible edge [mm] */
  readonly top: Mm;
  /** out from it [mm] */
  readonly leaf: Mm;
};

/** What a drawing of a leaf's joint shows, and how. */
export type LeafSectionAsked = {
  readonly id: string;
  readonly units: LengthUnit;
  /** how many millimetres one on paper stands for; below 1 it is enlarged [1] */
  readonly scale: number;
  /** leaf down by this [°] */
  readonly swing: Deg;
  readonly shown: Shown;
  /** the leaf dashed as well */
  readonly ghost?: {
    /** down by this [°] */
    readonly swing: Deg;
    /** shown so far out from the visible edge [mm] */
    readonly leaf: Mm;
  };
  /** the joint's sizes; none, its thickness alone, or all */
  readonly sizes: "none" | "thickness" | "all";
};

/** Between the lines of a hatch on paper [mm]. */
const GAP = mm(1.6);
/** How far a pin's middle lines run past its barrel, on paper [mm]. */
const PAST = 2;

/** What of a joint its hinge needs to be seen whole: so far in and out from the visible edge. */
export function wholeHinge({ hinge, pinOut }: LeafJoint): Shown {
  const out = sized(pinOut);
  return { top: mm(hinge.short.reach - out + 7), leaf: mm(hinge.long.reach + out + 7) };
}

/**
 * A leaf's joint cut across through the middle of a hinge: x out from the fixed top's visible edge,
 * y up from the underside. Its outlines are what the parts' own features cut.
 */
export function leafSection(
  piece: Pick<Piece, "parts">,
  joint: LeafJoint,
  asked: LeafSectionAsked,
): Drawing {
  const { shown, scale, swing, ghost } = asked;
  const pin = pinOf(joint);
  const turn = { about: pin, by: swing };
  const [top, leaf] = [
    bedded(topProfile(piece, joint, shown.top)),
    bedded(leafProfile(piece, joint, shown.leaf)),
  ];
  const goes = (strokes: readonly Stroke[]) => strokes.map((one) => turnedStroke(one, turn));
  const hinge = hingeLines(joint.hinge, pin);
  const within = screwsWithin(shown);
  const high = sized(joint.thickness);
  const brokenTop = breakLine(-shown.top, 0, high, scale);
  const brokenLeaf = turnedStroke(breakLine(shown.leaf, 0, high, scale), turn);
  const hatch = (outlines: Hatch["outlines"], angle: number): Hatch => ({
    outlines,
    angle: deg(angle),
    gap: GAP,
  });
  return {
    ...blankDrawing(asked.id, saysOf(joint, swing), scale),
    strokes: {
      visible: [
        ...top.sides,
        ...within(hinge.short),
        ...goes([...leaf.sides, ...within(hinge.long)]),
        hinge.barrel,
      ],
      hidden: [
        ...top.behind,
        ...goes(leaf.behind),
        ...(ghost ? ghostOf(piece, joint, ghost, pin) : []),
      ],
      centre: [
        ...within(hinge.screws.short),
        ...goes(within(hinge.screws.long)),
        ...cross(pin, joint.hinge.barrel + PAST * scale),
      ],
      dimensions: [brokenTop, brokenLeaf],
    },
    hatches: [
      hatch(top.outlines, 45),
      hatch(
        leaf.outlines.map((one) => one.map((p) => turnedPoint(p, turn))),
        135 - swing,
      ),
    ],
    dimensions: leafDimensions(joint, asked),
  };
}

/** A joint's pin in the section. */
const pinOf = ({ pinOut, pinHeight }: LeafJoint): Point => [sized(pinOut), sized(pinHeight)];

function ghostOf(
  piece: Pick<Piece, "parts">,
  joint: LeafJoint,
  { swing, leaf }: NonNullable<LeafSectionAsked["ghost"]>,
  about: Point,
): readonly Stroke[] {
  const { sides } = leafProfile(piece, joint, leaf);
  return sides.map((one) => turnedStroke(one, { about, by: swing }));
}

const cross = ([x, y]: Point, half: number): readonly Stroke[] => [
  { shape: "line", from: [x - half, y], to: [x + half, y] },
  { shape: "line", from: [x, y - half], to: [x, y + half] },
];

const saysOf = ({ rule, thickness }: LeafJoint, swing: number): string => {
  const how = swing < 0.05 ? "leaf up" : `leaf ${swing.toFixed(0)}° down`;
  return `${rule ? "Rule joint" : "Square joint"} of a drop leaf in section, ${sized(thickness).toFixed(1)} mm thick, ${how}`;
};

/** What of plates and screws lies where the section is shown: plates are cut off, screws left out. */
const screwsWithin =
  ({ top, leaf }: Shown) =>
  (strokes: readonly Stroke[]): readonly Stroke[] =>
    strokes.flatMap((stroke): readonly Stroke[] => {
      const isIn = ([x]: Point) => x >= -top && x <= leaf;
      if (stroke.shape === "line") return isIn(stroke.from) ? [stroke] : [];
      if (stroke.shape !== "path") return [stroke];
      const held = ([x, y]: Point): Point => [Math.max(-top, Math.min(leaf, x)), y];
      if (stroke.points.every(isIn)) return [stroke];
      const [a, b, c, d] = stroke.points.map(held);
      return a && b && c && d
        ? [
            { shape: "line", from: a, to: b },
            { shape: "line", from: c, to: d },
          ]
        : [];
    });
