export {
  answer,
  markCut,
  measure,
  override,
  turnTo,
  unmarkCut,
  writeField,
  writeHome,
} from "./commands.ts";
export { demoPieces } from "./demo.ts";
export { homeAsks } from "./home.ts";
export { idleAsks, type Kind, Refusal } from "./kind.ts";
export { kindNamed, kinds, newDocument, pieceSchema } from "./kinds.ts";
export { pieceOf } from "./piece-of.ts";
