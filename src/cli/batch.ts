import { CsvError, parse } from "csv-parse";
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
  for await (const piece of text) {
    head += piece;
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

async function* csvRows(text: AsyncIterable<string>): AsyncGenerator<RowRead> {
  const parser = parse({ columns: true, trim: true, skip_empty_lines: true });
  const feeding = feed(text, parser);
  let row = 0;
  try {
    for await (const cells of parser) yield { row: ++row, cells: cells as Cells };
  } catch (fault) {
    if (!(fault instanceof CsvError)) throw fault;
    const reason = `This is not CSV as read here: ${fault.message}.`;
    const remedy =
      "Give every row as many cells as the head line, and close every quotation mark; a mark of inches inside quotation marks is written twice.";
    yield { row: row + 1, cells: new Problem("csv", `row ${row + 1}`, reason, remedy) };
  }
  await feeding;
}

/** Hands text on as fast as the parser takes it; a parser that has failed takes no more. */
async function feed(text: AsyncIterable<string>, parser: ReturnType<typeof parse>): Promise<void> {
  for await (const piece of text) {
    if (parser.destroyed) return;
    if (!parser.write(piece)) await new Promise((go) => parser.once("drain", go).once("close", go));
  }
  if (!parser.destroyed) parser.end();
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
