import {
  latheCautions,
  latheSpeed,
  slenderness,
  speedByDiameter,
  turningStages,
} from "../../making/index.ts";
import { ask } from "../question.ts";
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
    const slender = slenderness(length, thinnest);
    return {
      results: [
        ...turningStages.map((stage) => ({
          name: stage,
          worked: latheSpeed(diameter, stage, slender),
        })),
        {
          name: "rule-low",
          says: "diameter rule, lower end",
          worked: speedByDiameter(diameter, 6000),
        },
        {
          name: "rule-high",
          says: "diameter rule, upper end, never above",
          worked: speedByDiameter(diameter, 9000),
        },
      ],
      remarks: [
        "The lower of the diameter rule and the chart. Start below it and come up only while the work runs true.",
        ...(slender.value > 12
          ? ["More than twelve diameters long: half speed, and a steady."]
          : []),
      ],
      cautions: latheCautions,
    };
  },
});
