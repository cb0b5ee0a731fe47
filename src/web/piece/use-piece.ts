import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from "react";
import type { Edit, PieceDocument } from "../../piece/index.ts";
import { Problem } from "../../worked/index.ts";
import { api, type Said } from "../api/index.ts";
import { createEditQueue, type EditQueue, type Keeping } from "./edit-queue.ts";
import { withEdit } from "./task.ts";

export type OpenPiece = {
  /** with every edit so far, but not what is still being typed; undefined until it is read */
  readonly document: PieceDocument | undefined;
  /** the same with what is being typed */
  readonly shown: PieceDocument | undefined;
  readonly keeping: Keeping;
  readonly undoSays: string | undefined;
  readonly redoSays: string | undefined;
  readonly repairs: readonly string[];
  /** what was refused for good, its place being the edit in words */
  readonly dropped: readonly Said[];
  /** why it could not be opened at all */
  readonly closed: readonly Said[];
  /** shows an edit without keeping it; without one, shows what is kept */
  readonly preview: (edit: Edit | undefined) => void;
  readonly commit: EditQueue["commit"];
  readonly undo: () => void;
  readonly redo: () => void;
  /** tries again to keep what was not */
  readonly retry: () => void;
  /** what was dropped has been read */
  readonly noted: () => void;
};

/** A queue outlives its screen while it has something to keep, and is taken up where it stands. */
const queues = new Map<string, EditQueue>();

function queueOf(id: string): EditQueue {
  const left = queues.get(id);
  if (left?.isBehind()) return left;
  const made = createEditQueue({
    open: () => api.open(id),
    edit: (edit, base) => api.edit(id, edit, base),
    undo: (base) => api.undo(id, base),
    redo: (base) => api.redo(id, base),
  });
  queues.set(id, made);
  return made;
}

/** What waits for a silent server would be lost with the page, so the browser asks before. */
window.addEventListener("beforeunload", (event) => {
  const isWaiting = (queue: EditQueue) =>
    queue.isBehind() && queue.state().keeping.is === "waiting";
  if ([...queues.values()].some(isWaiting)) event.preventDefault();
});

/** The piece of one page: every edit shows at once and is kept in turn. */
export function usePiece(id: string): OpenPiece {
  const queue = useMemo(() => queueOf(id), [id]);
  const { document, kept, keeping, repairs, dropped, closed } = useSyncExternalStore(
    queue.listen,
    queue.state,
  );
  const [typed, setTyped] = useState<Edit>();
  useEffect(() => queue.start(), [queue]);
  const shown = useMemo(() => {
    const next = document && typed ? withEdit(document, typed) : document;
    return next instanceof Problem ? document : next;
  }, [document, typed]);
  /** Whatever is done in earnest ends the showing of what is typed. */
  const back = useCallback(
    (way: "undo" | "redo") => {
      setTyped(undefined);
      queue.back(way);
    },
    [queue],
  );
  return {
    document,
    shown,
    keeping,
    undoSays: kept?.undo,
    redoSays: kept?.redo,
    repairs: repairs.map(({ found, safe, aside }) => [found, safe, aside].join(" ").trim()),
    dropped,
    closed,
    preview: setTyped,
    commit: useCallback(
      (edit) => {
        setTyped(undefined);
        queue.commit(edit);
      },
      [queue],
    ),
    undo: useCallback(() => back("undo"), [back]),
    redo: useCallback(() => back("redo"), [back]),
    retry: queue.wake,
    noted: queue.noted,
  };
}
