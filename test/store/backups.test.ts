import { existsSync, readdirSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openDatabase } from "../../src/store/database.ts";
import { loadDriver, type Store } from "../../src/store/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { closed, newFolder, opened } from "./folders.ts";
import { setting } from "./model.ts";

const DAY_MS = 86_400_000;
const driver = await loadDriver();

const numbers = (store: Store) => store.backups().map((one) => one.number);

test("a backup is a whole store: put in the place of the data, it opens", async () => {
  const folder = newFolder();
  const store = await opened(folder);
  const id = store.create(sampleDocument());
  const { text } = store.edit(id, setting(["note"], "kept"));
  const { file, number } = store.backUp();
  expect([number, file]).toEqual([1, join(folder, "backups", "latewood-001.db")]);
  const elsewhere = newFolder();
  writeFileSync(join(elsewhere, "latewood.db"), (await import("node:fs")).readFileSync(file));
  expect((await opened(elsewhere)).open(id).text).toBe(text);
  expect(readdirSync(join(folder, "backups"))).toEqual(["latewood-001.db"]);
});

test("the newest are kept, and numbers go on", async () => {
  const store = await opened(newFolder(), { keep: 3 });
  store.create(sampleDocument());
  for (let i = 0; i < 5; i++) store.backUp();
  expect(numbers(store)).toEqual([5, 4, 3]);
});

test("at opening one is written when the newest is older than a day and something changed", async () => {
  const folder = newFolder();
  const reopened = async (now: Date) => {
    const store = await opened(folder, { now: () => now });
    const found = numbers(store);
    const aged = (ms: number) => {
      for (const { file } of store.backups()) utimesSync(file, ms / 1000, ms / 1000);
    };
    return { store, found, aged };
  };
  const start = Date.UTC(2026, 0, 1);
  const first = await reopened(new Date(start));
  const id = first.store.create(sampleDocument());
  expect(first.found).toEqual([]);
  closed(first.store);

  const second = await reopened(new Date(start + 1000));
  expect(second.found).toEqual([1]);
  second.aged(start + 1000);
  closed(second.store);

  // Two days on, but nothing changed.
  const third = await reopened(new Date(start + 2 * DAY_MS));
  expect(third.found).toEqual([1]);
  third.store.edit(id, setting(["note"], "x"));
  closed(third.store);

  // Changed, and the newest is two days old.
  const fourth = await reopened(new Date(start + 2 * DAY_MS + 1000));
  expect(fourth.found).toEqual([2, 1]);
  fourth.aged(start + 2 * DAY_MS + 1000);
  fourth.store.edit(id, setting(["note"], "y"));
  closed(fourth.store);

  // Changed, but the newest is an hour old.
  const fifth = await reopened(new Date(start + 2 * DAY_MS + 3_600_000));
  expect(fifth.found).toEqual([2, 1]);
});

test("what another backup left half written is taken away once it is old, and no number of it", async () => {
  const folder = newFolder();
  const store = await opened(folder);
  store.create(sampleDocument());
  store.backUp();
  const [old, young] = [".writing-1-1.db", ".writing-2-2.db"].map((name) =>
    join(folder, "backups", name),
  ) as [string, string];
  for (const file of [old, young]) writeFileSync(file, "half");
  utimesSync(old, 1, 1);
  store.backUp();
  expect([existsSync(old), existsSync(young)]).toEqual([false, true]);
  expect(numbers(store)).toEqual([2, 1]);
});

test("a backup is read through before it counts: one with damage the original has not is refused", async () => {
  const folder = newFolder();
  // A driver whose copies come out damaged.
  const spoiling = {
    ...driver,
    open: (file: string, readOnly: boolean) => {
      const connection = driver.open(file, readOnly);
      if (readOnly && file.includes(".writing-")) {
        const copy = openDatabase(driver, file);
        copy.run("UPDATE log SET at = 'never'");
        copy.close();
      }
      return connection;
    },
  };
  const store = await opened(folder, { driver: spoiling });
  const id = store.create(sampleDocument());
  const { codeOf } = await import("./problems.ts");
  expect(await codeOf(() => store.backUp())).toBe("backup-unsound");
  expect(readdirSync(join(folder, "backups"))).toEqual([]);
  closed(store);
  // At opening it is told, and keeps nobody from the pieces.
  const again = await opened(folder, { driver: spoiling });
  expect(again.openingRepairs.map((one) => one.code)).toEqual(["backup-failed"]);
  expect(again.open(id).step).toBe(0);
  expect(statSync(again.file).size).toBeGreaterThan(0);
});
