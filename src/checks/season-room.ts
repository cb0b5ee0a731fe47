import type { Piece, Value } from "../piece/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { derived, type Finding, given, type Worked, work } from "../worked/index.ts";

/** Whether every place where the top is held still lets it move through the year. */
export function seasonRoom(piece: Piece): readonly Finding[] {
  const judged = piece.values.flatMap((value) => {
    const what = /\/fastening\/[a-z]+-\d+\.(travel|tongue|gap|depth)$/.exec(value.key)?.[1];
    return what === undefined ? [] : [{ value, margin: margin(value) }];
  });
  const [tightest] = [...judged].sort((a, b) => a.margin.value - b.margin.value);
  if (!tightest) return [];
  const isShort = tightest.margin.value < -0.05;
  const { value } = tightest;
  const places = judged.filter((one) => one.margin.value < -0.05).map((one) => placeOf(one.value));
  return [
    {
      id: "seasons/top-fastening",
      group: "Seasons",
      verdict: isShort ? "watch" : "ok",
      says: isShort
        ? `${capital(value.says)} is less than the seasons ask: the top may split, or lift its fastenings.`
        : "The top can swell and shrink through the year where it is held.",
      margin: tightest.margin,
      why: [tightest.margin],
      lights: isShort ? places : [],
    },
  ];
}

const placeOf = ({ key }: Value): string => key.slice(0, key.lastIndexOf("."));
const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);

/** What is made, less what the seasons ask; a button's gap and depth count like its tongue. */
function margin({ says, inForce, computed }: Value): Worked<Mm> {
  return work({
    says: `${says}, over what the seasons ask`,
    unit: "mm",
    formula: "a = v − v₀",
    inputs: {
      v: given(`${says}, as made`, inForce, "mm"),
      "v₀": computed,
    },
    value: mm(inForce - computed.value),
    source: derived("arithmetic"),
  });
}
