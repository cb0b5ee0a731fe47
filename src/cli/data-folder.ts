import { homedir } from "node:os";
import { join, resolve } from "node:path";
import { Problem } from "../worked/index.ts";

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Where the pieces are kept: as told, else as the environment says, else in the maker's own folder.
 *
 * @param told  as typed behind --data
 * @throws Problem "option-empty" where that is nothing
 */
export function dataFolder(told: string | undefined, env: Environment = process.env): string {
  if (told === "") {
    const remedy = "Name a folder, or leave the option out.";
    throw new Problem("option-empty", "--data", "It names nothing.", remedy);
  }
  return resolve(told ?? (env.LATEWOOD_DATA || join(homedir(), ".latewood")));
}
