import type { CutList } from "../stock/index.ts";
import { type LengthUnit, MM_PER_INCH } from "../units/index.ts";
import { writeCsv } from "./writers/csv.ts";

/** The cut list as CSV: lengths as plain figures in the unit that the heads name. */
export function cutListCsv({ rows }: CutList, units: LengthUnit): string {
  const unit = units === "inch" ? "in" : "mm";
  const size = (length: number): number =>
    units === "inch" ? rounded(length / MM_PER_INCH, 4) : rounded(length, 2);
  const sides = ["length", "width", "thickness"] as const;
  const head = [
    "marks",
    "mirrored",
    "part",
    "pieces",
    ...sides.map((side) => `finished ${side} [${unit}]`),
    ...sides.map((side) => `rough ${side} [${unit}]`),
    "sawn from",
    "layers",
    "board feet",
    "mass [kg]",
  ];
  return writeCsv([
    head,
    ...rows.map((row) => [
      row.marks.join(" "),
      row.mirrored.join(" "),
      row.name,
      row.pieces,
      ...sides.map((side) => size(row.finished[side])),
      ...sides.map((side) => size(row.rough[side])),
      row.quarter?.name ?? "",
      row.layers,
      rounded(row.boardFeet.value, 3),
      rounded(row.mass, 3),
    ]),
  ]);
}

const rounded = (n: number, digits: number): number => Number(n.toFixed(digits));
