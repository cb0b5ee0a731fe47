import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach } from "vitest";
import { openStore, type Store, type StoreOptions } from "../../src/store/index.ts";

const folders: string[] = [];
const stores: Store[] = [];

/** An empty folder that is gone after the test. */
export function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "latewood-store-"));
  folders.push(folder);
  return folder;
}

/** A store that is closed after the test. */
export async function opened(folder: string, options: StoreOptions = {}): Promise<Store> {
  const store = await openStore(folder, options);
  stores.push(store);
  return store;
}

export function closed(store: Store): void {
  store.close();
  stores.splice(stores.indexOf(store), 1);
}

afterEach(() => {
  for (const store of stores.splice(0)) store.close();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});
