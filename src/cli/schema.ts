import { pieceSchema } from "../kinds/index.ts";
import { complain } from "./complain.ts";
import type { Io } from "./io.ts";
import { readWords } from "./words.ts";

/** The JSON Schema of a piece's file, as a file of its own. */
export const schemaText = (): string => `${JSON.stringify(pieceSchema(), null, 2)}\n`;

/**
 * `latewood schema`: prints it.
 *
 * @param argv  the words behind `schema`
 * @param io  where to write
 * @returns exit code: 0 done, 2 bad input
 */
export function schema(argv: readonly string[], io: Io): number {
  const spoken = readWords({ of: "latewood schema", valued: {}, switches: [] }, argv);
  if (spoken.problems.length > 0) return complain(io, false, spoken.problems);
  io.out(spoken.on.has("help") ? help : schemaText());
  return 0;
}

const help = `latewood schema: the form of a piece's file as a JSON Schema, for editors and programs.

Exit code: 0 done, 2 bad input, 3 a fault in Latewood.
`;
