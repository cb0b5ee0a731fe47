import { answersOf, reckon, type Topic, topicNamed, topics } from "../reckon/index.ts";
import { Problem } from "../worked/index.ts";
import { workBatch } from "./batch.ts";
import { complain } from "./complain.ts";
import { exitCodeOf, exitCodesText } from "./exit-code.ts";
import { settled } from "./gathered.ts";
import type { Io } from "./io.ts";
import { answerJson } from "./json.ts";
import { type Options, optionPlace, readOptions } from "./options.ts";
import { answerText, topicHelp } from "./report.ts";
import type { Input } from "./run.ts";
import { shopOf } from "./shop-file.ts";
import { workupOf } from "./worked-piece.ts";

/**
 * `latewood reckon TOPIC …`: one quick sum, or with --batch one for each row.
 *
 * @param argv  the words behind `reckon`
 * @param io  where to write
 * @param input  standard input, read only by --batch
 * @returns exit code: 0 done, 1 a finding fails, 2 bad input
 */
export async function reckonCommand(
  argv: readonly string[],
  io: Io,
  input: Input,
): Promise<number> {
  const [name = "--help", ...rest] = argv;
  if (name === "--help" || name === "-h") {
    const list = topics.map((t) => `  ${t.name.padEnd(12)} ${t.tells}`).join("\n");
    io.out(`${list}\n\n${exitCodesText}`);
    return 0;
  }
  let topic: Topic;
  try {
    topic = topicNamed(name);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return complain(io, argv.includes("--json"), [problem]);
  }
  return reckonTopic(topic, rest, io, input);
}

/**
 * The same once the topic is known.
 *
 * @param topic  what to work
 * @param argv  the words behind its name
 * @param io  where to write
 * @param input  standard input, read only by --batch
 * @returns exit code, as above
 */
export async function reckonTopic(
  topic: Topic,
  argv: readonly string[],
  io: Io,
  input: Input,
): Promise<number> {
  const { options, problems: found } = readOptions(topic, argv);
  const problems = [...found];
  if (options.help && problems.length === 0) {
    io.out(`${topicHelp(topic)}\n${exitCodesText}`);
    return 0;
  }
  if (problems.length > 0) return complain(io, options.json, problems);
  if (options.batch) return workBatch(topic, options, io, input);
  const ofPiece = await settled(problems, () => pieceTexts(topic, options, problems));
  if (problems.length > 0 || !ofPiece) return complain(io, options.json, problems);
  const texts = { ...ofPiece, ...options.texts };
  const outcome = reckon(topic, texts, options.units, optionPlace);
  if (!outcome.ok) return complain(io, options.json, outcome.problems);
  const { answer, given } = outcome;
  io.out(
    options.json
      ? `${JSON.stringify(answerJson(topic, given, answer, options.working), null, 2)}\n`
      : answerText(topic, given, answer, options.units, options.working),
  );
  return exitCodeOf(answer);
}

/** What a piece answers, where one is named. */
async function pieceTexts(
  topic: Topic,
  { piece, shop: path }: Options,
  problems: Problem[],
): Promise<Readonly<Record<string, string>>> {
  if (piece === undefined) return {};
  const shop = await shopOf(path, problems);
  const workup = await workupOf(piece, shop, problems);
  return workup ? answersOf(topic.name, workup.piece, workup.weighing) : {};
}
