export {
  type Answers,
  type Asks,
  ask,
  choice,
  onSide,
  optionally,
  type Question,
  timber,
  timberGroups,
  timberNamed,
} from "./question.ts";
