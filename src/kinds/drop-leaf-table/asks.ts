import { type Answers, ask, choice, thing } from "../../asking/index.ts";
import { hingeMountings } from "../../piece/index.ts";
import { freedWays } from "../arm/settle-arms.ts";
import { frameAsks, idleOfFrame, size } from "../frame/frame-asks.ts";
import type { IsAnswered } from "../kind.ts";
import { topAsks } from "../top/top-asks.ts";

/** What a drop-leaf table is asked. Overall sizes: common practice, no source. */
export const asks = {
  length: size("length of the top", 500, 2600, "1100 mm", '44"'),
  width: size("width of the fixed top, from joint to joint", 250, 1200, "480 mm", '19"'),
  leaves: choice("leaves", ["two", "one"], "two"),
  leaf: size("width of a leaf", 90, 650, "290 mm", '11 1/2"'),
  height: size("height", 350, 1100, "740 mm", '29 1/4"'),
  ...topAsks,
  "top-thickness": size("thickness of top and leaves", 15, 40, "19 mm", '3/4"'),
  "end-overhang": size("top beyond the legs, at the ends", 0, 400, "60 mm", '2 1/2"'),
  "side-overhang": size("fixed top beyond the legs, at the leaves", 0, 200, "22 mm", '7/8"'),
  joint: choice("leaf joint", ["rule joint", "square edges"], "rule joint"),
  cutters: thing("cutters of the leaf joint", "jointCutters", "1/2 in pair"),
  "set-out": size("leaf set out at the edge", 0, 3, "0.4 mm", '1/64"'),
  crown: size("crown gap, fillet less lip", 0, 2, "0.1 mm", "0.004 in"),
  "pin-out": size("pin towards the leaf", 0, 3, "0.4 mm", '1/64"'),
  bevel: size("bevel of the fixed top’s lower edge", 0, 6, "0.8 mm", '1/32"'),
  hinge: thing("hinges of the leaves", "leafHinges", "table hinge 38"),
  mounting: choice("plates of the hinges", hingeMountings, "let in"),
  arms: choice("swing arms on each side", ["one", "two"], "two"),
  "arm-reach": size("arm from its pivot to the end that swings out", 60, 600, "205 mm", '8 1/4"'),
  "arm-tail": size("arm from its pivot to the end that swings in", 40, 400, "90 mm", '3 1/2"'),
  "arm-height": size("height of an arm", 15, 120, "38 mm", '1 1/2"'),
  "arm-ends": choice("ends of an arm", ["mitred", "square"], "mitred"),
  "arm-angle": ask.angle("angle of an arm’s ends from square", {
    least: 10,
    most: 50,
    example: "45",
    fallback: "45",
  }),
  "arm-freed": choice("arm freed from its rail: it is", freedWays, freedWays[0]),
  ...frameAsks,
};

export type DropLeafAnswers = Answers<typeof asks>;

/** The questions as a maker thinks of them. */
export const groups: readonly {
  readonly title: string;
  readonly asks: readonly (keyof typeof asks)[];
}[] = [
  { title: "Overall", asks: ["length", "width", "leaves", "leaf", "height"] },
  {
    title: "Top and leaves",
    asks: [
      "top-thickness",
      "end-overhang",
      "side-overhang",
      "widest-strip",
      "sawn",
      "hearts",
      "fastening",
    ],
  },
  {
    title: "Leaf joint",
    asks: ["joint", "cutters", "set-out", "crown", "pin-out", "bevel", "hinge", "mounting"],
  },
  {
    title: "Swing arms",
    asks: ["arms", "arm-reach", "arm-tail", "arm-height", "arm-ends", "arm-angle", "arm-freed"],
  },
  { title: "Legs", asks: ["leg", "leg-form", "foot", "taper-start"] },
  { title: "Frame", asks: ["rail-width", "rail-thickness", "setback", "corner-blocks"] },
  { title: "Joints", asks: ["tips", "haunch"] },
];

/** Square edges have no mouldings, and their pin stands where the gap puts it. */
export const idle = (is: IsAnswered): readonly (keyof typeof asks)[] => [
  ...idleOfFrame(is),
  ...(is("joint", "square edges") ? (["cutters", "crown", "pin-out", "bevel"] as const) : []),
  ...(is("arm-ends", "square") ? (["arm-angle"] as const) : []),
];
