import { hangsAt } from "../../motion/index.ts";
import type { LeafJoint, Piece } from "../../piece/index.ts";
import { type Deg, deg, type LengthUnit, type Mm, mm } from "../../units/index.ts";
import type { Drawing } from "../drawing.ts";
import type { Placed } from "../sheet.ts";
import { leafSection } from "./leaf-section.ts";
import {
  pinRegion,
  regionDrawing,
  type TightPlace,
  tightDrawing,
  tightPlace,
} from "./pin-region.ts";
import { sized } from "./sized.ts";

/** What is drawn of a leaf's joint while its sizes are written. */
type LiveAsked = {
  readonly units: LengthUnit;
  /** of what it is drawn on [mm] */
  readonly wide: Mm;
  /** leaf down by this; past its rest it rests [°] */
  readonly swing: Deg;
};

/** A joint drawn for the screen, in layers that are told apart there. */
export type LiveSection = {
  readonly section: Placed;
  /** where the pin may stand; undefined where no place near it frees the leaf */
  readonly region: Placed | undefined;
  readonly tight: (Placed & { readonly place: TightPlace }) | undefined;
  /** of what it is drawn on [mm] */
  readonly height: Mm;
  /** leaf at rest, down by this [°] */
  readonly rest: Deg;
};

/**
 * Kept left of the visible edge and right of the leaf for figures, and above and below the wood; a leaf
 * that hangs runs on beyond what is shown [mm].
 */
const ROUND = { left: 46, figures: 34, right: 12, above: 21, below: 24 } as const;
/** Past a cove so much of the leaf is shown [mm]. */
const PAST = 6;

/** A leaf's joint as large as the screen's place for it lets it. */
export function liveSection(
  piece: Pick<Piece, "parts">,
  leaf: LeafJoint,
  { units, wide, swing }: LiveAsked,
): LiveSection {
  const { rule, thickness, setOut } = leaf;
  const high = sized(thickness);
  const out = sized(setOut) + (rule ? sized(rule.cove) : 0.7 * high) + PAST;
  const scale = out / (wide - ROUND.left - ROUND.right);
  const rest = hangsAt(leaf).value;
  const shown = { top: mm(ROUND.figures * scale), leaf: mm(out) };
  const drawing = leafSection(piece, leaf, {
    ...{ id: "live-section", units, scale, shown, sizes: "all" },
    swing: deg(Math.min(swing, rest)),
  });
  const at = [ROUND.left, ROUND.below] as const;
  const place = (one: Drawing): Placed => ({ drawing: one, at });
  const [region, tight] = [pinRegion(leaf), tightPlace(leaf)];
  return {
    section: place(drawing),
    region: region && place(regionDrawing("live-region", region, scale)),
    tight: tight && { ...place(tightDrawing("live-tight", leaf, tight, scale)), place: tight },
    height: mm(ROUND.below + high / scale + ROUND.above),
    rest,
  };
}
