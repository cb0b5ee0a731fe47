export type { BoreCut, Cut, HalfSpaceCut, PrismCut, SweepCut } from "./cut.ts";
export { cutsOfPart } from "./cuts-of.ts";
export { type CutPart, FORMAT, type PieceDocument, VERSION } from "./document.ts";
export { documentText } from "./document-text.ts";
export { applyEdit, type Change, type Edit } from "./edit.ts";
export type { Bore, Feature, Haunch, Mortise, ScrewSlot, Taper, Tenon } from "./feature.ts";
export type { Joint } from "./joint.ts";
export { migrated } from "./migrate.ts";
export {
  type Blank,
  type Face,
  faces,
  type Key,
  mirrored,
  type Part,
  type Sawn,
  type Strip,
} from "./part.ts";
export type { Piece, Seasons } from "./piece.ts";
export { LONGEST_DOCUMENT, readDocument } from "./read-document.ts";
export { documentSchema } from "./shape.ts";
export { type Shaped, shapeKey } from "./shape-key.ts";
export { plainly, settlerFor, type Value } from "./values.ts";
export { bulkOfPart } from "./volume.ts";
export { type Weighing, weigh } from "./weighing.ts";
