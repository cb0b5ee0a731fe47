export { loadDriver } from "./driver.ts";

export { memoryStore, openStore, type Store, type StoreOptions } from "./open-store.ts";
export type { Pieces } from "./pieces.ts";
export type { Repair } from "./repair.ts";
