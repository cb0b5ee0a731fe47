import { type Mm, mm } from "../units/index.ts";

/** What this shop has and how it works, so far as a piece needs it. Lengths in millimetres. */
export type Shop = {
  readonly name: string;
  /** invented, for show */
  readonly isDemo: boolean;
  /** widths that a mortise can be cut to, smallest first [mm] */
  readonly chisels: readonly Mm[];
  /** added to a finished part when it is sawn out of the board [mm] */
  readonly extraLength: Mm;
  /** added to a finished width [mm] */
  readonly extraWidth: Mm;
  /** tenon thinner than its mortise, all told [mm] */
  readonly cheekClearance: Mm;
  /** mortise longer than its tenon is wide, all told [mm] */
  readonly widthClearance: Mm;
  /** mortise deeper than its tenon is long [mm] */
  readonly depthClearance: Mm;
};

/**
 * An invented small shop, which stands in until the maker's own is written down. Allowances and
 * clearances: common practice, no source.
 */
export const demoShop: Shop = {
  name: "Demo shop: one bench, one bay",
  isDemo: true,
  chisels: [6, 1 / 4, 8, 5 / 16, 3 / 8, 10, 12, 1 / 2, 16, 5 / 8]
    .map((size) => mm(size < 1 ? size * 25.4 : size))
    .sort((a, b) => a - b),
  extraLength: mm(25),
  extraWidth: mm(6),
  cheekClearance: mm(0.1),
  widthClearance: mm(0.5),
  depthClearance: mm(1.5),
};
