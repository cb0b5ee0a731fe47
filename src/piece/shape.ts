import { Problem } from "../worked/index.ts";
import { FORMAT, type PieceDocument, VERSION } from "./document.ts";

/** A key is role words; an assembly's name and a kind's question are one word each. */
const KEY = "^[a-z0-9]+([-./][a-z0-9]+)*$";
const WORD = "^[a-z0-9]+(-[a-z0-9]+)*$";
/** Longer texts than this are no length, name or note [characters]. */
const LONGEST = { text: 120, note: 4000 };
const MOST_ENTRIES = 2000;

type Schema = Readonly<Record<string, unknown>>;

const text = (says: string, maxLength = LONGEST.text): Schema => ({
  type: "string",
  description: says,
  maxLength,
});
const table = (says: string, names: string, of: Schema): Schema => ({
  type: "object",
  description: says,
  propertyNames: { pattern: names, maxLength: LONGEST.text },
  maxProperties: MOST_ENTRIES,
  additionalProperties: of,
});
const record = (says: string, properties: Readonly<Record<string, Schema>>): Schema => ({
  type: "object",
  description: says,
  properties,
  required: Object.keys(properties),
  additionalProperties: false,
});

/** Any assembly, before its kind is known. */
const anyAssembly: Schema = {
  type: "object",
  description: "A kind of furniture and the answers to its questions.",
  properties: { kind: text("The kind of furniture.") },
  required: ["kind"],
  propertyNames: { pattern: WORD, maxLength: LONGEST.text },
  maxProperties: MOST_ENTRIES,
  additionalProperties: text("An answer as typed, with its unit."),
};

const values = (says: string): Schema =>
  table(says, KEY, text("A length with its unit, such as 21.4 mm or 27/32 in."));

const fields: Readonly<Record<keyof PieceDocument, Schema>> = {
  $schema: text("Where an editor finds this schema."),
  format: { const: FORMAT, description: "What this file is." },
  version: { const: VERSION, description: "Version of this form; older ones are brought forward." },
  name: { ...text("What the piece is called."), minLength: 1 },
  client: text("Who it is for; may be empty."),
  note: text("Anything worth keeping with it; may be empty.", LONGEST.note),
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
  cut: table(
    "Parts that are cut, by key, each with the values it was cut to.",
    KEY,
    values("The values it was cut to, by key."),
  ),
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

const problem = (code: string, place: string, reason: string, remedy: string) =>
  new Problem(code, place === "" ? "the piece" : place, reason, remedy);

/** What was read, short enough to quote; never looked into, for it may be nested without end. */
export function quoted(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object in braces";
  const text = typeof value === "string" ? JSON.stringify(value.slice(0, 60)) : String(value);
  return text.length > 48 ? `${text.slice(0, 46)}…` : text;
}

/** Holds a value against the few words of JSON Schema that `documentSchema` uses. */
function problemsOf(value: unknown, schema: Schema, place: string): readonly Problem[] {
  const says = String(schema.description ?? "");
  if ("const" in schema) {
    return value === schema.const
      ? []
      : [
          problem(
            "not-this",
            place,
            `It reads ${quoted(value)}.`,
            `Write ${quoted(schema.const)}.`,
          ),
        ];
  }
  if (Array.isArray(schema.enum)) {
    return schema.enum.includes(value)
      ? []
      : [
          problem(
            "not-a-choice",
            place,
            `It reads ${quoted(value)}.`,
            `Write ${schema.enum.map(quoted).join(" or ")}.`,
          ),
        ];
  }
  if (schema.type === "object") return tableProblems(value, schema, place);
  if (typeof value !== schema.type) {
    const wanted = schema.type === "string" ? "a text in quotation marks" : "true or false";
    return [problem("wrong-type", place, `It reads ${quoted(value)}.`, `Write ${wanted}. ${says}`)];
  }
  return typeof value === "string" ? textProblems(value, schema, place) : [];
}

function textProblems(value: string, schema: Schema, place: string): readonly Problem[] {
  const { minLength = 0, maxLength = LONGEST.text } = schema as {
    minLength?: number;
    maxLength?: number;
  };
  if (value.length > maxLength)
    return [
      problem(
        "text-too-long",
        place,
        `It is ${value.length} characters long.`,
        `Use at most ${maxLength}.`,
      ),
    ];
  if (value.length < minLength)
    return [problem("text-empty", place, "Nothing is written here.", String(schema.description))];
  return [];
}

function tableProblems(value: unknown, schema: Schema, place: string): readonly Problem[] {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return [
      problem(
        "wrong-type",
        place,
        `It reads ${quoted(value)}.`,
        `Write an object in braces. ${schema.description}`,
      ),
    ];
  }
  const properties = (schema.properties ?? {}) as Readonly<Record<string, Schema>>;
  const required = (schema.required ?? []) as readonly string[];
  const names = Object.keys(value);
  const inside = (name: string) => (place === "" ? name : `${place} › ${name}`);
  const { maxProperties = MOST_ENTRIES, minProperties = 0 } = schema as {
    maxProperties?: number;
    minProperties?: number;
  };
  if (names.length > maxProperties)
    return [
      problem(
        "too-many",
        place,
        `It has ${names.length} entries.`,
        `Use at most ${maxProperties}.`,
      ),
    ];
  if (names.length < minProperties)
    return [problem("too-few", place, "It is empty.", `${schema.description} Give at least one.`)];
  const missing = required
    .filter((name) => !Object.hasOwn(value, name))
    .map((name) =>
      problem("missing", inside(name), "It is not there.", String(properties[name]?.description)),
    );
  const present = names.flatMap((name) => {
    const inner = Object.hasOwn(properties, name) ? properties[name] : schema.additionalProperties;
    if (!inner) return [unknownField(inside(name.slice(0, 60)), properties)];
    const { pattern, maxLength } = (schema.propertyNames ?? {}) as {
      pattern?: string;
      maxLength?: number;
    };
    if (
      !Object.hasOwn(properties, name) &&
      pattern !== undefined &&
      !isName(name, pattern, maxLength)
    ) {
      return [
        problem(
          "name-unreadable",
          inside(name.slice(0, 60)),
          "This is no key.",
          "Use small letters and digits, parted by - or / or a full stop.",
        ),
      ];
    }
    return problemsOf((value as Record<string, unknown>)[name], inner as Schema, inside(name));
  });
  return [...missing, ...present];
}

const isName = (name: string, pattern: string, maxLength = LONGEST.text) =>
  name.length <= maxLength && new RegExp(pattern).test(name);

const unknownField = (place: string, properties: Readonly<Record<string, Schema>>) =>
  problem(
    "field-unknown",
    place,
    "There is no such field.",
    `Use ${Object.keys(properties).join(", ")}.`,
  );
