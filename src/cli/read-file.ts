import { type FileHandle, open } from "node:fs/promises";
import { Problem } from "../worked/index.ts";

/** Far above any file of ours; what is larger is refused before it is read. */
const MOST_MB = 8;
const MOST_BYTES = MOST_MB * 1_000_000;

/**
 * The text of a file, read with care: it may be anything.
 *
 * @param path  as typed
 * @throws Problem "file-missing", "file-is-folder", "file-unreadable", "document-too-large", "not-utf8"
 */
export async function readText(path: string): Promise<string> {
  return textOf(path, await bytesOf(path));
}

async function bytesOf(path: string): Promise<Buffer> {
  let handle: FileHandle | undefined;
  try {
    handle = await open(path, "r");
    const stat = await handle.stat();
    if (stat.isDirectory()) throw isFolder(path);
    if (stat.size > MOST_BYTES) throw tooLarge(path, stat.size);
    return await readAll(handle, path);
  } catch (fault) {
    throw asProblem(fault, path);
  } finally {
    await handle?.close();
  }
}

/** To its end, but no further than may be: a pipe or a device tells no size, and may have no end. */
async function readAll(handle: FileHandle, path: string): Promise<Buffer> {
  const pieces: Buffer[] = [];
  for (let length = 0; ; ) {
    const { bytesRead, buffer } = await handle.read(Buffer.alloc(65_536));
    if (bytesRead === 0) return Buffer.concat(pieces);
    length += bytesRead;
    if (length > MOST_BYTES) throw tooLarge(path, length);
    pieces.push(buffer.subarray(0, bytesRead));
  }
}

/** Without a byte order mark; what is not UTF-8 is told by its line. */
function textOf(path: string, bytes: Buffer): string {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  try {
    return decoder.decode(bytes);
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault;
  }
  let line = 1;
  for (let from = 0; ; line += 1) {
    const end = bytes.indexOf(0x0a, from);
    try {
      decoder.decode(bytes.subarray(from, end < 0 ? bytes.length : end));
    } catch (fault) {
      if (fault instanceof TypeError) break;
      throw fault;
    }
    if (end < 0) throw new Error("no line of a file that is not UTF-8 is at fault");
    from = end + 1;
  }
  throw new Problem(
    "not-utf8",
    `${path}, line ${line}`,
    "It is not written in UTF-8.",
    "Save the file again as UTF-8; most editors ask for the encoding when saving.",
  );
}

const isFolder = (path: string) =>
  new Problem("file-is-folder", path, "This is a folder.", "Name a file in it.");

const tooLarge = (path: string, bytes: number) =>
  new Problem(
    "document-too-large",
    path,
    `It is ${bytes > 2 * MOST_BYTES ? `${(bytes / 1e6).toFixed(0)} MB` : `over ${MOST_MB} MB`} long.`,
    "A piece is a few thousand characters; check that this is the right file.",
  );

/** Which of the system's complaints it was, in words; a fault of ours as it is. */
export function asProblem(fault: unknown, path: string): unknown {
  if (!(fault instanceof Error) || fault instanceof Problem) return fault;
  const { code } = fault as NodeJS.ErrnoException;
  if (typeof code !== "string") return fault;
  if (code === "ENOENT" || code === "ENOTDIR")
    return new Problem(
      "file-missing",
      path === "" ? "the file “”" : path,
      "There is no such file or folder.",
      "Check its name, and the folder one stands in.",
    );
  if (code === "EISDIR") return isFolder(path);
  return new Problem(
    "file-unreadable",
    path,
    `The system refuses it (${code}).`,
    "Allow it in the rights of the file and its folder, or name another.",
  );
}
