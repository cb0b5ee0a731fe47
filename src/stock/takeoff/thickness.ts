import { type Mm, mm, readLength, readTable } from "../../units/index.ts";
import { published, type Source } from "../../worked/index.ts";
import { thicknessRows } from "../data/thicknesses.ts";

/** A thickness that boards are sold in. */
export type Quarter = {
  readonly name: string;
  /** from the saw [mm] */
  readonly rough: Mm;
  /** planed on two faces [mm] */
  readonly planed: Mm;
  readonly source: Source;
};

const inch = (text: string | undefined): Mm => {
  const read = readLength(text ?? "", "inch");
  if (!read.ok) throw new Error(`the table of thicknesses holds “${text}”`);
  return mm(read.value);
};

/** Thicknesses as sold, thinnest first. */
export const quarters: readonly Quarter[] = readTable(thicknessRows).map((row) => ({
  name: row.quarter ?? "",
  rough: inch(row.rough),
  planed: inch(row.planed),
  source: published(
    "hardwood lumber thicknesses",
    "an NHLA-type table, as told by an importer’s page",
    row.known === "memory" ? "memory" : "secondary",
  ),
}));

/**
 * The thinnest that can be planed to a thickness; undefined when none can, and it must be glued up.
 *
 * @param finished  above 0 [mm]
 */
export const quarterFor = (finished: Mm): Quarter | undefined =>
  quarters.find(({ planed }) => planed >= finished - 1e-6);
