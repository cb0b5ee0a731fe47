import type { LengthUnit, McPct } from "../units/index.ts";
import type { Species } from "../wood/index.ts";
import type { Given, Worked } from "../worked/index.ts";
import type { PieceDocument } from "./document.ts";
import type { Joint } from "./joint.ts";
import type { Motion } from "./motion.ts";
import type { Part } from "./part.ts";
import type { Stray, Value } from "./values.ts";

/** How dry the wood gets, how damp, and what it is when the piece is made. */
export type Seasons = {
  /** [% MC] */
  readonly driest: Worked<McPct>;
  /** [% MC] */
  readonly dampest: Worked<McPct>;
  /** [% MC] */
  readonly made: Given<McPct>;
};

/** The piece that a document stands for: generated, never saved. */
export type Piece = {
  readonly document: PieceDocument;
  readonly units: LengthUnit;
  readonly species: Species;
  readonly seasons: Seasons;
  readonly parts: readonly Part[];
  /** the cut ones among them, as the design would have them now */
  readonly wished: readonly Part[];
  readonly joints: readonly Joint[];
  readonly motions: readonly Motion[];
  readonly values: readonly Value[];
  readonly strays: readonly Stray[];
};
