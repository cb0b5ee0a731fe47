import type {
  Change,
  CutPart,
  Edit,
  Joint,
  Key,
  Piece,
  PieceDocument,
  Value,
} from "../piece/index.ts";
import { type LengthUnit, readLength } from "../units/index.ts";
import { homeAsks } from "./home.ts";
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
export function writeHome(
  document: PieceDocument,
  name: keyof PieceDocument["home"],
  text: string,
): Edit {
  const { says, pin } = homeAsks[name];
  const to = pin(text.trim(), document.units);
  return { says: `${says}: ${to}`, changes: [{ at: ["home", name], to }] };
}

/**
 * Turns the piece to the other side of the inch. Every number without a unit gets its own first, so
 * that no size changes.
 */
export function turnTo(document: PieceDocument, units: LengthUnit): Edit {
  const pins: Change[] = [];
  for (const [assembly, texts] of Object.entries(document.assemblies)) {
    const { asks } = kindNamed(texts.kind);
    for (const [name, text] of Object.entries(texts)) {
      const to = Object.hasOwn(asks, name) ? (asks[name]?.pin(text, document.units) ?? text) : text;
      if (to !== text) pins.push({ at: ["assemblies", assembly, name], to });
    }
  }
  for (const table of ["overrides", "measured"] as const) {
    for (const [key, text] of Object.entries(document[table])) {
      const to = pinnedLength(text, document.units);
      if (to !== text) pins.push({ at: [table, key], to });
    }
  }
  for (const [part, { values }] of Object.entries(document.cut)) {
    for (const [key, text] of Object.entries(values)) {
      const to = pinnedLength(text, document.units);
      if (to !== text) pins.push({ at: ["cut", part, "values", key], to });
    }
  }
  for (const [name, question] of Object.entries(homeAsks)) {
    const text = document.home[name as keyof typeof homeAsks];
    const to = question.pin(text, document.units);
    if (to !== text) pins.push({ at: ["home", name], to });
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

/**
 * The values that a cut part settles for others: its own, and those of the joints that it is worked
 * for. A top only has lead holes bored in it: how it is held may still change.
 */
function valuesOf({ values, joints, parts }: Piece, part: Key): readonly Value[] {
  const isTop = parts.some((one) => one.key === part && one.role === "top");
  const worked = joints
    .filter((j) => j.parts.includes(part) && (!isTop || j.kind === "leaf"))
    .flatMap((j) => [j.key, ...sharedBy(j.kind, part)]);
  const owners = [part, ...worked];
  return values.filter(({ key }) => owners.includes(key.slice(0, key.lastIndexOf("."))));
}

/** What all leaf joints of an assembly share, and all arms: a cut part settles it for its fellows. */
function sharedBy(kind: Joint["kind"], part: Key): readonly Key[] {
  const [assembly] = part.split("/");
  if (kind === "leaf") return [`${assembly}/leaf-joint`];
  return kind === "pivot" ? [`${assembly}/arms`] : [];
}

/** Says that a part is cut: its shape is kept from now on, whatever the design does. */
export function markCut(piece: Piece, key: Key): Edit {
  const part = piece.parts.find((one) => one.key === key);
  if (!part) throw new Error(`the piece has no part ${key}`);
  const values = valuesOf(piece, key).map((value) => [value.key, exactly(value.inForce)] as const);
  const cut: CutPart = {
    ...part.blank,
    features: part.features,
    values: Object.fromEntries(values),
  };
  // As it will be read back from its file: what is undefined is left out.
  const to = JSON.parse(JSON.stringify(cut));
  return { says: `${nameOf(piece, key)}: cut`, changes: [{ at: ["cut", key], to }] };
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
