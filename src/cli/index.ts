export type { Io } from "./io.ts";
export { type Input, run } from "./run.ts";
