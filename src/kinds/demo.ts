import type { PieceDocument } from "../piece/index.ts";
import { kindNamed, newDocument } from "./kinds.ts";

/** Invented pieces for invented clients, to look round with; each says so. */
export function demoPieces(): readonly PieceDocument[] {
  const [plain, dropLeaf] = [kindNamed("plain-table"), kindNamed("drop-leaf-table")];
  const supper = newDocument(dropLeaf, "Quill Lane supper table", "inch");
  const breakfast = newDocument(plain, "Tallow Wharf breakfast table", "inch");
  const bench = newDocument(plain, "Potting table, Hallam allotment", "mm");
  return [
    {
      ...bench,
      demo: true,
      client: "Invented: the Hallam allotment",
      note: "Stands in an unheated glasshouse; sound and plain before anything else.",
      timber: "white oak",
      home: { warmth: "14 C", driest: "50 %", dampest: "75 %", made: "11 %" },
      assemblies: {
        table: {
          ...bench.assemblies.table,
          kind: plain.name,
          length: "1100 mm",
          width: "550 mm",
          height: "860 mm",
          "top-thickness": "26 mm",
          "end-overhang": "40 mm",
          "side-overhang": "25 mm",
          "widest-strip": "150 mm",
          leg: "60 mm",
          "leg-form": "square",
          "rail-width": "95 mm",
          "rail-thickness": "26 mm",
          tips: "butted",
          haunch: "square",
          fastening: "screws in slots",
          "corner-blocks": "yes",
        },
      },
    },
    {
      ...breakfast,
      demo: true,
      client: "Invented: Maud and Ansel Tiber",
      note: "Seats four in a bay window; the legs taper on the inside only.",
      timber: "black cherry",
      assemblies: {
        table: {
          ...breakfast.assemblies.table,
          kind: plain.name,
          length: '54"',
          width: '30"',
          height: '29 1/4"',
        },
      },
    },
    {
      ...supper,
      demo: true,
      client: "Invented: the household at 9 Quill Lane",
      note: "Stands folded against a wall on weekdays; both leaves up it seats six.",
      timber: "black walnut",
      assemblies: {
        table: {
          ...supper.assemblies.table,
          kind: dropLeaf.name,
          length: '44"',
          width: '19"',
          leaf: '11 1/2"',
          height: '29 1/4"',
          leg: '2"',
          foot: '1 1/4"',
          "arm-height": '1 1/2"',
        },
      },
    },
  ];
}
