import { rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { type Kind, kindNamed, kinds, newDocument } from "../kinds/index.ts";
import { documentText, type PieceDocument, readDocument } from "../piece/index.ts";
import { Problem } from "../worked/index.ts";
import { complain } from "./complain.ts";
import { exitCodesText } from "./exit-code.ts";
import { gathered } from "./gathered.ts";
import type { Io } from "./io.ts";
import { asProblem } from "./read-file.ts";
import { schemaText } from "./schema.ts";
import { readWords, unitsNamed } from "./words.ts";

/** The schema's file beside a piece's, for the editor that opens it. */
const SCHEMA_FILE = "piece-1.schema.json";

/**
 * `latewood new KIND …`: a fresh piece's file.
 *
 * @param argv  the words behind `new`
 * @param io  where to write
 * @returns exit code: 0 done, 2 bad input, or a file that is there already or cannot be written
 */
export function makeNew(argv: readonly string[], io: Io): number {
  const spoken = readWords(
    {
      of: "latewood new",
      valued: { out: "table.json", name: "Hall table", units: "inch" },
      switches: [],
      letters: { out: "o" },
      words: ["KIND"],
    },
    argv,
  );
  const { texts, on, words } = spoken;
  const problems = [...spoken.problems];
  const units = gathered(problems, () => unitsNamed(texts.units ?? "mm"));
  const word = words[0];
  const kind = word === undefined ? undefined : gathered(problems, () => kindNamed(word));
  if (on.has("help") && problems.length === 0) {
    io.out(help);
    return 0;
  }
  const named = texts.name ?? kind?.title ?? "";
  const document = kind && units && sound(newDocument(kind, named, units), problems);
  if (problems.length > 0 || !document) return complain(io, false, problems);
  if (texts.out === undefined) {
    io.out(documentText(document));
    return 0;
  }
  const { out } = texts;
  if (gathered(problems, () => writeNew(out, document)) === undefined) {
    return complain(io, false, problems);
  }
  io.out(`${out} is written. ${SCHEMA_FILE} beside it tells an editor what may stand in it.\n`);
  return 0;
}

/** The document as it will be read, so that nothing is written that could not be. */
function sound(document: PieceDocument, problems: Problem[]): PieceDocument | undefined {
  const read = readDocument(documentText(document));
  if (read.ok) return read.document;
  // Only the name is the maker's own so far.
  for (const { code, reason, remedy } of read.problems) {
    problems.push(new Problem(code, "--name", reason, remedy));
  }
  return undefined;
}

/** Both files or neither; what is there already stays as it is. */
function writeNew(path: string, document: PieceDocument): true {
  const schemaPath = join(dirname(path), SCHEMA_FILE);
  if (basename(path) === SCHEMA_FILE) throw isThere(path, "This is the name of the schema's file.");
  const text = documentText({ ...document, $schema: `./${SCHEMA_FILE}` });
  if (!written(path, text)) throw isThere(path, "There is a file of this name already.");
  try {
    written(schemaPath, schemaText());
  } catch (fault) {
    rmSync(path, { force: true });
    throw fault;
  }
  return true;
}

const isThere = (path: string, reason: string) =>
  new Problem("file-there", path, reason, "It is left as it is; choose another name.");

/**
 * Writes a file that is not there yet.
 *
 * @returns false where one is
 * @throws Problem "file-missing", "file-unreadable" and the like; nothing is left half written
 */
function written(path: string, text: string): boolean {
  try {
    writeFileSync(path, text, { flag: "wx" });
    return true;
  } catch (fault) {
    const { code } = fault as NodeJS.ErrnoException;
    if (code === "EEXIST") return false;
    // Opened and then found no room: what stands there now is ours.
    if (code === "ENOSPC" || code === "EDQUOT") rmSync(path, { force: true });
    throw asProblem(fault, path);
  }
}

const row = ({ name, tells }: Kind) => `  ${name}  ${tells}`;

const help = `latewood new KIND [options]: a fresh piece's file, every answer written out.

${kinds.map(row).join("\n")}

  --out FILE, -o   where to, with the schema beside it (else standard output)
  --name NAME      what the piece is called
  --units inch|mm  the side it is written on (else mm)

${exitCodesText}`;
