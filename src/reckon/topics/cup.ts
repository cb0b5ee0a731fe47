import { ask, choice, optionally, timber } from "../../asking/index.ts";
import { mm } from "../../units/index.ts";
import { boardCup, faceWidthChange, pithBelow } from "../../wood/index.ts";
import { derived, Problem, work } from "../../worked/index.ts";
import { CUP_SPREAD, withFactorSpread } from "../spread.ts";
import { topic } from "../topic.ts";

const short = { least: 1, most: 3000 };

export const cup = topic({
  name: "cup",
  title: "Cup of one board",
  tells: "how hollow a flatsawn board goes when its moisture changes",
  asks: {
    species: timber(),
    width: ask.length("width of the board", { ...short, example: { inch: '8"', mm: "200 mm" } }),
    thickness: ask.length("thickness", { ...short, example: { inch: '7/8"', mm: "22 mm" } }),
    pith: optionally(
      ask.length("from the pith to the heart face", {
        ...short,
        example: { inch: '3"', mm: "75 mm" },
      }),
    ),
    chord: optionally(
      ask.length("or: chord of a ring that runs out at the heart face", {
        ...short,
        example: { inch: '4"', mm: "100 mm" },
      }),
    ),
    rise: optionally(
      ask.length("and the rise of that ring over its chord", {
        ...short,
        example: { inch: '1/2"', mm: "12 mm" },
      }),
    ),
    face: choice("face asked about", ["bark", "heart"] as const, "bark"),
    from: ask.moisture("moisture content when it was flat", {
      least: 0,
      most: 30,
      example: "12 %",
    }),
    to: ask.moisture("moisture content then", { least: 0, most: 30, example: "7 %" }),
  },
  opensWith: ["pith"],
  answer({ species, width, thickness, pith, chord, rise, face, from, to }) {
    if (pith && (chord || rise)) {
      throw new Problem(
        "given-twice",
        "pith, chord, rise",
        "The pith is given twice: by its distance and by a ring.",
        "Leave one of them out.",
      );
    }
    const byRing = chord && rise ? pithBelow(chord, rise) : undefined;
    const heart = pith ?? byRing;
    if (!heart) {
      throw new Problem(
        "missing",
        "pith, chord, rise",
        "How far the pith was is not given, and cup depends on it.",
        "Give the distance from the pith to the heart face, or chord and rise of a ring that runs out at that face.",
      );
    }
    const pithDistance =
      face === "heart"
        ? heart
        : work({
            says: "from the pith to the bark face",
            unit: "mm",
            formula: "Y = p + t",
            inputs: { p: heart, t: thickness },
            value: mm(heart.value + thickness.value),
            source: derived("arithmetic"),
          });
    const board = {
      width,
      pithDistance,
      radial: species.radial,
      tangential: species.tangential,
      from,
      to,
    };
    const depth = boardCup(board);
    return {
      results: [
        withFactorSpread("cup", depth, CUP_SPREAD),
        { name: "width-change", worked: faceWidthChange(board), purpose: "about" },
        ...(byRing ? [{ name: "pith", worked: byRing }] : []),
      ],
      remarks: [
        depth.value === 0
          ? "No change of moisture, no cup."
          : `The bark face goes ${depth.value > 0 ? "hollow" : "round"}, the heart face ${depth.value > 0 ? "round" : "hollow"}: a plus means bark side hollow.`,
        "This is the part due to the rings. One face drier than the other bends a board far more, and either way.",
      ],
    };
  },
});
