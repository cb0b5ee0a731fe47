import { Problem } from "../worked/index.ts";

/** What a place in a row may hold. */
export type Cell = string | number | null;

/** The part of `node:sqlite` that is used here; the package has the same. */
export interface Driver {
  readonly name: "node:sqlite" | "@photostructure/sqlite";
  readonly open: (file: string, readOnly: boolean) => Connection;
}

export interface Connection {
  exec(sql: string): void;
  prepare(sql: string): Statement;
  close(): void;
}

export interface Statement {
  run(...values: Cell[]): { changes: number | bigint };
  get(...values: Cell[]): unknown;
  all(...values: Cell[]): unknown[];
}

type Module = {
  readonly DatabaseSync: new (file: string, options: { readOnly: boolean }) => Connection;
};

/** Where drivers come from; another in tests. */
export type Origins = {
  /** of this Node, such as `22.13.0` */
  readonly version: string;
  readonly builtIn: () => unknown;
  readonly packaged: () => Promise<unknown>;
};

const origins: Origins = {
  version: process.versions.node,
  builtIn: () => quietly(() => process.getBuiltinModule("node:sqlite")),
  // Not bundled, since it brings binaries; so it is looked for only when it is needed.
  packaged: () => import("@photostructure/sqlite"),
};

/** Node's own from 22.13 on, where it needs no flag; else the package, which needs no compiler. */
export async function loadDriver(from: Origins = origins): Promise<Driver> {
  if (hasBuiltIn(from.version)) {
    const builtIn = from.builtIn();
    // A Node may be built without it.
    if (isModule(builtIn)) return driver("node:sqlite", builtIn);
  }
  let fault: unknown;
  try {
    const packaged = await from.packaged();
    if (isModule(packaged)) return driver("@photostructure/sqlite", packaged);
  } catch (missing) {
    fault = missing;
  }
  const says = fault instanceof Error ? ` (${fault.message.split("\n")[0]})` : "";
  throw new Problem(
    "sqlite-missing",
    "the database",
    `Neither Node’s own SQLite nor the package @photostructure/sqlite can be loaded${says}.`,
    "Use Node 22.13 or newer, or install the packages again where Latewood lies.",
  );
}

function hasBuiltIn(version: string): boolean {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  return major > 22 || (major === 22 && minor >= 13);
}

const isModule = (found: unknown): found is Module =>
  typeof found === "object" && found !== null && "DatabaseSync" in found;

const driver = (name: Driver["name"], { DatabaseSync }: Module): Driver => ({
  name,
  open: (file, readOnly) => new DatabaseSync(file, { readOnly }),
});

/** Without the remark on standard error that Node's SQLite is new, which tells a maker nothing. */
function quietly<T>(load: () => T): T {
  const { emitWarning } = process;
  process.emitWarning = () => undefined;
  try {
    return load();
  } finally {
    process.emitWarning = emitWarning;
  }
}
