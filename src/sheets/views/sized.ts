import type { Mm } from "../../units/index.ts";
import { type Known, known } from "../../worked/index.ts";

/**
 * A size's plain number.
 *
 * @param size  worked or plain [mm]
 */
export const sized = (size: Known<Mm>): Mm => known(size, "", "mm").value;
