import { mm, ratio } from "../../src/units/index.ts";
import { assumed, derived, given, published, type Worked, work } from "../../src/worked/index.ts";

/** A small chain: an answer of two inputs, one of them worked from the other and a third. */
export const span = given("span", mm(914.4), "mm");
export const part = given("a share", ratio(-0.25), "1", assumed("a usual figure"));
export const middle: Worked = work({
  says: "part of the span",
  unit: "mm",
  formula: "a = L·q",
  inputs: { L: span, q: part },
  value: mm(-228.6),
  source: derived("arithmetic"),
});
export const answer: Worked = work({
  says: "the answer",
  unit: "mm",
  formula: "y = a + 2·L",
  inputs: { a: middle, L: span },
  value: mm(1600.2),
  source: published("A book", "p. 7", "memory"),
  notes: ["a first note", "a second"],
});
