import type { Piece } from "../piece/index.ts";
import { mm } from "../units/index.ts";
import { commonPractice, derived, type Finding, given, work } from "../worked/index.ts";

/** Between the floor and a rail, for who sits at it; common practice. */
const KNEES = given("least for knees", mm(610), "mm", commonPractice);
/** Tables of this height are sat at; lower and higher ones are not judged [mm]. */
const SAT_AT = [690, 800] as const;

/** Room for knees under the rails, where a table is of a height to sit at. */
export function kneeRoom({ parts }: Piece): readonly Finding[] {
  const top = parts.find((part) => part.role === "top");
  const rails = parts.filter((part) => part.role === "rail");
  if (!top || rails.length === 0) return [];
  const height = top.pose.origin[2] + top.blank.thickness;
  if (height < SAT_AT[0] || height > SAT_AT[1]) return [];
  const lowest = Math.min(...rails.map((rail) => rail.pose.origin[2]));
  const room = work({
    says: "room for knees, over the least",
    unit: "mm",
    formula: "a = k − g",
    inputs: {
      k: given(
        "floor to the rails’ lower edge",
        mm(lowest),
        "mm",
        derived("geometry of the piece"),
      ),
      g: KNEES,
    },
    value: mm(lowest - KNEES.value),
    source: derived("arithmetic"),
  });
  const isTight = room.value < 0;
  return [
    {
      id: "people/knees",
      group: "Fit and swing",
      verdict: isTight ? "watch" : "ok",
      says: isTight
        ? "Knees will meet the rails of a table sat at."
        : "There is room for knees under the rails.",
      margin: room,
      why: [room],
      lights: isTight ? rails.map((rail) => rail.key) : [],
    },
  ];
}
