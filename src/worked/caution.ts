import type { Source } from "./source.ts";

/** What can hurt somebody, in plain words, with who says so. */
export type Caution = {
  readonly says: string;
  readonly source: Source;
};
