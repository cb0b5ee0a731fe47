export {
  type Answers,
  type Asks,
  ask,
  choice,
  onSide,
  optionally,
  type Question,
  type ShopList,
  thing,
  timber,
  timberGroups,
  timberNamed,
} from "./question.ts";
