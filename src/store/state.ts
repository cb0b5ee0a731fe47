import {
  applyEdit,
  documentText,
  type Edit,
  type PieceDocument,
  readDocument,
} from "../piece/index.ts";
import type { Entry, Head, Made, Shown, Snapshot } from "./rows.ts";

/** A piece as it stands after a step, with what the next step needs to know. */
export type State = {
  readonly step: number;
  /** the sum of the log's entry of that step */
  readonly chain: string;
  readonly undo: number | null;
  readonly redo: number | null;
  readonly document: PieceDocument;
};

/** The document a text of ours holds. */
export function documentOf(text: string): PieceDocument {
  const read = readDocument(text);
  if (read.ok) return read.document;
  // Its checksum was right, so it is what was written: by a newer Latewood, perhaps.
  throw read.problems[0] ?? new Error("a document was refused without a reason");
}

export const ofSnapshot = ({ step, chain, undo, redo, text }: Snapshot): State => ({
  step,
  chain,
  undo,
  redo,
  document: documentOf(text),
});

/** The state after the first entry, `made`. */
export const ofMaking = ({ step, sum, undo, redo, edit }: Entry): State => ({
  step,
  chain: sum,
  undo,
  redo,
  document: documentOf((JSON.parse(edit) as Made).text),
});

/** The state after one more entry, which is known to be sound. */
export const advanced = (state: State, { step, sum, undo, redo, edit }: Entry): State => ({
  step,
  chain: sum,
  undo,
  redo,
  document: applyEdit(state.document, JSON.parse(edit) as Edit).document,
});

const shownOf = ({ name, client, demo }: PieceDocument): string =>
  JSON.stringify({ name, client, demo } satisfies Shown);

/** The head of the piece that stands at a state. */
export const headAt = (
  id: string,
  { step, chain, document }: State,
  changed: string,
  away: string | null = null,
): Omit<Head, "sum"> => ({ id, shown: shownOf(document), step, chain, changed, away });

/** The snapshot of the piece that stands at a state. */
export const snapshotAt = (
  piece: string,
  { step, chain, undo, redo, document }: State,
): Omit<Snapshot, "sum"> => ({ piece, step, text: documentText(document), chain, undo, redo });
