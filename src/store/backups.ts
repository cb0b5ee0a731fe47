import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { join } from "node:path";
import { Problem } from "../worked/index.ts";
import { type Database, openDatabase } from "./database.ts";
import type { Driver } from "./driver.ts";
import { unsoundSteps } from "./load.ts";
import type { Entry } from "./rows.ts";
import { entryAt } from "./rows.ts";
import { isOurs, versionOf } from "./schema.ts";
import { guarded, isOfSqlite } from "./trouble.ts";

export type Backup = {
  readonly number: number;
  readonly file: string;
  /** when it was written [ms since 1970] */
  readonly writtenMs: number;
};

const NAME = /^latewood-(\d{3,})\.db$/;
const folderIn = (dataFolder: string) => join(dataFolder, "backups");

/** Every numbered backup, newest first. */
export function backups(dataFolder: string): readonly Backup[] {
  const folder = folderIn(dataFolder);
  if (!existsSync(folder)) return [];
  return guarded(folder, () => readdirSync(folder))
    .flatMap((name) => {
      const number = NAME.exec(name)?.[1];
      const file = join(folder, name);
      const found = number === undefined ? undefined : statSync(file, { throwIfNoEntry: false });
      return found?.isFile() ? [{ number: Number(number), file, writtenMs: found.mtimeMs }] : [];
    })
    .sort((a, b) => b.number - a.number);
}

/**
 * Writes a backup beside the others and takes the oldest away. It is written under another name,
 * brought to the disk, read through, and only then given its number, so that a numbered file is
 * always a whole one.
 *
 * @param keep  how many stay [files]
 * @throws Problem "disk-full", "backup-unsound" and the like; the database itself is not touched
 */
export function makeBackup(driver: Driver, db: Database, dataFolder: string, keep: number): Backup {
  const folder = folderIn(dataFolder);
  guarded(folder, () => mkdirSync(folder, { recursive: true }));
  tidy(folder);
  const beside = join(folder, `.writing-${process.pid}-${Date.now()}.db`);
  try {
    const expected = soundness(db);
    db.copyTo(beside);
    guarded(beside, () => toDisk(beside));
    requireSound(driver, beside, expected);
    const number = (backups(dataFolder)[0]?.number ?? 0) + 1;
    const file = join(folder, `latewood-${String(number).padStart(3, "0")}.db`);
    // Should another process take the same number just now, its backup is of the same moment.
    guarded(file, () => renameSync(beside, file));
    guarded(folder, () => toDisk(folder));
    for (const old of backups(dataFolder).slice(keep)) rmSync(old.file, { force: true });
    return { number, file, writtenMs: statSync(file).mtimeMs };
  } finally {
    rmSync(beside, { force: true });
  }
}

/** Takes away what a backup left that was cut short; one of the last hour may still be at work. */
function tidy(folder: string): void {
  for (const name of readdirSync(folder).filter((one) => one.startsWith(".writing-"))) {
    const left = join(folder, name);
    const writtenMs = statSync(left, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (Date.now() - writtenMs > 3_600_000) rmSync(left, { force: true });
  }
}

function toDisk(path: string): void {
  // Windows brings only files that are open for writing to the disk, and no folders.
  if (process.platform === "win32" && statSync(path).isDirectory()) return;
  const handle = openSync(path, process.platform === "win32" ? "r+" : "r");
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

type Soundness = { readonly entries: number; readonly unsound: number };

/** How many records there are, and how many of them are damaged. */
function soundness(db: Database): Soundness {
  return db.reading(() => {
    const pieces = db.all<{ piece: string }>("SELECT DISTINCT piece FROM log");
    return {
      entries: db.get<{ n: number }>("SELECT count(*) AS n FROM log")?.n ?? 0,
      unsound: pieces.reduce((n, { piece }) => n + unsoundSteps(db, piece).length, 0),
    };
  });
}

function requireSound(driver: Driver, file: string, expected: Soundness): void {
  const copy = openDatabase(driver, file, { readOnly: true });
  try {
    const found = soundness(copy);
    if (isWhole(copy) && found.entries >= expected.entries && found.unsound <= expected.unsound) {
      return;
    }
  } finally {
    copy.close();
  }
  throw new Problem(
    "backup-unsound",
    file,
    "What was written does not read back as it should.",
    "The backup was thrown away. Look after the disk, and back up to another one.",
  );
}

/** Whether SQLite finds nothing wrong with the file, and it is one of ours. */
export const isWhole = (db: Database): boolean =>
  db.get<{ integrity_check: string }>("PRAGMA integrity_check(1)")?.integrity_check === "ok" &&
  versionOf(db) > 0 &&
  isOurs(db);

/** Looks a step's record up in the backups, newest first; each is opened only when it is needed. */
export function copiesIn(driver: Driver, dataFolder: string) {
  return function* copies(piece: string, step: number): Iterable<Entry> {
    for (const { file } of backups(dataFolder)) {
      const entry = ifReadable(() => {
        const db = openDatabase(driver, file, { readOnly: true });
        try {
          return entryAt(db, piece, step);
        } finally {
          db.close();
        }
      });
      if (entry) yield entry;
    }
  };
}

/** The answer, or nothing where a damaged file gives none. */
export function ifReadable<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch (fault) {
    // Such as of a table that is missing: no Problem by itself, but here it comes of damage.
    if (!(fault instanceof Problem) && !isOfSqlite(fault)) throw fault;
    return undefined;
  }
}
