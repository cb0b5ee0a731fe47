import { derived } from "../worked/index.ts";

/** Layout of two mortises in one leg: nothing to look up. */
export const layout = derived("geometry of the joint");
