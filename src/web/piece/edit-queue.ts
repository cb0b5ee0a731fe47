import { applyEdit, type Edit, type PieceDocument } from "../../piece/index.ts";
import { Problem } from "../../worked/index.ts";
import { isPassing, type Kept, patiently, RETRY_MS, type Said, saidBy } from "../api/index.ts";
import { isInForce, isNothingLeft, saysOf, type Task, withEdit } from "./task.ts";

/** How far what is on the screen is kept. */
export type Keeping =
  | { readonly is: "reading" }
  | { readonly is: "kept"; readonly at: Date | undefined }
  | { readonly is: "keeping" }
  /** in vain so far: it is tried again by and by, or at a word */
  | { readonly is: "waiting"; readonly said: readonly Said[] };

/** Where a queue stands; a new object whenever anything in it is new. */
type QueueState = {
  /** with every edit so far; undefined until it is read */
  readonly document: PieceDocument | undefined;
  /** as the server has it */
  readonly kept: Kept | undefined;
  readonly keeping: Keeping;
  /** what was refused for good, its place being the edit in words; until the maker has read it */
  readonly dropped: readonly Said[];
  readonly repairs: Kept["repairs"];
  /** why the piece could not be opened at all */
  readonly closed: readonly Said[];
};

/** One piece's part of the server. */
export type PieceServer = {
  readonly open: () => Promise<Kept>;
  readonly edit: (edit: Edit, base: number) => Promise<Kept>;
  readonly undo: (base: number) => Promise<Kept>;
  readonly redo: (base: number) => Promise<Kept>;
};

/** Calls back after a time [ms], unless what it returns is called before. */
export type Later = (ms: number, go: () => void) => () => void;

export type EditQueue = {
  readonly state: () => QueueState;
  /** Calls back at every new state, until what it returns is called. */
  readonly listen: (heard: () => void) => () => void;
  /** Reads the piece, unless it is read already. */
  readonly start: () => void;
  /** Shows an edit, or the one made of the document as it stands, and keeps it in its turn. */
  readonly commit: (edit: Edit | ((document: PieceDocument) => Edit)) => void;
  readonly back: (way: "undo" | "redo") => void;
  /** Tries at once what waits. */
  readonly wake: () => void;
  /** The maker has read what was dropped. */
  readonly noted: () => void;
  /** Whether something is not kept yet. */
  readonly isBehind: () => boolean;
};

/** What became of a task that was sent. */
type Sent =
  | { readonly answer: Kept; readonly fault?: never }
  | { readonly answer?: never; readonly fault: unknown };

const inTime: Later = (ms, go) => {
  const timer = setTimeout(go, ms);
  return () => clearTimeout(timer);
};

/**
 * Keeps a piece's edits, one after the other; each shows at once. When an answer is lost, the piece is
 * read again to see whether the task was done, so that none is done twice. What is refused for good is
 * dropped alone, with words, and what waits behind it is put on top of what the server has.
 */
