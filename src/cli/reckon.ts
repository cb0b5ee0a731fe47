import { reckon, type Topic, topicNamed, topics } from "../reckon/index.ts";
import { Problem } from "../worked/index.ts";
import { workBatch } from "./batch.ts";
import type { Io } from "./io.ts";
import { answerJson, problemJson } from "./json.ts";
import { optionPlace, readOptions } from "./options.ts";
import { answerText, printProblems, topicHelp } from "./report.ts";
import type { Input } from "./run.ts";

/**
 * `latewood reckon TOPIC …`: one quick sum, or with --batch one for each row.
 *
 * @param argv  the words behind `reckon`
 * @param io  where to write
 * @param input  standard input, read only by --batch
 * @returns exit code: 0 done, 2 bad input
 */
export async function reckonCommand(
  argv: readonly string[],
  io: Io,
  input: Input,
): Promise<number> {
  const [name = "--help", ...rest] = argv;
  if (name === "--help" || name === "-h") {
    io.out(`${topics.map((t) => `  ${t.name.padEnd(12)} ${t.tells}`).join("\n")}\n`);
    return 0;
  }
  let topic: Topic;
  try {
    topic = topicNamed(name);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    printProblems(io, [problem]);
    return 2;
  }
  const { options, problems } = readOptions(topic, rest);
  if (options.help && problems.length === 0) {
    io.out(topicHelp(topic));
    return 0;
  }
  const complain = (found: readonly Problem[]) => {
    if (options.json) io.out(`${JSON.stringify({ problems: found.map(problemJson) })}\n`);
    printProblems(io, found);
    return 2;
  };
  if (problems.length > 0) return complain(problems);
  if (options.batch) return workBatch(topic, options, io, input);
  const outcome = reckon(topic, options.texts, options.units, optionPlace);
  if (!outcome.ok) return complain(outcome.problems);
  const { answer, given } = outcome;
  io.out(
    options.json
      ? `${JSON.stringify(answerJson(topic, given, answer, options.working), null, 2)}\n`
      : answerText(topic, answer, options.units, options.working),
  );
  return 0;
}
