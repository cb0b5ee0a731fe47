import { applyEdit, documentText, type Edit, type PieceDocument } from "../../piece/index.ts";
import { Problem } from "../../worked/index.ts";
import { type Kept, Refused } from "../api/index.ts";

/** One thing to be kept: an edit, or taking a step back or forth. */
export type Task = Edit | "undo" | "redo";

export const saysOf = (task: Task): string => (typeof task === "string" ? task : task.says);

/** The document with an edit made, or why it cannot be. */
export function withEdit(document: PieceDocument, edit: Edit): PieceDocument | Problem {
  try {
    return applyEdit(document, edit).document;
  } catch (problem) {
    if (problem instanceof Problem) return problem;
    throw problem;
  }
}

/** A held key asks for more steps than there are; that is no fault. */
export const isNothingLeft = (fault: unknown): boolean =>
  fault instanceof Refused && fault.said.some(({ code }) => /^nothing-to-(undo|redo)$/.test(code));

/**
 * Whether what a task wants stands on the server, told from what was there before and is there now:
 * for a task whose answer was lost, or that was sent twice.
 */
export function isInForce(task: Task, before: Kept, now: Kept): boolean {
  if (now.step <= before.step) return false;
  if (typeof task !== "string") {
    // Putting values in their places again changes nothing, even where others changed other places.
    const again = withEdit(now.document, task);
    return !(again instanceof Problem) && documentText(again) === documentText(now.document);
  }
  // What was undone is the next that can be redone, and the other way about; an edit ends redoing.
  const [gone, come] = task === "undo" ? [before.undo, now.redo] : [before.redo, now.undo];
  return now.step === before.step + 1 && gone !== undefined && gone === come;
}
