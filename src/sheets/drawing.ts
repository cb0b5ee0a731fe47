import type { Deg, Mm } from "../units/index.ts";

/** To the right and up: in a drawing in real millimetres of the thing drawn, on a sheet of paper. */
export type Point = readonly [number, number];

/** What a line means; the lowest is drawn first. */
export const layers = [
  "hatch",
  "construction",
  "hidden",
  "centre",
  "visible",
  "dimensions",
  "text",
] as const;
export type Layer = (typeof layers)[number];

export type Stroke =
  | { readonly shape: "line"; readonly from: Point; readonly to: Point }
  /** counter-clockwise from one angle to another; 0 points to the right */
  | {
      readonly shape: "arc";
      readonly centre: Point;
      /** [mm] */
      readonly radius: Mm;
      /** [°] */
      readonly from: Deg;
      /** [°] */
      readonly to: Deg;
    }
  | { readonly shape: "path"; readonly points: readonly Point[]; readonly isClosed: boolean };

/** Colours of ink; each means what it means on the screen. */
export type Tone = "ink" | "graphite" | "hair" | "crayon" | "ochre" | "sage";

/** A line of text. Its size and its shift are those on paper, whatever the scale. */
export type Lettering = {
  readonly at: Point;
  /** moved from there, on paper: right and up */
  readonly shift: Point;
  readonly says: string;
  /** of the type on paper [mm] */
  readonly size: Mm;
  readonly anchor: "start" | "middle" | "end";
  /** counter-clockwise; 90 reads from below [°] */
  readonly turn: Deg;
  readonly isBold: boolean;
  readonly tone: Tone;
};

/** Wood that was cut through: outlines filled with thin parallel lines. */
export type Hatch = {
  readonly outlines: readonly (readonly Point[])[];
  /** of the lines [°] */
  readonly angle: Deg;
  /** between the lines, on paper [mm] */
  readonly gap: Mm;
};

/** Where a dimension's line stands: so far on paper from a place in the drawing, up or right if above 0. */
type Stand = { readonly at: number; readonly off: number };

/** One length between two points, measured across, up, or straight from one to the other. */
export type StraightDimension = {
  readonly dimension: "straight";
  readonly id: string;
  readonly along: "across" | "up" | "aligned";
  readonly from: Point;
  readonly to: Point;
  readonly stand: Stand;
  /** [mm] */
  readonly measures: Mm;
  readonly says: string;
};

export type Stop = {
  readonly at: Point;
  /** from the origin [mm] */
  readonly measures: Mm;
  readonly says: string;
};

/** Distances that all start at one origin, as a tape laid along the part reads them. */
export type RunningDimension = {
  readonly dimension: "running";
  readonly id: string;
  readonly along: "across" | "up";
  readonly origin: Point;
  readonly stops: readonly Stop[];
  readonly stand: Stand;
};

export type RadiusDimension = {
  readonly dimension: "radius";
  readonly id: string;
  readonly centre: Point;
  /** where its arrow points, from the centre [°] */
  readonly angle: Deg;
  /** [mm] */
  readonly measures: Mm;
  readonly says: string;
};

/** A length too small for a line between arrows: its name and figure stand aside, and a leader shows where. */
export type LeaderDimension = {
  readonly dimension: "leader";
  readonly id: string;
  /** what it is called before its figure */
  readonly of: string;
  readonly along: "across" | "up" | "aligned";
  readonly from: Point;
  readonly to: Point;
  /** where its arrow points */
  readonly at: Point;
  /** corners on its way from there to its knee */
  readonly via: readonly Point[];
  /** its knee from where the arrow points, on paper: right and up */
  readonly shift: Point;
  /** which way the text runs on from its knee */
  readonly runs: "left" | "right";
  /** from one point to the other, signed across and up [mm] */
  readonly measures: Mm;
  readonly says: string;
};

export type Dimension = StraightDimension | RunningDimension | RadiusDimension | LeaderDimension;

/** Something drawn, in real millimetres of it, and the scale at which it comes on paper. */
export type Drawing = {
  /** stable, of letters, digits, points and hyphens */
  readonly id: string;
  /** what it shows, for those who hear it read */
  readonly says: string;
  /** one millimetre on paper stands for so many; 1 is true size [1] */
  readonly scale: number;
  /** lines a step thinner, for what is drawn small */
  readonly isFine: boolean;
  readonly strokes: Readonly<Partial<Record<Layer, readonly Stroke[]>>>;
  readonly hatches: readonly Hatch[];
  readonly dimensions: readonly Dimension[];
  readonly texts: readonly Lettering[];
};

/**
 * A drawing with nothing on it yet.
 *
 * @param scale  how many millimetres one on paper stands for [1]
 */
export const blankDrawing = (id: string, says: string, scale: number): Drawing => ({
  id,
  says,
  scale,
  isFine: false,
  strokes: {},
  hatches: [],
  dimensions: [],
  texts: [],
});
