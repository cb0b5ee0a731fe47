import { demoShop, readShop, type Shop } from "../shop/index.ts";
import type { Problem } from "../worked/index.ts";
import { inFile } from "./in-file.ts";
import { readText } from "./read-file.ts";

/**
 * The shop of a file; the demo shop where none is named.
 *
 * @param path  as typed behind --shop
 * @param problems  every fault is put to these
 * @throws Problem where the file itself cannot be read
 */
export async function shopOf(
  path: string | undefined,
  problems: Problem[],
): Promise<Shop | undefined> {
  if (path === undefined) return demoShop;
  const read = readShop(await readText(path));
  if (read.ok) return read.shop;
  problems.push(...read.problems.map((problem) => inFile(path, problem)));
  return undefined;
}
