import { CsvError, parse } from "csv-parse/sync";
import { reckon, type Topic } from "../reckon/index.ts";
import { Problem } from "../worked/index.ts";
import { exitCodeOf } from "./exit-code.ts";
import type { Io } from "./io.ts";
import { answerJson, problemJson } from "./json.ts";
import { LONGEST_LINE, type LongLine, linesOf } from "./lines.ts";
import type { Options } from "./options.ts";
import { printProblems } from "./report.ts";
import type { Input } from "./run.ts";

type Cells = Readonly<Record<string, string | undefined>>;
/** Row 0 is the input as a whole. */
type RowRead = { readonly row: number; readonly cells: Cells | Problem };

/**
 * Works one sum for each row of standard input, and writes one JSON line for each, in order. What
 * is given as an option holds for every row that leaves that column empty.
 *
 * @param topic  what to work
 * @param options  of the command line
 * @param io  where to write
 * @param input  CSV with a head line, or JSON lines
 * @returns exit code: 0; 2 when a row could not be worked, the others being worked all the same;
 *   else 1 when a finding of a row fails
 */
export async function workBatch(
  topic: Topic,
  options: Options,
  io: Io,
  input: Input,
): Promise<number> {
  let code = 0;
  let rows = 0;
  const columns = Object.keys(topic.asks);
  const askForRows = `Write a head line such as ${columns.join(",")} and one row a sum.`;
  if (input.isTTY)
    io.err(`Reading what is typed. ${askForRows}\n  Ctrl+D ends it (on Windows Ctrl+Z, Enter).\n`);
  for await (const { row, cells } of readRows(input)) {
    rows++;
    const outcome =
      cells instanceof Problem
        ? { ok: false as const, problems: [cells] }
        : reckon(topic, { ...options.texts, ...filled(cells) }, options.units, placeIn(row));
    code = Math.max(code, outcome.ok ? exitCodeOf(outcome.answer) : 2);
    // What stops all rows must not hide in a file that the answers were sent to.
    if (row === 0 && cells instanceof Problem) printProblems(io, [cells]);
    const line = outcome.ok
      ? answerJson(topic, outcome.given, outcome.answer, options.working)
      : { topic: topic.name, problems: outcome.problems.map(problemJson) };
    io.out(`${JSON.stringify({ row, ...line })}\n`);
    // Else the answers of a long table pile up in memory before a slow reader.
    await io.drained?.();
  }
  if (rows > 0) return code;
  io.err(`standard input: No row was read.\n  ${askForRows}\n`);
  return 2;
}

const placeIn = (row: number) => (name: string) => `row ${row}, column ${name}`;

const filled = (cells: Cells): Cells =>
  Object.fromEntries(Object.entries(cells).filter(([, v]) => v !== undefined && v.trim() !== ""));

/** Rows of either form, told apart by the first line that is not blank. */
async function* readRows(input: Input): AsyncGenerator<RowRead> {
  const lines = filledLines(textOf(input));
  try {
    // Not `for await`: leaving such a loop would close the stream before the second line.
    const first = await lines.next();
    if (first.done) return;
    const begins = beginning(first.value);
    if (begins.startsWith("[")) yield { row: 0, cells: jsonArray() };
    else yield* begins.startsWith("{") ? jsonRows(first.value, lines) : csvRows(first.value, lines);
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    yield { row: 0, cells: problem };
  } finally {
    // An input left open keeps the program waiting for what nobody will read.
    await lines.return(undefined);
  }
}

const beginning = (line: string | LongLine): string =>
  typeof line === "string" ? line.trimStart() : line.begins;

/** @throws Problem "input-unread" when the stream breaks off */
async function* textOf(input: Input): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  const pieces = input[Symbol.asyncIterator]();
  try {
    for (let at = await next(pieces); !at.done; at = await next(pieces)) {
      yield typeof at.value === "string" ? at.value : decoder.decode(at.value, { stream: true });
    }
  } finally {
    await pieces.return?.();
  }
}

async function next<T>(pieces: AsyncIterator<T>): Promise<IteratorResult<T>> {
  try {
    return await pieces.next();
  } catch (fault) {
    const why = fault instanceof Error ? fault.message : String(fault);
    const reason = `It could not be read to its end (${why}).`;
    const remedy = "Send rows in with a pipe, or a file of them with <.";
    throw new Problem("input-unread", "standard input", reason, remedy);
  }
}

async function* filledLines(text: AsyncIterable<string>): AsyncGenerator<string | LongLine> {
  for await (const line of linesOf(text)) {
    if (typeof line !== "string" || line.trim() !== "") yield line;
  }
}

