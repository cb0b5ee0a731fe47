import { ask, type Question } from "../asking/index.ts";
import type { PieceDocument, Seasons } from "../piece/index.ts";
import { equilibriumMoisture } from "../wood/index.ts";
import { Problem } from "../worked/index.ts";

/** What the home's texts are asked as. */
export const homeAsks = {
  warmth: ask.temperature("warmth of the room", {
    least: -10,
    most: 45,
    example: { inch: "68 F", mm: "20 C" },
  }),
  driest: ask.humidity("humidity in the dry season", { least: 5, most: 90, example: "35 %" }),
  dampest: ask.humidity("humidity in the damp season", { least: 5, most: 90, example: "60 %" }),
  made: ask.moisture("moisture of the wood when it is made", {
    least: 4,
    most: 20,
    example: "8 %",
  }),
};

/** Reads a text at a place; what cannot be read is put among the problems. */
export type Reader = <V>(
  place: string,
  text: string,
  question: Question<V>,
  isFallback?: boolean,
) => V | undefined;

/** The moistures that a home gives; undefined when a text of it cannot be read. */
export function seasonsOf(
  { home }: PieceDocument,
  reader: Reader,
  problems: Problem[],
): Seasons | undefined {
  const [warmth, driest, dampest, made] = [
    reader("home › warmth", home.warmth, homeAsks.warmth),
    reader("home › driest", home.driest, homeAsks.driest),
    reader("home › dampest", home.dampest, homeAsks.dampest),
    reader("home › made", home.made, homeAsks.made),
  ];
  if (!warmth || !driest || !dampest || !made) return undefined;
  if (driest.value > dampest.value) {
    const reason = `The dry season reads ${home.driest}, the damp one ${home.dampest}.`;
    const remedy = "Give the smaller humidity here, and the larger one as the dampest.";
    problems.push(new Problem("seasons-swapped", "home › driest", reason, remedy));
    return undefined;
  }
  return {
    driest: equilibriumMoisture(warmth, driest),
    dampest: equilibriumMoisture(warmth, dampest),
    made,
  };
}
