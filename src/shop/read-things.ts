import { ask, type Question } from "../asking/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { type Given, Problem } from "../worked/index.ts";
import type { Hole, JointCutters, LeafHinge } from "./leaf-hardware.ts";

/** Reads a length at a place of the file; what cannot be read is put among the problems. */
export type LengthReader = (
  question: Question<Given<Mm>>,
  text: unknown,
  place: string,
) => Mm | undefined;

/** More things of one sort no shop writes down. */
const MOST_THINGS = 60;
const LONGEST_NAME = 60;

const size = (says: string, least: number, most: number, example: string) =>
  ask.length(says, { least, most, example });

const cutterAsks = {
  "round-over": size("radius of the round-over, measured", 3, 40, "12.7 mm"),
  cove: size("radius of the cove, measured", 3, 40, "12.7 mm"),
  straight: size("straight part over the round-over", 0, 60, "8 mm"),
  "cove-length": size("cutting length of the cove cutter", 3, 80, "20 mm"),
};

const hingeAsks = {
  length: size("length along the pin", 8, 200, "38 mm"),
  barrel: size("radius of the barrel", 0.5, 12, "2.8 mm"),
  "pin-over-face": size("pin over the plates’ outer face", 0, 20, "3.2 mm"),
  plate: size("thickness of the plates", 0.3, 6, "1.5 mm"),
  short: size("from the pin to the short plate’s end", 5, 150, "25 mm"),
  long: size("from the pin to the long plate’s end", 5, 250, "48 mm"),
  "screw-length": size("length of its screws", 4, 60, "14 mm"),
  lead: size("lead holes of its screws", 0.5, 8, "2 mm"),
};
const hole = size("place of a hole, from the pin or aside", -150, 250, "19 mm");

/** The shop's pairs of cutters; undefined when none are written. */
export const cuttersOf = (raw: unknown, reader: LengthReader, problems: Problem[]) =>
  thingsOf("joint-cutters", raw, problems, (one, place, name): JointCutters | undefined => {
    const sizes = sizesOf(cutterAsks, one, place, [], reader, problems);
    return (
      sizes && {
        name,
        roundOver: sizes["round-over"],
        cove: sizes.cove,
        straight: sizes.straight,
        coveLength: sizes["cove-length"],
      }
    );
  });

/** The shop's hinges for leaves; undefined when none are written. */
export const hingesOf = (raw: unknown, reader: LengthReader, problems: Problem[]) =>
  thingsOf("leaf-hinges", raw, problems, (one, place, name): LeafHinge | undefined => {
    const more = ["short-holes", "long-holes"];
    const sizes = sizesOf(hingeAsks, one, place, more, reader, problems);
    const [short, long] = more.map((plate) =>
      holesOf(one[plate], `${place} › ${plate}`, reader, problems),
    );
    return (
      sizes &&
      short &&
      long && {
        name,
        length: sizes.length,
        barrel: sizes.barrel,
        pinOverFace: sizes["pin-over-face"],
        plate: sizes.plate,
        short: { reach: sizes.short, holes: short },
        long: { reach: sizes.long, holes: long },
        screwLength: sizes["screw-length"],
        lead: sizes.lead,
      }
    );
  });

type Raw = Readonly<Record<string, unknown>>;
const isTable = (value: unknown): value is Raw =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A list of named things, each read by itself; every name once. */
function thingsOf<T extends { readonly name: string }>(
  field: string,
  raw: unknown,
  problems: Problem[],
  read: (one: Raw, place: string, name: string) => T | undefined,
): readonly T[] | undefined {
  if (raw === undefined) return undefined;
  if (!Array.isArray(raw) || raw.length === 0 || raw.length > MOST_THINGS) {
    const remedy = `Write one or more in braces: [{"name": …}].`;
    problems.push(new Problem("wrong-type", field, "It is no list of things.", remedy));
    return undefined;
  }
  const read1 = raw.flatMap((one: unknown, i): readonly T[] => {
    const place = `${field}, number ${i + 1}`;
    const name = isTable(one) && typeof one.name === "string" ? one.name.trim() : "";
    if (!isTable(one) || name === "" || name.length > LONGEST_NAME) {
      const remedy = `Write {"name": …} of 1 to ${LONGEST_NAME} characters.`;
      problems.push(new Problem("thing-unnamed", place, "It has no name.", remedy));
      return [];
    }
    const thing = read(one, place, name);
    return thing ? [thing] : [];
  });
  const twice = read1.find((one, i) => read1.findIndex((o) => o.name === one.name) < i);
  if (twice)
    problems.push(
      new Problem(
        "name-twice",
        field,
        `“${twice.name}” stands twice.`,
        "Give each a name of its own.",
      ),
    );
  return read1;
}

/** The lengths of a thing, every fault told; undefined where one is missing. */
function sizesOf<N extends string>(
  asks: Readonly<Record<N, Question<Given<Mm>>>>,
  one: Raw,
  place: string,
  more: readonly string[],
  reader: LengthReader,
  problems: Problem[],
): Readonly<Record<N, Mm>> | undefined {
  const names = Object.keys(asks) as N[];
  for (const word of Object.keys(one)) {
    if (word === "name" || more.includes(word) || Object.hasOwn(asks, word)) continue;
    const remedy = `Use ${["name", ...names, ...more].join(", ")}.`;
    problems.push(
      new Problem(
        "field-unknown",
        `${place} › ${word.slice(0, 60)}`,
        "There is no such field.",
        remedy,
      ),
    );
  }
  const entries = names.map((name) => [name, reader(asks[name], one[name], `${place} › ${name}`)]);
  if (entries.some(([, size]) => size === undefined)) return undefined;
  return Object.fromEntries(entries) as Record<N, Mm>;
}

/** Holes of a plate, each as two lengths: out from the pin, and aside from the middle. */
function holesOf(
  raw: unknown,
  place: string,
  reader: LengthReader,
  problems: Problem[],
): readonly Hole[] | undefined {
  const isPair = (one: unknown): one is readonly [unknown, unknown] =>
    Array.isArray(one) && one.length === 2;
  if (!Array.isArray(raw) || raw.length === 0 || raw.length > MOST_THINGS || !raw.every(isPair)) {
    const remedy = 'Write [["19 mm", "12 mm"], …]: out from the pin, and aside.';
    problems.push(new Problem("wrong-type", place, "It is no list of holes.", remedy));
    return undefined;
  }
  const read = raw.flatMap(([from, along], i): readonly Hole[] => {
    const at = `${place}, number ${i + 1}`;
    const [a, b] = [reader(hole, from, at), reader(hole, along, at)];
    return a === undefined || b === undefined ? [] : [{ from: mm(a), along: mm(b) }];
  });
  return read.length === raw.length ? read : undefined;
}
