import {
  clampCautions,
  clampCoverage,
  clampForce,
  clampsByFan,
  clampsByForce,
  gluePressure,
} from "../../making/index.ts";
import { ask, choice } from "../question.ts";
import { topic } from "../topic.ts";

const size = { least: 1, most: 20000 };

export const clamps = topic({
  name: "clamps",
  title: "Clamps for a glue-up",
  tells: "how many clamps an edge-glued panel wants, by reach and by pressure",
  asks: {
    length: ask.length("length of the glue line", {
      ...size,
      example: { inch: '48"', mm: "1200 mm" },
    }),
    thickness: ask.length("thickness of the panel", {
      ...size,
      example: { inch: '7/8"', mm: "22 mm" },
    }),
    edge: ask.length("width of the outermost board", {
      ...size,
      example: { inch: '4"', mm: "100 mm" },
    }),
    pad: ask.length("width of the pad or batten", {
      least: 0,
      most: 500,
      example: { inch: '1/2"', mm: "12 mm" },
      fallback: "0",
    }),
    head: ask.length("length of the clamp's head along the panel", {
      least: 0,
      most: 300,
      example: { inch: '1"', mm: "25 mm" },
      fallback: { inch: '1"', mm: "25 mm" },
    }),
    wood: choice("wood", ["hardwood", "softwood"] as const, "hardwood"),
    force: ask.load("force of one clamp", {
      least: 10,
      most: 1e5,
      example: { inch: "1000 lb", mm: "4 kN" },
      fallback: { inch: "1000 lb", mm: "4.4 kN" },
    }),
  },
  answer({ length, thickness, edge, pad, head, wood, force }) {
    const counts = (["least", "most"] as const).map((end) =>
      clampsByForce(clampForce(gluePressure(wood, end), thickness, length), force),
    );
    const [least, most] = counts;
    const byFan = clampsByFan(length, clampCoverage(edge, pad, head));
    return {
      results: [
        { name: "by-reach", worked: byFan },
        ...(least && most ? [{ name: "by-pressure", worked: most, low: least, high: most }] : []),
      ],
      remarks: [
        "Take the larger. A wider pad spreads the fan and saves clamps; it does not save force.",
        "Advice on pressure differs by half: a joint that closes tight all along needs the least of it.",
      ],
      cautions: clampCautions,
    };
  },
});
