import { ask } from "../../asking/index.ts";
import { latheCautions, latheSpeed, slenderness, turningStages } from "../../making/index.ts";
import { Problem } from "../../worked/index.ts";
import { topic } from "../topic.ts";

export const latheSpeedTopic = topic({
  name: "lathe-speed",
  title: "Lathe speed",
  tells: "how fast to turn a spindle at each stage",
  asks: {
    diameter: ask.length("largest swing: for a square, its diagonal", {
      least: 3,
      most: 1000,
      example: { inch: '3"', mm: "75 mm" },
    }),
    length: ask.length("length between centres", {
      least: 3,
      most: 5000,
      example: { inch: '28"', mm: "710 mm" },
    }),
    thinnest: ask.length("thinnest finished diameter", {
      least: 1,
      most: 1000,
      example: { inch: '1"', mm: "25 mm" },
    }),
  },
  answer({ diameter, length, thinnest }) {
    if (thinnest.value > diameter.value) {
      throw new Problem(
        "thinnest-over-swing",
        "thinnest, diameter",
        "The thinnest diameter is larger than what swings.",
        "Give the largest swing of the blank first, then the thinnest diameter it is turned to.",
      );
    }
    const slender = slenderness(length, thinnest);
    return {
      results: turningStages.map((stage) => ({
        name: stage,
        worked: latheSpeed(diameter, stage, slender),
      })),
      remarks: [
        "Start below these and come up only while the work runs true. They are the lower of a chart and of the turners' diameter rule.",
      ],
      cautions: latheCautions,
    };
  },
});
