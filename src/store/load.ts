import type { Database } from "./database.ts";
import {
  type Entry,
  entriesAfter,
  entryAt,
  type Head,
  headOf,
  isSoundEntry,
  isSoundHead,
  isSoundSnapshot,
  type Snapshot,
  snapshotsUpTo,
} from "./rows.ts";
import { advanced, ofMaking, ofSnapshot, type State } from "./state.ts";

/** What is wrong with a piece's records. */
export type Damage = {
  /** the first step whose record cannot be relied on, or is missing */
  readonly badFrom: number | undefined;
  readonly snapshots: readonly Snapshot[];
  /** whether what the list shows must be written anew */
  readonly head: boolean;
  /** the newest step there is any trace of */
  readonly newest: number;
};

export type Loaded = {
  /** the newest sound one; undefined when there is none, not even the first */
  readonly state: State | undefined;
  readonly damage: Damage | undefined;
};

/**
 * Reads a piece: from its newest sound snapshot on, every entry held against the chain of checksums.
 * Writes nothing; damage is reported, for `mend` to see to.
 */
export function load(db: Database, id: string): Loaded {
  const head = headOf(db, id);
  const snapshots = snapshotsUpTo(db, id, Number.MAX_SAFE_INTEGER);
  const sound = snapshots.find(isSoundSnapshot);
  const unsound = snapshots.filter((s) => s.step > (sound?.step ?? -1));
  const start = sound ? ofSnapshot(sound) : firstState(entryAt(db, id, 0));
  const after = entriesAfter(db, id, start?.step ?? -1);
  const { state, badFrom } = start ? replayed(start, after) : { state: start, badFrom: 0 };

  const newest = Math.max(
    state?.step ?? -1,
    after.at(-1)?.step ?? -1,
    // A damaged head may claim anything.
    head && isSoundHead(head) ? head.step : -1,
  );
  // The log's end may be gone without a trace but the head's.
  const bad = badFrom ?? (state && newest > state.step ? state.step + 1 : undefined);
  const damage = {
    badFrom: bad,
    snapshots: unsound,
    head: !state || !fits(head, state),
    newest,
  };
  const isWhole = bad === undefined && unsound.length === 0 && !damage.head;
  return { state, damage: isWhole ? undefined : damage };
}

const firstState = (made: Entry | undefined): State | undefined =>
  made?.kind === "made" && isSoundEntry(made, "") ? ofMaking(made) : undefined;

const fits = (head: Head | undefined, { step, chain }: State): boolean =>
  head !== undefined && isSoundHead(head) && head.step === step && head.chain === chain;

/** As far as the entries follow one another and are sound. */
function replayed(
  start: State,
  entries: readonly Entry[],
): { readonly state: State; readonly badFrom: number | undefined } {
  let state = start;
  for (const entry of entries) {
    if (entry.step !== state.step + 1 || !isSoundEntry(entry, state.chain)) {
      return { state, badFrom: state.step + 1 };
    }
    state = advanced(state, entry);
  }
  return { state, badFrom: undefined };
}

/** The steps of the whole log whose record is damaged or missing, also such as no snapshot needs. */
export function unsoundSteps(db: Database, id: string): readonly number[] {
  const byStep = new Map(entriesAfter(db, id, -1).map((entry) => [entry.step, entry]));
  const newest = Math.max(headOf(db, id)?.step ?? 0, ...byStep.keys());
  const found: number[] = [];
  for (let step = 0; step <= newest; step += 1) {
    const entry = byStep.get(step);
    const before = step === 0 ? "" : byStep.get(step - 1)?.sum;
    if (!entry || before === undefined || !isSoundEntry(entry, before)) found.push(step);
  }
  return found;
}
