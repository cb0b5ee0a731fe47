export { answersOf, sumsOfPieces } from "./of-piece.ts";
export {
  type Answer,
  type Outcome,
  openingTexts,
  type Result,
  reckon,
  type Topic,
} from "./topic.ts";
export { topicNamed, topics } from "./topics.ts";
