import type { TenonFit } from "../../joinery/index.ts";
import type { Mm } from "../../units/index.ts";
import type { Side } from "./corner.ts";

/** What a frame of four legs and four rails is asked. Outer sizes are over the legs. */
export type FrameAsked = {
  /** over the legs, along the length [mm] */
  readonly length: Mm;
  /** over the legs, across [mm] */
  readonly width: Mm;
  /** top of the legs above the floor [mm] */
  readonly height: Mm;
  /** side of a leg's square [mm] */
  readonly leg: Mm;
  readonly legForm: "square" | "tapered";
  /** side of a tapered leg's foot [mm] */
  readonly foot: Mm;
  /** from the rail's lower edge down to where the taper starts [mm] */
  readonly taperBelow: Mm;
  /** [mm] */
  readonly railWidth: Mm;
  /** [mm] */
  readonly railThickness: Mm;
  /** of the rails' faces behind the legs' [mm] */
  readonly setback: Mm;
  readonly tips: "butted" | "mitred";
  readonly haunch: "none" | "square" | "sloped";
};

/** Settled sizes of a leg. */
export type LegSize = {
  /** [mm] */
  readonly length: Mm;
  /** along the length of the frame [mm] */
  readonly width: Mm;
  /** across the frame [mm] */
  readonly thickness: Mm;
};

/** Settled sizes of a rail. */
type RailSize = {
  /** between its shoulders [mm] */
  readonly between: Mm;
  /** [mm] */
  readonly width: Mm;
  /** [mm] */
  readonly thickness: Mm;
};

export type Legs = Readonly<Record<string, LegSize>>;
export type Rails = Readonly<Record<Side, RailSize>>;
/** By corner, the long rail's joint and the end rail's. */
export type Fits = Readonly<Record<string, { readonly long: TenonFit; readonly end: TenonFit }>>;
