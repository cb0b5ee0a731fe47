export type { BoreCut, Cut, HalfSpaceCut, PrismCut, SweepCut } from "./cut.ts";
export { cutsOf, cutsOfPart } from "./cuts-of.ts";
export {
  type Assembly,
  type ByKey,
  FORMAT,
  type Home,
  type PieceDocument,
  VERSION,
} from "./document.ts";
export { documentText } from "./document-text.ts";
export { applyEdit, type Change, type Edit, type Plain } from "./edit.ts";
export type {
  Bevel,
  Bore,
  Feature,
  Haunch,
  Mortise,
  Rebate,
  ScrewSlot,
  Span,
  Taper,
  Tenon,
} from "./feature.ts";
export type { Joint } from "./joint.ts";
export { type Migrations, migrated } from "./migrate.ts";
export {
  type Blank,
  type Face,
  faces,
  type Key,
  mirrored,
  type Part,
  type Sawn,
  type Strip,
  type Triangle,
} from "./part.ts";
export type { Piece, Seasons } from "./piece.ts";
export { type DocumentRead, LONGEST_DOCUMENT, readDocument } from "./read-document.ts";
export { documentSchema, shapeProblems } from "./shape.ts";
export { type Shaped, shapeKey } from "./shape-key.ts";
export {
  plainly,
  type Settler,
  type Stands,
  type Stray,
  settlerFor,
  type Value,
} from "./values.ts";
export { bulkOfPart } from "./volume.ts";
export { densityOf, type Weighed, type Weighing, weigh } from "./weighing.ts";
