import { createHash } from "node:crypto";
import type { PieceDocument } from "../piece/index.ts";
import type { Database } from "./database.ts";

export type StepKind = "made" | "edit" | "undo" | "redo";

/** A step as it is logged; step 0 is the making of the piece and holds its first text. */
export type Entry = {
  readonly piece: string;
  readonly step: number;
  readonly kind: StepKind;
  /** the step that an undo after this one takes back, if any */
  readonly undo: number | null;
  /** the undo step that a redo after this one takes back, if any */
  readonly redo: number | null;
  /** JSON of what was applied; of step 0, of `Made` */
  readonly edit: string;
  /** JSON of the edit that takes it back; of step 0, empty */
  readonly inverse: string;
  readonly at: string;
  /** over all of this and the sum of the step before: so the log is a chain */
  readonly sum: string;
};

export type Made = { readonly says: string; readonly text: string };

/** A piece as it stood after a step. */
export type Snapshot = {
  readonly piece: string;
  readonly step: number;
  readonly text: string;
  /** the sum of the log's entry of that step */
  readonly chain: string;
  readonly undo: number | null;
  readonly redo: number | null;
  readonly sum: string;
};

/** What the list shows, and where the log ends, so that lost steps at its end are noticed. */
export type Head = {
  readonly id: string;
  /** JSON of `Shown` */
  readonly shown: string;
  readonly step: number;
  readonly chain: string;
  readonly changed: string;
  readonly away: string | null;
  readonly sum: string;
};

export type Shown = Pick<PieceDocument, "name" | "client" | "demo">;

const sumOf = (parts: readonly unknown[]): string =>
  createHash("sha256").update(JSON.stringify(parts)).digest("hex");

const entrySum = (e: Omit<Entry, "sum">, before: string) =>
  sumOf(["entry", before, e.piece, e.step, e.kind, e.undo, e.redo, e.edit, e.inverse, e.at]);
const snapshotSum = (s: Omit<Snapshot, "sum">) =>
  sumOf(["snapshot", s.piece, s.step, s.text, s.chain, s.undo, s.redo]);
const headSum = (h: Omit<Head, "sum">) =>
  sumOf(["head", h.id, h.shown, h.step, h.chain, h.changed, h.away]);

export const isSoundEntry = (e: Entry, before: string): boolean => e.sum === entrySum(e, before);
export const isSoundSnapshot = (s: Snapshot): boolean => s.sum === snapshotSum(s);
export const isSoundHead = (h: Head): boolean => h.sum === headSum(h);

/** An entry with its sum, after the one whose sum is `before`. */
export const sealed = (entry: Omit<Entry, "sum">, before: string): Entry => ({
  ...entry,
  sum: entrySum(entry, before),
});

export const entryAt = (db: Database, piece: string, step: number) =>
  db.get<Entry>("SELECT * FROM log WHERE piece = ? AND step = ?", piece, step);

export const entriesAfter = (db: Database, piece: string, step: number) =>
  db.all<Entry>("SELECT * FROM log WHERE piece = ? AND step > ? ORDER BY step", piece, step);

export const headOf = (db: Database, piece: string) =>
  db.get<Head>("SELECT * FROM pieces WHERE id = ?", piece);

/** Newest first. */
export const snapshotsUpTo = (db: Database, piece: string, step: number) =>
  db.all<Snapshot>(
    "SELECT * FROM snapshots WHERE piece = ? AND step <= ? ORDER BY step DESC",
    piece,
    step,
  );

export function putEntry(db: Database, e: Entry): void {
  db.run(
    "INSERT INTO log (piece, step, kind, undo, redo, edit, inverse, at, sum) VALUES (?,?,?,?,?,?,?,?,?)",
    ...[e.piece, e.step, e.kind, e.undo, e.redo, e.edit, e.inverse, e.at, e.sum],
  );
}

export function putSnapshot(db: Database, snapshot: Omit<Snapshot, "sum">): void {
  const { piece, step, text, chain, undo, redo } = snapshot;
  db.run(
    "INSERT OR REPLACE INTO snapshots (piece, step, text, chain, undo, redo, sum) VALUES (?,?,?,?,?,?,?)",
    ...[piece, step, text, chain, undo, redo, snapshotSum(snapshot)],
  );
}

export function putHead(db: Database, head: Omit<Head, "sum">): void {
  const { id, shown, step, chain, changed, away } = head;
  // Not REPLACE: that would take the row away first, and the log hangs on it.
  db.run(
    `INSERT INTO pieces (id, shown, step, chain, changed, away, sum) VALUES (?,?,?,?,?,?,?)
     ON CONFLICT (id) DO UPDATE SET shown = excluded.shown, step = excluded.step,
       chain = excluded.chain, changed = excluded.changed, away = excluded.away, sum = excluded.sum`,
    ...[id, shown, step, chain, changed, away, headSum(head)],
  );
}
