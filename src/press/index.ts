export { type PaperFiles, paperFiles } from "./paper-files.ts";
export { printed } from "./printed.ts";
