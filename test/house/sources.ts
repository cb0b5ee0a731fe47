import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve, sep } from "node:path";
import { type ParseResult, parse } from "@babel/parser";
import type { File, Node } from "@babel/types";

/** The repository's own folder. */
export const root = resolve(import.meta.dirname, "../..");

/** Source text by path from the repository's folder, with forward slashes. */
export type Sources = ReadonlyMap<string, string>;

/** Something the house rules do not allow, with its place. */
export interface Breach {
  readonly rule: string;
  readonly place: string;
  readonly says: string;
}

export function readSources(folder: string): Sources {
  const start = join(root, folder);
  if (!existsSync(start)) return new Map();
  const files = readdirSync(start, { recursive: true, withFileTypes: true })
    .filter((found) => found.isFile() && /\.(ts|tsx|mts)$/.test(found.name))
    .map((found) => join(found.parentPath, found.name));
  return new Map(
    files.map((file) => [relative(root, file).split(sep).join("/"), readFileSync(file, "utf8")]),
  );
}

export function syntaxTree(path: string, text: string): ParseResult<File> {
  return parse(text, {
    sourceType: "module",
    plugins: path.endsWith("x") ? ["typescript", "jsx"] : ["typescript"],
    sourceFilename: path,
  });
}

/** The direct child nodes, in the order of the source. */
export function childrenOf(node: Node): readonly Node[] {
  return Object.entries(node)
    .filter(([key]) => !/Comments$|^loc$|^extra$|^errors$|^tokens$/.test(key))
    .flatMap(([, value]) => (Array.isArray(value) ? value : [value]))
    .filter((value): value is Node => typeof value?.type === "string");
}

/** The node and everything under it. */
export function* everyNode(node: Node): Generator<Node> {
  yield node;
  for (const child of childrenOf(node)) yield* everyNode(child);
}

export const placeOf = (path: string, node: Node): string => `${path}:${node.loc?.start.line ?? 0}`;
