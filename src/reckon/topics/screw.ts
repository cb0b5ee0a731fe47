import { ask, choice, timber } from "../../asking/index.ts";
import {
  lateralLoad,
  leadHole,
  screwNumbered,
  screwNumbers,
  screwWithdrawal,
  screwWithdrawalAllowed,
  shankHole,
} from "../../wood/index.ts";
import { commonPractice, Problem } from "../../worked/index.ts";
import { topic } from "../topic.ts";

export const screw = topic({
  name: "screw",
  title: "Wood screws",
  tells: "what a screw holds in side grain, and the holes to bore for it",
  asks: {
    species: timber("timber that holds the thread"),
    number: ask.pieces("number of the screw", {
      least: 4,
      most: 24,
      whole: true,
      example: "8",
      prefix: /^\s*(?:#|no\.?|number)/i,
    }),
    thread: choice("thread", ["cut", "rolled"] as const, "cut"),
    grip: ask.length("thread in the wood", {
      least: 1,
      most: 200,
      example: { inch: '1"', mm: "25 mm" },
    }),
  },
  answer({ species, number, thread, grip }) {
    const numbers = screwNumbers(thread);
    if (!numbers.includes(String(number.value))) {
      throw new Problem(
        "screw-number",
        "number",
        `There is no ${thread}-thread screw of this number in the table.`,
        `Use ${numbers.join(", ")}.`,
      );
    }
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
    const isDeep = grip.value >= 7 * chosen.diameter.value;
    const sideways = isDeep ? lateralLoad("screw", species, chosen.diameter) : undefined;
    return {
      results: [
        { name: "allowed", worked: screwWithdrawalAllowed(pull), purpose: "safe" },
        {
          name: "lead-hole",
          worked: leadHole(chosen.root, species.isSoftwood),
          purpose: "bit",
        },
        {
          name: "shank-hole",
          worked: shankHole(chosen, species.isSoftwood),
          purpose: "clearance",
        },
        { name: "ultimate", worked: screwWithdrawal(pull), purpose: "about" },
        ...(sideways
          ? [
              {
                name: "sideways",
                says: "sideways load at which it starts to give: not a safe load",
                worked: sideways,
                purpose: "safe" as const,
              },
            ]
          : []),
      ],
      remarks: [
        "In side grain, lead hole bored. End grain is not to be trusted with a pull. Holes are to the nearest drill; published hole tables run up to 1/32 in larger in hardwood, so try one on scrap. The upper piece is taken to be as hard as the lower.",
        ...(isDeep
          ? []
          : [
              "No sideways figure: it asks for seven diameters of thread in the wood, and this has less.",
            ]),
        ...(isDeep && !sideways
          ? ["The handbook has no sideways factor for a wood of this weight."]
          : []),
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
