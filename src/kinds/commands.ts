import type { Change, Edit, Key, Piece, PieceDocument, Value } from "../piece/index.ts";
import { type LengthUnit, readLength } from "../units/index.ts";
import { kindNamed } from "./kinds.ts";

/** A bare number's unit written out, so that it means the same on either side from then on. */
const pinnedLength = (text: string, units: LengthUnit): string => {
  const read = readLength(text, units);
  const other = readLength(text, units === "inch" ? "mm" : "inch");
  if (!read.ok || (other.ok && other.value === read.value)) return text;
  return `${text.trim()} ${units === "inch" ? "in" : "mm"}`;
};

/**
 * Gives one of a kind's questions another answer.
 *
 * @param assembly  its name in the document
 * @param name  of the question
 * @param text  as typed; kept so, its unit written out
 */
export function answer(
  document: PieceDocument,
  assembly: string,
  name: string,
  text: string,
): Edit {
  const texts = document.assemblies[assembly];
  const question = texts && kindNamed(texts.kind).asks[name];
  if (!question) throw new Error(`${assembly} is not asked ${name}`);
  const to = question.pin(text.trim(), document.units);
  return { says: `${question.says}: ${to}`, changes: [{ at: ["assemblies", assembly, name], to }] };
}

/** Fields of the document that are one text each, and what they are called. */
const fieldSays = {
  name: "name",
  client: "client",
  note: "note",
  timber: "timber",
} as const;

/** Gives one of the document's own fields another text. */
export const writeField = (name: keyof typeof fieldSays, text: string): Edit => ({
  says: `${fieldSays[name]}: ${text.trim().slice(0, 60)}`,
  changes: [{ at: [name], to: text.trim() }],
});

/** Says otherwise where the piece will live, or how dry it is made. */
export const writeHome = (name: keyof PieceDocument["home"], says: string, text: string): Edit => ({
  says: `${says}: ${text.trim()}`,
  changes: [{ at: ["home", name], to: text.trim() }],
});

/**
 * Turns the piece to the other side of the inch. Every number without a unit gets its own first, so
 * that no size changes.
 */
export function turnTo(document: PieceDocument, units: LengthUnit): Edit {
  const pins: Change[] = [];
  for (const [assembly, texts] of Object.entries(document.assemblies)) {
    const { asks } = kindNamed(texts.kind);
    for (const [name, text] of Object.entries(texts)) {
      const to = asks[name]?.pin(text, document.units) ?? text;
      if (to !== text) pins.push({ at: ["assemblies", assembly, name], to });
    }
  }
  for (const table of ["overrides", "measured"] as const) {
    for (const [key, text] of Object.entries(document[table])) {
      const to = pinnedLength(text, document.units);
      if (to !== text) pins.push({ at: [table, key], to });
    }
  }
  for (const [part, texts] of Object.entries(document.cut)) {
    for (const [key, text] of Object.entries(texts)) {
      const to = pinnedLength(text, document.units);
      if (to !== text) pins.push({ at: ["cut", part, key], to });
    }
  }
  return { says: `units: ${units}`, changes: [...pins, { at: ["units"], to: units }] };
}

/** Puts a value of the maker's own in place of a computed one, or takes it back where `text` is left out. */
export const override = (
  document: PieceDocument,
  value: Pick<Value, "key" | "says">,
  text?: string,
): Edit => entry("overrides", document, value, text);

/** Enters a value taken off the wood, or takes it back where `text` is left out. */
export const measure = (
  document: PieceDocument,
  value: Pick<Value, "key" | "says">,
  text?: string,
): Edit => entry("measured", document, value, text);

function entry(
  table: "overrides" | "measured",
  { units }: PieceDocument,
  { key, says }: Pick<Value, "key" | "says">,
  text: string | undefined,
): Edit {
  const word = table === "measured" ? "measured" : "own";
  if (text === undefined)
    return { says: `${says}: ${word} value taken back`, changes: [{ at: [table, key] }] };
  const to = pinnedLength(text, units);
  return { says: `${says}: ${word} ${to}`, changes: [{ at: [table, key], to }] };
}

/** Every value that a part is cut to: its own and those of its joints. */
function valuesOf({ values, joints }: Piece, part: Key): readonly Value[] {
  const owners = [part, ...joints.filter((j) => j.parts.includes(part)).map((j) => j.key)];
  return values.filter(({ key }) => owners.includes(key.slice(0, key.lastIndexOf("."))));
}

/** Says that a part is cut: the values it is made to stand from now on, whatever the design does. */
export function markCut(piece: Piece, part: Key): Edit {
  const texts = valuesOf(piece, part).map(({ key, inForce }) => [key, exactly(inForce)] as const);
  return {
    says: `${nameOf(piece, part)}: cut`,
    changes: [{ at: ["cut", part], to: Object.fromEntries(texts) }],
  };
}

/** Takes a part out of what is cut: it follows the design again. */
export const unmarkCut = (piece: Piece, part: Key): Edit => ({
  says: `${nameOf(piece, part)}: to be cut anew`,
  changes: [{ at: ["cut", part] }],
});

const nameOf = ({ parts }: Piece, key: Key): string => {
  const part = parts.find((one) => one.key === key);
  return part ? `${part.mark} ${part.name}` : key;
};

/** Every digit: what is cut must not be rounded. What is nothing to a maker is nought. */
const exactly = (size: number): string => `${size < 1e-6 ? 0 : size} mm`;
