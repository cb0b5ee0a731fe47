import fc from "fast-check";
import { expect, test } from "vitest";
import { documentText, type Edit } from "../../src/piece/index.ts";
import { type Database, IN_MEMORY, openDatabase } from "../../src/store/database.ts";
import { loadDriver, type Pieces } from "../../src/store/index.ts";
import { unsoundSteps } from "../../src/store/load.ts";
import { migrate } from "../../src/store/schema.ts";
import { piecesIn, SNAPSHOT_EVERY } from "../../src/store/store.ts";
import { sampleDocument } from "../kit/documents.ts";
import { Model } from "./model.ts";

const now = () => "2026-01-01T00:00:00.000Z";
const driver = await loadDriver();

type Act = { readonly act: "undo" | "redo" | "restart" } | { readonly act: "edit"; edit: Edit };

const words = fc.string({ unit: "binary", maxLength: 20 });
const change = fc.oneof(
  fc.record({ at: fc.constant(["name"]), to: words.filter((name) => name !== "") }),
  fc.record({ at: fc.constantFrom(["note"], ["client"], ["home", "driest"]), to: words }),
  fc.record(
    {
      at: fc.constantFrom(
        ["assemblies", "table", "top"],
        ["assemblies", "table", "leg"],
        ["overrides", "table/leg/width"],
      ),
      to: words,
    },
    { requiredKeys: ["at"] },
  ),
  fc.record({
    at: fc.constant(["measured"]),
    to: fc.dictionary(fc.constantFrom("table/top", "table/leg"), words),
  }),
);
const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      act: fc.constant("edit" as const),
      edit: fc.record({ says: words, changes: fc.array(change, { maxLength: 3 }) }),
    }),
  },
  { weight: 6, arbitrary: fc.record({ act: fc.constantFrom("undo" as const, "redo" as const) }) },
  { weight: 1, arbitrary: fc.record({ act: fc.constant("restart" as const) }) },
);

/** Does it in both, where both can; returns the store, which a restart makes anew. */
function done(act: Act, model: Model, db: Database, pieces: Pieces, id: string): Pieces {
  switch (act.act) {
    case "restart":
      return piecesIn(db, now);
    case "edit":
      model.edit(act.edit);
      pieces.edit(id, act.edit);
      return pieces;
    case "undo":
      if (model.undos.length === 0) expect(() => pieces.undo(id)).toThrow();
      else {
        model.undo();
        pieces.undo(id);
      }
      return pieces;
    case "redo":
      if (model.redos.length === 0) expect(() => pieces.redo(id)).toThrow();
      else {
        model.redo();
        pieces.redo(id);
      }
      return pieces;
  }
}

function agree(acts: readonly Act[]): void {
  const db = openDatabase(driver, IN_MEMORY);
  try {
    migrate(db);
    let pieces = piecesIn(db, now);
    const id = pieces.create(sampleDocument());
    const model = new Model(sampleDocument());
    for (const one of acts) {
      pieces = done(one, model, db, pieces, id);
      const { text, step, undo, redo } = pieces.open(id);
      expect(text).toBe(model.text);
      expect(step).toBe(model.step);
      expect(undo === undefined).toBe(model.undos.length === 0);
      expect(redo === undefined).toBe(model.redos.length === 0);
    }
    // Another store reads everything from the database, and not from what this one remembers.
    const other = piecesIn(db, now);
    expect(other.open(id)).toMatchObject({ text: model.text, step: model.step, repairs: [] });
    model.texts.forEach((text, step) => {
      expect(documentText(other.at(id, step)), `step ${step}`).toBe(text);
    });
    expect(unsoundSteps(db, id)).toEqual([]);
  } finally {
    db.close();
  }
}

test("any edits, undos, redos and restarts end as a plain model does, at every step", () => {
  fc.assert(
    fc.property(fc.array(act, { maxLength: 40 }), (acts) => agree(acts)),
    { numRuns: 150 },
  );
});

test("so do long ones, across snapshots", () => {
  fc.assert(
    fc.property(
      fc.array(act, {
        minLength: 3 * SNAPSHOT_EVERY,
        maxLength: 3.5 * SNAPSHOT_EVERY,
        size: "max",
      }),
      (acts) => agree(acts),
    ),
    { numRuns: 3, endOnFailure: true },
  );
});
