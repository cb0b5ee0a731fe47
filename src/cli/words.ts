import { parseArgs } from "node:util";
import type { LengthUnit } from "../units/index.ts";
import { Problem } from "../worked/index.ts";

/** What may stand behind a command's name. */
export type Wording<V extends string, S extends string> = {
  /** who is spoken to, as the user names it: `emc`, `latewood parts` */
  readonly of: string;
  /** options that take a value, each with a value that would be right */
  readonly valued: Readonly<Record<V, string>>;
  readonly switches: readonly S[];
  /** single letters, by the option each stands for */
  readonly letters?: Readonly<Record<string, string>>;
  /** what the words are that belong to no option, such as PIECE; all are needed */
  readonly words?: readonly string[];
};

/** What was found there. */
export type Spoken<V extends string, S extends string> = {
  readonly texts: Readonly<Partial<Record<V, string>>>;
  readonly on: ReadonlySet<S | "help">;
  readonly words: readonly string[];
  readonly problems: readonly Problem[];
};

/**
 * Reads words and options, gathering every fault. `--help` and `-h` are known to all.
 *
 * @param wording  what may stand there
 * @param args  the words behind the command's name
 */
export function readWords<V extends string, S extends string>(
  wording: Wording<V, S>,
  args: readonly string[],
): Spoken<V, S> {
  const { of, valued, letters = {} } = wording;
  const switches: readonly string[] = [...wording.switches, "help"];
  const names = Object.keys(valued) as string[] as V[];
  const isSwitch = (name: string): name is S | "help" => switches.includes(name);
  const isValued = (name: string): name is V => (names as readonly string[]).includes(name);
  const spellings = (name: string) => [
    `--${name}`,
    ...(letters[name] ? [`-${letters[name]}`] : []),
  ];
  const isOption = (word: string | undefined) =>
    word !== undefined && [...names, ...switches].some((name) => spellings(name).includes(word));
  // An option followed by the next option has no value; left in, it would swallow that one.
  const isBare = (word: string, i: number) =>
    names.some((name) => spellings(name).includes(word)) && isOption(args[i + 1]);
  const bare = names.filter((name) =>
    args.some((word, i) => spellings(name).includes(word) && isOption(args[i + 1])),
  );
  const noValue = (name: V, rawName: string) =>
    new Problem(
      "option-empty",
      rawName,
      "Nothing follows it.",
      `Write ${rawName} '${valued[name]}'.`,
    );
  const { tokens } = parseArgs({
    args: args.filter((word, i) => !isBare(word, i)),
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries([
      ...names.map((name) => [name, lettered("string", letters[name])]),
      ...switches.map((name) => [name, lettered("boolean", name === "help" ? "h" : letters[name])]),
    ]),
  });
  const problems: Problem[] = bare.map((name) => noValue(name, `--${name}`));
  const texts: Partial<Record<V, string>> = {};
  const on = new Set<S | "help">();
  const words: string[] = [];
  const { words: wanted = [] } = wording;
  for (const token of tokens) {
    if (token.kind === "positional") {
      if (words.length < wanted.length) words.push(token.value);
      else problems.push(strayWord(token.value));
    }
    if (token.kind !== "option") continue;
    const { name, rawName, value } = token;
    if (isSwitch(name)) {
      if (value === undefined) on.add(name);
      else problems.push(takesNothing(rawName, value));
    } else if (!isValued(name)) problems.push(unknownOption(of, [...names, ...switches], rawName));
    else if (value === undefined) problems.push(noValue(name, rawName));
    else if (Object.hasOwn(texts, name))
      problems.push(new Problem("option-twice", rawName, "It is given twice.", "Give it once."));
    else texts[name] = value;
  }
  if (!on.has("help")) {
    problems.push(...wanted.slice(words.length).map((word) => missingWord(of, wanted, word)));
  }
  return { texts, on, words, problems };
}

const lettered = (type: "string" | "boolean", letter: string | undefined) =>
  letter === undefined ? { type } : { type, short: letter };

const takesNothing = (rawName: string, value: string) =>
  new Problem(
    "option-takes-nothing",
    rawName,
    `It was given “${value.slice(0, 40)}”.`,
    `Write ${rawName} alone.`,
  );

const strayWord = (word: string) =>
  new Problem(
    "stray-word",
    `the word “${word.slice(0, 40)}”`,
    "It belongs to no option.",
    "Put a value with spaces in quotation marks, behind its option.",
  );

const missingWord = (of: string, wanted: readonly string[], word: string) =>
  new Problem("word-missing", word, "It is not named.", `Write ${of} ${wanted.join(" ")}.`);

const unknownOption = (of: string, names: readonly string[], rawName: string) =>
  new Problem(
    "option-unknown",
    `the option “${rawName.slice(0, 40)}”`,
    `${of} has no such option.`,
    `Use ${names.map((name) => `--${name}`).join(", ")}.`,
  );

/**
 * The side that `--units` names.
 *
 * @throws Problem "units-unknown"
 */
export function unitsNamed(text: string): LengthUnit {
  if (text === "inch" || text === "mm") return text;
  throw new Problem(
    "units-unknown",
    `--units, “${text.slice(0, 24)}”`,
    "There are two sides.",
    "Use inch or mm.",
  );
}
