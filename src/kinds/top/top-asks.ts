import { choice } from "../../asking/index.ts";
import { size } from "../frame/frame-asks.ts";
import { fastenings } from "./held.ts";

/** What any glued-up top is asked besides its sizes; common practice, no source. */
export const topAsks = {
  "widest-strip": size("widest strip of the top", 30, 600, "125 mm", '5"'),
  sawn: choice("strips of the top sawn", ["flat", "rift", "quarter"], "flat"),
  hearts: choice("heart faces of the strips", ["alternating", "all up"], "alternating"),
  fastening: choice("top held by", fastenings, "buttons"),
};
