import type { LengthUnit } from "../../units/index.ts";
import type { Drawing, Lettering, Stroke } from "../drawing.ts";
import { blankDrawing } from "../drawing.ts";
import type { Paper, Placed } from "../sheet.ts";

/** A sheet before it is numbered and has its strip. */
export type Page = {
  readonly id: string;
  readonly shows: string;
  /** `1:8`; empty where nothing is to scale */
  readonly scale: string;
  readonly placed: readonly Placed[];
};

/** What all pages of a set share. */
export type Setting = { readonly paper: Paper; readonly units: LengthUnit };

/** Writing and rules that stand straight on the paper, in its own millimetres. */
export function writing(
  id: string,
  texts: readonly Lettering[],
  rules: readonly Stroke[] = [],
): Placed {
  const drawing: Drawing = {
    ...blankDrawing(id, "", 1),
    texts,
    strokes: { construction: rules },
  };
  return { drawing, at: [0, 0] };
}
