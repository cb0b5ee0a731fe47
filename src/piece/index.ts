export type { BoreCut, Cut, HalfSpaceCut, PrismCut, QuarterCut, SweepCut } from "./cut.ts";
export { cutsOfPart } from "./cuts-of.ts";
export { type CutPart, FORMAT, type PieceDocument, VERSION } from "./document.ts";
export { documentText } from "./document-text.ts";
export { applyEdit, type Change, type Edit } from "./edit.ts";
export type {
  ArmCut,
  Bore,
  Feature,
  Haunch,
  HingeRecess,
  KnuckleGroove,
  Mortise,
  ScrewSlot,
  Taper,
  Tenon,
} from "./feature.ts";
export type { Joint } from "./joint.ts";
export { type ArmPivot, type HingeMounting, hingeMountings, type LeafJoint } from "./leaf-joint.ts";
export { migrated } from "./migrate.ts";
export {
  type Motion,
  pathsOf,
  posedAt,
  type State,
  statesOf,
  type Turns,
  unsafeAt,
} from "./motion.ts";
export { overAll } from "./over-all.ts";
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
export { knownOf, plainly, settlerFor, type Value } from "./values.ts";
export { bodiesOfPart, bulkOfPart } from "./volume.ts";
export { type Weighing, weigh } from "./weighing.ts";
