import type { Edit, PieceDocument } from "../piece/index.ts";
import type { Problem } from "../worked/index.ts";
import type { HistoryPage } from "./history.ts";
import type { Repair } from "./repair.ts";
import type { Shown } from "./rows.ts";

/** A piece as it stands. */
export type Opened = {
  readonly id: string;
  readonly document: PieceDocument;
  /** the document's canonical bytes */
  readonly text: string;
  /** number of the newest step */
  readonly step: number;
  /** what an undo would take back, in words; undefined when there is nothing */
  readonly undo: string | undefined;
  readonly redo: string | undefined;
  /** what had to be mended and was not told yet, for the maker to read */
  readonly repairs: readonly Repair[];
};

/** A line of the list of pieces. */
export type Listed = Shown & {
  readonly id: string;
  readonly changed: string;
  readonly steps: number;
};

export type Imported =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The pieces of a database. Whatever changes one is on the disk when it returns, or throws. */
export interface Pieces {
  readonly create: (document: PieceDocument) => string;
  readonly importText: (text: string) => Imported;
  readonly exportText: (id: string) => string;
  /** Newest change first. */
  readonly list: () => readonly Listed[];
  readonly listAway: () => readonly Listed[];
  readonly open: (id: string) => Opened;
  /** With the step it was made on, it is refused when it would meet a later one. */
  readonly edit: (id: string, edit: Edit, baseStep?: number) => Opened;
  readonly undo: (id: string, baseStep?: number) => Opened;
  readonly redo: (id: string, baseStep?: number) => Opened;
  readonly history: (id: string, before?: number, count?: number) => HistoryPage;
  readonly at: (id: string, step: number) => PieceDocument;
  /** Puts it away: it leaves the list and is kept. */
  readonly remove: (id: string) => void;
  readonly restore: (id: string) => void;
  /** Reads every log through, and restores damaged records from the backups where they have them. */
  readonly check: () => readonly Repair[];
  /** Every repair that was ever made to it, the oldest first. */
  readonly repairs: (id: string) => readonly (Repair & { readonly at: string })[];
}
