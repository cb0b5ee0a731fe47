export { type Kind, Refusal } from "./kind.ts";
export { kindNamed, kinds, newDocument, pieceSchema } from "./kinds.ts";
export { homeAsks, type PieceRead, pieceOf } from "./piece-of.ts";
