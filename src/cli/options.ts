import { onSide } from "../asking/index.ts";
import type { Topic } from "../reckon/index.ts";
import type { LengthUnit } from "../units/index.ts";
import type { Problem } from "../worked/index.ts";
import { gathered } from "./gathered.ts";
import { readWords, unitsNamed } from "./words.ts";

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
  const examples = Object.entries(topic.asks).map(([name, q]) => [name, onSide(q.example, "mm")]);
  const { texts, on, problems } = readWords(
    {
      of: topic.name,
      valued: { ...(Object.fromEntries(examples) as Record<string, string>), units: "inch" },
      switches: ["json", "working", "batch"],
    },
    args,
  );
  const { units: side, ...answers } = texts as Readonly<Record<string, string>>;
  const all = [...problems];
  const units = gathered(all, () => unitsNamed(side ?? "mm")) ?? "mm";
  return {
    options: {
      units,
      json: on.has("json"),
      working: on.has("working"),
      batch: on.has("batch"),
      help: on.has("help"),
      texts: answers,
    },
    problems: all,
  };
}

/** How the command line names a question. */
export const optionPlace = (name: string): string => `--${name}`;
