import { Problem } from "../worked/index.ts";
import type { Database } from "./database.ts";
import { type Damage, load, unsoundSteps } from "./load.ts";
import { noted, type Repair, setAside, stepsInWords } from "./repair.ts";
import {
  type Entry,
  entriesAfter,
  entryAt,
  headOf,
  isSoundEntry,
  isSoundHead,
  putEntry,
  putHead,
  putSnapshot,
} from "./rows.ts";
import { headAt, type State, snapshotAt } from "./state.ts";

/** Looks in the backups for copies of a step's record. */
export type Copies = (piece: string, step: number) => Iterable<Entry>;

/**
 * Brings a piece to its newest sound state, inside a transaction of the caller's. Damaged records
 * are kept aside; a copy from a backup takes their place where one fits the chain.
 *
 * @returns what was found and done, already noted down; nothing when the piece was whole
 * @throws Problem "piece-damaged" when not even its first state is left; then nothing was changed
 */
export function mend(db: Database, id: string, now: string, copies: Copies): readonly Repair[] {
  const restored: number[] = [];
  for (;;) {
    const { state, damage } = load(db, id);
    const step = damage?.badFrom;
    if (step === undefined || !restore(db, id, step, state?.chain ?? "", now, copies)) {
      const repairs = [...restoredInWords(restored), ...settled(db, id, now, state, damage)];
      return repairs.map((repair) => noted(db, id, now, repair));
    }
    restored.push(step);
  }
}

/**
 * Restores from copies what is damaged in a piece's older records, which opening it does not need but
 * its history does. The piece itself is not touched.
 */
export function mendLog(db: Database, id: string, now: string, copies: Copies): readonly Repair[] {
  const unsound = unsoundSteps(db, id);
  const restored = unsound.filter((step) => {
    const before = step === 0 ? "" : entryAt(db, id, step - 1)?.sum;
    // The one before may have been the bad one, and be restored by now.
    const entry = entryAt(db, id, step);
    if (before === undefined || (entry && isSoundEntry(entry, before))) return false;
    return restore(db, id, step, before, now, copies);
  });
  const left = restored.length > 0 ? unsoundSteps(db, id) : unsound;
  return [
    ...restoredInWords(restored).map((repair) => noted(db, id, now, repair)),
    // Nothing was done, so there is nothing to note down; it is said as long as it is so.
    ...(left.length > 0 ? [{ ...recordsDamaged(left), piece: id }] : []),
  ];
}

function restore(
  db: Database,
  id: string,
  step: number,
  before: string,
  now: string,
  copies: Copies,
): boolean {
  for (const copy of copies(id, step)) {
    if (copy.piece !== id || copy.step !== step || !isSoundEntry(copy, before)) continue;
    // The log hangs on a head, and that may be what is missing.
    if (!headOf(db, id)) putHead(db, { ...blankHead(id), changed: now });
    const bad = entryAt(db, id, step);
    if (bad) setAside(db, id, now, "log", bad);
    db.run("DELETE FROM log WHERE piece = ? AND step = ?", id, step);
    putEntry(db, copy);
    return true;
  }
  return false;
}

const blankHead = (id: string) => ({
  id,
  shown: "{}",
  step: 0,
  chain: "",
  changed: "",
  away: null,
});

function settled(
  db: Database,
  id: string,
  now: string,
  state: State | undefined,
  damage: Damage | undefined,
): readonly Repair[] {
  if (!state) throw beyondRepair(id);
  if (!damage) return [];
  const { badFrom, snapshots, newest } = damage;
  const repairs: Repair[] = [];
  const head = headOf(db, id);
  const trusted = head && isSoundHead(head) ? head : undefined;
  if (head && !trusted) setAside(db, id, now, "pieces", head);
  putHead(db, headAt(id, state, trusted?.changed ?? now, trusted?.away ?? null));
  if (badFrom !== undefined) {
    const rows = entriesAfter(db, id, badFrom - 1);
    for (const row of rows) setAside(db, id, now, "log", row);
    db.run("DELETE FROM log WHERE piece = ? AND step >= ?", id, badFrom);
    repairs.push(stepsLost(badFrom, newest, rows.length));
  }
  if (snapshots.length > 0) {
    for (const row of snapshots) {
      setAside(db, id, now, "snapshots", row);
      db.run("DELETE FROM snapshots WHERE piece = ? AND step = ?", id, row.step);
    }
    putSnapshot(db, snapshotAt(id, state));
    if (badFrom === undefined) repairs.push(snapshotRebuilt);
  }
  if (repairs.length === 0 && !trusted) repairs.push(headRebuilt);
  return repairs;
}

const stepsLost = (from: number, to: number, kept: number): Repair => ({
  code: "steps-set-aside",
  found: `The record of ${stepsInWords(from, Math.max(from, to))} is damaged or missing.`,
  safe: `The piece stands as after step ${from - 1}, and everything up to there is safe.`,
  aside:
    kept === 0
      ? ""
      : `${kept === 1 ? "One record was" : `${kept} records were`} set aside in the database, as found.`,
});

const restoredInWords = (steps: readonly number[]): readonly Repair[] =>
  steps.length === 0
    ? []
    : [
        {
          code: "record-restored",
          found: `The record of ${steps.length === 1 ? "step" : "steps"} ${steps.join(", ")} was damaged.`,
          safe: "It was restored from a backup; nothing is lost.",
          aside: "What was damaged was set aside in the database, as found.",
        },
      ];

const recordsDamaged = (steps: readonly number[]): Repair => ({
  code: "record-damaged",
  found: `The record of ${steps.length === 1 ? "step" : "steps"} ${steps.join(", ")} is damaged, and no backup has it.`,
  safe: "The piece as it stands is safe, and so are its other states.",
  aside: "",
});

const snapshotRebuilt: Repair = {
  code: "snapshot-rebuilt",
  found: "A saved state of the piece, kept to open it faster, was damaged.",
  safe: "It was made anew from the record of steps; nothing is lost.",
  aside: "The damaged one was set aside in the database, as found.",
};

const headRebuilt: Repair = {
  code: "head-rebuilt",
  found: "The entry of this piece in the list of pieces was damaged or missing.",
  safe: "It was made anew from the record of steps; nothing of the piece is lost.",
  aside: "What was found was set aside in the database. If the piece was put away, it is back.",
};

const beyondRepair = (id: string) =>
  new Problem(
    "piece-damaged",
    `the piece ${id}`,
    "No sound state of it is left, and no backup holds one.",
    "Import it from a file you exported; its records stay in the database, as found.",
  );
