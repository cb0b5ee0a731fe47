import {
  cornerDepth,
  flatsForTurning,
  flatWidth,
  octagonCautions,
  octagonSetOut,
  swingAfter,
  swingOfSquare,
} from "../../making/index.ts";
import { ask, optionally } from "../question.ts";
import { topic } from "../topic.ts";

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
  answer({ square, diameter, allowance, centring }) {
    const acrossFlats = diameter ? flatsForTurning(diameter, allowance, centring) : square;
    const blank = { square, acrossFlats };
    const setOut = octagonSetOut(blank);
    const depth = cornerDepth(blank);
    return {
      results: [
        { name: "mark", worked: setOut },
        { name: "depth", worked: depth },
        { name: "flat", worked: flatWidth(depth) },
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
