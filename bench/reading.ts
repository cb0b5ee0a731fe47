import { mm, printLength, readLength, readQuantity } from "../src/units/index.ts";
import { type Timing, time } from "./measure.ts";

const notations = ['1 1/4"', "1-1/4 in", "1¼″", `5' 6 1/2"`, "30 mm", "3,2cm", '27/64" full', "12"];
const refused = ["5 parsecs", "1 5/4 in", "1,250 mm", `5' 14"`, "", "x".repeat(121)];
const lengths = [31.75, 10.84, 0.18, 1689.1, -19, 900].map(mm);

/** Reading and printing: what happens with every key that is pressed in a field. */
export function reading(): readonly Timing[] {
  return [
    time("readLength, eight notations", () => notations.map((t) => readLength(t, "inch"))),
    time("readLength, six refusals", () => refused.map((t) => readLength(t, "inch"))),
    time("readQuantity, 1.5e6 psi", () => readQuantity("1.5e6 psi", "stress", "mm")),
    time("printLength, six in inches", () =>
      lengths.map((n) => printLength(n, { units: "inch", feet: true })),
    ),
    time("printLength, six in mm", () => lengths.map((n) => printLength(n, { units: "mm" }))),
  ];
}
