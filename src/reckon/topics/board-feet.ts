import { ask } from "../../asking/index.ts";
import {
  boardFeetOf,
  boardVolume,
  countedThickness,
  surfaceMeasure,
  tallyBoardFeet,
} from "../../stock/index.ts";
import { topic } from "../topic.ts";

const size = { least: 1, most: 20000 };

export const boardFeetTopic = topic({
  name: "board-feet",
  title: "Board feet",
  tells: "how much timber is in a stack, by volume and as a lumber tally counts it",
  asks: {
    thickness: ask.length("nominal thickness", { ...size, example: { inch: "5/4", mm: "32 mm" } }),
    width: ask.length("width", { ...size, example: { inch: '6 1/4"', mm: "160 mm" } }),
    length: ask.length("length", { ...size, example: { inch: "8 ft", mm: "2.4 m" } }),
    pieces: ask.pieces("how many", {
      least: 1,
      most: 100000,
      whole: true,
      example: "1",
      fallback: "1",
    }),
  },
  answer({ thickness, width, length, pieces }) {
    const counted = countedThickness(thickness);
    return {
      results: [
        { name: "board-feet", worked: boardFeetOf(counted, width, length, pieces) },
        {
          name: "tally",
          worked: tallyBoardFeet(counted, surfaceMeasure(width, length), pieces),
        },
        { name: "volume", worked: boardVolume(thickness, width, length, pieces) },
      ],
      remarks: [
        ...(counted.value > thickness.value ? ["Stock under an inch counts as an inch."] : []),
        "A tally drops parts of a foot of length and rounds each board's surface to whole feet, so the two differ. Ask whether the seller counts before or after kiln drying.",
      ],
    };
  },
});
