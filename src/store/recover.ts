import {
  closeSync,
  copyFileSync,
  existsSync,
  openSync,
  renameSync,
  rmSync,
  statSync,
} from "node:fs";
import { join } from "node:path";
import { Problem } from "../worked/index.ts";
import { backups, ifReadable, isWhole } from "./backups.ts";
import { type Database, openDatabase } from "./database.ts";
import type { Driver } from "./driver.ts";
import type { Repair } from "./repair.ts";
import { type Salvaged, salvage } from "./salvage.ts";
import { migrate, refuseFuture } from "./schema.ts";
import { asProblem, guarded, isOfSqlite } from "./trouble.ts";

const besides = ["-wal", "-shm", "-journal"] as const;

export const databaseFile = (folder: string): string => join(folder, "latewood.db");
/** Whole and finished, waiting to take the database's place. */
const restoredFile = (folder: string) => join(folder, "latewood-restored.db");

/** Ends a restoring that was cut short between its last two moves. */
export function endRestoring(folder: string): void {
  const [file, restored] = [databaseFile(folder), restoredFile(folder)];
  if (!existsSync(restored)) return;
  // With the database still in its place the restoring is begun anew.
  guarded(file, () => (existsSync(file) ? rmSync(restored) : renameSync(restored, file)));
}

/**
 * Whether the file, as far as SQLite and its version tell, is a whole database, or new. Writes
 * nothing but what SQLite keeps beside it.
 *
 * @throws Problem "store-future", and what a busy, full or unreadable disk brings
 */
export function faultOfFile(
  driver: Driver,
  folder: string,
  patienceMs: number,
): string | undefined {
  const file = databaseFile(folder);
  const found = statSync(file, { throwIfNoEntry: false });
  if (found && !found.isFile()) throw noFile(file);
  const size = found?.size;
  const hasBackups = backups(folder).length > 0;
  if (size === undefined) return hasBackups ? "is not there" : undefined;
  if (size === 0) {
    // SQLite would take it for a new one, and throw away what lies beside it.
    const waiting = statSync(`${file}-wal`, { throwIfNoEntry: false })?.size ?? 0;
    return hasBackups || waiting > 0 ? "is empty" : undefined;
  }
  try {
    // Closing would write into it what waits beside it; but a making cut short must be rolled back.
    const db = openDatabase(driver, file, {
      readOnly: !existsSync(`${file}-journal`),
      patienceMs,
    });
    try {
      refuseFuture(db);
      if (isNew(db)) return undefined;
      if (!isWhole(db)) return "does not hold together";
    } finally {
      db.close();
    }
    return isLockedByHeader(driver, file, patienceMs) ? "has a damaged beginning" : undefined;
  } catch (fault) {
    const problem = asProblem(fault, file);
    // Faults of SQLite that are no Problem come of fields in the header that it cannot make sense of.
    const isDamage =
      (problem as { code?: unknown }).code === "store-damaged" || isOfSqlite(problem);
    if (!isDamage) throw problem;
    return "cannot be read as a database";
  }
}

const noFile = (place: string) =>
  new Problem(
    "store-unreachable",
    place,
    "It is no file.",
    "Move away what has the database’s name, or name another folder for the data.",
  );

/**
 * Whether SQLite takes it for one that may only be read, though the system lets us write it: then its
 * header says so, and lies. Its bytes are not looked at for this: opening a database's file beside
 * SQLite and closing it ends the locks that this process holds on it.
 *
 * @throws Problem "store-read-only" when the system does not
 */
function isLockedByHeader(driver: Driver, file: string, patienceMs: number): boolean {
  const db = openDatabase(driver, file, { patienceMs });
  try {
    // A change to no row: beginning alone is granted on a database that may only be read.
    db.exec("BEGIN IMMEDIATE; DELETE FROM repairs WHERE false; ROLLBACK");
    return false;
  } catch (problem) {
    if (!(problem instanceof Problem) || problem.code !== "store-read-only") throw problem;
    requireWritableFile(file);
    return true;
  } finally {
    db.close();
  }
}

/** Opens it beside SQLite after all, which here costs nothing: no connection of ours could write. */
function requireWritableFile(file: string): void {
  guarded(file, () => closeSync(openSync(file, "r+")));
}

/** One whose making was cut short: sound, with nothing in it. */
const isNew = (db: Database): boolean =>
  db.get("SELECT name FROM sqlite_schema") === undefined &&
  db.get<{ user_version: number }>("PRAGMA user_version")?.user_version === 0;

/**
 * Puts the newest sound backup in the place of a damaged database, with everything that can still be
 * read of later steps; without a backup, a new one. The damaged file is renamed, never deleted.
 *
 * @param fault  what is wrong with the file, to follow "the database"
 */
export function restoreDatabase(
  driver: Driver,
  folder: string,
  fault: string,
  now: string,
): Repair {
  const file = databaseFile(folder);
  const building = join(folder, `latewood-restoring-${process.pid}.db`);
  removeWithBesides(building);
  const source = backups(folder).find(({ file: backup }) => isSoundBackup(driver, backup));
  const gained = guarded(building, () => {
    if (source) copyFileSync(source.file, building);
    return filled(driver, building, file, now);
  });
  guarded(file, () => renameSync(building, restoredFile(folder)));
  const aside = guarded(file, () => moveAside(folder));
  endRestoring(folder);

  const salvaged =
    gained.steps === 0
      ? ""
      : ` Of the damaged file ${inNumber(gained.steps, "later step")} of ${inNumber(gained.pieces, "piece")} could still be read and were taken over.`;
  return {
    code: source ? "database-restored" : "database-new",
    found: `The database ${fault}.`,
    safe: source
      ? `The backup of ${new Date(source.writtenMs).toISOString()} (${source.file}) was restored.${salvaged}`
      : `There was no sound backup, so a new database was made.${salvaged}`,
    aside: aside === undefined ? "" : `The damaged file lies at ${aside}, as found.`,
  };
}

const inNumber = (n: number, what: string) => `${n} ${what}${n === 1 ? "" : "s"}`;

function filled(driver: Driver, building: string, damagedFile: string, now: string): Salvaged {
  const into = openDatabase(driver, building);
  try {
    migrate(into);
    const gained = existsSync(damagedFile)
      ? ifReadable(() => {
          const damaged = openDatabase(driver, damagedFile, { readOnly: true });
          try {
            return salvage(damaged, into, now);
          } finally {
            damaged.close();
          }
        })
      : undefined;
    // Back into one file, which can be renamed.
    into.exec("PRAGMA journal_mode=DELETE");
    return gained ?? { pieces: 0, steps: 0 };
  } finally {
    into.close();
  }
}

const isSoundBackup = (driver: Driver, file: string): boolean =>
  ifReadable(() => {
    const db = openDatabase(driver, file, { readOnly: true });
    try {
      return isWhole(db);
    } finally {
      db.close();
    }
  }) ?? false;

/** Renames the database and what belongs to it; returns where it lies now. */
function moveAside(folder: string): string | undefined {
  const file = databaseFile(folder);
  const taken = (n: number) => join(folder, `latewood-damaged-${String(n).padStart(3, "0")}.db`);
  let number = 1;
  while (["", ...besides].some((end) => existsSync(taken(number) + end))) number += 1;
  // The log first: beside another database it would be taken for that one's.
  for (const end of [...besides, ""]) {
    if (existsSync(file + end)) renameSync(file + end, taken(number) + end);
  }
  return existsSync(taken(number)) ? taken(number) : undefined;
}

function removeWithBesides(file: string): void {
  for (const end of ["", ...besides]) rmSync(file + end, { force: true });
}
