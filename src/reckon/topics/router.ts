import { ask } from "../../asking/index.ts";
import {
  depthOfPass,
  passLimit,
  rimSpeed,
  routerCautions,
  routerPasses,
  routerSpeed,
} from "../../making/index.ts";
import { topic } from "../topic.ts";

export const router = topic({
  name: "router",
  title: "Router speed and passes",
  tells: "how fast a cutter may run and in how many passes to reach a depth",
  asks: {
    diameter: ask.length("largest cutting diameter", {
      least: 0.5,
      most: 88,
      example: { inch: '1 1/4"', mm: "32 mm" },
    }),
    depth: ask.length("depth in all", {
      least: 0.1,
      most: 200,
      example: { inch: '1/2"', mm: "12 mm" },
    }),
    top: ask.speed("highest speed of the router", {
      least: 1000,
      most: 40000,
      example: "22000 rpm",
      fallback: "24000 rpm",
    }),
  },
  answer({ diameter, depth, top }) {
    const speed = routerSpeed(diameter, top);
    const passes = routerPasses(depth, passLimit(diameter, true));
    return {
      results: [
        { name: "speed", worked: speed, low: routerSpeed(diameter, top, "lower"), high: speed },
        { name: "rim-speed", worked: rimSpeed(diameter, speed) },
        {
          name: "passes",
          worked: passes,
          low: routerPasses(depth, passLimit(diameter, false)),
          high: passes,
        },
        { name: "each-pass", worked: depthOfPass(depth, passes), purpose: "about" },
      ],
      remarks: [
        "Guides differ, and the slower ones ask 14 000 rpm at 1 1/4 in, 10 000 at 2 in. Small cutters, hard wood and hand-held work want the easy passes; a last skim leaves the best surface.",
        "See that the cutter's cutting length reaches this depth.",
      ],
      cautions: routerCautions,
    };
  },
});
