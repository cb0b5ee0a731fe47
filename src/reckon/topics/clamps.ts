import { ask, choice, optionally } from "../../asking/index.ts";
import {
  clampCautions,
  clampCoverage,
  clampForce,
  clampForceOf,
  clampKinds,
  clampsByFan,
  clampsByForce,
  clampsWanted,
  gluePressure,
} from "../../making/index.ts";
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
    clamp: choice("kind of clamp", clampKinds, "pipe"),
    force: optionally(
      ask.load("force of one clamp, if you know it", {
        least: 10,
        most: 1e5,
        example: { inch: "1000 lb", mm: "450 kg" },
      }),
    ),
  },
  answer({ length, thickness, edge, pad, head, wood, clamp, force }) {
    const each = force ?? clampForceOf(clamp);
    const byForce = (end: "least" | "most") =>
      clampsByForce(clampForce(gluePressure(wood, end), thickness, length), each);
    const byReach = clampsByFan(length, clampCoverage(edge, pad, head));
    const most = byForce("most");
    const least = byForce("least");
    return {
      results: [
        {
          name: "clamps",
          worked: clampsWanted(byReach, most),
          low: clampsWanted(byReach, least),
          high: clampsWanted(byReach, most),
        },
        { name: "by-reach", worked: byReach },
        { name: "by-pressure", worked: most, low: least, high: most },
      ],
      remarks: [
        "The first figure is enough in every case. A wider pad spreads the fan and saves clamps; it does not save force.",
        "Advice on pressure differs by half: a joint that closes tight all along needs the least of it.",
      ],
      cautions: clampCautions,
    };
  },
});
