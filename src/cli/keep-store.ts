import { demoPieces } from "../kinds/index.ts";
import { openStore, type Pieces, type Repair, type Store } from "../store/index.ts";
import { Problem } from "../worked/index.ts";
import type { Io } from "./io.ts";
import { onOneLine, printProblems } from "./report.ts";

const DAY_MS = 86_400_000;

/** An open store, and its closing. */
export type Kept = { readonly store: Store; readonly close: () => void };

/**
 * Opens a store to be served: says what had to be mended, gives an empty one pieces to look round
 * with, and backs it up each day for as long as it is open.
 *
 * @param folder  of the data
 * @throws Problem where it cannot be opened
 */
export async function keepStore(folder: string, io: Io): Promise<Kept> {
  const store = await openStore(folder);
  tell(io, store.openingRepairs);
  const daily = setInterval(() => backUp(store, io), DAY_MS);
  // It must not keep a program alive that has nothing else to do.
  daily.unref();
  const close = () => {
    clearInterval(daily);
    store.close();
  };
  try {
    seed(store);
  } catch (problem) {
    close();
    throw problem;
  }
  return { store, close };
}

/** Where nothing was ever made; whoever put all pieces away wants none. */
function seed(store: Pieces): void {
  if (store.list().length > 0 || store.listAway().length > 0) return;
  for (const document of demoPieces()) store.create(document);
}

/** A backup that fails must not stop the serving; it is told, and tried again the next day. */
function backUp(store: Store, io: Io): void {
  try {
    tell(io, store.backUpIfDue());
  } catch (problem) {
    if (!(problem instanceof Problem)) throw problem;
    printProblems(io, [problem]);
  }
}

function tell(io: Io, repairs: readonly Repair[]): void {
  for (const { piece, found, safe, aside } of repairs) {
    const place = piece === undefined ? "the data" : `the piece ${piece}`;
    io.err(`${onOneLine(`${place}: ${found}`)}\n${onOneLine(`  ${safe} ${aside}`.trimEnd())}\n`);
  }
}
