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
export { type DocumentRead, LONGEST_DOCUMENT, readDocument } from "./read-document.ts";
export { documentSchema, shapeProblems } from "./shape.ts";
