import type { PieceDocument } from "../../src/piece/index.ts";

/** An invented piece with nothing changed by its maker; any field may be given. */
export const sampleDocument = (given: Partial<PieceDocument> = {}): PieceDocument => ({
  format: "latewood-piece",
  version: 1,
  name: "Sample table",
  client: "",
  note: "",
  demo: true,
  units: "inch",
  timber: "black cherry",
  home: { warmth: "20 C", driest: "35 %", dampest: "60 %", made: "8 %" },
  assemblies: { table: { kind: "plain-table" } },
  overrides: {},
  measured: {},
  cut: {},
  ...given,
});
