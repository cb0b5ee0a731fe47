import { ask, optionally } from "../../asking/index.ts";
import {
  cornerDepth,
  fenceToBlade,
  flatsForTurning,
  flatWidth,
  octagonCautions,
  octagonSetOut,
  swingAfter,
  swingOfSquare,
} from "../../making/index.ts";
import { Problem } from "../../worked/index.ts";
import { type Show, topic } from "../topic.ts";

const size = { least: 5, most: 1000 };

export const octagon = topic({
  name: "octagon",
  title: "Octagon on a square blank",
  tells: "where to mark a square to take its corners off, regular or short of a turned diameter",
  asks: {
    square: ask.length("side of the square", { ...size, example: { inch: '2 1/4"', mm: "57 mm" } }),
    diameter: optionally(
      ask.length("largest diameter to be turned; left out, the octagon is regular", {
        ...size,
        example: { inch: '2"', mm: "50 mm" },
      }),
    ),
    allowance: ask.length("allowance on that diameter", {
      least: 0,
      most: 50,
      example: { inch: '1/16"', mm: "2 mm" },
      fallback: { inch: '1/16"', mm: "2 mm" },
    }),
    centring: ask.length("how far the centres may be off", {
      least: 0,
      most: 25,
      example: { inch: '1/64"', mm: "0.5 mm" },
      fallback: { inch: '1/64"', mm: "0.5 mm" },
    }),
  },
  opensWith: ["diameter"],
  answer({ square, diameter, allowance, centring }, show) {
    const acrossFlats = diameter ? flatsForTurning(diameter, allowance, centring) : square;
    refuseMisfit(square.value, acrossFlats.value, show);
    const blank = { square, acrossFlats };
    const setOut = octagonSetOut(blank);
    const depth = cornerDepth(blank);
    return {
      results: [
        { name: "mark", worked: setOut },
        { name: "depth", worked: depth },
        { name: "flat", worked: flatWidth(depth) },
        { name: "fence", worked: fenceToBlade(square, setOut) },
        { name: "swing-before", worked: swingOfSquare(square) },
        { name: "swing-after", worked: swingAfter(square, setOut) },
      ],
      remarks: diameter
        ? [
            "The turned diameter still comes out, with the allowance and the centring error you named.",
          ]
        : ["All eight flats equal."],
      cautions: octagonCautions,
    };
  },
});

/** Said here in the asker's units: a square too small for the diameter, or needlessly large. */
function refuseMisfit(square: number, flats: number, show: Show): void {
  const say = (length: number) => show(length, "mm");
  if (flats > square + 1e-9) {
    throw new Problem(
      "octagon-blank",
      "diameter, square",
      `With its allowance the turned part wants ${say(flats)} across, the square has ${say(square)}.`,
      "Take a larger square, or turn a smaller diameter.",
    );
  }
  if (flats < square / Math.SQRT2) {
    throw new Problem(
      "octagon-blank",
      "diameter, square",
      `To leave ${say(flats)} across, the flats would meet in the middle of the square's faces.`,
      `Take a square up to ${say(flats * Math.SQRT2)}, or leave the diameter out for a regular octagon.`,
    );
  }
}
