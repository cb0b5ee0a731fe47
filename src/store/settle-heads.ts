import { Problem } from "../worked/index.ts";
import type { Database } from "./database.ts";
import { type Copies, mend, mendLog } from "./mend.ts";
import { type Repair, setAside } from "./repair.ts";
import { entriesAfter, type Head, headOf, isSoundHead } from "./rows.ts";

/** Heads hold the list and the end of each log; those damaged or lost are made anew from the logs. */
export function settleHeads(db: Database, now: string, copies: Copies): readonly Repair[] {
  if (amiss(db).length === 0) return [];
  return db.transaction(() => amiss(db).flatMap((id) => settled(db, id, now, copies)));
}

/** Mends every piece, and the older records of each. */
export const mendAll = (db: Database, now: string, copies: Copies): readonly Repair[] =>
  db.transaction(() =>
    db
      .all<{ id: string }>("SELECT id FROM pieces")
      .flatMap(({ id }) => [...settled(db, id, now, copies), ...mendLog(db, id, now, copies)]),
  );

const amiss = (db: Database): readonly string[] => [
  ...db
    .all<Head>("SELECT * FROM pieces")
    .filter((head) => !isSoundHead(head))
    .map(({ id }) => id),
  ...db
    .all<{ piece: string }>("SELECT piece FROM log EXCEPT SELECT id FROM pieces")
    .map(({ piece }) => piece),
];

function settled(db: Database, id: string, now: string, copies: Copies): readonly Repair[] {
  try {
    return mend(db, id, now, copies);
  } catch (problem) {
    if (!(problem instanceof Problem) || problem.code !== "piece-damaged") throw problem;
    // One lost piece must not lock the others in; opening it says so again.
    if (headOf(db, id)) return [lost(id, "Its records stay in the database, as found.")];
    // Of no piece: the name in a record itself was damaged.
    for (const row of entriesAfter(db, id, -1)) setAside(db, id, now, "log", row);
    db.run("DELETE FROM log WHERE piece = ?", id);
    return [lost(id, "Its records were set aside in the database, as found.")];
  }
}

const lost = (id: string, aside: string): Repair => ({
  code: "piece-lost",
  piece: id,
  found: `Of a piece named ${JSON.stringify(id.slice(0, 60))} no sound state is left.`,
  safe: "The other pieces are safe.",
  aside,
});
