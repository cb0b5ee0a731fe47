import { CsvError, parse } from "csv-parse/sync";
import { reckon, type Topic } from "../reckon/index.ts";
import { Problem } from "../worked/index.ts";
import type { Io } from "./io.ts";
import { answerJson, problemJson } from "./json.ts";
import type { Options } from "./options.ts";
import type { Input } from "./run.ts";

type Cells = Readonly<Record<string, string | undefined>>;
type RowRead = { readonly row: number; readonly cells: Cells | Problem };

/**
 * Works one sum for each row of standard input, and writes one JSON line for each, in order. What
 * is given as an option holds for every row that leaves that column empty.
 *
 * @param topic  what to work
 * @param options  of the command line
 * @param io  where to write
 * @param input  CSV with a head line, or JSON lines
 * @returns exit code: 0, or 2 when a row could not be worked; the others are worked all the same
 */
export async function workBatch(
  topic: Topic,
  options: Options,
  io: Io,
  input: Input,
): Promise<number> {
  let code = 0;
  let rows = 0;
  for await (const { row, cells } of readRows(input)) {
    rows++;
    const problems = cells instanceof Problem ? [cells] : undefined;
    const outcome = problems
      ? { ok: false as const, problems }
      : reckon(topic, { ...options.texts, ...filled(cells as Cells) }, options.units, placeIn(row));
    if (!outcome.ok) code = 2;
    const line = outcome.ok
      ? answerJson(topic, outcome.given, outcome.answer, options.working)
      : { topic: topic.name, problems: outcome.problems.map(problemJson) };
    io.out(`${JSON.stringify({ row, ...line })}\n`);
  }
  if (rows > 0) return code;
  const columns = Object.keys(topic.asks).join(",");
  io.err(
    `standard input: No row was read.\n  Write a head line such as ${columns} and one row a sum.\n`,
  );
  return 2;
}

const placeIn = (row: number) => (name: string) => `row ${row}, column ${name}`;

const filled = (cells: Cells): Cells =>
  Object.fromEntries(Object.entries(cells).filter(([, v]) => v !== undefined && v.trim() !== ""));

/** Rows of either form, told apart by the first character that is no space. */
async function* readRows(input: Input): AsyncGenerator<RowRead> {
  const text = textOf(input);
  let head = "";
  // Not `for await`: leaving such a loop closes the stream, and all behind the first piece is lost.
  for (let next = await text.next(); !next.done; next = await text.next()) {
    head += next.value;
    if (head.trim() !== "") break;
  }
  const whole = chain(head.replace(/^\ufeff/, ""), text);
  yield* head.trimStart().startsWith("{") ? jsonRows(whole) : csvRows(whole);
}

async function* textOf(input: Input): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  for await (const piece of input) {
    yield typeof piece === "string" ? piece : decoder.decode(piece, { stream: true });
  }
}

async function* chain(first: string, rest: AsyncGenerator<string>): AsyncGenerator<string> {
  yield first;
  yield* rest;
}

/**
 * Rows of CSV, each line read by itself: a parser that reads on over the line's end lets one open
 * quotation mark swallow every row behind it, and no answer here holds a line's end.
 */
async function* csvRows(text: AsyncIterable<string>): AsyncGenerator<RowRead> {
  let head: readonly string[] | Problem | undefined;
  let row = 0;
  for await (const line of linesOf(text)) {
    if (line.trim() === "") continue;
    if (head === undefined) head = headCells(line);
    else if (head instanceof Problem) break;
    else {
      row++;
      yield { row, cells: rowCells(head, line, `row ${row}`) };
    }
  }
  if (head instanceof Problem) yield { row: 0, cells: head };
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

function headCells(line: string): readonly string[] | Problem {
  const head = csvCells(line, "head line");
  if (head instanceof Problem) return head;
  const twice = head.find((name, i) => head.indexOf(name) < i);
  if (twice === undefined) return head;
  const reason = `The column “${twice.slice(0, 40)}” stands in it twice.`;
  return new Problem("csv-columns", "head line", reason, "Give each column its own name.");
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

async function* jsonRows(text: AsyncIterable<string>): AsyncGenerator<RowRead> {
  let row = 0;
  for await (const line of linesOf(text)) {
    if (line.trim() !== "") yield { row: ++row, cells: jsonCells(line, row) };
  }
}

async function* linesOf(text: AsyncIterable<string>): AsyncGenerator<string> {
  let rest = "";
  for await (const piece of text) {
    const lines = (rest + piece).split("\n");
    rest = lines.pop() ?? "";
    yield* lines;
  }
  yield rest;
}

function jsonCells(line: string, row: number): Cells | Problem {
  const wrong = (reason: string) =>
    new Problem(
      "json-line",
      `row ${row}`,
      reason,
      `Write one object a line, such as {"width": "9 in"}.`,
    );
  let value: unknown;
  try {
    value = JSON.parse(line);
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
