import { memoryStore } from "../../src/store/index.ts";
import { type Kept, Refused } from "../../src/web/api/index.ts";
import type { Later, PieceServer } from "../../src/web/piece/edit-queue.ts";
import { Problem } from "../../src/worked/index.ts";
import { sampleDocument } from "../kit/documents.ts";

/**
 * What becomes of one request: it is answered at once or late, or never arrives, or its answer is lost,
 * or it strays and arrives when nobody waits for it any more, or it is refused.
 */
export type Fate = "answered" | "late" | "unheard" | "lost" | "stray" | "busy" | "mistake";

const said = (code: string) => [{ code, place: "here", reason: "So.", remedy: "Do." }];

/** A server that a page asks over a bad wire: a real store, of one piece, that others use too. */
export async function badWire() {
  const store = await memoryStore();
  const id = store.create(sampleDocument());
  const fates: Fate[] = [];
  const asked: string[] = [];
  const held: (() => void)[] = [];
  const waits: (() => void)[] = [];

  const ask = async (what: string, work: () => unknown): Promise<Kept> => {
    asked.push(what);
    const fate = fates.shift() ?? "answered";
    if (fate === "unheard") throw new Refused(said("no-answer"), true);
    if (fate === "busy") throw new Refused(said("store-busy"), true);
    if (fate === "mistake") throw new Refused(said("answer-wordless"), false);
    if (fate === "stray") {
      held.push(() => void work());
      throw new Refused(said("no-answer"), true);
    }
    if (fate === "late") await new Promise<void>((go) => held.push(go));
    try {
      const answer = JSON.parse(JSON.stringify(work())) as Kept;
      if (fate === "lost") throw new Refused(said("no-answer"), true);
      return answer;
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      const { code, place, reason, remedy } = problem;
      throw new Refused([{ code, place, reason, remedy }], false);
    }
  };
  const server: PieceServer = {
    open: () => ask("open", () => store.open(id)),
    edit: (edit, base) => ask(`edit ${edit.says} on ${base}`, () => store.edit(id, edit, base)),
    undo: (base) => ask(`undo on ${base}`, () => store.undo(id, base)),
    redo: (base) => ask(`redo on ${base}`, () => store.redo(id, base)),
  };
  const later: Later = (_, go) => {
    waits.push(go);
    return () => {
      const at = waits.indexOf(go);
      if (at >= 0) waits.splice(at, 1);
    };
  };
  /** Until nothing moves any more by itself. */
  const rest = async () => {
    for (let i = 0; i < 60; i++) await Promise.resolve();
  };
  return {
    server,
    later,
    asked,
    waits,
    rest,
    /** the fates of the next requests, in turn; those after them are answered */
    fate: (...next: readonly Fate[]) => void fates.push(...next),
    /** what is late arrives */
    arrive: async () => {
      for (const go of held.splice(0)) go();
      await rest();
    },
    /** the time of every wait has come */
    passTime: async () => {
      for (const go of waits.splice(0)) go();
      await rest();
    },
    /** another page's */
    others: {
      edit: (name: string, to: string) =>
        store.edit(id, { says: `${name}: ${to}`, changes: [{ at: [name], to }] }),
      undo: () => store.undo(id),
    },
    /** as the store has it */
    kept: () => store.open(id),
    /** every step, the oldest first */
    steps: () =>
      store
        .history(id)
        .lines.map(({ kind, says }) => `${kind} ${says}`)
        .slice(0, -1)
        .reverse(),
  };
}
