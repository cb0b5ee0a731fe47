import { readDocument } from "../piece/index.ts";
import type { Shop } from "../shop/index.ts";
import { type LengthUnit, printQuantity } from "../units/index.ts";
import type { Problem } from "../worked/index.ts";
import { createWorkup, type Workup } from "../workup/index.ts";
import { complain } from "./complain.ts";
import { exitCodesText } from "./exit-code.ts";
import { gathered, settled } from "./gathered.ts";
import { inFile } from "./in-file.ts";
import type { Io } from "./io.ts";
import { readText } from "./read-file.ts";
import { onOneLine } from "./report.ts";
import { shopOf } from "./shop-file.ts";
import { readWords, unitsNamed } from "./words.ts";

/** A piece that was worked up, and how it is to be told. */
export type Asked = {
  readonly workup: Workup;
  readonly shop: Shop;
  /** the side to print on */
  readonly units: LengthUnit;
  readonly working: boolean;
};

/** What a command makes of a piece. */
export type Told = {
  readonly lines: (asked: Asked) => readonly string[];
  readonly json: (asked: Asked) => object;
  readonly code: (workup: Workup) => number;
};

/**
 * A command on the file of a piece, which is read and never written to.
 *
 * @param name  of the command
 * @param tells  what it does, for its help
 * @param told  what it makes of the piece
 * @param argv  the words behind its name
 * @returns exit code: that of `told`, or 2 where the piece or the command cannot be worked
 */
export async function workedPiece(
  name: string,
  tells: string,
  told: Told,
  argv: readonly string[],
  io: Io,
): Promise<number> {
  const spoken = readWords(
    {
      of: `latewood ${name}`,
      valued: { units: "inch", shop: "shop.json" },
      switches: ["json", "working"],
      words: ["PIECE"],
    },
    argv,
  );
  const { texts, on, words } = spoken;
  const problems = [...spoken.problems];
  const named = texts.units;
  const units = named === undefined ? undefined : gathered(problems, () => unitsNamed(named));
  if (on.has("help") && problems.length === 0) {
    io.out(help(name, tells));
    return 0;
  }
  const json = on.has("json");
  if (problems.length > 0) return complain(io, json, problems);
  const shop = await settled(problems, () => shopOf(texts.shop, problems));
  // Data are the same whichever side is asked for, the findings' words among them.
  const side = json ? undefined : units;
  const workup = await settled(problems, () => workupOf(words[0] ?? "", shop, problems, side));
  if (problems.length > 0 || !shop || !workup) return complain(io, json, problems);
  const asked: Asked = {
    workup,
    shop,
    units: units ?? workup.piece.units,
    working: on.has("working"),
  };
  io.out(
    json
      ? `${JSON.stringify(told.json(asked), null, 2)}\n`
      : `${told
          .lines(asked)
          .map((line) => onOneLine(line).trimEnd())
          .join("\n")}\n`,
  );
  return told.code(workup);
}

/** The piece of a file, worked up; what is wrong with it is put among the problems. */
export async function workupOf(
  path: string,
  shop: Shop | undefined,
  problems: Problem[],
  side?: LengthUnit,
): Promise<Workup | undefined> {
  const put = (found: readonly Problem[]) =>
    void problems.push(...found.map((problem) => inFile(path, problem)));
  const read = readDocument(await readText(path));
  if (!read.ok) return put(read.problems);
  // Without a shop its faults are told, and those of the piece's form; a design needs both.
  if (!shop) return undefined;
  const outcome = createWorkup(shop, side)(read.document);
  return outcome.ok ? outcome.workup : put(outcome.problems);
}

const help = (name: string, tells: string) => `latewood ${name} PIECE [options]: ${tells}.

  PIECE            the file of a piece; it is read, never written to
  --units inch|mm  the side to print on (else the piece's own)
  --shop FILE      the shop's file (else the demo shop)
  --working        print each figure's whole chain
  --json           millimetres, kilograms, full precision

${exitCodesText}`;

/** Whose piece it is, of what, and by which shop: the first lines of every text. */
export function headLines({ workup: { piece }, shop, units }: Asked): readonly string[] {
  const { name, client, demo } = piece.document;
  const moisture = printQuantity(piece.seasons.made.value, "% MC", units);
  return [
    demo ? `${name}  (invented, for show)` : name,
    ...(client === "" ? [] : [`  for ${client}`]),
    `  ${piece.species.name}, made at ${moisture}`,
    `  ${shop.name}${shop.isDemo ? "  (the demo shop: invented; name your own with --shop)" : ""}`,
  ];
}

/** The same as data. */
export const headJson = ({ workup: { piece }, shop }: Asked) => ({
  piece: {
    name: piece.document.name,
    client: piece.document.client,
    demo: piece.document.demo,
  },
  timber: piece.species.name,
  moisturePct: piece.seasons.made.value,
  shop: { name: shop.name, isDemo: shop.isDemo },
});
