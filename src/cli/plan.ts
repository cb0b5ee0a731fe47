import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { PaperFiles } from "../press/index.ts";
import { paperNamed, usualPaper } from "../sheets/index.ts";
import { Problem } from "../worked/index.ts";
import { complain } from "./complain.ts";
import { exitCodesText } from "./exit-code.ts";
import { gathered, settled } from "./gathered.ts";
import type { Io } from "./io.ts";
import { asProblem } from "./read-file.ts";
import { shopOf } from "./shop-file.ts";
import { readWords, unitsNamed } from "./words.ts";
import { workupOf } from "./worked-piece.ts";

/**
 * `latewood plan PIECE -o DIR`: the whole set of a piece's papers, into a folder of their own.
 *
 * @param argv  the words behind `plan`
 * @param io  where to write
 * @param today  the date to print on the sheets
 * @returns exit code: 0 done, 1 a finding fails (the papers are made all the same), 2 bad input
 */
export async function plan(
  argv: readonly string[],
  io: Io,
  today: Date = new Date(),
): Promise<number> {
  const spoken = readWords(
    {
      of: "latewood plan",
      valued: { out: "papers", paper: "a4", units: "inch", shop: "shop.json" },
      switches: [],
      letters: { out: "o" },
      words: ["PIECE"],
    },
    argv,
  );
  const { texts, on, words } = spoken;
  const problems = [...spoken.problems];
  const side = texts.units;
  const units = side === undefined ? undefined : gathered(problems, () => unitsNamed(side));
  const { paper: wanted } = texts;
  const paper =
    wanted === undefined ? undefined : gathered(problems, () => paperNamed(wanted, "--paper"));
  if (on.has("help") && problems.length === 0) {
    io.out(help);
    return 0;
  }
  const { out } = texts;
  if (out === undefined) {
    const remedy = "Write -o and a folder that is not there yet.";
    problems.push(new Problem("option-missing", "--out", "No folder is named.", remedy));
  }
  if (problems.length > 0 || out === undefined) return complain(io, false, problems);
  const shop = await settled(problems, () => shopOf(texts.shop, problems));
  const workup = await settled(problems, () => workupOf(words[0] ?? "", shop, problems, units));
  if (workup) gathered(problems, () => makeFolder(out));
  if (problems.length > 0 || !workup) return complain(io, false, problems);
  const shown = units ?? workup.piece.units;
  // Brings the kernel and the PDF writer along, which no other command waits for.
  const { paperFiles } = await import("../press/index.ts");
  const files = await paperFiles(workup, {
    units: shown,
    paper: paper ?? usualPaper(shown),
    today,
  });
  if (gathered(problems, () => putAll(out, files)) === undefined) {
    return complain(io, false, problems);
  }
  io.out(`${files.map(([name]) => join(out, name)).join("\n")}\n`);
  return workup.findings.some(({ verdict }) => verdict === "fails") ? 1 : 0;
}

/** A new folder, or one with nothing in it: nothing of the maker's is ever written over. */
function makeFolder(folder: string): true {
  try {
    mkdirSync(folder, { recursive: true });
    if (readdirSync(folder).length === 0) return true;
  } catch (fault) {
    throw asProblem(fault, folder);
  }
  const remedy = "Name one that is not there yet; what lies in this one was left as it is.";
  throw new Problem("folder-filled", folder, "There is something in this folder already.", remedy);
}

function putAll(folder: string, files: PaperFiles): true {
  for (const [name, contents] of files) {
    const path = join(folder, name);
    try {
      writeFileSync(path, contents, { flag: "wx" });
    } catch (fault) {
      throw asProblem(fault, path);
    }
  }
  return true;
}

const help = `latewood plan PIECE -o DIR [options]: the piece on paper, to scale.

  PIECE              the file of a piece; it is read, never written to
  -o, --out DIR      a folder of its own, made if it is not there
  --paper letter|a4  what it will be printed on (else by the piece's side)
  --units inch|mm    the side to print on (else the piece's own)
  --shop FILE        the shop's file (else the demo shop)

It writes papers.pdf, an SVG a sheet, cut-list.csv, model.glb and worked-up.json. Print without
scaling; the check bar on each sheet tells whether it came out true.

${exitCodesText}`;
