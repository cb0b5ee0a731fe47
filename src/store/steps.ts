import { applyEdit, type Edit, type PieceDocument } from "../piece/index.ts";
import { Problem } from "../worked/index.ts";
import type { Database } from "./database.ts";
import { type Entry, entriesAfter, entryAt, isSoundEntry, sealed } from "./rows.ts";
import type { State } from "./state.ts";

/** A step that may be appended, and what the piece will be after it. */
export type Next = { readonly entry: Entry; readonly document: PieceDocument };

/** The longest a step is described with [characters]. */
const LONGEST_SAYS = 400;

/** The step that an edit makes after a state. */
export function editStep(piece: string, state: State, edit: Edit, at: string): Next {
  requireForm(edit);
  const { document, inverse } = applyEdit(state.document, edit);
  const step = state.step + 1;
  const entry = sealed(
    {
      piece,
      step,
      kind: "edit",
      undo: step,
      redo: null,
      edit: JSON.stringify(edit),
      inverse: JSON.stringify(inverse),
      at,
    },
    state.chain,
  );
  return { entry, document };
}

/**
 * The step that takes one back: an undo, or a redo, which takes an undo back. What each may take back
 * stands in the entries, and what lies below it in the entry before the one taken back; so both
 * reach back without end and need no list of their own.
 */
export function backStep(
  db: Database,
  piece: string,
  state: State,
  kind: "undo" | "redo",
  at: string,
): Next {
  const target = state[kind];
  if (target === null) throw nothingLeft(kind);
  const found = takenBack(db, piece, target);
  if (!found) throw damagedBelow(piece, kind, target);
  const { taken, below } = found;
  const edit = JSON.parse(taken.inverse) as Edit;
  const { document, inverse } = applyEdit(state.document, edit);
  const step = state.step + 1;
  const entry = sealed(
    {
      piece,
      step,
      kind,
      undo: kind === "undo" ? below.undo : step,
      redo: kind === "undo" ? step : below.redo,
      edit: JSON.stringify(edit),
      inverse: JSON.stringify(inverse),
      at,
    },
    state.chain,
  );
  return { entry, document };
}

/** The entry of a step and the one before it; undefined when either cannot be relied on. */
export function takenBack(db: Database, piece: string, target: number) {
  const [taken, below] = [entryAt(db, piece, target), entryAt(db, piece, target - 1)];
  const before = target < 2 ? "" : entryAt(db, piece, target - 2)?.sum;
  if (!taken || !below || before === undefined) return undefined;
  return isSoundEntry(below, before) && isSoundEntry(taken, below.sum)
    ? { taken, below }
    : undefined;
}

/** What an undo or a redo would take back, in the words of the edit. */
export function saysOf(db: Database, piece: string, step: number | null): string | undefined {
  const entry = step === null ? undefined : entryAt(db, piece, step);
  try {
    return entry && (JSON.parse(entry.edit) as Edit).says;
  } catch (fault) {
    if (!(fault instanceof SyntaxError)) throw fault;
    // Damaged, which the undo itself will say; here it has no words.
    return undefined;
  }
}

/**
 * An edit made on a step that is no longer the newest is applied all the same when no step since has
 * touched a place that it touches, nor one inside or around it: then both makers get what they meant.
 *
 * @throws Problem "step-behind" otherwise, "step-ahead" when there is no such step yet
 */
export function requireFree(
  db: Database,
  piece: string,
  state: State,
  baseStep: number,
  edit: Edit | undefined,
): void {
  if (!Number.isInteger(baseStep) || baseStep < 0 || baseStep > state.step) {
    throw new Problem(
      "step-ahead",
      `step ${baseStep} of the piece ${piece}`,
      `There is no such step; the newest is ${state.step}.`,
      "Read the piece again and make the edit on what stands now.",
    );
  }
  if (baseStep === state.step) return;
  const since = entriesAfter(db, piece, baseStep).map((entry) => JSON.parse(entry.edit) as Edit);
  if (edit) requireForm(edit);
  const met = edit && since.find((other) => meets(edit, other));
  // An undo names no place: what it takes back is no longer what its maker saw.
  if (edit && !met) return;
  const last = met ?? since.at(-1);
  throw new Problem(
    "step-behind",
    `step ${baseStep} of the piece ${piece}`,
    `The piece stands at step ${state.step} by now: “${last?.says.slice(0, 80)}”.`,
    "Read the piece again and make the edit on what stands now.",
  );
}

const meets = (one: Edit, other: Edit): boolean =>
  one.changes.some((a) => other.changes.some((b) => isWithin(a.at, b.at) || isWithin(b.at, a.at)));

const isWithin = (inner: readonly string[], outer: readonly string[]): boolean =>
  outer.every((name, i) => inner[i] === name);

/** Edits come over the wire, so that their type proves nothing. */
function requireForm(edit: unknown): void {
  const { says, changes } = (edit ?? {}) as { says?: unknown; changes?: unknown };
  const isChange = (change: unknown) => {
    const { at } = (change ?? {}) as { at?: unknown };
    return Array.isArray(at) && at.every((name) => typeof name === "string");
  };
  if (
    typeof says === "string" &&
    says.length <= LONGEST_SAYS &&
    Array.isArray(changes) &&
    changes.every(isChange)
  ) {
    return;
  }
  throw new Problem(
    "edit-form",
    "the edit",
    "It is not of an edit’s form.",
    `Give {"says": a text of at most ${LONGEST_SAYS} characters, "changes": [{"at": [names], "to": a value}]}.`,
  );
}

const nothingLeft = (kind: "undo" | "redo") =>
  new Problem(
    `nothing-to-${kind}`,
    "the piece",
    kind === "undo" ? "No step is left to undo." : "No undone step is left to redo.",
    kind === "undo" ? "It stands as it was made." : "A new edit ends the redoing; see the history.",
  );

const damagedBelow = (piece: string, kind: "undo" | "redo", step: number) =>
  new Problem(
    "step-damaged",
    `step ${step} of the piece ${piece}`,
    `Its record is damaged, so ${kind === "undo" ? "it cannot be taken back" : "it cannot be redone"}.`,
    "Its copy in the backups is gone too. Open an earlier state from the history.",
  );
