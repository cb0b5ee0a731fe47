import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll } from "vitest";
import { documentText, type PieceDocument } from "../../src/piece/index.ts";

export type PieceFiles = {
  /** a path in a folder of this file's own */
  readonly path: (name: string) => string;
  /** writes a file there and gives its path */
  readonly put: (name: string, content: string | Uint8Array) => string;
  readonly putPiece: (name: string, document: PieceDocument) => string;
};

/** A folder for the tests of one file, gone after them. */
export function pieceFiles(): PieceFiles {
  let folder = "";
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "latewood pieces "));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const path = (name: string) => join(folder, name);
  const put = (name: string, content: string | Uint8Array) => {
    writeFileSync(path(name), content);
    return path(name);
  };
  return { path, put, putPiece: (name, document) => put(name, documentText(document)) };
}
