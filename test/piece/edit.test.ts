import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  applyEdit,
  type Change,
  documentText,
  type Edit,
  type PieceDocument,
} from "../../src/piece/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { sampleDocument } from "../kit/documents.ts";

const key = fc.constantFrom(
  "table/top.width",
  "table/leg/front-left.length",
  "table/tenons/long.upper",
);
const text = fc.constantFrom("1 in", "25 mm", "3/4");
const change: fc.Arbitrary<Change> = fc.oneof(
  fc.record({
    at: fc.constantFrom(["name"], ["client"], ["timber"], ["home", "made"]),
    to: fc.string({ minLength: 1, maxLength: 20 }),
  }),
  fc.record({ at: fc.constant(["demo"]), to: fc.boolean() }),
  fc.record({
    at: fc.constantFrom("length", "leg", "tips").map((name) => ["assemblies", "table", name]),
    to: text,
  }),
  fc.constantFrom("length", "leg", "tips").map((name) => ({ at: ["assemblies", "table", name] })),
  fc
    .tuple(fc.constantFrom("overrides", "measured"), key, text)
    .map(([table, name, to]) => ({ at: [table, name], to })),
  fc
    .tuple(fc.constantFrom("overrides", "measured"), key)
    .map(([table, name]) => ({ at: [table, name] })),
  fc.tuple(key, text).map(([name, to]) => ({
    at: ["cut", "table/top"],
    to: { length: 900, width: 500.5, thickness: 20, features: [], values: { [name]: to } },
  })),
  fc.constant({ at: ["cut", "table/top"] }),
);
const edit: fc.Arbitrary<Edit> = fc.record({
  says: fc.constant("edit"),
  changes: fc.array(change, { minLength: 1, maxLength: 4 }),
});

test("a run of edits unmade in turn gives every document back to the byte, and made again the same", () => {
  fc.assert(
    fc.property(fc.array(edit, { maxLength: 12 }), (edits) => {
      const texts = [documentText(sampleDocument())];
      const inverses: Edit[] = [];
      let now: PieceDocument = sampleDocument();
      for (const one of edits) {
        const { document, inverse } = applyEdit(now, one);
        now = document;
        texts.push(documentText(now));
        inverses.push(inverse);
      }
      const last = documentText(now);
      const forth: Edit[] = [];
      for (const [i, inverse] of [...inverses.entries()].reverse()) {
        const { document, inverse: again } = applyEdit(now, inverse);
        now = document;
        forth.unshift(again);
        expect(documentText(now)).toBe(texts[i]);
      }
      for (const one of forth) now = applyEdit(now, one).document;
      expect(documentText(now)).toBe(last);
    }),
    { numRuns: 300 },
  );
});

describe("an edit that would leave no document is refused, and nothing is changed", () => {
  test.each([
    ["no place", []],
    ["the form's own fields", ["version"]],
    ["a place inside a text", ["name", "first"]],
    ["a place that is not there", ["assemblies", "chair", "length"]],
    ["a new field", ["colour"]],
    ["a prototype", ["__proto__", "polluted"]],
    ["a prototype further in", ["overrides", "__proto__"]],
  ])("%s", (_, at) => {
    const document = sampleDocument();
    const before = documentText(document);
    const change = {
      says: "odd",
      changes: [
        { at: ["client"], to: "x" },
        { at, to: "1 in" },
      ],
    };
    expect(() => applyEdit(document, change)).toThrow(Problem);
    expect(documentText(document)).toBe(before);
    expect(({} as { polluted?: string }).polluted).toBeUndefined();
  });

  test("a value of the wrong sort", () => {
    const bad = (at: readonly string[], to: Change["to"]) => () =>
      applyEdit(sampleDocument(), {
        says: "odd",
        changes: [to === undefined ? { at } : { at, to }],
      });
    expect(bad(["name"], undefined)).toThrow(Problem);
    expect(bad(["name"], "")).toThrow(Problem);
    expect(bad(["demo"], "yes")).toThrow(Problem);
    expect(bad(["units"], "ell")).toThrow(Problem);
    expect(bad(["overrides"], "all")).toThrow(Problem);
    expect(bad(["assemblies", "table"], undefined)).toThrow(Problem);
  });
});
