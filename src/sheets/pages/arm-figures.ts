import { kerfNeeded } from "../../motion/index.ts";
import type { ArmPivot } from "../../piece/index.ts";
import { type LengthUnit, type Mm, mm } from "../../units/index.ts";
import { drawnLength } from "../figures.ts";
import type { ArmPattern } from "../views/arm-pattern.ts";
import { sized } from "../views/sized.ts";
import type { Figure, Figures } from "./leaf-joint-figures.ts";

/** An arm's sizes, and what is bored for its pivot. */
export function armFigures(
  pivot: ArmPivot,
  { bore, lead }: ArmPattern,
  units: LengthUnit,
): readonly Figures[] {
  const length = (n: Mm) => drawnLength(n, units, "fit");
  const angle = typeof pivot.angle === "object" ? pivot.angle.value : pivot.angle;
  const offset = sized(pivot.offset);
  const { sink } = bore;
  const arm: readonly Figure[] = [
    { says: "pivot to the end that swings out", figure: length(sized(pivot.reach)) },
    { says: "pivot to the tail’s end", figure: length(sized(pivot.tail)) },
    { says: "height of the arm", figure: length(sized(pivot.height)) },
    { says: "opening in the rail, deep", figure: length(sized(pivot.opening)) },
    {
      says: angle === 0 ? "both ends square" : "both ends from square, parallel",
      figure: angle === 0 ? "" : `${Number(angle.toFixed(1))}°`,
    },
    { says: "saw’s cut at the ends", figure: length(sized(pivot.kerf)) },
    { says: "least that the ends need", figure: length(needed(pivot)) },
  ];
  const turns: readonly Figure[] = [
    ...pivot.washers.map((one) => ({ says: "washer under the arm", figure: length(one) })),
    { says: "screw", figure: length(sized(pivot.screw)) },
    { says: "hole through the arm, Ø", figure: length(sized(pivot.hole)) },
    ...(sink
      ? [
          { says: "countersunk from above to Ø", figure: length(sink.diameter) },
          { says: "so deep", figure: length(sink.depth) },
        ]
      : []),
    ...(lead
      ? [
          { says: "lead hole in the rail, Ø", figure: length(lead.diameter) },
          { says: "so deep under the opening", figure: length(lead.depth) },
        ]
      : []),
    ...(Math.abs(offset) > 0.005
      ? [{ says: "pivot off the middle, outwards", figure: length(offset) }]
      : []),
  ];
  return [
    { title: "Arm", rows: arm },
    { title: "Pivot", rows: turns },
  ];
}

const needed = (pivot: ArmPivot): Mm =>
  mm(Math.max(kerfNeeded(pivot, "reach").value, kerfNeeded(pivot, "tail").value));
