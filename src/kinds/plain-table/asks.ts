import { type Answers, ask, choice } from "../../asking/index.ts";

/** A length with its bounds, its default, and what a fresh piece says on each side. */
const size = (says: string, least: number, most: number, mm: string, inch: string) =>
  ask.length(says, { least, most, fallback: mm, example: { inch, mm } });

/** What a plain table is asked. Overall sizes: common practice, no source. */
export const asks = {
  length: size("length of the top", 250, 4000, "1500 mm", '60"'),
  width: size("width of the top", 200, 1500, "800 mm", '32"'),
  height: size("height", 250, 1300, "740 mm", '29 1/4"'),
  "top-thickness": size("thickness of the top", 12, 60, "22 mm", '7/8"'),
  "end-overhang": size("top beyond the legs, at the ends", 0, 600, "60 mm", '2 1/2"'),
  "side-overhang": size("top beyond the legs, at the sides", 0, 400, "50 mm", '2"'),
  "widest-strip": size("widest strip of the top", 30, 600, "125 mm", '5"'),
  sawn: choice("strips of the top sawn", ["flat", "rift", "quarter"], "flat"),
  hearts: choice("heart faces of the strips", ["alternating", "all up"], "alternating"),
  leg: size("side of a leg", 25, 150, "50 mm", '2"'),
  "leg-form": choice("legs", ["square", "tapered"], "tapered"),
  foot: size("side of a tapered leg’s foot", 12, 140, "30 mm", '1 1/4"'),
  "taper-start": size("taper starts below the rail by", 0, 400, "25 mm", '1"'),
  "rail-width": size("width of the rails", 40, 250, "95 mm", '3 3/4"'),
  "rail-thickness": size("thickness of the rails", 12, 60, "22 mm", '7/8"'),
  setback: size("rails set back behind the legs’ faces", 0, 40, "3 mm", '1/8"'),
  tips: choice("where two tenons meet in a leg their tips are", ["butted", "mitred"], "mitred"),
  haunch: choice("haunch of the tenons", ["none", "square", "sloped"], "sloped"),
  fastening: choice("top held by", ["screws in slots", "buttons"], "buttons"),
  "corner-blocks": choice("corner blocks", ["yes", "no"], "no"),
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
