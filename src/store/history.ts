import { applyEdit, type Edit, type PieceDocument } from "../piece/index.ts";
import { Problem } from "../worked/index.ts";
import type { Database } from "./database.ts";
import {
  type Entry,
  entriesAfter,
  entryAt,
  isSoundEntry,
  isSoundSnapshot,
  type Snapshot,
  type StepKind,
} from "./rows.ts";
import { documentOf } from "./state.ts";

/** A line of the history. */
type HistoryLine = {
  readonly step: number;
  readonly kind: StepKind;
  /** the words of the edit that was made, undone or redone; empty when its record is damaged */
  readonly says: string;
  readonly at: string;
  readonly isSound: boolean;
};

export type HistoryPage = {
  /** newest first */
  readonly lines: readonly HistoryLine[];
  /** give this as `before` for the next page; undefined at the end */
  readonly next: number | undefined;
};

/** Steps before a given one, newest first. */
export function history(
  db: Database,
  piece: string,
  before: number = Number.MAX_SAFE_INTEGER,
  count = 50,
): HistoryPage {
  // One more than asked for, since each is proved by the one before it.
  const rows = db.all<Entry>(
    "SELECT * FROM log WHERE piece = ? AND step < ? ORDER BY step DESC LIMIT ?",
    ...[piece, before, count + 1],
  );
  const lines = rows.slice(0, count).map((row, i) => lineOf(row, rows[i + 1]));
  return { lines, next: rows.length > count ? lines.at(-1)?.step : undefined };
}

function lineOf(row: Entry, prior: Entry | undefined): HistoryLine {
  const { step, kind, at, edit } = row;
  const isFollowing = step === 0 || prior?.step === step - 1;
  const isSound = isFollowing && isSoundEntry(row, step === 0 ? "" : (prior?.sum ?? ""));
  const says = isSound ? (JSON.parse(edit) as { says: string }).says : "";
  return { step, kind, says, at, isSound };
}

/**
 * The piece as it was after a step: forward from the snapshot before it, or, where a record on that
 * way is damaged, backward from one after it, since every step is logged with what takes it back.
 *
 * @throws Problem "step-unknown", "step-damaged"
 */
export function documentAt(
  db: Database,
  piece: string,
  step: number,
  newest: number,
): PieceDocument {
  if (!Number.isInteger(step) || step < 0 || step > newest) {
    throw new Problem(
      "step-unknown",
      `step ${step} of the piece ${piece}`,
      `Its steps go from 0 to ${newest}.`,
      "Choose one of them; the history lists them.",
    );
  }
  const found = forwardTo(db, piece, step) ?? backwardTo(db, piece, step);
  if (found) return found;
  throw new Problem(
    "step-damaged",
    `step ${step} of the piece ${piece}`,
    "The records that lead to it are damaged.",
    "Choose a step before or after it; the piece as it stands now is not touched by this.",
  );
}

function forwardTo(db: Database, piece: string, step: number): PieceDocument | undefined {
  const base = nearest(db, piece, "step <= ? ORDER BY step DESC", step);
  const made = base ? undefined : entryAt(db, piece, 0);
  if (made && !isSoundEntry(made, "")) return undefined;
  const text = base?.text ?? (made && (JSON.parse(made.edit) as { text: string }).text);
  if (text === undefined) return undefined;
  let [at, chain] = base ? [base.step, base.chain] : [0, made?.sum ?? ""];
  let document = documentOf(text);
  while (at < step) {
    const entry = entryAt(db, piece, at + 1);
    if (!entry || !isSoundEntry(entry, chain)) return undefined;
    document = applyEdit(document, JSON.parse(entry.edit) as Edit).document;
    [at, chain] = [entry.step, entry.sum];
  }
  return document;
}

function backwardTo(db: Database, piece: string, step: number): PieceDocument | undefined {
  const base = nearest(db, piece, "step > ? ORDER BY step", step);
  if (!base) return undefined;
  const entries = entriesAfter(db, piece, step).filter((entry) => entry.step <= base.step);
  let document = documentOf(base.text);
  // What vouches for an entry from after it: the sum its follower, or the snapshot, was made with.
  for (let at = base.step; at > step; at -= 1) {
    const entry = entries[at - step - 1];
    const before = at - 1 === step ? entryAt(db, piece, step)?.sum : entries[at - step - 2]?.sum;
    if (entry?.step !== at || before === undefined || !isSoundEntry(entry, before)) {
      return undefined;
    }
    document = applyEdit(document, JSON.parse(entry.inverse) as Edit).document;
  }
  return document;
}

const nearest = (db: Database, piece: string, where: string, step: number) =>
  db
    .all<Snapshot>(`SELECT * FROM snapshots WHERE piece = ? AND ${where}`, piece, step)
    .find(isSoundSnapshot);
