import { onSide } from "../../src/asking/index.ts";
import { type Topic, topics } from "../../src/reckon/index.ts";
import {
  type DimensionName,
  dimensions,
  placeOf,
  type Read,
  readLength,
  readQuantity,
} from "../../src/units/index.ts";
import { hear, type ProblemLine } from "../kit/cli.ts";
import { anyString, below, type Chance, pick } from "./strings.ts";

/** What became of one string: the code it was refused by, or `read`; and what is wrong with that. */
export type Verdict = { readonly came: string; readonly wrong?: string };

const sides = ["inch", "mm"] as const;
const names = Object.keys(dimensions) as DimensionName[];

/** Gives a string to the readers: all of them would cost much and tell little more. */
export function readAnyway(text: string, dimension: DimensionName): readonly Verdict[] {
  return sides.flatMap((side) => [
    judged(text, readLength(text, side)),
    judged(text, readQuantity(text, dimension, side)),
  ]);
}

export const anyDimension = (chance: Chance): DimensionName => pick(chance, names);

function judged(text: string, read: Read<number>): Verdict {
  if (read.ok) {
    return Number.isFinite(read.value) ? { came: "read" } : { came: "read", wrong: "not finite" };
  }
  const { code, start, end, reason, remedy } = read.fault;
  const place = placeOf(read.fault);
  const isInside = 0 <= start && start <= end && end <= text.length;
  if (!isInside || read.fault.read !== text.slice(start, end) || !/character \d+/.test(place)) {
    return { came: code, wrong: `no place: ${start} to ${end}, ${place}` };
  }
  if (code === "" || reason.length < 8 || remedy.length < 6)
    return { came: code, wrong: "no remedy" };
  return { came: code };
}

/** A command line with examples for all its options but a few, which get any string. */
export function anyCommand(chance: Chance): readonly string[] {
  const topic = pick(chance, topics);
  const side = pick(chance, sides);
  const options = optionsOf(topic, side);
  const spoilt = below(chance, options.length);
  const words = options.flatMap(([name, example], i) => {
    const isSpoilt = i === spoilt || below(chance, 12) === 0;
    const value = isSpoilt ? spoiltValue(chance) : example;
    if (!isSpoilt && below(chance, 12) === 0) return [];
    return below(chance, 2) === 0 ? [`--${name}=${value}`] : [`--${name}`, value];
  });
  const stray = below(chance, 20) === 0 ? [anyString(chance)] : [];
  const form = below(chance, 8) === 0 ? [] : ["--json"];
  return ["reckon", topic.name, ...words, ...stray, "--units", side, ...form];
}

/** Mostly any string; now and then a number that may well be right, or nearly. */
const spoiltValue = (chance: Chance): string =>
  below(chance, 3) === 0 ? String(below(chance, 4000) / 8) : anyString(chance);

const optionsOf = (topic: Topic, side: "inch" | "mm") =>
  Object.entries(topic.asks)
    .filter(([name, q]) => !q.optional || topic.opensWith.includes(name))
    .map(([name, q]) => [name, onSide(q.example, side)] as const);

/** Runs a command and looks whether it ended as a command must, whatever it was told. */
export async function runAnyway(argv: readonly string[]): Promise<readonly Verdict[]> {
  const { code, out, err } = await hear(argv);
  if (code === 0 || code === 1) {
    const wrong = err !== "" || (code === 1) !== hasFailed(out);
    return [
      { came: code === 1 ? "answered: fails" : "answered", ...wrongIf(wrong, "answered amiss") },
      ...(isJson(out)
        ? figuresOf(out)
        : [{ came: "in words", ...wrongIf(out.length < 9, "mute") }]),
    ];
  }
  if (code !== 2) return [{ came: `exit ${code}`, wrong: "is no exit code for bad input" }];
  if (out === "") return [{ came: "refused in words", ...wrongIf(!told(err), `unclear: ${err}`) }];
  const { problems }: { problems: readonly ProblemLine[] } = JSON.parse(out);
  if (problems.length === 0) return [{ came: "refused", wrong: "names no problem" }];
  return problems.map(({ code, place, reason, remedy }) => ({
    came: code,
    ...wrongIf(
      [code, place, reason].some((t) => t === "") || remedy.length < 5,
      "no place or remedy",
    ),
  }));
}

const wrongIf = (is: boolean, wrong: string): { wrong?: string } => (is ? { wrong } : {});
/** Exit code 1 is for a design that must not be built, and for nothing else. */
const hasFailed = (out: string): boolean =>
  isJson(out)
    ? JSON.parse(out).findings.some((f: { verdict: string }) => f.verdict === "fails")
    : /^ {2}Stops\. /m.test(out);

const isJson = (out: string) => out.startsWith("{");
const told = (err: string) => /^.+: .+\n {2}.{5,}/s.test(err);

function figuresOf(out: string): readonly Verdict[] {
  const { results }: { results: readonly { value: unknown; low?: unknown; high?: unknown }[] } =
    JSON.parse(out);
  return results.map(({ value, low = 0, high = 0 }) => ({
    came: "figure",
    ...wrongIf(![value, low, high].every(Number.isFinite), "not finite"),
  }));
}

/** The shortest text found, by leaving parts out, of which the same still holds. */
export async function smallest(
  text: string,
  holds: (text: string) => Promise<boolean> | boolean,
): Promise<string> {
  let best = text;
  for (let part = Math.ceil(best.length / 2); part >= 1; part = Math.floor(part / 2)) {
    for (let at = 0; at < best.length; ) {
      const shorter = best.slice(0, at) + best.slice(at + part);
      if (await holds(shorter)) best = shorter;
      else at += part;
    }
  }
  return best;
}
