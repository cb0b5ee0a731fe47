import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { type PdfFonts, planOf, writePdf, writeSvg } from "../sheets/index.ts";
import { createKernel, createSolids, writeGlb } from "../solid/index.ts";
import { Problem } from "../worked/index.ts";
import type { Workup } from "../workup/index.ts";
import { complain } from "./complain.ts";
import { exitCodesText } from "./exit-code.ts";
import { gathered, settled } from "./gathered.ts";
import type { Io } from "./io.ts";
import { asProblem } from "./read-file.ts";
import { shopOf } from "./shop-file.ts";
import { readWords, unitsNamed } from "./words.ts";
import { workupOf } from "./worked-piece.ts";

type Paper = "letter" | "a4";

/** What wood is coloured in a model, whatever the timber: its own colour is not known here. */
const WOOD = "#d4b588";

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
  const paper =
    texts.paper === undefined ? undefined : gathered(problems, () => paperOf(texts.paper));
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
  const workup = await settled(problems, () => workupOf(words[0] ?? "", shop, problems));
  if (workup) gathered(problems, () => makeFolder(out));
  if (problems.length > 0 || !workup) return complain(io, false, problems);
  const shown = units ?? workup.piece.units;
  const files = await papersOf(workup, {
    units: shown,
    paper: paper ?? (shown === "inch" ? "letter" : "a4"),
    today,
  });
  if (gathered(problems, () => putAll(out, files)) === undefined) {
    return complain(io, false, problems);
  }
  io.out(`${files.map(([name]) => join(out, name)).join("\n")}\n`);
  return workup.findings.some(({ verdict }) => verdict === "fails") ? 1 : 0;
}

function paperOf(text: string | undefined): Paper {
  const paper = text?.toLowerCase();
  if (paper === "letter" || paper === "a4") return paper;
  throw new Problem(
    "paper-unknown",
    `--paper, “${text?.slice(0, 24)}”`,
    "There are two papers.",
    "Use letter or a4.",
  );
}

type Asked = { readonly units: "inch" | "mm"; readonly paper: Paper; readonly today: Date };
type Files = readonly (readonly [name: string, contents: string | Uint8Array])[];

async function papersOf(workup: Workup, { units, paper, today }: Asked): Promise<Files> {
  const solids = createSolids(await createKernel());
  const { sheets, csv } = planOf(workup, solids, {
    units,
    paper,
    date: today.toISOString().slice(0, 10),
  });
  const timber = { name: workup.piece.species.name, colour: WOOD };
  const glb = await writeGlb(
    workup.piece.parts.map((part) => ({ part, solid: solids.of(part), timber })),
  );
  solids.free();
  return [
    ["papers.pdf", await writePdf(sheets, { fonts: fonts(), made: today })],
    ...sheets.map(
      (sheet, i) => [`sheet-${String(i + 1).padStart(2, "0")}.svg`, writeSvg(sheet)] as const,
    ),
    ["cut-list.csv", csv],
    ["model.glb", glb],
    ["worked-up.json", `${JSON.stringify(workup, null, 2)}\n`],
  ];
}

/** The type lies in its own package, beside this program's. */
function fonts(): PdfFonts {
  const { resolve } = createRequire(import.meta.url);
  const read = (name: string) =>
    new Uint8Array(readFileSync(resolve(`@expo-google-fonts/source-sans-3/${name}`)));
  return {
    regular: read("400Regular/SourceSans3_400Regular.ttf"),
    bold: read("600SemiBold/SourceSans3_600SemiBold.ttf"),
  };
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

function putAll(folder: string, files: Files): true {
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
