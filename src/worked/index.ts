export type { Caution } from "./caution.ts";
export type { Finding } from "./finding.ts";
export { printHtml, printText, toJson, type WorkedJson } from "./print.ts";
export { Problem, problemAt } from "./problem.ts";
export {
  assumed,
  cite,
  commonPractice,
  derived,
  givenByMaker,
  isUnproven,
  published,
  type Source,
} from "./source.ts";
export { type Step, stepsOf } from "./steps.ts";
export {
  type Given,
  given,
  type Input,
  isWorked,
  type Known,
  known,
  notesOf,
  unprovenOf,
  type Work,
  type Worked,
  wholeChain,
  work,
} from "./worked.ts";
