import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { applyEdit, type Edit, type PieceDocument } from "../../piece/index.ts";
import { api, type Kept, Refused, type Said } from "../api/index.ts";

/** How far what is on the screen is kept. */
export type Keeping =
  | { readonly is: "kept"; readonly at: Date | undefined }
  | { readonly is: "keeping" }
  | { readonly is: "not-kept"; readonly said: readonly Said[] };

export type OpenPiece = {
  /** with every edit so far, but not what is still being typed; undefined until it is read */
  readonly document: PieceDocument | undefined;
  /** the same with what is being typed */
  readonly shown: PieceDocument | undefined;
  readonly keeping: Keeping;
  readonly undoSays: string | undefined;
  readonly redoSays: string | undefined;
  readonly repairs: readonly string[];
  /** why it could not be opened at all */
  readonly closed: readonly Said[];
  /** shows an edit without keeping it; without one, shows what is kept */
  readonly preview: (edit: Edit | undefined) => void;
  readonly commit: (edit: Edit) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** tries again to keep what was not */
  readonly retry: () => void;
};

type Task = { readonly edit: Edit } | "undo" | "redo";

/** A passing silence of the server is waited out so long between tries [ms]. */
const RETRY_MS = 2000;

/** The piece of one page: every edit shows at once and is kept in turn. */
export function usePiece(id: string): OpenPiece {
  const [kept, setKept] = useState<Kept>();
  const [document, setDocument] = useState<PieceDocument>();
  const [typed, setTyped] = useState<Edit>();
  const [keeping, setKeeping] = useState<Keeping>({ is: "kept", at: undefined });
  const [closed, setClosed] = useState<readonly Said[]>([]);
  const queue = useRef<Task[]>([]);
  const running = useRef(false);
  const step = useRef(0);
  // The newest document even between two renders, so that edits in one breath build on each other.
  const latest = useRef<PieceDocument | undefined>(undefined);

  const take = useCallback((answer: Kept) => {
    step.current = answer.step;
    setKept(answer);
    // What still waits to be kept stands on top of what the server has.
    const edits = queue.current.flatMap((task) => (typeof task === "object" ? [task.edit] : []));
    latest.current = edits.reduce((doc, edit) => applyEdit(doc, edit).document, answer.document);
    setDocument(latest.current);
  }, []);

  useEffect(() => {
    let isOpen = true;
    queue.current = [];
    api
      .open(id)
      .then((answer) => isOpen && take(answer))
      .catch((fault) => isOpen && setClosed(saidBy(fault)));
    return () => {
      isOpen = false;
    };
  }, [id, take]);

  const run = useCallback(async () => {
    if (running.current) return;
    running.current = true;
    for (let task = queue.current[0]; task !== undefined; task = queue.current[0]) {
      setKeeping({ is: "keeping" });
      try {
        const answer = await done(id, task, step.current);
        queue.current.shift();
        take(answer);
        setKeeping({ is: "kept", at: new Date() });
      } catch (fault) {
        setKeeping({ is: "not-kept", said: saidBy(fault) });
        if (fault instanceof Refused && fault.isPassing) {
          await new Promise((settle) => setTimeout(settle, RETRY_MS));
          continue;
        }
        // Refused for good: what the server has is shown again, and nothing waits on what it refused.
        queue.current = [];
        await api.open(id).then(take, () => undefined);
        break;
      }
    }
    running.current = false;
  }, [id, take]);

  const add = useCallback(
    (task: Task) => {
      queue.current.push(task);
      void run();
    },
    [run],
  );

  const commit = useCallback(
    (edit: Edit) => {
      setTyped(undefined);
      if (!latest.current) return;
      latest.current = applyEdit(latest.current, edit).document;
      setDocument(latest.current);
      add({ edit });
    },
    [add],
  );

  const withShown = useMemo(
    () => (document && typed ? applyEdit(document, typed).document : document),
    [document, typed],
  );
  const tell = useCallback(
    (kind: "undo" | "redo") => {
      setTyped(undefined);
      add(kind);
    },
    [add],
  );
  return {
    document,
    shown: withShown,
    keeping,
    undoSays: kept?.undo,
    redoSays: kept?.redo,
    repairs:
      kept?.repairs.map(({ found, safe, aside }) => [found, safe, aside].join(" ").trim()) ?? [],
    closed,
    preview: setTyped,
    commit,
    undo: useCallback(() => tell("undo"), [tell]),
    redo: useCallback(() => tell("redo"), [tell]),
    retry: useCallback(() => void run(), [run]),
  };
}

function done(id: string, task: Task, step: number): Promise<Kept> {
  if (task === "undo") return api.undo(id);
  if (task === "redo") return api.redo(id);
  return api.edit(id, task.edit, step);
}

const saidBy = (fault: unknown): readonly Said[] =>
  fault instanceof Refused
    ? fault.said
    : [
        {
          code: "fault",
          place: "the page",
          reason: String(fault),
          remedy: "Load the page again; what was kept is safe.",
        },
      ];
