import { ask, timber } from "../../asking/index.ts";
import type { Pct } from "../../units/index.ts";
import {
  coefficientAt,
  coefficientFromShrinkage,
  outOfSquare,
  widthChange,
  widthChangeByShrinkage,
} from "../../wood/index.ts";
import type { Given } from "../../worked/index.ts";
import { MOVEMENT_SPREAD, withBoardSpread } from "../spread.ts";
import { topic } from "../topic.ts";

export const movement = topic({
  name: "movement",
  title: "Movement across the grain",
  tells: "how much a board or top widens or narrows between two moisture contents",
  asks: {
    species: timber(),
    width: ask.length("width across the grain", {
      least: 1,
      most: 20000,
      example: { inch: '36"', mm: "900 mm" },
    }),
    from: ask.moisture("moisture content now", { least: 0, most: 30, example: "7 %" }),
    to: ask.moisture("moisture content then", { least: 0, most: 30, example: "11 %" }),
    rings: ask.angle("angle of the rings to the face, 0 flatsawn, 90 quartersawn", {
      least: 0,
      most: 90,
      example: "0",
      fallback: "0",
    }),
  },
  answer({ species, width, from, to, rings }) {
    const coefficient = coefficientAt(species.radial, species.tangential, rings);
    const change = widthChange(width, coefficient, from, to);
    const shrinkage = species.tangentialShrinkage;
    const isFlat = rings.value === 0 && shrinkage && agrees(species.tangential, shrinkage);
    const isSkew = rings.value > 5 && rings.value < 85;
    return {
      results: [
        withBoardSpread("movement", change, MOVEMENT_SPREAD),
        ...(isFlat
          ? [
              {
                name: "by-shrinkage",
                purpose: "about" as const,
                says: "the same by total shrinkage",
                worked: widthChangeByShrinkage(width, shrinkage, from, to),
              },
            ]
          : []),
        ...(isSkew
          ? [
              {
                name: "out-of-square",
                worked: outOfSquare(species.radial, species.tangential, rings, from, to),
              },
            ]
          : []),
      ],
      remarks: [
        change.value === 0
          ? "No change of moisture, no movement."
          : `It ${change.value > 0 ? "widens" : "narrows"}. Along the grain wood hardly moves. Leave room for both seasons, not only from today on.`,
      ],
    };
  },
});

/**
 * Whether coefficient and total shrinkage tell the same story. They do not for woods whose fibre
 * saturation lies well under 30 %, such as redcedar and redwood: there the coefficient is better.
 */
const agrees = (coefficient: Given, shrinkage: Given<Pct>): boolean =>
  Math.abs(coefficientFromShrinkage(shrinkage).value / coefficient.value - 1) < 0.1;
