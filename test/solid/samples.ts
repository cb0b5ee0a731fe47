import { type Frame, frameOf } from "../../src/geometry/index.ts";
import type { Bore, Feature, Mortise, Part, ScrewSlot, Tenon } from "../../src/piece/index.ts";
import { mm } from "../../src/units/index.ts";

export type Size = readonly [length: number, width: number, thickness: number];

/** A part of invented sizes: only its shape and pose matter here. */
export function partOf(
  [length, width, thickness]: Size,
  features: readonly Feature[] = [],
  more: Partial<Part> = {},
): Part {
  return {
    key: "test/part",
    mark: "A1",
    name: "part",
    role: "rail",
    blank: { length: mm(length), width: mm(width), thickness: mm(thickness) },
    features,
    isMirrored: false,
    pose: home,
    reference: { face: "show", edge: "upper" },
    shows: [],
    sawn: "flat",
    strips: [],
    ...more,
  };
}

export const home: Frame = frameOf([0, 0, 0], [1, 0, 0], [0, 1, 0]);

/** Lifted and turned to the left about a piece's z. */
export function turned(deg: number, at: Frame["origin"] = [0, 0, 0]): Frame {
  const angle = (deg * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return frameOf(at, [c, s, 0], [-s, c, 0]);
}

/** 30 long on a blank 100 wide and 20 thick: from 15 to 80 in y, from 6 to 13 in z. */
export const tenon = (more: Partial<Tenon> = {}): Tenon => ({
  feature: "tenon",
  key: "tenon",
  end: "right",
  length: mm(30),
  y: [mm(15), mm(80)],
  z: [mm(6), mm(13)],
  haunch: undefined,
  isMitred: false,
  ...more,
});

export const squareHaunch = { length: mm(8), isSloped: false };
export const slopedHaunch = { length: mm(8), isSloped: true };

/** On a leg 45 square, from 20 to 85 along it, 9 wide and off its middle: four of them stay apart. */
export const mortise = (face: Mortise["face"], more: Partial<Mortise> = {}): Mortise => ({
  feature: "mortise",
  key: `mortise-${face}`,
  face,
  x: [mm(20), mm(85)],
  across: [mm(14), mm(23)],
  depth: mm(13),
  haunch: undefined,
  ...more,
});

export const bore = (more: Partial<Bore> = {}): Bore => ({
  feature: "bore",
  key: "bore",
  from: [50, 0, 10],
  along: [0, 1, 0],
  diameter: mm(8),
  depth: mm(40),
  isThrough: false,
  ...more,
});

export const slot = (more: Partial<ScrewSlot> = {}): ScrewSlot => ({
  feature: "screw-slot",
  key: "slot",
  x: mm(60),
  z: mm(10),
  runs: "along",
  travel: mm(9),
  diameter: mm(5),
  headDiameter: mm(10),
  headDepth: mm(12),
  ...more,
});
