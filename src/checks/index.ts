export { checkPiece } from "./check-piece.ts";
