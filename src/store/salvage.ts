import { ifReadable } from "./backups.ts";
import type { Database } from "./database.ts";
import { load } from "./load.ts";
import {
  type Entry,
  entryAt,
  type Head,
  headOf,
  isSoundEntry,
  isSoundHead,
  isSoundSnapshot,
  putEntry,
  putHead,
  putSnapshot,
  type Snapshot,
} from "./rows.ts";
import { headAt } from "./state.ts";

/** What was taken over from a damaged database. */
export type Salvaged = { readonly pieces: number; readonly steps: number };

/**
 * Takes over from a damaged database every step that goes on, in an unbroken chain, from what the
 * other one has; and whole pieces that it has not. Where the chain breaks, a later snapshot that is
 * sound still brings the piece itself over.
 */
export function salvage(damaged: Database, into: Database, now: string): Salvaged {
  const gained = piecesIn(damaged).map((id) =>
    into.transaction(() => salvagePiece(damaged, into, id, now)),
  );
  return {
    pieces: gained.filter((steps) => steps > 0).length,
    steps: gained.reduce((a, b) => a + b, 0),
  };
}

function piecesIn(db: Database): readonly string[] {
  const asked = ["SELECT id FROM pieces", "SELECT DISTINCT piece AS id FROM log"];
  const found = asked.flatMap((sql) => ifReadable(() => db.all<{ id: string }>(sql)) ?? []);
  return [...new Set(found.map(({ id }) => id))];
}

/** Returns how many steps were gained, the making of the piece counted as one. */
function salvagePiece(damaged: Database, into: Database, id: string, now: string): number {
  const known = headOf(into, id);
  let [step, chain] = known ? [known.step, known.chain] : [-1, ""];
  const begun = step;
  if (!known) putHead(into, { id, shown: "{}", step: 0, chain: "", changed: now, away: null });
  const takeOver = () => {
    for (;;) {
      const entry = ifReadable(() => entryAt(damaged, id, step + 1));
      if (!entry || !isSoundEntry(entry, chain)) return;
      putEntry(into, entry as Entry);
      [step, chain] = [entry.step, entry.sum];
    }
  };
  takeOver();
  for (const snapshot of snapshotsIn(damaged, id)) {
    if (snapshot.step <= step) continue;
    putSnapshot(into, snapshot);
    [step, chain] = [snapshot.step, snapshot.chain];
    takeOver();
  }
  const { state } = load(into, id);
  if (!state) {
    into.run("DELETE FROM pieces WHERE id = ?", id);
    return 0;
  }
  const head = soundHead(damaged, id) ?? known;
  putHead(into, headAt(id, state, head?.changed ?? now, head?.away ?? null));
  return step - begun;
}

/** Oldest first, each read by itself: one may be on a damaged page. */
function snapshotsIn(db: Database, id: string): readonly Snapshot[] {
  const steps = ifReadable(() =>
    db.all<{ step: number }>("SELECT step FROM snapshots WHERE piece = ? ORDER BY step", id),
  );
  return (steps ?? [])
    .map(({ step }) =>
      ifReadable(() =>
        db.get<Snapshot>("SELECT * FROM snapshots WHERE piece = ? AND step = ?", id, step),
      ),
    )
    .filter((snapshot) => snapshot !== undefined)
    .filter(isSoundSnapshot);
}

function soundHead(db: Database, id: string): Head | undefined {
  const head = ifReadable(() => headOf(db, id));
  return head && isSoundHead(head) ? head : undefined;
}
