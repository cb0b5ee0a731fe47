import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { kinds, newDocument, pieceSchema } from "../../src/kinds/index.ts";
import {
  documentSchema,
  documentText,
  LONGEST_DOCUMENT,
  migrated,
  readDocument,
  VERSION,
} from "../../src/piece/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { tableDocument } from "../kit/tables.ts";

const ajv = new Ajv2020({ strict: false });
const form = ajv.compile(documentSchema());
const whole = ajv.compile(pieceSchema());

/** Codes and places of what is wrong with a text. */
const faultsOf = (text: string): readonly string[] => {
  const read = readDocument(text);
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} ${place}`);
};
const textWith = (change: Record<string, unknown>) =>
  JSON.stringify({ ...sampleDocument(), ...change });

/** Deeper than a program may look into by calling itself. */
const nested = documentText(sampleDocument()).replace(
  '"Sample table"',
  `${"[".repeat(100_000)}${"]".repeat(100_000)}`,
);

describe("a document and its file", () => {
  test("what is written reads back to the byte, in one order whatever order it came in", () => {
    fc.assert(
      fc.property(tableDocument, (document) => {
        const text = documentText(document);
        const shuffled = JSON.stringify(Object.fromEntries(Object.entries(document).reverse()));
        for (const source of [text, shuffled, `\uFEFF${text}`, text.replaceAll("\n", "\r\n")]) {
          const read = readDocument(source);
          expect(read.ok && documentText(read.document)).toBe(text);
        }
      }),
      { numRuns: 60 },
    );
  });

  test.each([
    ["nothing", "", "not-json line 1, character 1, where the file ends"],
    ["one broken off", documentText(sampleDocument()).slice(0, 200), "where the file ends"],
    ["one with a stray sign", '{\n "format": @ }', "not-json line 2, character 12"],
    ["one with NaN", '{\n "version": 1,\n "width": NaN }', "not-json line 3, character 11"],
    ["one nested without end", nested, "wrong-type name"],
    ["a list", "[]", "not-a-piece the file"],
    ["another program's", '{"format": "other", "version": 1}', "not-this format"],
    ["a later version's", textWith({ version: VERSION + 1 }), "version-future version"],
    ["no version", textWith({ version: "one" }), "version-unknown version"],
    ["an unknown field", textWith({ weight: "3 kg" }), "field-unknown weight"],
    ["a field left out", JSON.stringify({ format: "latewood-piece", version: 1 }), "missing name"],
    ["a number for a text", textWith({ name: 3 }), "wrong-type name"],
    ["no name", textWith({ name: "" }), "text-empty name"],
    ["a wrong side", textWith({ units: "ell" }), "not-a-choice units"],
    ["no assembly", textWith({ assemblies: {} }), "too-few assemblies"],
    [
      "a length as a number",
      textWith({ assemblies: { table: { kind: "plain-table", length: 1500 } } }),
      "wrong-type assemblies › table › length",
    ],
    [
      "a key that is none",
      textWith({ overrides: { "Table/Leg!": "1 in" } }),
      "name-unreadable overrides › Table/Leg!",
    ],
    ["a note without end", textWith({ note: "n".repeat(5000) }), "text-too-long note"],
    [
      "a prototype as a key",
      `${JSON.stringify(sampleDocument()).slice(0, -1)},"__proto__":{"a":1}}`,
      "field-unknown __proto__",
    ],
    [
      "one too large to be a piece",
      `{"name":"${"x".repeat(LONGEST_DOCUMENT)}"}`,
      "document-too-large the file",
    ],
  ])("%s is refused with its place", (_, text, expected) => {
    expect(faultsOf(text).join("; ")).toContain(expected);
  });

  test("every fault is told at once, each with what would be right", () => {
    const read = readDocument(textWith({ name: 1, units: "ell", demo: "yes", weight: 1 }));
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems).toHaveLength(4);
    for (const { reason, remedy } of read.problems) {
      expect(reason).toMatch(/\w/);
      expect(remedy).toMatch(/\w/);
    }
  });

  test("a hostile key does no harm", () => {
    readDocument(
      '{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}}}',
    );
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });
});

describe("the published schema", () => {
  test("takes whatever is read, by a reference validator", () => {
    fc.assert(
      fc.property(tableDocument, (document) => {
        expect(whole(JSON.parse(documentText(document)))).toBe(true);
      }),
      { numRuns: 100 },
    );
    for (const kind of kinds) expect(whole(newDocument(kind, "New", "inch"))).toBe(true);
  });

  test("refuses what is refused, and the reader refuses what it does", () => {
    const odd: fc.Arbitrary<unknown> = fc.oneof(
      fc.string(),
      fc.integer(),
      fc.boolean(),
      fc.constant(null),
      fc.constant({}),
      fc.constant([]),
    );
    const field = fc.constantFrom(...Object.keys(sampleDocument()), "other");
    fc.assert(
      fc.property(field, odd, (name, value) => {
        const document = { ...sampleDocument(), [name]: value };
        const read = readDocument(JSON.stringify(document));
        // Versions are told apart before the form is looked at.
        if (!read.ok && read.problems.some((p) => p.code.startsWith("version-"))) return;
        expect(form(JSON.parse(JSON.stringify(document)))).toBe(read.ok);
      }),
      { numRuns: 500 },
    );
  });

  test("knows every kind's questions and refuses others", () => {
    const document = newDocument(kinds[0] as (typeof kinds)[number], "New", "mm");
    expect(
      whole({ ...document, assemblies: { table: { kind: "plain-table", wheels: "4" } } }),
    ).toBe(false);
    expect(whole({ ...document, assemblies: { table: { kind: "boat" } } })).toBe(false);
    expect(
      whole({ ...document, assemblies: { table: { kind: "plain-table", tips: "pointed" } } }),
    ).toBe(false);
  });
});

describe("migrations", () => {
  const steps = {
    1: (old: Readonly<Record<string, unknown>>) => ({ ...old, title: old.name, name: undefined }),
    2: (old: Readonly<Record<string, unknown>>) => ({ ...old, lines: [old.title] }),
  };
  test("go forward a step at a time", () => {
    expect(migrated({ version: 1, name: "A" }, steps, 3)).toMatchObject({
      version: 3,
      title: "A",
      lines: ["A"],
    });
    expect(migrated({ version: 2, title: "B" }, steps, 3)).toMatchObject({
      version: 3,
      lines: ["B"],
    });
    expect(migrated({ version: 3, lines: [] }, steps, 3)).toEqual({ version: 3, lines: [] });
  });
  test("never go back", () => {
    expect(() => migrated({ version: 4 }, steps, 3)).toThrow(Problem);
    expect(() => migrated({ version: 0 }, steps, 3)).toThrow(Problem);
  });
});
