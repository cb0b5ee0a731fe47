import { type PaperName, planOf, writePdf } from "../sheets/index.ts";
import { createKernel, createSolids } from "../solid/index.ts";
import type { LengthUnit } from "../units/index.ts";
import type { Workup } from "../workup/index.ts";
import { fonts } from "./fonts.ts";

/** How a piece is to be printed. */
export type Print = {
  readonly units: LengthUnit;
  readonly paper: PaperName;
  /** the date to print on the sheets */
  readonly today: Date;
};

/** As sheets have it. */
export const asked = ({ units, paper, today }: Print) => ({
  units,
  paper,
  date: today.toISOString().slice(0, 10),
});

/** The file; or, where the set has no sheet of the name asked for, the names that it has. */
export type Printed =
  | { readonly ok: true; readonly pdf: Uint8Array }
  | { readonly ok: false; readonly names: readonly string[] };

/**
 * A piece's sheets as one PDF, at true size. A wrong name is answered and not thrown: this room is a
 * bundle of its own, whose problems are of a class that the program's do not know.
 *
 * @param which  `all`, or the name of one sheet
 */
export async function printed(workup: Workup, print: Print, which: string): Promise<Printed> {
  const solids = createSolids(await createKernel());
  try {
    const { sheets } = planOf(workup, solids, asked(print));
    const chosen = which === "all" ? sheets : sheets.filter(({ id }) => id === which);
    if (chosen.length === 0) return { ok: false, names: sheets.map(({ id }) => id) };
    const pdf = await writePdf(chosen, { fonts: fonts(), made: print.today });
    return { ok: true, pdf };
  } finally {
    solids.free();
  }
}
