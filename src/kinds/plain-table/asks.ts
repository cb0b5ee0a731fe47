import type { Answers } from "../../asking/index.ts";
import { frameAsks, size } from "../frame/frame-asks.ts";
import { topAsks } from "../top/top-asks.ts";

/** What a plain table is asked. Overall sizes: common practice, no source. */
export const asks = {
  length: size("length of the top", 250, 4000, "1500 mm", '60"'),
  width: size("width of the top", 200, 1500, "800 mm", '32"'),
  height: size("height", 250, 1300, "740 mm", '29 1/4"'),
  "top-thickness": size("thickness of the top", 12, 60, "22 mm", '7/8"'),
  "end-overhang": size("top beyond the legs, at the ends", 0, 600, "60 mm", '2 1/2"'),
  "side-overhang": size("top beyond the legs, at the sides", 0, 400, "50 mm", '2"'),
  ...topAsks,
  ...frameAsks,
};

export type PlainTableAnswers = Answers<typeof asks>;

/** The questions as a maker thinks of them. */
export const groups: readonly {
  readonly title: string;
  readonly asks: readonly (keyof typeof asks)[];
}[] = [
  { title: "Overall", asks: ["length", "width", "height"] },
  {
    title: "Top",
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
  { title: "Legs", asks: ["leg", "leg-form", "foot", "taper-start"] },
  { title: "Frame", asks: ["rail-width", "rail-thickness", "setback", "corner-blocks"] },
  { title: "Joints", asks: ["tips", "haunch"] },
];
