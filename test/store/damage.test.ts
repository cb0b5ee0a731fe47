import {
  closeSync,
  existsSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { documentText } from "../../src/piece/index.ts";
import { type Database, openDatabase } from "../../src/store/database.ts";
import { loadDriver, type Store } from "../../src/store/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { closed, newFolder, opened } from "./folders.ts";
import { Model, setting } from "./model.ts";
import { codeOf } from "./problems.ts";

const driver = await loadDriver();

/** A store with a piece of so many edits, closed; `ask` is told the store before. */
async function folderWith(edits: number, ask: (store: Store, step: number) => void = () => {}) {
  const folder = newFolder();
  const store = await opened(folder);
  const model = new Model(sampleDocument());
  const id = store.create(sampleDocument());
  ask(store, 0);
  for (let step = 1; step <= edits; step++) {
    const edit = setting(["assemblies", "table", `answer-${step % 3}`], `${step} in`);
    model.edit(edit);
    store.edit(id, edit);
    ask(store, step);
  }
  closed(store);
  return { folder, id, model };
}

/** Reaches into the closed database, as damage does. */
function tamper(folder: string, work: (db: Database) => void): void {
  const db = openDatabase(driver, join(folder, "latewood.db"));
  db.exec("PRAGMA foreign_keys=OFF");
  work(db);
  db.close();
}

/** Changes one byte of a text in the middle. */
const flip = (column: string) =>
  `${column} = substr(${column}, 1, 10) || char(unicode(substr(${column}, 11, 1)) + 1) || substr(${column}, 12)`;

const aside = (folder: string): number => {
  let count = 0;
  tamper(folder, (db) => {
    count = db.get<{ n: number }>("SELECT count(*) AS n FROM aside")?.n ?? 0;
  });
  return count;
};

describe("a damaged record", () => {
  for (const column of ["edit", "inverse", "at", "sum"]) {
    test(`in its ${column}: the piece opens as after the step before, the rest is kept aside`, async () => {
      const { folder, id, model } = await folderWith(9);
      tamper(folder, (db) => db.run(`UPDATE log SET ${flip(column)} WHERE step = 6`));
      const store = await opened(folder);
      const piece = store.open(id);
      expect(piece.text).toBe(model.texts[5]);
      expect(piece.step).toBe(5);
      expect(piece.repairs.map((one) => one.code)).toEqual(["steps-set-aside"]);
      expect(piece.repairs[0]?.found).toContain("steps 6 to 9");
      expect(store.open(id).repairs).toEqual([]);
      expect(store.repairs(id)).toMatchObject([{ code: "steps-set-aside" }]);
      expect(store.edit(id, setting(["note"], "on")).step).toBe(6);
      expect(store.undo(id).text).toBe(model.texts[5]);
      expect(store.unsoundSteps(id)).toEqual([]);
      closed(store);
      expect(aside(folder)).toBe(4);
    });
  }

  for (const [what, sql] of [
    ["its kind", "UPDATE log SET kind = 'redo' WHERE step = 6"],
    ["what it may undo", "UPDATE log SET undo = 3 WHERE step = 6"],
    ["its number", "UPDATE log SET step = 60 WHERE step = 6"],
    ["its being there", "DELETE FROM log WHERE step = 6"],
    ["its place", "UPDATE log SET step = CASE step WHEN 6 THEN 70 ELSE 6 END WHERE step IN (6, 8)"],
  ] as const) {
    test(`in ${what} is noticed as well`, async () => {
      const { folder, id, model } = await folderWith(9);
      tamper(folder, (db) => db.run(sql));
      const piece = (await opened(folder)).open(id);
      expect(piece.text).toBe(model.texts[5]);
      expect(piece.repairs.map((one) => one.code)).toEqual(["steps-set-aside"]);
    });
  }

  test("lost from the end of the log without a trace is missed by the list", async () => {
    const { folder, id, model } = await folderWith(9);
    tamper(folder, (db) => db.run("DELETE FROM log WHERE step > 7"));
    const piece = (await opened(folder)).open(id);
    expect(piece.text).toBe(model.texts[7]);
    expect(piece.repairs[0]?.found).toContain("steps 8 to 9");
  });

  test("is restored from a backup that has it: nothing is lost", async () => {
    const { folder, id, model } = await folderWith(9, (store, step) => {
      if (step === 7) store.backUp();
    });
    tamper(folder, (db) => {
      db.run(`UPDATE log SET ${flip("edit")} WHERE step IN (0, 3)`);
      db.run("DELETE FROM snapshots");
    });
    const store = await opened(folder);
    const piece = store.open(id);
    expect(piece.text).toBe(model.text);
    expect(piece.step).toBe(9);
    expect(piece.repairs.map((one) => one.code)).toEqual(["record-restored"]);
    expect(store.unsoundSteps(id)).toEqual([]);
  });

  test("older than a snapshot costs neither the piece nor any other state", async () => {
    const { folder, id, model } = await folderWith(130);
    tamper(folder, (db) => db.run(`UPDATE log SET ${flip("edit")} WHERE step = 40`));
    const store = await opened(folder);
    const piece = store.open(id);
    expect(piece).toMatchObject({ text: model.text, step: 130 });
    expect(piece.repairs.map((one) => one.code)).toEqual(["record-damaged"]);
    expect(store.unsoundSteps(id)).toEqual([40]);
    for (const step of [0, 39, 40, 41, 99, 100, 130]) {
      expect(documentText(store.at(id, step)), `step ${step}`).toBe(model.texts[step]);
    }
    expect(store.history(id, 42, 3).lines.map((line) => [line.step, line.isSound])).toEqual([
      [41, true],
      [40, false],
      [39, true],
    ]);
    for (let step = 131; step <= 219; step++) store.undo(id);
    expect(await codeOf(() => store.undo(id))).toBe("step-damaged");
    expect(store.open(id).text).toBe(model.texts[41]);
  });

  test("older than a snapshot is restored when the store is checked, and before an undo needs it", async () => {
    for (const way of ["check", "undo"] as const) {
      const { folder, id, model } = await folderWith(102, (store, step) => {
        if (step === 60) store.backUp();
      });
      tamper(folder, (db) => db.run(`UPDATE log SET ${flip("inverse")} WHERE step IN (30, 31)`));
      const store = await opened(folder);
      expect(store.unsoundSteps(id)).toEqual([30, 31]);
      if (way === "check") {
        expect(store.check().map((one) => one.code)).toEqual(["record-restored"]);
        expect(store.open(id).step).toBe(102);
      } else {
        for (let left = 102; left > 0; left--) store.undo(id);
        expect(store.open(id).text).toBe(model.texts[0]);
      }
      expect(store.unsoundSteps(id)).toEqual([]);
    }
  });
});

describe("a damaged snapshot", () => {
  test("is made anew from the log", async () => {
    const { folder, id, model } = await folderWith(205);
    tamper(folder, (db) => db.run(`UPDATE snapshots SET ${flip("text")} WHERE step = 200`));
    const store = await opened(folder);
    const piece = store.open(id);
    expect(piece).toMatchObject({ text: model.text, step: 205, undo: "answer-1 205 in" });
    expect(piece.repairs.map((one) => one.code)).toEqual(["snapshot-rebuilt"]);
    closed(store);
    expect(aside(folder)).toBe(1);
  });

  test("and a record after it: the piece goes back to the record", async () => {
    const { folder, id, model } = await folderWith(205);
    tamper(folder, (db) => {
      db.run(`UPDATE snapshots SET ${flip("text")} WHERE step IN (100, 200)`);
      db.run(`UPDATE log SET ${flip("edit")} WHERE step = 150`);
    });
    const piece = (await opened(folder)).open(id);
    expect(piece).toMatchObject({ text: model.texts[149], step: 149 });
    expect(piece.repairs.map((one) => one.code)).toEqual(["steps-set-aside"]);
  });

  test("with the first record gone too, and no backup: the piece says so and nothing is touched", async () => {
    const { folder, id } = await folderWith(3);
    tamper(folder, (db) => {
      db.run(`UPDATE snapshots SET ${flip("text")}`);
      db.run(`UPDATE log SET ${flip("edit")} WHERE step = 0`);
    });
    const store = await opened(folder);
    const other = store.create(sampleDocument());
    expect(await codeOf(() => store.open(id))).toBe("piece-damaged");
    expect(store.edit(other, setting(["note"], "x")).step).toBe(1);
    expect(store.list().length).toBe(2);
    closed(store);
    tamper(folder, (db) => {
      expect(db.all("SELECT * FROM log WHERE piece = ?", id).length).toBe(4);
    });
  });
});

describe("a damaged line of the list", () => {
  for (const [what, sql] of [
    ["name", `UPDATE pieces SET ${flip("shown")}`],
    ["number of steps", "UPDATE pieces SET step = 2"],
    ["being away", "UPDATE pieces SET away = '2026'"],
    ["being there", "DELETE FROM pieces"],
  ] as const) {
    test(`in its ${what} is made anew when the store is opened`, async () => {
      const { folder, id, model } = await folderWith(4);
      tamper(folder, (db) => db.run(sql));
      const store = await opened(folder);
      expect(store.openingRepairs.map((one) => one.code)).toEqual(["head-rebuilt"]);
      expect(store.list()).toMatchObject([{ id, name: "Sample table", steps: 4 }]);
      expect(store.open(id)).toMatchObject({ text: model.text, repairs: [{ piece: id }] });
      expect(store.open(id).repairs).toEqual([]);
    });
  }

  test("while the store is open is made anew when the pieces are listed", async () => {
    const { folder, id } = await folderWith(4);
    const store = await opened(folder);
    tamper(folder, (db) => db.run(`UPDATE pieces SET ${flip("shown")}`));
    expect(store.list()).toMatchObject([{ id, name: "Sample table" }]);
    expect(store.repairs(id).map((one) => one.code)).toEqual(["head-rebuilt"]);
  });
});

describe("a damaged file", () => {
  const overwrite = (folder: string, at: number, bytes: Uint8Array) => {
    const handle = openSync(join(folder, "latewood.db"), "r+");
    writeSync(handle, bytes, 0, bytes.length, at);
    closeSync(handle);
  };
  const damaged = (folder: string) =>
    readdirSync(folder).filter((name) => /^latewood-damaged-\d+\.db$/.test(name));

  for (const [what, harm] of [
    ["header", (folder: string) => overwrite(folder, 0, new Uint8Array(100))],
    ["length", (folder: string) => truncateSync(join(folder, "latewood.db"), 5000)],
    [
      "everything",
      (folder: string) => {
        rmSync(join(folder, "latewood.db"));
        writeFileSync(join(folder, "latewood.db"), "");
      },
    ],
    ["write version", (folder: string) => overwrite(folder, 18, new Uint8Array([9]))],
    ["schema format", (folder: string) => overwrite(folder, 47, new Uint8Array([9]))],
    ["version", (folder: string) => overwrite(folder, 60, new Uint8Array([9, 9]))],
  ] as const) {
    test(`in its ${what}: the newest sound backup takes its place`, async () => {
      const { folder, id, model } = await folderWith(9, (store, step) => {
        if (step === 5 || step === 7) store.backUp();
      });
      harm(folder);
      const store = await opened(folder);
      const [repair] = store.openingRepairs;
      expect(repair?.code).toBe("database-restored");
      expect(repair?.safe).toContain("latewood-002.db");
      expect(repair?.aside).toContain("latewood-damaged-001.db");
      expect(damaged(folder)).toEqual(["latewood-damaged-001.db"]);
      const piece = store.open(id);
      expect(piece.step).toBeGreaterThanOrEqual(7);
      expect(piece.text).toBe(model.texts[piece.step]);
      expect(store.unsoundSteps(id)).toEqual([]);
      expect(store.edit(id, setting(["note"], "on")).step).toBe(piece.step + 1);
      closed(store);
      expect((await opened(folder)).openingRepairs).toEqual([]);
    });

    test(`in its ${what}, without a backup: a new database, and word of where the old one lies`, async () => {
      const { folder } = await folderWith(3);
      harm(folder);
      const store = await opened(folder);
      if (what === "everything") return expect(store.openingRepairs).toEqual([]);
      expect(store.openingRepairs.map((one) => one.code)).toEqual(["database-new"]);
      expect(store.openingRepairs[0]?.aside).toContain("latewood-damaged-001.db");
      expect(damaged(folder)).toEqual(["latewood-damaged-001.db"]);
      expect(store.create(sampleDocument())).toMatch(/^sample-table-/);
    });
  }

  test("of which later steps can still be read gives them to the backup", async () => {
    const { folder, id, model } = await folderWith(9, (store, step) => {
      if (step === 5) store.backUp();
      if (step === 6) store.create(sampleDocument({ name: "Another" }));
    });
    // Its version alone is damaged, so that all of it can be read.
    overwrite(folder, 60, new Uint8Array([9, 9]));
    const store = await opened(folder);
    expect(store.openingRepairs[0]?.safe).toContain("5 later steps of 2 pieces");
    expect(store.open(id)).toMatchObject({ text: model.text, step: 9, repairs: [] });
    expect(
      store
        .list()
        .map((one) => one.name)
        .sort(),
    ).toEqual(["Another", "Sample table"]);
  });

  test("with a damaged newest backup: the one before it", async () => {
    const { folder, id, model } = await folderWith(9, (store, step) => {
      if (step === 5 || step === 7) store.backUp();
    });
    overwrite(folder, 0, new Uint8Array(100));
    truncateSync(join(folder, "backups", "latewood-002.db"), 3000);
    const store = await opened(folder);
    expect(store.openingRepairs[0]?.safe).toContain("latewood-001.db");
    expect(store.open(id).text).toBe(model.texts[5]);
    expect(existsSync(join(folder, "backups", "latewood-002.db"))).toBe(true);
  });

  test("that is gone is restored; so is one whose restoring was cut short", async () => {
    const { folder, id, model } = await folderWith(9, (store, step) => {
      if (step === 8) store.backUp();
    });
    renameSync(join(folder, "latewood.db"), join(folder, "latewood-restored.db"));
    const store = await opened(folder);
    expect(store.openingRepairs).toEqual([]);
    expect(store.open(id).text).toBe(model.text);
    closed(store);
    renameSync(join(folder, "latewood.db"), join(folder, "elsewhere.db"));
    const again = await opened(folder);
    expect(again.openingRepairs).toMatchObject([{ code: "database-restored", aside: "" }]);
    expect(again.open(id).text).toBe(model.texts[8]);
  });
});
