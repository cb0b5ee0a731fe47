import { documentText, type PieceDocument, readDocument } from "../piece/index.ts";
import { Problem } from "../worked/index.ts";
import type { Database } from "./database.ts";
import { documentAt, history } from "./history.ts";
import { load } from "./load.ts";
import { type Copies, mend, mendLog } from "./mend.ts";
import { newId } from "./name-piece.ts";
import type { Imported, Listed, Opened, Pieces } from "./pieces.ts";
import { type Repair, repairsOf } from "./repair.ts";
import {
  type Head,
  headOf,
  isSoundHead,
  type Made,
  putEntry,
  putHead,
  putSnapshot,
  type Shown,
  sealed,
} from "./rows.ts";
import { mendAll, settleHeads } from "./settle-heads.ts";
import { headAt, type State, snapshotAt } from "./state.ts";
import { backStep, editStep, type Next, requireFree, saysOf, takenBack } from "./steps.ts";

/** A snapshot every so many steps: opening replays fewer than these. */
export const SNAPSHOT_EVERY = 100;

/**
 * @param now  the time, as kept in the log
 * @param copies  where copies of damaged records are looked for
 * @param found  repairs made before, each to be told with the piece it is of
 */
export function piecesIn(
  db: Database,
  now: () => string,
  copies: Copies = () => [],
  found: readonly Repair[] = [],
): Pieces {
  let untold = found;
  // Only what is on the disk; a head that differs proves another process was there.
  const known = new Map<string, State>();

  const remembered = (id: string, head: Head): State | undefined => {
    const state = known.get(id);
    const isNewest = state?.step === head.step && state.chain === head.chain && isSoundHead(head);
    return isNewest ? state : undefined;
  };

  /** The newest state, inside a transaction; mends what is damaged. */
  const newest = (id: string): { readonly state: State; readonly repairs: readonly Repair[] } => {
    const head = present(headOf(db, id), id);
    const state = remembered(id, head);
    if (state) return { state, repairs: [] };
    const loaded = load(db, id);
    if (loaded.state && !loaded.damage) return { state: loaded.state, repairs: [] };
    const repairs = mend(db, id, now(), copies);
    const mended = load(db, id).state;
    if (!mended) throw new Error(`the piece ${id} was mended and is not there`);
    return { state: mended, repairs };
  };

  /** What was mended now or before, each told once. */
  const told = (id: string, repairs: readonly Repair[]): readonly Repair[] => {
    const before = untold.filter((one) => one.piece === id);
    untold = untold.filter((one) => one.piece !== id);
    return [...before, ...repairs];
  };

  const opened = (id: string, state: State, repairs: readonly Repair[]): Opened => ({
    id,
    document: state.document,
    text: documentText(state.document),
    step: state.step,
    undo: saysOf(db, id, state.undo),
    redo: saysOf(db, id, state.redo),
    repairs,
  });

  const append = (id: string, { entry, document }: Next): State => {
    const state: State = { ...entry, chain: entry.sum, document };
    putEntry(db, entry);
    putHead(db, headAt(id, state, entry.at));
    if (state.step % SNAPSHOT_EVERY === 0) putSnapshot(db, snapshotAt(id, state));
    return state;
  };

  /** One step, in one transaction; remembered only once it is on the disk. */
  const step = (id: string, make: (state: State) => Next): Opened => {
    const [state, result] = db.transaction(() => {
      const { state: before, repairs } = newest(id);
      if (headOf(db, id)?.away) throw putAway(id);
      const after = append(id, make(before));
      return [after, opened(id, after, repairs)] as const;
    });
    known.set(id, state);
    return { ...result, repairs: told(id, result.repairs) };
  };

  const back = (kind: "undo" | "redo", id: string, baseStep: number | undefined): Opened => {
    let mended: readonly Repair[] = [];
    const done = step(id, (state) => {
      if (baseStep !== undefined) requireFree(db, id, state, baseStep, undefined);
      const target = state[kind];
      if (target !== null && !takenBack(db, id, target)) mended = mendLog(db, id, now(), copies);
      return backStep(db, id, state, kind, now());
    });
    return { ...done, repairs: [...done.repairs, ...mended] };
  };

  const open = (id: string): Opened => {
    const [state, result] =
      db.reading(() => {
        const head = present(headOf(db, id), id);
        const state = remembered(id, head) ?? wholeState(db, id);
        return state && ([state, opened(id, state, [])] as const);
      }) ??
      // Only mending needs to write.
      db.transaction(() => {
        const { state, repairs } = newest(id);
        return [state, opened(id, state, repairs)] as const;
      });
    known.set(id, state);
    return { ...result, repairs: told(id, result.repairs) };
  };

  const make = (document: PieceDocument, says: string): string =>
    db.transaction(() => {
      let id = newId(document.name);
      while (headOf(db, id)) id = newId(document.name);
      const at = now();
      const edit = JSON.stringify({ says, text: documentText(document) } satisfies Made);
      const entry = sealed(
        { piece: id, step: 0, kind: "made", undo: null, redo: null, edit, inverse: "", at },
        "",
      );
      const state: State = { ...entry, chain: entry.sum, document };
      putHead(db, headAt(id, state, at));
      putEntry(db, entry);
      putSnapshot(db, snapshotAt(id, state));
      return id;
    });

  const importText = (text: string, says = "Imported"): Imported => {
    const read = readDocument(text);
    return read.ok ? { ok: true, id: make(read.document, says) } : read;
  };

  const place = (id: string, away: string | null) => {
    const mended = db.transaction(() => {
      const { state, repairs } = newest(id);
      const head = present(headOf(db, id), id);
      putHead(db, headAt(id, state, head.changed, away));
      return repairs;
    });
    // Told when the piece is opened the next time.
    untold = [...untold, ...mended];
  };

  const list = (where: string): readonly Listed[] => {
    untold = [...untold, ...settleHeads(db, now(), copies)];
    return listed(db, where);
  };

  const check = (): readonly Repair[] => {
    const repairs = mendAll(db, now(), copies);
    untold = [...untold, ...repairs];
    return repairs;
  };

  return {
    create: (document) => {
      // Read back as it will be read from then on, so that nothing unreadable is ever kept.
      const made = importText(documentText(document), "Made");
      if (made.ok) return made.id;
      throw made.problems[0] ?? new Error("a document was refused without a reason");
    },
    importText: (text) => importText(text),
    exportText: (id) => open(id).text,
    list: () => list("away IS NULL"),
    listAway: () => list("away IS NOT NULL"),
    open,
    edit: (id, edit, baseStep) =>
      step(id, (state) => {
        if (baseStep !== undefined) requireFree(db, id, state, baseStep, edit);
        return editStep(id, state, edit, now());
      }),
    undo: (id, baseStep) => back("undo", id, baseStep),
    redo: (id, baseStep) => back("redo", id, baseStep),
    history: (id, before, count) => {
      present(headOf(db, id), id);
      return history(db, id, before, count);
    },
    at: (id, at) => {
      const { step: last } = open(id);
      return db.reading(() => documentAt(db, id, at, last));
    },
    remove: (id) => place(id, now()),
    restore: (id) => place(id, null),
    check,
    repairs: (id) => repairsOf(db, id),
  };
}

function wholeState(db: Database, id: string): State | undefined {
  const { state, damage } = load(db, id);
  return damage ? undefined : state;
}

const listed = (db: Database, where: string): readonly Listed[] =>
  db.all<Head>(`SELECT * FROM pieces WHERE ${where} ORDER BY changed DESC, id`).map((head) => {
    // Beyond repair: named so that it can be asked for, and opening it says what is wrong.
    const nameless: Shown = { name: head.id, client: "", demo: false };
    const shown = isSoundHead(head) ? (JSON.parse(head.shown) as Shown) : nameless;
    return { id: head.id, ...shown, changed: head.changed, steps: head.step };
  });

function present(head: Head | undefined, id: string): Head {
  if (head) return head;
  throw new Problem(
    "piece-unknown",
    `the piece “${id.slice(0, 60)}”`,
    "There is no such piece here.",
    "List the pieces and choose one of them.",
  );
}

const putAway = (id: string) =>
  new Problem("piece-away", `the piece ${id}`, "It was put away.", "Bring it back, then edit it.");