export function createEditQueue(server: PieceServer, later: Later = inTime): EditQueue {
  let state: QueueState = {
    document: undefined,
    kept: undefined,
    keeping: { is: "reading" },
    dropped: [],
    repairs: [],
    closed: [],
  };
  let tasks: readonly Task[] = [];
  let keptAt: Date | undefined;
  let isRunning = false;
  let pausing: { readonly go: () => void; readonly cancel: () => void } | undefined;
  const listeners = new Set<() => void>();

  const tell = (news: Partial<QueueState>) => {
    state = { ...state, ...news };
    for (const heard of listeners) heard();
  };

  const drop = (what: string, said: readonly Said[]) =>
    tell({
      dropped: [
        ...state.dropped,
        ...said.map(({ code, reason, remedy }) => ({ code, place: what, reason, remedy })),
      ],
    });

  /** Takes what the server has, and puts on top of it what waits. */
  const take = (answer: Kept) => {
    let { document } = answer;
    const standing: Task[] = [];
    for (const task of tasks) {
      const next = typeof task === "string" ? document : withEdit(document, task);
      if (next instanceof Problem) {
        drop(saysOf(task), [next]);
        continue;
      }
      document = next;
      standing.push(task);
    }
    tasks = standing;
    const repairs = [...state.repairs, ...answer.repairs];
    tell({ document, kept: answer, keeping: { is: "keeping" }, repairs });
  };

  /**
   * Waits until it is time to try again, or until a word. What is said stays until there is an
   * answer: it is read out whenever it comes anew.
   */
  const waitOut = async (said: readonly Said[]) => {
    tell({ keeping: { is: "waiting", said } });
    // Nobody looks and nothing is to be kept: then nobody is asked either, until somebody looks.
    const isWanted = listeners.size > 0 || tasks.length > 0;
    await new Promise<void>((go) => {
      const cancel = isWanted ? later(RETRY_MS, go) : () => undefined;
      pausing = { go, cancel };
    });
    pausing?.cancel();
    pausing = undefined;
  };

  const send = async (task: Task, base: number): Promise<Sent> => {
    try {
      const answer = await (typeof task === "string"
        ? server[task](base)
        : server.edit(task, base));
      return { answer };
    } catch (fault) {
      return { fault };
    }
  };

  /** The first task is done with, and this is what the server has. */
  const done = (answer: Kept) => {
    tasks = tasks.slice(1);
    keptAt = new Date();
    take(answer);
  };

  /** The first task is refused for good. */
  const refused = (task: Task, said: readonly Said[], now: Kept) => {
    drop(saysOf(task), said);
    // A step back names no place: what it would take back is no longer what its maker saw.
    const behind = tasks.slice(1);
    tasks = behind.filter((one) => typeof one !== "string");
    if (tasks.length < behind.length) drop("what was undone after it", [unmeant]);
    take(now);
  };

  const keep = async (task: Task, before: Kept) => {
    const { answer, fault } = await send(task, before.step);
    if (answer) return done(answer);
    if (isNothingLeft(fault)) {
      tasks = tasks.slice(1);
      return;
    }
    if (isPassing(fault)) await waitOut(fault.said);
    // Nothing can be decided before it is known what the server has.
    const now = await patiently(server.open, waitOut);
    if (isInForce(task, before, now)) done(now);
    // Otherwise it stays the first, to be sent again on the step that it was made on.
    else if (!isPassing(fault)) refused(task, saidBy(fault), now);
  };

  const read = async () => {
    try {
      take(await patiently(server.open, waitOut));
    } catch (fault) {
      tell({ closed: saidBy(fault) });
    }
  };

  const run = async () => {
    if (isRunning || state.closed.length > 0) return;
    isRunning = true;
    try {
      if (!state.kept) await read();
      for (let [task] = tasks; task !== undefined && state.kept; [task] = tasks) {
        if (state.keeping.is !== "waiting") tell({ keeping: { is: "keeping" } });
        await keep(task, state.kept);
      }
      if (state.kept) tell({ keeping: { is: "kept", at: keptAt } });
    } catch (fault) {
      // What the server has cannot be told, or a fault of ours: what waits is not lost by it, and is
      // tried again at a word, or with the next edit.
      tell({ keeping: { is: "waiting", said: saidBy(fault) } });
    } finally {
      isRunning = false;
    }
  };

  const add = (task: Task) => {
    tasks = [...tasks, task];
    void run();
  };

  /** The edit and what it makes of the document, unless it cannot be made. */
  const attempted = (made: Edit | ((document: PieceDocument) => Edit), on: PieceDocument) => {
    try {
      const edit = typeof made === "function" ? made(on) : made;
      return { edit, document: applyEdit(on, edit).document };
    } catch (problem) {
      if (!(problem instanceof Problem)) throw problem;
      drop(typeof made === "function" ? problem.place : made.says, [problem]);
      return undefined;
    }
  };

  return {
    state: () => state,
    listen: (heard) => {
      listeners.add(heard);
      // A wait that nobody looked at has no end of its own.
      if (listeners.size === 1) pausing?.go();
      return () => {
        listeners.delete(heard);
        if (listeners.size === 0 && tasks.length === 0) pausing?.cancel();
      };
    },
    start: () => {
      if (!state.kept) void run();
    },
    commit: (made) => {
      const next = state.document && attempted(made, state.document);
      if (!next) return;
      tell({ document: next.document });
      add(next.edit);
    },
    back: (way) => {
      if (state.document) add(way);
    },
    wake: () => {
      tell({ keeping: state.kept ? { is: "keeping" } : { is: "reading" } });
      if (pausing) pausing.go();
      else void run();
    },
    noted: () => tell({ dropped: [] }),
    isBehind: () => tasks.length > 0,
  };
}

const unmeant: Said = {
  code: "step-unmeant",
  place: "",
  reason: "It would have taken back something else.",
  remedy: "Undo again what still is to be undone.",
};
