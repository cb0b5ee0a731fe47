import { ask, choice, optionally } from "../../asking/index.ts";
import {
  finishAmount,
  finishCautions,
  finishKinds,
  panelSurface,
  spreadingRate,
} from "../../making/index.ts";
import { Problem } from "../../worked/index.ts";
import { topic } from "../topic.ts";

const size = { least: 1, most: 20000 };

export const finish = topic({
  name: "finish",
  title: "Amount of finish",
  tells: "how much finish a surface takes, all coats together",
  asks: {
    kind: choice("finish", finishKinds, "varnish"),
    coats: ask.pieces("coats", { least: 1, most: 30, whole: true, example: "3" }),
    area: optionally(
      ask.area("surface, if you know it", {
        least: 0.0001,
        most: 10000,
        example: { inch: "20 sq ft", mm: "1.9 m²" },
      }),
    ),
    length: optionally(
      ask.length("or a panel: length", { ...size, example: { inch: '72"', mm: "1800 mm" } }),
    ),
    width: optionally(ask.length("width", { ...size, example: { inch: '36"', mm: "900 mm" } })),
    thickness: optionally(
      ask.length("thickness", { ...size, example: { inch: '7/8"', mm: "22 mm" } }),
    ),
    pieces: ask.pieces("how many such panels", {
      least: 1,
      most: 10000,
      whole: true,
      example: "1",
      fallback: "1",
    }),
    coverage: optionally(
      ask.coverage("coverage printed on the tin", {
        least: 0.5,
        most: 100,
        example: { inch: "400 sq ft/gal", mm: "10 m²/l" },
      }),
    ),
    waste: ask.share("left in brush, pad and tin", {
      least: 0,
      most: 100,
      example: "10 %",
      fallback: "10 %",
    }),
  },
  opensWith: ["length", "width", "thickness"],
  answer({ kind, coats, area, length, width, thickness, pieces, coverage, waste }) {
    const surface =
      area ??
      (length && width && thickness ? panelSurface(length, width, thickness, pieces) : undefined);
    if (!surface) {
      throw new Problem(
        "missing",
        "area, length, width, thickness",
        "Neither a surface nor a panel's three sizes are given.",
        "Give the surface, such as 1.9 m² or 20 sq ft, or length, width and thickness.",
      );
    }
    const amount = (end: "least" | "most") =>
      finishAmount(surface, coats, coverage ?? spreadingRate(kind, end), waste);
    const likely = amount("least");
    return {
      results: [
        coverage
          ? { name: "amount", worked: likely, purpose: "enough" }
          : {
              name: "amount",
              worked: likely,
              low: amount("most"),
              high: likely,
              purpose: "enough",
            },
      ],
      remarks: [
        ...(area ? ["Reckoned from the surface: sizes and how many are not used."] : []),
        ...(coverage
          ? []
          : [
              "Coverage is from memory: the tin's own figure is better. The first figure takes the poorer of the range.",
            ]),
        "The first coat on bare, open-pored wood takes more.",
      ],
      cautions: finishCautions(kind),
    };
  },
});
