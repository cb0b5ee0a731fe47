import { frameOf } from "../../geometry/index.ts";
import type { Part } from "../../piece/index.ts";
import type { Solid } from "../../solid/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { lookOf, type PartLook } from "./part-look.ts";
import { type View, viewOf } from "./view.ts";

/** Between the two views, and out to the first row of dimensions, on paper [mm]. */
const BETWEEN = 11;
export const ROW = 8;

/** A stretch of a part along its grain [mm]. */
export type Window = { readonly end: "left" | "right"; readonly from: number; readonly to: number };

export type PartView = "face" | "edge";

export type PartAsked = {
  readonly id: string;
  readonly units: LengthUnit;
  /** how many millimetres one on paper stands for [1] */
  readonly scale: number;
  /** both, the edge beside the face, or one alone */
  readonly views: readonly PartView[];
  /** only this end, with the places across its joint; the whole part when left out */
  readonly window?: Window;
  /** ends whose joints are drawn larger elsewhere, and whose places across stand there */
  readonly detailed: readonly ("left" | "right")[];
};

/** A part's lines as they are seen, before they have a scale. */
export type SeenPart = {
  readonly part: Part;
  readonly look: PartLook;
  readonly lines: Readonly<Record<PartView, View>>;
};

/** What is drawn of it, and how. */
export type Seen = SeenPart & { readonly asked: PartAsked };

/** A part as its face and its edge show it, in its own frame. */
export function seenPart(part: Part, solid: Solid): SeenPart {
  const look = lookOf(part);
  const body = { solid, pose: frameOf([0, 0, 0], [1, 0, 0], [0, 1, 0]) };
  const lines = { face: viewOf([body], look.faceView), edge: viewOf([body], look.edgeView) };
  return { part, look, lines };
}

/** Where the edge's view begins, above or below that of the face [mm]. */
export function edgeBase({ part, look, asked }: Seen): number {
  if (asked.views.length === 1) return 0;
  const gap = BETWEEN * asked.scale;
  return look.isEdgeBelow ? -gap - part.blank.thickness : part.blank.width + gap;
}

/**
 * Height in the drawing of a place across the part.
 *
 * @param place  y in the face's view, z in the edge's [mm]
 */
export function heightOf(seen: Seen, view: PartView, place: number): number {
  const { part, look } = seen;
  if (view === "face") return look.face === "show" ? place : part.blank.width - place;
  return edgeBase(seen) + (look.edge === "lower" ? place : part.blank.thickness - place);
}

/** Lowest and highest of a view in the drawing. */
export function heights(seen: Seen, view: PartView): readonly [number, number] {
  const { width, thickness } = seen.part.blank;
  const ends = [0, view === "face" ? width : thickness].map((n) => heightOf(seen, view, n));
  return [Math.min(...ends), Math.max(...ends)];
}
