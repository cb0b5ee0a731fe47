import { statSync } from "node:fs";
import { Problem } from "../worked/index.ts";
import type { Cell, Connection, Driver, Statement } from "./driver.ts";
import { guarded } from "./trouble.ts";

/** The little of a database that the store uses; every fault of disk or file comes as a Problem. */
export interface Database {
  readonly file: string;
  readonly exec: (sql: string) => void;
  /** Returns how many rows were changed. */
  readonly run: (sql: string, ...values: Cell[]) => number;
  readonly get: <Row>(sql: string, ...values: Cell[]) => Row | undefined;
  readonly all: <Row>(sql: string, ...values: Cell[]) => readonly Row[];
  /** All of it or nothing; nobody else writes meanwhile, and it is on the disk when this returns. */
  readonly transaction: <T>(work: () => T) => T;
  /** What is read inside is all of one moment. */
  readonly reading: <T>(work: () => T) => T;
  /** A sound copy in a file that must not be there yet. */
  readonly copyTo: (file: string) => void;
  readonly close: () => void;
}

export type DatabaseOptions = {
  readonly readOnly?: boolean;
  /** how long another writer is waited for [ms] */
  readonly patienceMs?: number;
};

/** A database that lives as long as its connection. */
export const IN_MEMORY = ":memory:";

/** Opens a file, and makes it when it is not there; sets nothing that is kept in the file. */
export function openDatabase(
  driver: Driver,
  file: string,
  { readOnly = false, patienceMs = 5000 }: DatabaseOptions = {},
): Database {
  const connection = guarded(file, () => driver.open(file, readOnly));
  try {
    return ported(connection, file, patienceMs);
  } catch (fault) {
    connection.close();
    throw fault;
  }
}

function ported(connection: Connection, file: string, patienceMs: number): Database {
  const statements = new Map<string, Statement>();
  const statement = (sql: string): Statement => {
    const ready = statements.get(sql) ?? connection.prepare(sql);
    statements.set(sql, ready);
    return ready;
  };
  const exec = (sql: string) => guarded(file, () => connection.exec(sql));
  exec(`PRAGMA busy_timeout=${patienceMs}; PRAGMA foreign_keys=ON; PRAGMA synchronous=FULL`);
  const opened = file === IN_MEMORY ? undefined : identity(file);

  const bracketed = <T>(begin: string, work: () => T): T => {
    exec(begin);
    try {
      if (opened !== undefined && identity(file) !== opened) throw replaced(file);
      const done = work();
      exec("COMMIT");
      return done;
    } catch (fault) {
      rollBack(connection);
      throw fault;
    }
  };

  return {
    file,
    exec,
    run: (sql, ...values) => guarded(file, () => Number(statement(sql).run(...values).changes)),
    get: <Row>(sql: string, ...values: Cell[]) =>
      guarded(file, () => statement(sql).get(...values) as Row | undefined),
    all: <Row>(sql: string, ...values: Cell[]) =>
      guarded(file, () => statement(sql).all(...values) as Row[]),
    transaction: (work) => bracketed("BEGIN IMMEDIATE", work),
    reading: (work) => bracketed("BEGIN", work),
    copyTo: (target) => guarded(target, () => statement("VACUUM INTO ?").run(target)),
    close: () => {
      // The package ends a connection only once its statements are collected, so they are let go.
      statements.clear();
      connection.close();
    },
  };
}

/** Which file a path leads to: another one may have been put in its place. */
function identity(file: string): string {
  const found = statSync(file, { throwIfNoEntry: false });
  return found === undefined ? "none" : `${found.dev}/${found.ino}`;
}

/** Writing on into a file that was moved away would confirm steps that nobody finds again. */
const replaced = (file: string) =>
  new Problem(
    "store-moved",
    file,
    "The database was moved or replaced while it was open.",
    "The last step was not made. Close Latewood and start it again.",
  );

function rollBack(connection: Connection): void {
  try {
    connection.exec("ROLLBACK");
  } catch (fault) {
    // On a full disk SQLite has rolled back by itself, and then there is nothing to roll back.
    if (!(fault instanceof Error) || !fault.message.includes("no transaction is active")) {
      throw fault;
    }
  }
}
