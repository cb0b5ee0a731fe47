export {
  type Answers,
  type Asks,
  ask,
  choice,
  onSide,
  optionally,
  type Question,
  thing,
  timber,
  timberGroups,
  timberNamed,
} from "./question.ts";
