import { type Fault, placeOf } from "../units/index.ts";

/**
 * Input that cannot be worked: said with a code, the place, the reason, and what would be right.
 * A fault in our own code is an `Error`; a poor design is a `Finding`.
 */
export class Problem extends Error {
  readonly code: string;
  readonly place: string;
  readonly reason: string;
  readonly remedy: string;

  constructor(code: string, place: string, reason: string, remedy: string) {
    super(`${place}: ${reason} ${remedy}`);
    this.name = "Problem";
    this.code = code;
    this.place = place;
    this.reason = reason;
    this.remedy = remedy;
  }
}

/** A fault in a text, as a problem at `where`: an option, a field, a column. */
export const problemAt = (where: string, fault: Fault): Problem =>
  new Problem(fault.code, `${where}, ${placeOf(fault)}`, fault.reason, fault.remedy);
