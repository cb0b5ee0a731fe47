import { Problem } from "../worked/index.ts";
import { LONGEST_TEXT, MOST_ENTRIES, type Schema } from "./schema.ts";

const problem = (code: string, place: string, reason: string, remedy: string) =>
  new Problem(code, place === "" ? "the piece" : place, reason, remedy);

/** What was read, short enough to quote; never looked into, for it may be nested without end. */
export function quoted(value: unknown): string {
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object in braces";
  const text = typeof value === "string" ? JSON.stringify(value.slice(0, 60)) : String(value);
  return text.length > 48 ? `${text.slice(0, 46)}…` : text;
}

/** Holds a value against the few words of JSON Schema that `schema.ts` writes. */
export function problemsOf(value: unknown, schema: Schema, place: string): readonly Problem[] {
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
  if (Array.isArray(schema.oneOf)) return choiceProblems(value, schema.oneOf, place);
  if (schema.type === "object") return tableProblems(value, schema, place);
  if (schema.type === "array") return listProblems(value, schema, place);
  if (schema.type === "number") return numberProblems(value, schema, place);
  if (typeof value !== schema.type) {
    const wanted = schema.type === "string" ? "a text in quotation marks" : "true or false";
    return [problem("wrong-type", place, `It reads ${quoted(value)}.`, `Write ${wanted}. ${says}`)];
  }
  return typeof value === "string" ? textProblems(value, schema, place) : [];
}

function textProblems(value: string, schema: Schema, place: string): readonly Problem[] {
  const { minLength = 0, maxLength = LONGEST_TEXT } = schema as {
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

const isName = (name: string, pattern: string, maxLength = LONGEST_TEXT) =>
  name.length <= maxLength && new RegExp(pattern).test(name);

const unknownField = (place: string, properties: Readonly<Record<string, Schema>>) =>
  problem(
    "field-unknown",
    place,
    "There is no such field.",
    `Use ${Object.keys(properties).join(", ")}.`,
  );

/** Of several records the one whose constant the value names. */
function choiceProblems(
  value: unknown,
  choices: readonly Schema[],
  place: string,
): readonly Problem[] {
  const named = choices.map((choice) => {
    const properties = (choice.properties ?? {}) as Readonly<Record<string, Schema>>;
    const [name, constant] = Object.entries(properties).find(([, p]) => "const" in p) ?? [];
    return { choice, name: name ?? "", constant: constant?.const };
  });
  const name = named[0]?.name ?? "";
  const given =
    typeof value === "object" && value !== null && Object.hasOwn(value, name)
      ? (value as Record<string, unknown>)[name]
      : undefined;
  const found = named.find(({ constant }) => constant === given);
  if (found) return problemsOf(value, found.choice, place);
  const words = named.map(({ constant }) => quoted(constant)).join(", ");
  return [problem("not-a-choice", place, `Its ${name} reads ${quoted(given)}.`, `Use ${words}.`)];
}

function listProblems(value: unknown, schema: Schema, place: string): readonly Problem[] {
  const { minItems = 0, maxItems = MOST_ENTRIES } = schema as {
    minItems?: number;
    maxItems?: number;
  };
  if (!Array.isArray(value) || value.length < minItems || value.length > maxItems) {
    const count = minItems === maxItems ? `${minItems}` : `at most ${maxItems}`;
    const remedy = `Write a list of ${count}. ${schema.description}`;
    return [problem("wrong-type", place, `It reads ${quoted(value)}.`, remedy)];
  }
  return value.flatMap((one, i) => problemsOf(one, schema.items as Schema, `${place} › ${i + 1}`));
}

function numberProblems(value: unknown, schema: Schema, place: string): readonly Problem[] {
  const { minimum, maximum } = schema as { minimum: number; maximum: number };
  if (typeof value === "number" && value >= minimum && value <= maximum) return [];
  const remedy = `Write a number of millimetres from ${minimum} to ${maximum}. ${schema.description}`;
  return [problem("out-of-range", place, `It reads ${quoted(value)}.`, remedy)];
}
