import { onSide } from "../asking/index.ts";
import { sumsOfPieces, type Topic } from "../reckon/index.ts";
import type { LengthUnit } from "../units/index.ts";
import { Problem } from "../worked/index.ts";
import { gathered } from "./gathered.ts";
import { readWords, unitsNamed } from "./words.ts";

/** What stands on the command line behind a topic's name. */
export type Options = {
  readonly units: LengthUnit;
  readonly json: boolean;
  readonly working: boolean;
  readonly batch: boolean;
  readonly help: boolean;
  /** a piece's file that answers what is not typed, and its shop's */
  readonly piece: string | undefined;
  readonly shop: string | undefined;
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
  const ofPiece = { piece: "table.json", shop: "shop.json" };
  const valued: Readonly<Record<string, string>> = {
    ...Object.fromEntries(examples),
    ...(sumsOfPieces.includes(topic.name) ? ofPiece : {}),
    units: "inch",
  };
  const { texts, on, problems } = readWords(
    {
      of: topic.name,
      valued,
      switches: ["json", "working", "batch"],
    },
    args,
  );
  const { units: side, piece, shop, ...answers } = texts as Readonly<Record<string, string>>;
  const all = [...problems];
  const units = gathered(all, () => unitsNamed(side ?? "mm")) ?? "mm";
  if (piece !== undefined && on.has("batch"))
    all.push(
      new Problem(
        "option-stray",
        "--piece",
        "Rows bring their own sizes.",
        "Leave out --piece or --batch.",
      ),
    );
  if (shop !== undefined && piece === undefined)
    all.push(
      new Problem(
        "option-stray",
        "--shop",
        "The shop only matters to a piece.",
        "Name one with --piece.",
      ),
    );
  return {
    options: {
      units,
      json: on.has("json"),
      working: on.has("working"),
      batch: on.has("batch"),
      help: on.has("help"),
      piece,
      shop,
      texts: answers,
    },
    problems: all,
  };
}

/** How the command line names a question. */
export const optionPlace = (name: string): string => `--${name}`;
