import { Problem } from "../worked/index.ts";

/** SQLite's result codes, and the words of each, since not every call of the package tells the code. */
const FULL = 13;
const NO_ROOM_FOR_SHARED = 4874;
const codeByWords: readonly (readonly [words: string, code: number])[] = [
  ["database or disk is full", FULL],
  ["is locked", 5],
  ["attempt to write a readonly database", 8],
  ["disk I/O error", 10],
  ["database disk image is malformed", 11],
  ["malformed database schema", 11],
  ["unable to open database file", 14],
  ["file is not a database", 26],
];

/** Whether it comes from SQLite. */
export const isOfSqlite = (fault: unknown): boolean =>
  (fault as { code?: unknown } | null)?.code === "ERR_SQLITE_ERROR";

/**
 * What SQLite or the file system threw, as a Problem where it is no fault of ours; anything else as
 * it was.
 *
 * @param fault  as caught
 * @param place  the file or folder
 */
export function asProblem(fault: unknown, place: string): unknown {
  if (!(fault instanceof Error) || fault instanceof Problem) return fault;
  const { code, errcode } = fault as Error & { code?: unknown; errcode?: unknown };
  if (isOfSqlite(fault)) {
    const told = codeByWords.find(([words]) => fault.message.includes(words))?.[1];
    return ofSqlite(typeof errcode === "number" ? errcode : (told ?? 0), fault, place);
  }
  if (typeof code === "string") return ofSystem(code, fault, place);
  return fault;
}

function ofSqlite(errcode: number, fault: Error, place: string): unknown {
  if (errcode === NO_ROOM_FOR_SHARED) return full(place);
  // The lower byte is the kind; the rest, where there is any, says it more closely.
  switch (errcode & 0xff) {
    case FULL:
      return full(place);
    case 5:
    case 6:
      return new Problem(
        "store-busy",
        place,
        "Another program is writing in it and has not let go.",
        "Nothing was changed. Try again; if it stays so, close the other Latewood.",
      );
    case 8:
      return readOnly(place);
    case 10:
      return new Problem(
        "store-disk",
        place,
        `The disk does not do as it is told (${fault.message}).`,
        "What was not confirmed is not kept. Look after the disk, then open it again.",
      );
    case 11:
    case 26:
      return new Problem(
        "store-damaged",
        place,
        `The database is damaged (${fault.message}).`,
        "Close Latewood and start it again: it then restores what can be restored.",
      );
    case 14:
      return unreachable(place, fault);
    default:
      return fault;
  }
}

function ofSystem(code: string, fault: Error, place: string): unknown {
  if (["ENOSPC", "EDQUOT"].includes(code)) return full(place);
  if (["EACCES", "EPERM", "EROFS"].includes(code)) return readOnly(place);
  if (["ENOTDIR", "EEXIST", "ENOENT", "ENAMETOOLONG", "EIO", "EMFILE", "ENFILE"].includes(code)) {
    return unreachable(place, fault);
  }
  return fault;
}

const full = (place: string) =>
  new Problem(
    "disk-full",
    place,
    "There is no room left on the disk.",
    "What was confirmed is safe; the last step was not made. Make room and do it again.",
  );

const readOnly = (place: string) =>
  new Problem(
    "store-read-only",
    place,
    "Latewood may not write here.",
    "Allow writing in this folder, or name another folder for the data.",
  );

const unreachable = (place: string, fault: Error) =>
  new Problem(
    "store-unreachable",
    place,
    `It cannot be opened (${fault.message}).`,
    "Check that the path names a folder that is there and that Latewood may use.",
  );

/** Does what may meet a full disk or the like, and throws that as a Problem. */
export function guarded<T>(place: string, work: () => T): T {
  try {
    return work();
  } catch (fault) {
    throw asProblem(fault, place);
  }
}
