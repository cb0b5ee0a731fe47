import { ask, optionally, timber } from "../../asking/index.ts";
import { boardVolume } from "../../stock/index.ts";
import { density, gravityAt, greatestMoisture, mass, typicalGravityAt } from "../../wood/index.ts";
import { Problem } from "../../worked/index.ts";
import { MASS_SPREAD, withBoardSpread } from "../spread.ts";
import { topic } from "../topic.ts";

const size = { least: 1, most: 20000 };

export const weight = topic({
  name: "weight",
  title: "Weight of wood",
  tells: "what boards or parts weigh at a moisture content",
  asks: {
    species: timber(),
    length: optionally(ask.length("length", { ...size, example: { inch: '72"', mm: "1800 mm" } })),
    width: optionally(ask.length("width", { ...size, example: { inch: '36"', mm: "900 mm" } })),
    thickness: optionally(
      ask.length("thickness", { ...size, example: { inch: '7/8"', mm: "22 mm" } }),
    ),
    pieces: ask.pieces("how many", {
      least: 1,
      most: 100000,
      whole: true,
      example: "1",
      fallback: "1",
    }),
    volume: optionally(
      ask.timber("or the volume, if you know it", {
        least: 1e-6,
        most: 1000,
        example: { inch: "40 bd ft", mm: "0.1 m³" },
      }),
    ),
    moisture: ask.moisture("moisture content", {
      least: 0,
      most: 200,
      example: "8 %",
      fallback: "8 %",
    }),
  },
  opensWith: ["length", "width", "thickness"],
  answer({ species, length, width, thickness, pieces, volume, moisture }, show) {
    const amount =
      volume ??
      (length && width && thickness ? boardVolume(thickness, width, length, pieces) : undefined);
    if (!amount) {
      throw new Problem(
        "missing",
        "length, width, thickness, volume",
        "Neither three sizes nor a volume are given.",
        "Give length, width and thickness, or the volume, such as 40 bd ft or 0.1 m³.",
      );
    }
    const most = greatestMoisture(species.basicGravity);
    if (moisture.value > most.value) {
      throw new Problem(
        "moisture-range",
        "moisture",
        `${species.name} cannot hold so much water.`,
        `Use up to ${show(most.value, "% MC")}.`,
      );
    }
    const gravity = species.volumeShrinkage
      ? gravityAt(species.basicGravity, species.volumeShrinkage, moisture)
      : typicalGravityAt(species.basicGravity, moisture);
    const dense = density(gravity, moisture);
    return {
      results: [
        withBoardSpread("weight", mass(amount, dense), MASS_SPREAD),
        { name: "density", worked: dense },
      ],
      remarks: volume
        ? ["Reckoned from the volume: sizes and how many are not used."]
        : ["A board of the same timber may well be a tenth lighter or heavier than the mean."],
    };
  },
});
