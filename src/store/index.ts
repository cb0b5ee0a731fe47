export type { Backup } from "./backups.ts";
export { type Driver, loadDriver } from "./driver.ts";
export type { HistoryLine, HistoryPage } from "./history.ts";
export { memoryStore, openStore, type Store, type StoreOptions } from "./open-store.ts";
export type { Imported, Listed, Opened, Pieces } from "./pieces.ts";
export type { Repair } from "./repair.ts";
export type { StepKind } from "./rows.ts";
