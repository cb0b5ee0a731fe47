import type { Context } from "hono";
import { Problem } from "../../worked/index.ts";

/** No piece and no edit comes near this. */
const MOST_BYTES = 4_000_000;

/** Fields of a body that is an object, by name; what a client sends may be anything. */
export type Body = Readonly<Record<string, unknown>>;

/**
 * The body of a request as an object with no fields but those named.
 *
 * @param names  of the fields it may have
 * @throws Problem "body-not-json", "body-too-large", "not-utf8", "not-json", "body-form", "field-unknown"
 */
export async function bodyOf(c: Context, names: readonly string[]): Promise<Body> {
  const type = c.req.header("content-type") ?? "";
  if (!/^application\/json\s*(;|$)/i.test(type.trim())) {
    throw new Problem(
      "body-not-json",
      "content-type",
      `It reads “${type.slice(0, 60)}”.`,
      "Send application/json.",
    );
  }
  const body = parsed(await textOf(c));
  if (typeof body !== "object" || body === null || Array.isArray(body)) {
    throw new Problem(
      "body-form",
      "the body",
      "It is no object in braces.",
      `Send ${form(names)}.`,
    );
  }
  for (const name of Object.keys(body).filter((one) => !names.includes(one))) {
    const place = `the body, “${name.slice(0, 40)}”`;
    throw new Problem("field-unknown", place, "There is no such field.", `Send ${form(names)}.`);
  }
  return body as Body;
}

const form = (names: readonly string[]) => `{${names.map((name) => `"${name}": …`).join(", ")}}`;

/** Refused by the length it declares where it does, else as soon as it is too long. */
async function textOf(c: Context): Promise<string> {
  const declared = Number(c.req.header("content-length") ?? 0);
  if (declared > MOST_BYTES) throw tooLarge();
  const pieces: Uint8Array[] = [];
  let length = 0;
  const reader = c.req.raw.body?.getReader();
  while (reader) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.byteLength;
    if (length > MOST_BYTES) throw tooLarge();
    pieces.push(value);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(pieces));
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault;
    throw new Problem("not-utf8", "the body", "It is not written in UTF-8.", "Send it in UTF-8.");
  }
}

const tooLarge = () =>
  new Problem(
    "body-too-large",
    "the body",
    `It is over ${MOST_BYTES / 1e6} MB.`,
    "A piece is a few thousand characters; send less at once.",
  );

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    const reason = `It is not JSON (${fault.message.slice(0, 80)}).`;
    throw new Problem("not-json", "the body", reason, "Send one object as JSON.");
  }
}

/**
 * A field that must be a text.
 *
 * @throws Problem "wrong-type"
 */
export function textIn(body: Body, name: string): string {
  const value = body[name];
  if (typeof value === "string") return value;
  const place = `the body, ${name}`;
  throw new Problem("wrong-type", place, "It is no text.", "Write it in quotation marks.");
}

/**
 * The step that a request was made on, where it says so.
 *
 * @throws Problem "wrong-type"
 */
export function baseIn({ base }: Body): number | undefined {
  if (base === undefined) return undefined;
  if (typeof base === "number" && Number.isSafeInteger(base) && base >= 0) return base;
  throw new Problem(
    "wrong-type",
    "the body, base",
    "It is no number of a step.",
    "Send the step that was read, a whole number from 0 on, or leave it out.",
  );
}
