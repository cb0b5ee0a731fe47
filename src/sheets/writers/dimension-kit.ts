import type { Point } from "../drawing.ts";
import { sizes } from "../lettering.ts";
import type { Mark } from "./mark.ts";
import { pens } from "./pens.ts";

/** The pen and the type of all dimensions. */
export const pen = pens.dimensions;
export const SIZE = sizes.figure;
/** Between the thing drawn and an extension line [mm]. */
export const CLEAR = 1;

/** From a drawing's own millimetres to those on its sheet. */
export type ToPaper = (p: Point) => Point;

/** A thin line through points. */
export const line = (...points: readonly Point[]): Mark => ({
  mark: "line",
  points,
  isClosed: false,
  pen,
});

/**
 * A dimension's figure.
 *
 * @param turn  counter-clockwise [°]
 */
export const text = (
  at: Point,
  says: string,
  turn: number,
  anchor: "start" | "middle" | "end" = "middle",
): Mark => ({ mark: "text", at, says, size: SIZE, anchor, turn, isBold: false, tone: "ink" });

/** Along a direction, and to the left of it. */
export type Ways = { readonly u: Point; readonly v: Point };

export const upright: Ways = { u: [0, 1], v: [-1, 0] };
export const level: Ways = { u: [1, 0], v: [0, 1] };

/**
 * A point so far along and to the left of a direction.
 *
 * @param along  on paper [mm]
 * @param aside  on paper [mm]
 */
export const from = ([x, y]: Point, { u, v }: Ways, along: number, aside: number): Point => [
  x + u[0] * along + v[0] * aside,
  y + u[1] * along + v[1] * aside,
];
/** Their inner product. */
export const dot = (a: Point, b: Point) => a[0] * b[0] + a[1] * b[1];
