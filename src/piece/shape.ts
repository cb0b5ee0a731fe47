import type { Problem } from "../worked/index.ts";
import { FORMAT, type PieceDocument, VERSION } from "./document.ts";
import { featureSchema } from "./feature-schema.ts";
import { problemsOf } from "./hold.ts";
import {
  LONGEST_TEXT,
  list,
  MOST_ENTRIES,
  record,
  type Schema,
  size,
  table,
  text,
} from "./schema.ts";

/** A key is role words; an assembly's name and a kind's question are one word each. */
const KEY = "^[a-z0-9]+([-./][a-z0-9]+)*$";
const WORD = "^[a-z0-9]+(-[a-z0-9]+)*$";
/** Longer than this no note is [characters]. */
const LONGEST_NOTE = 4000;

/** Any assembly, before its kind is known. */
const anyAssembly: Schema = {
  type: "object",
  description: "A kind of furniture and the answers to its questions.",
  properties: { kind: text("The kind of furniture.") },
  required: ["kind"],
  propertyNames: { pattern: WORD, maxLength: LONGEST_TEXT },
  maxProperties: MOST_ENTRIES,
  additionalProperties: text("An answer as typed, with its unit."),
};

const values = (says: string): Schema =>
  table(says, KEY, text("A length with its unit, such as 21.4 mm or 27/32 in."));

const cutPart: Schema = record("A part as it is cut; sizes in millimetres.", {
  length: size("Along the grain."),
  width: size("Across the grain."),
  thickness: size("From back to show face."),
  features: list("What is worked on it.", featureSchema),
  values: values("The values that other parts are fitted to, by key."),
});

const fields: Readonly<Record<keyof PieceDocument, Schema>> = {
  $schema: text("Where an editor finds this schema."),
  format: { const: FORMAT, description: "What this file is." },
  version: { const: VERSION, description: "Version of this form; older ones are brought forward." },
  name: { ...text("What the piece is called."), minLength: 1 },
  client: text("Who it is for; may be empty."),
  note: text("Anything worth keeping with it; may be empty.", LONGEST_NOTE),
  demo: { type: "boolean", description: "Whether it is invented, for show." },
  units: { enum: ["inch", "mm"], description: "The side that a number without a unit takes." },
  timber: text("The timber, by any of its names: black cherry, white oak."),
  home: record("Where the piece will live, and how dry it is made.", {
    warmth: text("Warmth of the room, such as 20 C or 68 F."),
    driest: text("Humidity in the dry season, such as 30 %."),
    dampest: text("Humidity in the damp season, such as 65 %."),
    made: text("Moisture of the wood when it is made, such as 8 %."),
  }),
  assemblies: {
    ...table("What the piece is made up of, by name.", WORD, anyAssembly),
    minProperties: 1,
  },
  overrides: values("Values of the maker's own in place of computed ones, by key."),
  measured: values("Values taken off the wood, by key."),
  cut: table("Parts as they are cut, by key; they no longer follow the design.", KEY, cutPart),
};

const OPTIONAL: readonly string[] = ["$schema"];

/**
 * The document's form as a JSON Schema (draft 2020-12), the same that is read by here.
 *
 * @param assembly  the schema of an assembly, from the kinds there are
 */
export function documentSchema(assembly: Schema = anyAssembly): Schema {
  return {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "A piece of furniture, as Latewood keeps it",
    ...record("Dimensions and changes; the piece itself is generated from them.", {
      ...fields,
      assemblies: { ...fields.assemblies, additionalProperties: assembly },
    }),
    required: Object.keys(fields).filter((name) => !OPTIONAL.includes(name)),
  };
}

const whole: Schema = documentSchema();

/** Everything in which a value is not of a document's form; none when it is one. */
export const shapeProblems = (value: unknown): readonly Problem[] => problemsOf(value, whole, "");