const jsonArray = () =>
  new Problem(
    "json-array",
    "standard input",
    "It is one JSON array, not a line for each row.",
    "Write one object a line, without the brackets about them and the commas between them.",
  );

const tooLong = (place: string) =>
  new Problem(
    "line-too-long",
    place,
    `It is longer than ${LONGEST_LINE} characters.`,
    "Give each row a line of its own.",
  );

/**
 * Rows of CSV, each line read by itself: a parser that reads on over the line's end lets one open
 * quotation mark swallow every row behind it, and no answer here holds a line's end.
 */
async function* csvRows(
  first: string | LongLine,
  lines: AsyncIterable<string | LongLine>,
): AsyncGenerator<RowRead> {
  const head = headCells(first);
  if (head instanceof Problem) {
    yield { row: 0, cells: head };
    return;
  }
  let row = 0;
  for await (const line of lines) {
    row++;
    const place = `row ${row}`;
    yield { row, cells: typeof line === "string" ? rowCells(head, line, place) : tooLong(place) };
  }
}

/** The cells of one line; a mark of inches may stand in a cell that has no quotation marks. */
function csvCells(line: string, place: string): readonly string[] | Problem {
  try {
    const [cells = []] = parse(line.trim(), {
      trim: true,
      relax_quotes: true,
      record_delimiter: "\n",
    });
    return cells;
  } catch (fault) {
    if (!(fault instanceof CsvError)) throw fault;
    const reason = "Its quotation marks do not pair.";
    const remedy =
      "Close every quotation mark; a mark of inches inside quotation marks is written twice.";
    return new Problem("csv-quotes", place, reason, remedy);
  }
}

function headCells(line: string | LongLine): readonly string[] | Problem {
  if (typeof line !== "string") return tooLong("head line");
  const head = csvCells(line, "head line");
  const sign = foreignSign(line, head);
  if (sign !== undefined) {
    const reason = `Its columns are parted by ${sign}.`;
    const remedy = "Part them by commas; a spreadsheet saves that as CSV, comma-separated.";
    return new Problem("csv-separator", "head line", reason, remedy);
  }
  if (head instanceof Problem) return head;
  const twice = head.find((name, i) => head.indexOf(name) < i);
  if (twice === undefined) return head;
  const reason = `The column “${twice.slice(0, 40)}” stands in it twice.`;
  return new Problem("csv-columns", "head line", reason, "Give each column its own name.");
}

/** What parts the columns in place of commas; with quotation marks such a line reads as a broken one. */
function foreignSign(line: string, cells: readonly string[] | Problem): string | undefined {
  if (cells instanceof Problem ? line.includes(",") : cells.length !== 1) return undefined;
  if (line.includes(";")) return "semicolons";
  return line.trim().includes("\t") ? "tabs" : undefined;
}

function rowCells(head: readonly string[], line: string, place: string): Cells | Problem {
  const cells = csvCells(line, place);
  if (cells instanceof Problem) return cells;
  if (cells.length !== head.length) {
    const reason = `It has ${cells.length} cells, the head line ${head.length}.`;
    const remedy = "Give it as many; a cell with a comma in it wants quotation marks around it.";
    return new Problem("csv-cells", place, reason, remedy);
  }
  return Object.fromEntries(head.map((name, i) => [name, cells[i]]));
}

async function* jsonRows(
  first: string | LongLine,
  lines: AsyncIterable<string | LongLine>,
): AsyncGenerator<RowRead> {
  let row = 1;
  yield { row, cells: jsonCells(first, row) };
  for await (const line of lines) yield { row: ++row, cells: jsonCells(line, row) };
}

function jsonCells(line: string | LongLine, row: number): Cells | Problem {
  if (typeof line !== "string") return tooLong(`row ${row}`);
  const wrong = (reason: string) =>
    new Problem(
      "json-line",
      `row ${row}`,
      reason,
      `Write one object a line, such as {"width": "9 in"}.`,
    );
  let value: unknown;
  try {
    // JSON knows no byte order mark, and the first line may carry one.
    value = JSON.parse(line.trim());
  } catch {
    return wrong("This line is not JSON.");
  }
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return wrong("This line is not an object.");
  }
  const entries = Object.entries(value);
  const odd = entries.find(([, v]) => !["string", "number"].includes(typeof v) && v !== null);
  if (odd) return wrong(`“${odd[0].slice(0, 40)}” is neither a text nor a number.`);
  return Object.fromEntries(entries.map(([k, v]) => [k, v === null ? undefined : String(v)]));
}
