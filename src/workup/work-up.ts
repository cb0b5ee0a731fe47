import { checkPiece } from "../checks/index.ts";
import { pieceOf } from "../kinds/index.ts";
import {
  bulkOfPart,
  type Piece,
  type PieceDocument,
  shapeKey,
  type Weighing,
  weigh,
} from "../piece/index.ts";
import type { Shop } from "../shop/index.ts";
import { type CutList, cutList } from "../stock/index.ts";
import type { LengthUnit } from "../units/index.ts";
import type { Finding, Problem } from "../worked/index.ts";

/** All that is computed of a piece so far, but its solids. */
export type Workup = {
  readonly piece: Piece;
  readonly weighing: Weighing;
  readonly cutList: CutList;
  /** worst first */
  readonly findings: readonly Finding[];
};

export type Outcome =
  | { readonly ok: true; readonly workup: Workup }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Shapes whose volume is kept; a few pieces' worth. */
const MOST_KEPT = 400;

/**
 * Works pieces up. What is dear is kept: the same document gives the same answer back, and volumes are
 * computed anew only for shapes that a change touches. The rest is a few milliseconds and computed
 * whole, so that nothing can be out of date.
 *
 * @param shop  whose allowances, chisels and clearances hold
 * @param side  the side of the inch that findings are worded on; else the piece's own
 */
export function createWorkup(shop: Shop, side?: LengthUnit): (document: PieceDocument) => Outcome {
  let last: { readonly document: PieceDocument; readonly outcome: Outcome } | undefined;
  const bulks = new Map<string, ReturnType<typeof bulkOfPart>>();
  const bulkOf: typeof bulkOfPart = (part) => {
    const key = shapeKey({ ...part, key: "", isMirrored: false });
    const known = bulks.get(key) ?? bulkOfPart(part);
    // Put in again at the end: the first in the map is the one longest unused.
    bulks.delete(key);
    bulks.set(key, known);
    const [oldest] = bulks.keys();
    if (bulks.size > MOST_KEPT && oldest !== undefined) bulks.delete(oldest);
    return known;
  };
  return (document) => {
    if (last?.document === document) return last.outcome;
    const outcome = workedUp(document, shop, side, bulkOf);
    last = { document, outcome };
    return outcome;
  };
}

function workedUp(
  document: PieceDocument,
  shop: Shop,
  side: LengthUnit | undefined,
  bulkOf: typeof bulkOfPart,
): Outcome {
  const read = pieceOf(document, shop);
  if (!read.ok) return read;
  const { piece } = read;
  const weighing = weigh(piece, bulkOf);
  return {
    ok: true,
    workup: {
      piece,
      weighing,
      cutList: cutList(piece, weighing, shop),
      findings: checkPiece({ ...piece, units: side ?? piece.units }, weighing, shop),
    },
  };
}
