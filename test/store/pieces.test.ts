import { describe, expect, test } from "vitest";
import { applyEdit, documentText } from "../../src/piece/index.ts";
import { memoryStore } from "../../src/store/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { closed, newFolder, opened } from "./folders.ts";
import { setting } from "./model.ts";
import { codeOf } from "./problems.ts";

const top = (thickness: string) => setting(["assemblies", "table", "top"], thickness);

describe("pieces", () => {
  test("are made with a name that can stand in an address, another each time", async () => {
    const store = await memoryStore();
    const one = store.create(sampleDocument({ name: "Großer Tisch: café ½ / “Anna”" }));
    const other = store.create(sampleDocument({ name: "Großer Tisch: café ½ / “Anna”" }));
    const nameless = store.create(sampleDocument({ name: "桌子" }));
    expect(one).toMatch(/^gro-er-tisch-cafe-1-2-anna-[2-9a-z]{6}$/);
    expect(other).not.toBe(one);
    expect(nameless).toMatch(/^piece-[2-9a-z]{6}$/);
  });

  test("are listed, the newest change first", async () => {
    let minute = 0;
    const store = await memoryStore(() => new Date(Date.UTC(2026, 0, 1, 0, minute++)));
    const one = store.create(sampleDocument({ name: "One", client: "A. Client" }));
    const two = store.create(sampleDocument({ name: "Two", demo: false }));
    store.edit(one, top("3/4 in"));
    expect(store.list()).toEqual([
      {
        id: one,
        name: "One",
        client: "A. Client",
        demo: true,
        changed: "2026-01-01T00:02:00.000Z",
        steps: 1,
      },
      { id: two, name: "Two", client: "", demo: false, changed: expect.any(String), steps: 0 },
    ]);
  });

  test("are put away and brought back with all their steps", async () => {
    const store = await memoryStore();
    const id = store.create(sampleDocument());
    const { text } = store.edit(id, top("3/4 in"));
    store.remove(id);
    expect(store.list()).toEqual([]);
    expect(store.listAway().map((one) => one.id)).toEqual([id]);
    expect(await codeOf(() => store.edit(id, top("1 in")))).toBe("piece-away");
    expect(store.open(id).text).toBe(text);
    store.restore(id);
    expect(store.listAway()).toEqual([]);
    expect(store.edit(id, top("1 in")).step).toBe(2);
  });

  test("go out as the document's canonical bytes and come in again", async () => {
    const store = await memoryStore();
    const text = store.exportText(store.create(sampleDocument({ note: "odd \ud800 \0 “text”" })));
    expect(text).toBe(documentText(sampleDocument({ note: "odd \ud800 \0 “text”" })));
    const imported = store.importText(text);
    expect(imported.ok && store.exportText(imported.id)).toBe(text);
    const refused = store.importText('{"format": "latewood-piece", "version": 1}');
    expect(!refused.ok && refused.problems.length).toBeGreaterThan(5);
    expect(store.list().length).toBe(2);
  });

  test("that are not there are refused, and documents that could not be read again", async () => {
    const store = await memoryStore();
    for (const ask of [store.open, store.history, store.undo, store.remove, store.restore]) {
      expect(await codeOf(() => ask("none-222222"))).toBe("piece-unknown");
    }
    expect(await codeOf(() => store.create(sampleDocument({ name: "" })))).toBe("text-empty");
    expect(store.list()).toEqual([]);
  });
});

