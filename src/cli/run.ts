import { topics } from "../reckon/index.ts";
import { Problem } from "../worked/index.ts";
import { exitCodesText } from "./exit-code.ts";
import type { Io } from "./io.ts";
import { reckonCommand } from "./reckon.ts";
import { printProblems } from "./report.ts";
import { serve } from "./serve.ts";
import { version } from "./version.ts";

/** Bytes or text that arrive piece by piece: standard input, or a test's own. */
export type Input = AsyncIterable<string | Uint8Array> & {
  /** whether somebody types them */
  readonly isTTY?: boolean;
};

const USAGE = `latewood reckon TOPIC [options]     quick sums at the bench
latewood serve [--port N] [--open]  the same on a screen, on this computer only
latewood version                    which Latewood this is

Topics: ${topics.map((t) => t.name).join(", ")}.
latewood reckon TOPIC --help says what a topic asks.
${exitCodesText}`;

/**
 * Runs one command.
 *
 * @param argv  the words behind the program's name
 * @param io  where to write
 * @param input  standard input, read only by --batch
 * @returns exit code: 0 done, 1 a finding fails, 2 bad input or unknown command
 */
export async function run(argv: readonly string[], io: Io, input: Input): Promise<number> {
  const [command, ...rest] = argv;
  switch (command) {
    case undefined:
    case "help":
    case "--help":
    case "-h":
      io.out(USAGE);
      return 0;
    case "version":
    case "--version":
      io.out(`${version}\n`);
      return 0;
    case "reckon":
      return reckonCommand(rest, io, input);
    case "serve":
      return serve(rest, io);
    default:
      printProblems(io, [
        new Problem(
          "command-unknown",
          `first word, “${command.slice(0, 40)}”`,
          "There is no such command.",
          "Use reckon, serve or version.",
        ),
      ]);
      return 2;
  }
}
