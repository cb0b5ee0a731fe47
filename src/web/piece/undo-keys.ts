import { useEffect } from "react";
import type { OpenPiece } from "./use-piece.ts";

/**
 * Ctrl or Command with Z undoes, with Shift or with Y it redoes, wherever the focus is.
 */
export function useUndoKeys({ undo, redo }: Pick<OpenPiece, "undo" | "redo">): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== "z" && key !== "y") return;
      event.preventDefault();
      // What is being typed is kept first, so that it is the first thing undone.
      if (document.activeElement instanceof HTMLInputElement) document.activeElement.blur();
      if (key === "y" || event.shiftKey) redo();
      else undo();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [undo, redo]);
}
