import { parseArgs } from "node:util";
import { onSide } from "../asking/index.ts";
import type { Topic } from "../reckon/index.ts";
import type { LengthUnit } from "../units/index.ts";
import { Problem } from "../worked/index.ts";

/** What stands on the command line behind a topic's name. */
export type Options = {
  readonly units: LengthUnit;
  readonly json: boolean;
  readonly working: boolean;
  readonly batch: boolean;
  readonly help: boolean;
  /** typed answers by question */
  readonly texts: Readonly<Record<string, string>>;
};

const switches = ["json", "working", "batch", "help"] as const;
type Switch = (typeof switches)[number];
const isSwitch = (name: string): name is Switch => (switches as readonly string[]).includes(name);

/**
 * Reads options, gathering every fault.
 *
 * @param topic  whose questions may be asked
 * @param args  the words behind the topic's name
 */
export function readOptions(
  topic: Topic,
  args: readonly string[],
): { readonly options: Options; readonly problems: readonly Problem[] } {
  const valued = [...Object.keys(topic.asks), "units"];
  const isOption = (word: string | undefined) =>
    word !== undefined && [...valued, ...switches].some((name) => word === `--${name}`);
  // An option followed by the next option has no value; left in, it would swallow that one.
  const bare = valued.filter((name) =>
    args.some((word, i) => word === `--${name}` && isOption(args[i + 1])),
  );
  const isBare = (word: string, i: number) =>
    bare.some((name) => word === `--${name}`) && isOption(args[i + 1]);
  const { tokens } = parseArgs({
    args: args.filter((word, i) => !isBare(word, i)),
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries([
      ...valued.map((name) => [name, { type: "string" as const }]),
      ...switches.map((name) => [
        name,
        name === "help" ? { type: "boolean" as const, short: "h" } : { type: "boolean" as const },
      ]),
    ]),
  });
  const problems: Problem[] = bare.map((name) => noValue(topic, name, `--${name}`));
  const texts: Record<string, string> = {};
  const on = new Set<Switch>();
  for (const token of tokens) {
    if (token.kind === "positional") problems.push(strayWord(token.value));
    if (token.kind !== "option") continue;
    const { name, rawName, value } = token;
    if (isSwitch(name)) {
      if (value === undefined) on.add(name);
      else
        problems.push(
          new Problem(
            "option-takes-nothing",
            rawName,
            `It was given “${value}”.`,
            `Write ${rawName} alone.`,
          ),
        );
    } else if (!valued.includes(name)) problems.push(unknownOption(topic, rawName));
    else if (value === undefined) problems.push(noValue(topic, name, rawName));
    else if (name in texts)
      problems.push(new Problem("option-twice", rawName, "It is given twice.", "Give it once."));
    else texts[name] = value;
  }
  const { units: side = "mm", ...answers } = texts;
  if (side !== "inch" && side !== "mm") {
    problems.push(
      new Problem(
        "units-unknown",
        `--units, “${side.slice(0, 24)}”`,
        "There are two sides.",
        "Use inch or mm.",
      ),
    );
  }
  const units = side === "inch" ? "inch" : "mm";
  return {
    options: {
      units,
      json: on.has("json"),
      working: on.has("working"),
      batch: on.has("batch"),
      help: on.has("help"),
      texts: answers,
    },
    problems,
  };
}

const strayWord = (word: string) =>
  new Problem(
    "stray-word",
    `the word “${word.slice(0, 40)}”`,
    "It belongs to no option.",
    "Put a value with spaces in quotation marks, behind its option.",
  );

function unknownOption(topic: Topic, rawName: string): Problem {
  const known = [...Object.keys(topic.asks), "units", ...switches].map((n) => `--${n}`);
  const place = `the option “${rawName.slice(0, 40)}”`;
  return new Problem(
    "option-unknown",
    place,
    `${topic.name} has no such option.`,
    `Use ${known.join(", ")}.`,
  );
}

function noValue(topic: Topic, name: string, rawName: string): Problem {
  const question = topic.asks[name];
  const example = question ? onSide(question.example, "mm") : "inch";
  return new Problem(
    "option-empty",
    rawName,
    "Nothing follows it.",
    `Write ${rawName} '${example}'.`,
  );
}

/** How the command line names a question. */
export const optionPlace = (name: string): string => `--${name}`;