describe("steps", () => {
  test("an edit says what it did, and is there after a restart", async () => {
    const folder = newFolder();
    const first = await opened(folder);
    const id = first.create(sampleDocument());
    const done = first.edit(id, top("7/8 in"));
    const expected = applyEdit(sampleDocument(), top("7/8 in")).document;
    expect(done).toEqual({
      id,
      document: expected,
      text: documentText(expected),
      step: 1,
      undo: "top 7/8 in",
      redo: undefined,
      repairs: [],
    });
    closed(first);
    expect((await opened(folder)).open(id)).toEqual(done);
  });

  test("undo and redo reach back across a restart; a new edit ends the redoing", async () => {
    const folder = newFolder();
    const first = await opened(folder);
    const id = first.create(sampleDocument());
    first.edit(id, top("1 in"));
    first.edit(id, top("2 in"));
    first.edit(id, top("3 in"));
    expect(first.undo(id)).toMatchObject({ step: 4, undo: "top 2 in", redo: "top 3 in" });
    expect(first.undo(id)).toMatchObject({ step: 5, undo: "top 1 in", redo: "top 2 in" });
    closed(first);
    const store = await opened(folder);
    expect(store.redo(id)).toMatchObject({ step: 6, undo: "top 2 in", redo: "top 3 in" });
    expect(store.undo(id)).toMatchObject({ step: 7, undo: "top 1 in", redo: "top 2 in" });
    expect(store.undo(id)).toMatchObject({ undo: undefined, redo: "top 1 in" });
    expect(store.open(id).text).toBe(documentText(sampleDocument()));
    expect(await codeOf(() => store.undo(id))).toBe("nothing-to-undo");
    expect(store.edit(id, top("4 in"))).toMatchObject({ undo: "top 4 in", redo: undefined });
    expect(await codeOf(() => store.redo(id))).toBe("nothing-to-redo");
    expect(store.history(id).lines.map(({ step, kind, says }) => [step, kind, says])).toEqual([
      [9, "edit", "top 4 in"],
      [8, "undo", "top 1 in"],
      [7, "undo", "top 2 in"],
      [6, "redo", "top 2 in"],
      [5, "undo", "top 2 in"],
      [4, "undo", "top 3 in"],
      [3, "edit", "top 3 in"],
      [2, "edit", "top 2 in"],
      [1, "edit", "top 1 in"],
      [0, "made", "Made"],
    ]);
    expect(store.at(id, 3).assemblies.table?.top).toBe("3 in");
    expect(await codeOf(() => store.at(id, 10))).toBe("step-unknown");
    expect(await codeOf(() => store.at(id, 0.5))).toBe("step-unknown");
  });

  test("the history comes in pages", async () => {
    const store = await memoryStore();
    const id = store.create(sampleDocument());
    for (let i = 1; i <= 9; i++) store.edit(id, top(`${i} in`));
    const pages: number[][] = [];
    let before: number | undefined;
    do {
      const page = store.history(id, before, 4);
      pages.push(page.lines.map((line) => line.step));
      expect(page.lines.every((line) => line.isSound)).toBe(true);
      before = page.next;
    } while (before !== undefined);
    expect(pages).toEqual([
      [9, 8, 7, 6],
      [5, 4, 3, 2],
      [1, 0],
    ]);
  });

  test("an edit that cannot be made leaves no step", async () => {
    const store = await memoryStore();
    const id = store.create(sampleDocument());
    expect(await codeOf(() => store.edit(id, setting(["assemblies", "none", "x"], "1")))).toBe(
      "edit-place",
    );
    expect(await codeOf(() => store.edit(id, setting(["units"], "cubit")))).toBe("not-a-choice");
    const formless: readonly unknown[] = [
      {},
      { says: "x", changes: [{ at: "name" }] },
      { says: 1, changes: [] },
      { says: "x".repeat(401), changes: [] },
      null,
    ];
    for (const edit of formless) {
      expect(await codeOf(() => store.edit(id, edit as never))).toBe("edit-form");
    }
    expect(store.open(id)).toMatchObject({ step: 0, undo: undefined });
  });
});

describe("an edit made on an older step", () => {
  const table = ["assemblies", "table"];
  const begun = async () => {
    const store = await memoryStore();
    const id = store.create(sampleDocument());
    store.edit(id, setting([...table, "top"], "1 in"));
    store.edit(id, setting([...table, "leg"], "2 in"));
    return { store, id };
  };

  test("is made where no step since has touched its places", async () => {
    const { store, id } = await begun();
    const done = store.edit(id, setting([...table, "top"], "3 in"), 1);
    expect(done.document.assemblies.table).toEqual({
      kind: "plain-table",
      top: "3 in",
      leg: "2 in",
    });
    expect(store.undo(id).document.assemblies.table?.top).toBe("1 in");
  });

  test("is refused where one has touched the same, the place around it, or one inside", async () => {
    const { store, id } = await begun();
    expect(await codeOf(() => store.edit(id, setting([...table, "leg"], "3 in"), 1))).toBe(
      "step-behind",
    );
    const whole = { says: "all", changes: [{ at: table, to: { kind: "plain-table" } }] };
    expect(await codeOf(() => store.edit(id, whole, 1))).toBe("step-behind");
    store.edit(id, whole);
    expect(await codeOf(() => store.edit(id, setting([...table, "rail"], "1 in"), 2))).toBe(
      "step-behind",
    );
    // The name of one place is the beginning of another's, which does not make it lie inside.
    expect(store.edit(id, setting(["name"], "Other"), 0).step).toBe(4);
    expect(store.history(id).lines.length).toBe(5);
  });

  test("an undo on an older step is refused, and so is a step that is not there yet", async () => {
    const { store, id } = await begun();
    expect(await codeOf(() => store.undo(id, 1))).toBe("step-behind");
    expect(store.undo(id, 2).step).toBe(3);
    expect(await codeOf(() => store.redo(id, 2))).toBe("step-behind");
    for (const step of [4, -1, 0.5, Number.NaN]) {
      expect(await codeOf(() => store.edit(id, setting(["name"], "x"), step))).toBe("step-ahead");
    }
  });
});
