import { Problem } from "../worked/index.ts";
import { VERSION } from "./document.ts";
import { quoted } from "./hold.ts";

type Raw = Readonly<Record<string, unknown>>;

/** What turns a document of one version into the next; by the version it starts from. */
export type Migrations = Readonly<Record<number, (old: Raw) => Raw>>;

/** None so far: version 1 is the first. */
const migrations: Migrations = {};

/**
 * Brings a document to the version written today, a step at a time.
 *
 * @param raw  as parsed, its version a whole number from 1 on
 * @param steps  by the version each starts from
 * @param target  the version to end at [1]
 * @throws Problem "version-future", "version-unknown"
 */
export function migrated(raw: Raw, steps: Migrations = migrations, target: number = VERSION): Raw {
  const { version } = raw;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    throw new Problem(
      "version-unknown",
      "version",
      `It reads ${quoted(version)}.`,
      `Write a whole number from 1 to ${target}; this Latewood writes ${target}.`,
    );
  }
  if (version > target) {
    throw new Problem(
      "version-future",
      "version",
      `It is ${version}, and this Latewood knows up to ${target}.`,
      "Open it with a newer Latewood; the file was left as it is.",
    );
  }
  if (version === target) return raw;
  const step = steps[version];
  if (!step) throw new Error(`no migration starts from version ${version}`);
  return migrated({ ...step(raw), version: version + 1 }, steps, target);
}
