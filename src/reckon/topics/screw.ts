import {
  lateralLoad,
  leadHole,
  screwNumbered,
  screwWithdrawal,
  screwWithdrawalAllowed,
  shankHole,
} from "../../wood/index.ts";
import { commonPractice, Problem } from "../../worked/index.ts";
import { ask, choice, timber } from "../question.ts";
import { topic } from "../topic.ts";

export const screw = topic({
  name: "screw",
  title: "Wood screws",
  tells: "what a screw holds in side grain, and the holes to bore for it",
  asks: {
    species: timber("timber that holds the thread"),
    number: ask.pieces("number of the screw", { least: 4, most: 24, whole: true, example: "8" }),
    thread: choice("thread", ["cut", "rolled"] as const, "cut"),
    grip: ask.length("thread in the wood", {
      least: 1,
      most: 200,
      example: { inch: '1"', mm: "25 mm" },
    }),
  },
  answer({ species, number, thread, grip }) {
    const chosen = screwNumbered(String(number.value), thread);
    const pull = { gravity: species.gravity, diameter: chosen.diameter, length: grip };
    if (grip.value > 40 * chosen.diameter.value) {
      throw new Problem(
        "screw-grip",
        "grip",
        "The thread is longer than such a screw is made.",
        "Measure the threaded part that is in the wood.",
      );
    }
    const sideways = lateralLoad("screw", species, chosen.diameter);
    const deep = grip.value >= 7 * chosen.diameter.value;
    return {
      results: [
        { name: "allowed", worked: screwWithdrawalAllowed(pull) },
        { name: "ultimate", worked: screwWithdrawal(pull) },
        ...(sideways ? [{ name: "sideways", worked: sideways }] : []),
        { name: "lead-hole", worked: leadHole(chosen.root, species.isSoftwood) },
        { name: "shank-hole", worked: shankHole(chosen, species.isSoftwood) },
      ],
      remarks: [
        "In side grain, lead hole bored. End grain is not to be trusted with a pull.",
        ...(deep
          ? []
          : ["The sideways figure asks for seven diameters of thread in the wood; this has less."]),
        ...(sideways ? [] : ["The handbook has no sideways factor for a wood of this weight."]),
      ],
      cautions: [
        {
          says: "Where a fall could hurt somebody (wall cabinets, seats, swings), use the fastener and the safety factor that the local code or the hardware's maker asks for.",
          source: commonPractice,
        },
      ],
    };
  },
});
