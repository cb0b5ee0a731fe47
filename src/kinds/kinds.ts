import { onSide } from "../asking/index.ts";
import { documentSchema, FORMAT, type PieceDocument, VERSION } from "../piece/index.ts";
import type { LengthUnit } from "../units/index.ts";
import { Problem } from "../worked/index.ts";
import { dropLeafTable } from "./drop-leaf-table/index.ts";
import type { Kind } from "./kind.ts";
import { plainTable } from "./plain-table/index.ts";

/** Every kind of furniture there is, the plainest first. */
export const kinds: readonly Kind[] = [plainTable, dropLeafTable];

/**
 * The kind of that name.
 *
 * @throws Problem "kind-unknown"
 */
export function kindNamed(name: string): Kind {
  const found = kinds.find((k) => k.name === name);
  if (found) return found;
  throw new Problem(
    "kind-unknown",
    `“${name.slice(0, 40)}”`,
    "There is no such kind of furniture.",
    `Use ${kinds.map((k) => k.name).join(", ")}.`,
  );
}

/** A home that stands in until the maker says where the piece will live; common practice. */
const usualHome = { warmth: "20 C", driest: "35 %", dampest: "60 %", made: "8 %" };

/**
 * A fresh piece of a kind, every answer written out on one side of the inch.
 *
 * @param of  the kind
 * @param name  what it is called
 * @param units  the side it is written on
 */
export function newDocument(of: Kind, name: string, units: LengthUnit): PieceDocument {
  const texts = Object.entries(of.asks).map(([ask, question]) => [
    ask,
    onSide(question.example, units),
  ]);
  return {
    format: FORMAT,
    version: VERSION,
    name,
    client: "",
    note: "",
    demo: false,
    units,
    timber: "black cherry",
    home: units === "inch" ? { ...usualHome, warmth: "68 F" } : usualHome,
    assemblies: { table: { ...Object.fromEntries(texts), kind: of.name } },
    overrides: {},
    measured: {},
    cut: {},
  };
}

/** The schema of a piece's file, with the questions of every kind. */
export const pieceSchema = () =>
  documentSchema({
    oneOf: kinds.map((k) => ({
      type: "object",
      title: k.title,
      description: `${k.title}: ${k.tells}. What is left out takes its default.`,
      properties: {
        kind: { const: k.name },
        ...Object.fromEntries(
          Object.entries(k.asks).map(([name, question]) => [
            name,
            question.kind === "choice"
              ? { enum: question.choices, default: question.fallback, description: question.says }
              : {
                  type: "string",
                  maxLength: 120,
                  default: onSide(question.fallback ?? question.example, "mm"),
                  examples: [onSide(question.example, "inch"), onSide(question.example, "mm")],
                  description: question.says,
                },
          ]),
        ),
      },
      required: ["kind"],
      additionalProperties: false,
    })),
  });
