import { Problem } from "../worked/index.ts";
import { type Database, IN_MEMORY } from "./database.ts";

/**
 * Brings a database forward, a version each; never changed once it went out. What is kept of a piece
 * is kept as JSON text, since SQLite would alter broken characters, and the checksums with them.
 */
const migrations: readonly string[] = [
  `CREATE TABLE pieces (
     id TEXT PRIMARY KEY,
     shown TEXT NOT NULL,
     step INTEGER NOT NULL,
     chain TEXT NOT NULL,
     changed TEXT NOT NULL,
     away TEXT,
     sum TEXT NOT NULL
   ) STRICT, WITHOUT ROWID;
   CREATE TABLE log (
     piece TEXT NOT NULL REFERENCES pieces (id),
     step INTEGER NOT NULL,
     kind TEXT NOT NULL,
     undo INTEGER,
     redo INTEGER,
     edit TEXT NOT NULL,
     inverse TEXT NOT NULL,
     at TEXT NOT NULL,
     sum TEXT NOT NULL,
     PRIMARY KEY (piece, step)
   ) STRICT, WITHOUT ROWID;
   CREATE TABLE snapshots (
     piece TEXT NOT NULL REFERENCES pieces (id),
     step INTEGER NOT NULL,
     text TEXT NOT NULL,
     chain TEXT NOT NULL,
     undo INTEGER,
     redo INTEGER,
     sum TEXT NOT NULL,
     PRIMARY KEY (piece, step)
   ) STRICT, WITHOUT ROWID;
   CREATE TABLE aside (
     number INTEGER PRIMARY KEY,
     piece TEXT NOT NULL,
     found TEXT NOT NULL,
     origin TEXT NOT NULL,
     row TEXT NOT NULL
   ) STRICT;
   CREATE TABLE repairs (
     number INTEGER PRIMARY KEY,
     piece TEXT NOT NULL,
     at TEXT NOT NULL,
     repair TEXT NOT NULL
   ) STRICT;`,
];

/** No Latewood will come near this many versions: a number above it was never written by one. */
const LIKELIEST_LAST_VERSION = 1000;

/** The version the file says it is of; 0 of one that is new. */
export const versionOf = (db: Database): number =>
  db.get<{ user_version: number }>("PRAGMA user_version")?.user_version ?? 0;

/** Throws when it is of a Latewood newer than this one; reads only. */
export function refuseFuture(db: Database, steps: readonly string[] = migrations): void {
  const version = versionOf(db);
  if (version > steps.length && version <= LIKELIEST_LAST_VERSION) {
    throw new Problem(
      "store-future",
      db.file,
      `The database is of version ${version}, and this Latewood knows up to ${steps.length}.`,
      "Open it with a newer Latewood; it was left as it is.",
    );
  }
}

/** Whether it is of an older version, with pieces in it. */
export const isOutdated = (db: Database, steps: readonly string[] = migrations): boolean =>
  versionOf(db) > 0 && versionOf(db) < steps.length;

/**
 * Whether it could be one of ours: a version that there is, tables exactly if it has one, and of
 * today's version each as it was made. Where a bit of that text has flipped, SQLite takes it for a
 * table with another column.
 */
export function isOurs(db: Database, steps: readonly string[] = migrations): boolean {
  const version = versionOf(db);
  const tables = db
    .all<{ sql: string }>("SELECT sql FROM sqlite_schema WHERE type = 'table'")
    .map(({ sql }) => sql);
  if (version > steps.length || version > 0 !== tables.length > 0) return false;
  const made = madeBy(steps);
  if (version < steps.length || made === undefined) return true;
  return tables.length === made.length && made.every((sql) => tables.includes(sql));
}

/** The tables that the steps make, word for word; undefined where a step does more than make some. */
function madeBy(steps: readonly string[]): readonly string[] | undefined {
  const statements = steps
    .flatMap((step) => step.split(";"))
    .map((sql) => sql.trim())
    .filter((sql) => sql !== "");
  return statements.every((sql) => sql.startsWith("CREATE TABLE ")) ? statements : undefined;
}

/** Sets what is kept in the file, and brings its tables to today's version. */
export function migrate(db: Database, steps: readonly string[] = migrations): void {
  if (db.file !== IN_MEMORY) toWriteAheadLog(db);
  db.transaction(() => {
    // Read inside: another process may have just done it.
    const version = versionOf(db);
    if (version >= steps.length) return;
    for (const step of steps.slice(version)) db.exec(step);
    db.exec(`PRAGMA user_version=${steps.length}`);
  });
}

const WAIT_MS = 5000;

/** SQLite does not wait for others when it changes the mode, so that is done here. */
function toWriteAheadLog(db: Database, until = Date.now() + WAIT_MS): void {
  try {
    db.exec("PRAGMA journal_mode=WAL");
  } catch (problem) {
    if (!(problem instanceof Problem) || problem.code !== "store-busy" || Date.now() > until) {
      throw problem;
    }
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 20);
    toWriteAheadLog(db, until);
  }
}
