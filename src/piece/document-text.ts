import type { Assembly, CutPart, Home, PieceDocument } from "./document.ts";

/** Entries by their names: the order they were made in must not show, or undoing would leave a trace. */
function sorted<T>(table: Readonly<Record<string, T>>): Readonly<Record<string, T>> {
  const names = Object.keys(table).sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  return Object.fromEntries(names.map((name) => [name, table[name] as T]));
}

const orderedHome = ({ warmth, driest, dampest, made }: Home): Home => ({
  warmth,
  driest,
  dampest,
  made,
});

function orderedAssembly({ kind, ...texts }: Assembly): Assembly {
  return { kind, ...sorted(texts) } as Assembly;
}

const each = <T>(
  table: Readonly<Record<string, T>>,
  order: (one: T) => T,
): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(sorted(table)).map(([name, one]) => [name, order(one)]));

const orderedCut = ({ length, width, thickness, features, values }: CutPart): CutPart => ({
  length,
  width,
  thickness,
  features: features.map((feature) => deeply(feature)),
  values: sorted(values),
});

/** Names in their order, at any depth. */
function deeply<T>(value: T): T {
  if (Array.isArray(value)) return value.map(deeply) as T;
  if (typeof value !== "object" || value === null) return value;
  const inner = Object.entries(sorted(value as Readonly<Record<string, unknown>>));
  return Object.fromEntries(inner.map(([name, one]) => [name, deeply(one)])) as T;
}

/** The same document with everything in its one order. */
export function ordered(document: PieceDocument): PieceDocument {
  const { $schema, format, version, name, client, note, demo, units, timber } = document;
  return {
    ...($schema === undefined ? {} : { $schema }),
    format,
    version,
    name,
    client,
    note,
    demo,
    units,
    timber,
    home: orderedHome(document.home),
    assemblies: each(document.assemblies, orderedAssembly),
    overrides: sorted(document.overrides),
    measured: sorted(document.measured),
    cut: each(document.cut, orderedCut),
  };
}

/** The document as its file: one order, one layout, so that equal documents are equal bytes. */
export const documentText = (document: PieceDocument): string =>
  `${JSON.stringify(ordered(document), null, 2)}\n`;
