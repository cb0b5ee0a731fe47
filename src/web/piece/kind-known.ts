import { type Kind, kinds } from "../../kinds/index.ts";

/** The kind of that name, where there is one: a file may name any. */
export const kindKnown = (name: string): Kind | undefined =>
  kinds.find((kind) => kind.name === name);
