import { kinds } from "../kinds/index.ts";
import { topics } from "../reckon/index.ts";
import { Problem } from "../worked/index.ts";
import { check } from "./check.ts";
import { exitCodesText } from "./exit-code.ts";
import type { Io } from "./io.ts";
import { makeNew } from "./new.ts";
import { parts } from "./parts.ts";
import { plan } from "./plan.ts";
import { reckonCommand } from "./reckon.ts";
import { printProblems } from "./report.ts";
import { schema } from "./schema.ts";
import { serve } from "./serve.ts";
import { version } from "./version.ts";

/** Bytes or text that arrive piece by piece: standard input, or a test's own. */
export type Input = AsyncIterable<string | Uint8Array> & {
  /** whether somebody types them */
  readonly isTTY?: boolean;
};

const USAGE = `latewood new KIND [-o FILE]            a fresh piece's file
latewood parts PIECE [options]         its cut list, by marks
latewood check PIECE [options]         every judgement on it, worst first
latewood plan PIECE -o DIR [options]   its papers: PDF, SVG, CSV, GLB, JSON
latewood schema                        the form of a piece's file, for editors
latewood reckon TOPIC [options]        quick sums at the bench
latewood serve [options]               all of it on a screen, on this computer only
latewood version                       which Latewood this is

Kinds: ${kinds.map((k) => k.name).join(", ")}.
Topics: ${topics.map((t) => t.name).join(", ")}.
Each command says more with --help, reckon for each topic.
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
    case "new":
      return makeNew(rest, io);
    case "parts":
      return parts(rest, io);
    case "check":
      return check(rest, io);
    case "schema":
      return schema(rest, io);
    case "plan":
      return plan(rest, io);
    case "serve":
      return serve(rest, io);
    default:
      printProblems(io, [
        new Problem(
          "command-unknown",
          `first word, “${command.slice(0, 40)}”`,
          "There is no such command.",
          "Use new, parts, check, plan, schema, reckon, serve or version.",
        ),
      ]);
      return 2;
  }
}
