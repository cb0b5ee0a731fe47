import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { IN_MEMORY, openDatabase } from "../../src/store/database.ts";
import { loadDriver, openStore } from "../../src/store/index.ts";
import { isOutdated, migrate, versionOf } from "../../src/store/schema.ts";
import { sampleDocument } from "../kit/documents.ts";
import { closed, newFolder, opened } from "./folders.ts";
import { codeOf } from "./problems.ts";

const driver = await loadDriver();

test("a database is brought forward a version at a time, each once", () => {
  const db = openDatabase(driver, IN_MEMORY);
  migrate(db, ["CREATE TABLE one (n INTEGER)"]);
  expect(versionOf(db)).toBe(1);
  const steps = ["no longer read", "ALTER TABLE one ADD COLUMN s TEXT", "CREATE TABLE two (n)"];
  expect(isOutdated(db, steps)).toBe(true);
  migrate(db, steps);
  migrate(db, steps);
  expect(versionOf(db)).toBe(3);
  expect(isOutdated(db, steps)).toBe(false);
  db.run("INSERT INTO one (n, s) VALUES (1, 'a')");
  expect(db.all("SELECT * FROM two")).toEqual([]);
  db.close();
});

test("a step that fails leaves the version before it, whole", () => {
  const db = openDatabase(driver, IN_MEMORY);
  migrate(db, ["CREATE TABLE one (n INTEGER)"]);
  expect(() => migrate(db, ["", "CREATE TABLE two (n)", "no SQL at all"])).toThrow("syntax error");
  expect(versionOf(db)).toBe(1);
  expect(db.all("SELECT name FROM sqlite_schema").length).toBe(1);
  db.close();
});

test("a database of a newer Latewood is refused, and not a byte of it changed", async () => {
  const folder = newFolder();
  const store = await opened(folder);
  store.create(sampleDocument());
  store.backUp();
  closed(store);
  const file = join(folder, "latewood.db");
  const db = openDatabase(driver, file);
  db.exec("PRAGMA user_version=2");
  db.close();
  const before = readFileSync(file);
  expect(await codeOf(() => openStore(folder))).toBe("store-future");
  expect(readFileSync(file).equals(before)).toBe(true);
});

test("every connection writes through to the disk, and holds the references", async () => {
  const store = await opened(newFolder());
  const db = openDatabase(driver, store.file);
  const pragma = (name: string) => Object.values(db.get<object>(`PRAGMA ${name}`) ?? {})[0];
  expect([pragma("journal_mode"), pragma("synchronous"), pragma("foreign_keys")]).toEqual([
    "wal",
    2,
    1,
  ]);
  expect(pragma("busy_timeout")).toBe(5000);
  db.close();
});
