import type { LeafJoint } from "../../piece/index.ts";
import { type LengthUnit, mm } from "../../units/index.ts";
import type { Dimension, LeaderDimension, Point } from "../drawing.ts";
import { drawnLength } from "../figures.ts";
import { sized } from "./sized.ts";

type Asked = {
  readonly id: string;
  readonly units: LengthUnit;
  readonly scale: number;
  readonly swing: number;
  readonly shown: { readonly top: number };
  readonly sizes: "none" | "thickness" | "all";
};

/** Rows of names and figures over the face and under the underside or what stands proud of it, on paper [mm]. */
const ROWS = [6.5, 12, 17.5] as const;
/** Where the round-over's figure begins, and the cove's at least, right of the visible edge on paper [mm]. */
const AT = { roundOver: -31, cove: 32, lip: 8, pin: 8 } as const;
const FACE_OFF = 8;

/** The sizes of a leaf's joint; those of the leaf only while it is level. */
export function leafDimensions(joint: LeafJoint, asked: Asked): readonly Dimension[] {
  if (asked.sizes === "none") return [];
  const high = sized(joint.thickness);
  const left = -asked.shown.top;
  const thickness: Dimension = {
    ...{ dimension: "straight", id: `${asked.id}.thickness`, along: "up" },
    ...{ from: [left, 0], to: [left, high], stand: { at: left, off: -FACE_OFF } },
    measures: mm(high),
    says: drawnLength(mm(high), asked.units, "fit"),
  };
  if (asked.sizes === "thickness") return [thickness];
  const isLevel = asked.swing < 0.05;
  const all = [...ofTop(joint, asked), ...(isLevel ? ofLeaf(joint, asked) : [])];
  // Turned, the leaf hangs where the lower rows are.
  return [
    thickness,
    ...all.filter(({ shift, at }) => isLevel || at[1] / asked.scale + shift[1] > 0),
  ];
}

type Told = Omit<LeaderDimension, "dimension" | "id" | "measures" | "says" | "shift" | "via"> & {
  readonly name: string;
  readonly via?: readonly Point[];
  /** of the knee on paper: right of the visible edge, and how many rows over the face or under the underside */
  readonly knee: readonly [x: number, row: number];
};

/** A size that is told at the end of a leader. */
const leader =
  ({ id, units, scale }: Asked, { thickness, pinHeight, hinge }: LeafJoint) =>
  ({ name, knee: [x, row], via = [], ...rest }: Told): LeaderDimension => {
    const { from, to, along, at } = rest;
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
    const measures = mm({ across: dx, up: dy, aligned: Math.hypot(dx, dy) }[along]);
    const low = Math.min(0, sized(pinHeight) - hinge.pinOverFace);
    const up =
      row > 0
        ? sized(thickness) / scale + (ROWS[row - 1] ?? 0)
        : low / scale - (ROWS[-row - 1] ?? 0);
    return {
      ...rest,
      ...{ dimension: "leader", id: `${id}.${name}`, via, measures },
      shift: [x - at[0] / scale, up - at[1] / scale],
      says: drawnLength(measures, units, "fit"),
    };
  };

const DIAGONAL = Math.SQRT1_2;

function ofTop(joint: LeafJoint, asked: Asked): readonly LeaderDimension[] {
  const { rule } = joint;
  const high = sized(joint.thickness);
  const [x, y] = [sized(joint.pinOut), sized(joint.pinHeight)];
  const tell = leader(asked, joint);
  const pin: readonly LeaderDimension[] = [
    tell({
      ...{ name: "pin-height", of: "pin up", along: "up", from: [x, 0], to: [x, y], at: [x, y] },
      ...{ knee: [-AT.pin, -2], runs: "left" },
    }),
    tell({
      ...{ name: "pin-out", of: "pin out", along: "across", from: [0, y], to: [x, y], at: [x, y] },
      ...{ knee: [AT.pin, -2], runs: "right" },
    }),
  ];
  if (!rule) return pin;
  const [R, f, u] = [sized(rule.radius), sized(rule.fillet), sized(rule.bevel)];
  const foot = high - f - R;
  const on: Point = [R * DIAGONAL, foot + R * DIAGONAL];
  const aside = AT.roundOver * asked.scale;
  return [
    ...pin,
    tell({
      ...{ name: "round-over", of: "R", along: "aligned", from: [0, foot], to: on, at: on },
      ...{ via: [[aside, on[1]]], knee: [AT.roundOver, 2], runs: "right" },
    }),
    tell({
      ...{ name: "fillet", of: "fillet", along: "up", from: [0, high - f], to: [0, high] },
      ...{ at: [0, high - f / 2], knee: [-5, 1], runs: "left" },
    }),
    ...(u > 0
      ? [
          tell({
            ...{ name: "bevel", of: "bevel", along: "across", from: [R - u, 0], to: [R, 0] },
            ...{ at: [R - u / 2, foot / 2], knee: [R / asked.scale + 5, -1], runs: "right" },
          }),
        ]
      : []),
  ];
}

function ofLeaf(joint: LeafJoint, asked: Asked): readonly LeaderDimension[] {
  const { rule } = joint;
  const high = sized(joint.thickness);
  const g = sized(joint.setOut);
  const tell = leader(asked, joint);
  const setOut = tell({
    ...{ name: "set-out", of: "set-out", along: "across", from: [0, high], to: [g, high] },
    ...{ at: [g / 2, high], knee: [g / 2 / asked.scale, 3], runs: "right" },
  });
  if (!rule) return [setOut];
  const [Rc, lip] = [sized(rule.cove), sized(rule.fillet) - sized(rule.crownGap)];
  const foot = high - lip - Rc;
  const on: Point = [g + Rc * DIAGONAL, foot + Rc * DIAGONAL];
  return [
    setOut,
    tell({
      ...{ name: "lip", of: "lip", along: "up", from: [g, high - lip], to: [g, high] },
      ...{ at: [g, high - lip / 2], knee: [AT.lip, 1], runs: "right" },
    }),
    tell({
      ...{ name: "cove", of: "cove R", along: "aligned", from: [g, foot], to: on, at: on },
      ...{ knee: [Math.max(AT.cove, on[0] / asked.scale + 4), 2], runs: "right" },
    }),
  ];
}
