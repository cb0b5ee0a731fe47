import { planOf, writePdf, writeSvg } from "../sheets/index.ts";
import { createKernel, createSolids, writeGlb } from "../solid/index.ts";
import type { Workup } from "../workup/index.ts";
import { fonts } from "./fonts.ts";
import { asked, type Print } from "./printed.ts";

export type PaperFiles = readonly (readonly [name: string, contents: string | Uint8Array])[];

/** What wood is coloured in a model, whatever the timber: its own colour is not known here. */
const WOOD = "#d4b588";

/** The whole set of a piece's papers, as files of a folder. */
export async function paperFiles(workup: Workup, print: Print): Promise<PaperFiles> {
  const solids = createSolids(await createKernel());
  const { sheets, csv } = planOf(workup, solids, asked(print));
  const timber = { name: workup.piece.species.name, colour: WOOD };
  const glb = await writeGlb(
    workup.piece.parts.map((part) => ({ part, solid: solids.of(part), timber })),
  );
  solids.free();
  return [
    ["papers.pdf", await writePdf(sheets, { fonts: fonts(), made: print.today })],
    ...sheets.map(
      (sheet, i) => [`sheet-${String(i + 1).padStart(2, "0")}.svg`, writeSvg(sheet)] as const,
    ),
    ["cut-list.csv", csv],
    ["model.glb", glb],
    ["worked-up.json", `${JSON.stringify(workup, null, 2)}\n`],
  ];
}
