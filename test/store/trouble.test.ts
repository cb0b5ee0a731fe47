import { chmodSync, mkdirSync, renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { IN_MEMORY, openDatabase } from "../../src/store/database.ts";
import { loadDriver, openStore } from "../../src/store/index.ts";
import { migrate } from "../../src/store/schema.ts";
import { piecesIn } from "../../src/store/store.ts";
import { sampleDocument } from "../kit/documents.ts";
import { newFolder, opened } from "./folders.ts";
import { setting } from "./model.ts";
import { codeOf } from "./problems.ts";

const driver = await loadDriver();
const note = (words: string) => ({ ...setting(["note"], words), says: "note" });

describe("a full disk", () => {
  test("refuses the step, keeps every step before it, and works again when there is room", async () => {
    const folder = newFolder();
    const db = openDatabase(driver, join(folder, "latewood.db"));
    migrate(db);
    const pieces = piecesIn(db, () => "2026-01-01T00:00:00.000Z");
    const id = pieces.create(sampleDocument());
    const pages = db.get<{ page_count: number }>("PRAGMA page_count")?.page_count ?? 0;
    // SQLite then says that it is full, as it does of a disk.
    const room = (n: number) => db.exec(`PRAGMA max_page_count=${n}`);
    room(pages + 8);
    let confirmed = pieces.open(id);
    const code = await codeOf(() => {
      for (let i = 0; i < 1000; i++) confirmed = pieces.edit(id, note(`${i} ${"x".repeat(3000)}`));
    });
    expect(code).toBe("disk-full");
    expect(confirmed.step).toBeGreaterThan(2);
    expect(pieces.open(id)).toEqual(confirmed);
    expect(await codeOf(() => pieces.undo(id))).toBe("disk-full");
    // Read by another, so from the file and not from memory.
    expect(piecesIn(db, () => "").open(id)).toEqual(confirmed);
    room(pages + 1000);
    expect(pieces.edit(id, note("room")).step).toBe(confirmed.step + 1);
    expect(pieces.undo(id).text).toBe(confirmed.text);
    db.close();
  });

  test("in the middle of making a piece leaves no half of one", async () => {
    const db = openDatabase(driver, IN_MEMORY);
    migrate(db);
    const pieces = piecesIn(db, () => "2026-01-01T00:00:00.000Z");
    const pages = db.get<{ page_count: number }>("PRAGMA page_count")?.page_count ?? 0;
    db.exec(`PRAGMA max_page_count=${pages}`);
    const large = sampleDocument({ note: "x".repeat(4000) });
    expect(await codeOf(() => pieces.create(large))).toBe("disk-full");
    expect(pieces.list()).toEqual([]);
    expect(db.all("SELECT * FROM log")).toEqual([]);
    db.close();
  });
});

/** Runs it as a user whom permissions bind: for root they do not, so root becomes nobody meanwhile. */
async function asOrdinaryUser<T>(work: () => Promise<T>): Promise<T> {
  if (process.geteuid?.() !== 0) return work();
  process.seteuid?.(65_534);
  try {
    return await work();
  } finally {
    process.seteuid?.(0);
  }
}

describe.skipIf(process.platform === "win32")("a folder that may not be written in", () => {
  test("is said to be so, whether a store is in it or not", async () => {
    const folder = newFolder();
    const filled = join(folder, "filled");
    (await opened(filled)).create(sampleDocument());
    chmodSync(filled, 0o555);
    chmodSync(folder, 0o555);
    const codes = await asOrdinaryUser(async () => [
      await codeOf(() => openStore(filled, { driver })),
      await codeOf(() => openStore(join(folder, "new"), { driver })),
    ]);
    chmodSync(folder, 0o755);
    chmodSync(filled, 0o755);
    expect(codes).toEqual(["store-read-only", "store-read-only"]);
    expect((await opened(filled)).list().length).toBe(1);
  });

  test("though its folder may: a database file is not taken for a damaged one", async () => {
    const folder = newFolder();
    const store = await opened(folder);
    store.create(sampleDocument());
    store.backUp();
    chmodSync(folder, 0o777);
    chmodSync(store.file, 0o444);
    const code = await asOrdinaryUser(() => codeOf(() => openStore(folder, { driver })));
    // For nobody the files beside it, of another owner, may not be opened either.
    expect(["store-read-only", "store-unreachable"]).toContain(code);
    chmodSync(store.file, 0o644);
    expect((await opened(folder)).openingRepairs).toEqual([]);
  });

  test("or that is a file is a Problem too", async () => {
    const folder = newFolder();
    writeFileSync(join(folder, "file"), "");
    expect(await codeOf(() => openStore(join(folder, "file")))).toBe("store-unreachable");
    expect(await codeOf(() => openStore(join(folder, "file", "below")))).toBe("store-unreachable");
    mkdirSync(join(folder, "data", "latewood.db"), { recursive: true });
    expect(await codeOf(() => openStore(join(folder, "data")))).toBe("store-unreachable");
  });
});

test("another writer who does not let go: the store says so, and works on afterwards", async () => {
  const folder = newFolder();
  const store = await opened(folder, { patienceMs: 30 });
  const id = store.create(sampleDocument());
  const other = openDatabase(driver, store.file);
  other.exec("BEGIN IMMEDIATE");
  expect(await codeOf(() => store.edit(id, note("x")))).toBe("store-busy");
  expect(await codeOf(() => openStore(folder, { patienceMs: 30 }))).toBe("store-busy");
  expect(store.open(id).step).toBe(0);
  other.exec("ROLLBACK");
  expect(store.edit(id, note("x")).step).toBe(1);
  other.close();
});

test("a database that is moved away under a store takes no more steps", async () => {
  const folder = newFolder();
  const store = await opened(folder);
  const id = store.create(sampleDocument());
  renameSync(store.file, join(folder, "moved.db"));
  expect(await codeOf(() => store.edit(id, note("x")))).toBe("store-moved");
  renameSync(join(folder, "moved.db"), store.file);
  expect(store.edit(id, note("x")).step).toBe(1);
});
