import type { Database } from "./database.ts";

/** What was found damaged or amiss, and what was done: for people, in plain words. */
export type Repair = {
  /** the piece it was made to; absent when it was the database as a whole */
  readonly piece?: string;
  readonly code:
    | "record-restored"
    | "record-damaged"
    | "steps-set-aside"
    | "snapshot-rebuilt"
    | "head-rebuilt"
    | "piece-lost"
    | "database-restored"
    | "database-new"
    | "backup-failed";
  /** what was found */
  readonly found: string;
  /** what is safe */
  readonly safe: string;
  /** what was set aside, and where it lies; empty when nothing was */
  readonly aside: string;
};

/** Writes down a repair of a piece, so that it can be read again later. */
export function noted(db: Database, piece: string, at: string, repair: Repair): Repair {
  const made = { ...repair, piece };
  db.run(
    "INSERT INTO repairs (piece, at, repair) VALUES (?,?,?)",
    ...[piece, at, JSON.stringify(made)],
  );
  return made;
}

/** Every repair of a piece that was ever made, the oldest first. */
export const repairsOf = (
  db: Database,
  piece: string,
): readonly (Repair & { readonly at: string })[] =>
  db
    .all<{ at: string; repair: string }>(
      "SELECT at, repair FROM repairs WHERE piece = ? ORDER BY number",
      piece,
    )
    .map(({ at, repair }) => ({ ...(JSON.parse(repair) as Repair), at }));

/** Keeps a row that leaves its table, as it was found. */
export function setAside(
  db: Database,
  piece: string,
  found: string,
  origin: "log" | "snapshots" | "pieces",
  row: object,
): void {
  db.run(
    "INSERT INTO aside (piece, found, origin, row) VALUES (?,?,?,?)",
    ...[piece, found, origin, JSON.stringify(row)],
  );
}

/** `step 7` or `steps 7 to 9`. */
export const stepsInWords = (from: number, to: number): string =>
  from === to ? `step ${from}` : `steps ${from} to ${to}`;
