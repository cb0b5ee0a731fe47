import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { Problem } from "../worked/index.ts";
import { type Backup, backups, copiesIn, makeBackup } from "./backups.ts";
import { type Database, IN_MEMORY, openDatabase } from "./database.ts";
import { type Driver, loadDriver } from "./driver.ts";
import { unsoundSteps } from "./load.ts";
import type { Pieces } from "./pieces.ts";
import { databaseFile, endRestoring, faultOfFile, restoreDatabase } from "./recover.ts";
import type { Repair } from "./repair.ts";
import { isOutdated, migrate } from "./schema.ts";
import { settleHeads } from "./settle-heads.ts";
import { piecesIn } from "./store.ts";
import { guarded } from "./trouble.ts";

/** The place where pieces are kept safely. */
export interface Store extends Pieces {
  /** the database's file */
  readonly file: string;
  readonly driver: Driver["name"];
  /** what opening the store found amiss and did about it, for the maker to read */
  readonly openingRepairs: readonly Repair[];
  /** Steps whose record is damaged or missing, of the whole log: an empty list is a sound chain. */
  readonly unsoundSteps: (id: string) => readonly number[];
  /**
   * Checks and backs up when the newest backup is older than a day and something changed since. Opening
   * does so; a program that stays open for days calls it now and then.
   */
  readonly backUpIfDue: () => readonly Repair[];
  /** Checks, then writes a backup. */
  readonly backUp: () => Backup;
  /** newest first */
  readonly backups: () => readonly Backup[];
  readonly close: () => void;
}

export type StoreOptions = {
  /** how many backups are kept [files] */
  readonly keep?: number;
  /** how long another writer is waited for [ms] */
  readonly patienceMs?: number;
  readonly now?: () => Date;
  readonly driver?: Driver;
};

const DAY_MS = 86_400_000;

/**
 * Opens the store of a data folder, and makes both when they are not there. What is damaged is
 * brought to its newest sound state, and said in `openingRepairs`.
 *
 * @param folder  of the data
 * @throws Problem "store-read-only", "store-unreachable", "store-future", "store-busy", "disk-full",
 *   "sqlite-missing"
 */
export async function openStore(folder: string, options: StoreOptions = {}): Promise<Store> {
  const { keep = 20, patienceMs = 5000, now = () => new Date() } = options;
  const driver = options.driver ?? (await loadDriver());
  const time = () => now().toISOString();
  requireWritable(folder);
  endRestoring(folder);
  const fault = faultOfFile(driver, folder, patienceMs);
  const restored = fault === undefined ? [] : [restoreDatabase(driver, folder, fault, time())];
  const copies = copiesIn(driver, folder);

  const db = openDatabase(driver, databaseFile(folder), { patienceMs });
  try {
    const write = () => makeBackup(driver, db, folder, keep);
    const kept = isOutdated(db) ? toldIfFailed(write) : [];
    migrate(db);
    const settled = settleHeads(db, time(), copies);
    const pieces = piecesIn(db, time, copies, settled);
    const backUpIfDue = () =>
      // Checked first, while the backups still have sound copies: each new one pushes an old one out.
      isBackupDue(db, folder, now().getTime()) ? [...pieces.check(), ...toldIfFailed(write)] : [];
    const daily = backUpIfDue();
    return {
      ...pieces,
      file: db.file,
      driver: driver.name,
      openingRepairs: [...restored, ...kept, ...settled, ...daily],
      unsoundSteps: (id) => db.reading(() => unsoundSteps(db, id)),
      backUpIfDue,
      backUp: () => {
        pieces.check();
        return write();
      },
      backups: () => backups(folder),
      close: () => closed(db),
    };
  } catch (problem) {
    db.close();
    throw problem;
  }
}

/** With everything in its one file, so that whoever copies that by hand has it all. */
function closed(db: Database): void {
  try {
    db.exec("PRAGMA wal_checkpoint(TRUNCATE)");
  } catch (problem) {
    // Such as a full disk: it stays in the file beside, and is as safe there.
    if (!(problem instanceof Problem)) throw problem;
  } finally {
    db.close();
  }
}

/** A store that is gone when its program ends: for tests, and for looking at a piece once. */
export async function memoryStore(now: () => Date = () => new Date()): Promise<Pieces> {
  const db = openDatabase(await loadDriver(), IN_MEMORY);
  migrate(db);
  return piecesIn(db, () => now().toISOString());
}

/** Finds out by writing: what a folder's permissions say is not the whole truth on every system. */
function requireWritable(folder: string): void {
  const probe = join(folder, `.writable-${process.pid}`);
  guarded(folder, () => {
    makeFolder(folder);
    // Empty, so that even a full disk can be opened, and read.
    writeFileSync(probe, "");
    rmSync(probe, { force: true });
  });
}

/** Not mkdirSync's own recursive way, which calls a read-only disk a missing folder. */
function makeFolder(folder: string): void {
  try {
    mkdirSync(folder);
  } catch (fault) {
    const { code } = fault as { code?: unknown };
    // A file of that name shows when something is to be put in.
    if (code === "EEXIST") return;
    if (code !== "ENOENT") throw fault;
    makeFolder(dirname(folder));
    mkdirSync(folder);
  }
}

/** A failed backup must not keep anyone from the pieces themselves; it is told instead. */
function toldIfFailed(write: () => Backup): readonly Repair[] {
  try {
    write();
    return [];
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    return [
      {
        code: "backup-failed",
        found: `The daily backup could not be made. ${problem.message}`,
        safe: "The pieces themselves are safe.",
        aside: "",
      },
    ];
  }
}

/** Whether something changed since the newest backup, and that is more than a day old. */
function isBackupDue(db: Database, folder: string, nowMs: number): boolean {
  const changed = db.get<{ last: string | null }>(
    "SELECT max(max(changed), max(coalesce(away, ''))) AS last FROM pieces",
  )?.last;
  if (!changed) return false;
  const newest = backups(folder)[0];
  if (!newest) return true;
  // A clock that was set back must not stop the backups.
  const age = Math.abs(nowMs - newest.writtenMs);
  return age > DAY_MS && Date.parse(changed) > newest.writtenMs;
}
