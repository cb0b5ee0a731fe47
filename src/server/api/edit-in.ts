import type { Change, Edit } from "../../piece/index.ts";
import { Problem } from "../../worked/index.ts";
import type { Body } from "./body.ts";

/** How deep a value of the document goes at most: what is cut, its part, features, one, a list in it. */
const DEEPEST = 6;

/**
 * The edit in a body: of the form of one, whatever it says.
 *
 * @throws Problem "edit-form"
 */
export function editIn({ edit }: Body): Edit {
  if (!isTable(edit)) throw formless("the edit", "It is no object in braces.");
  const { says, changes, ...more } = edit;
  if (typeof says !== "string") throw formless("the edit, says", "It is no text.");
  if (!Array.isArray(changes)) throw formless("the edit, changes", "It is no list.");
  requireNoMore(more, "the edit");
  return { says, changes: changes.map((change, i) => changeOf(change, `change ${i + 1}`)) };
}

function changeOf(change: unknown, place: string): Change {
  if (!isTable(change)) throw formless(place, "It is no object in braces.");
  const { at, to, ...more } = change;
  if (!Array.isArray(at) || !at.every((name) => typeof name === "string"))
    throw formless(`${place}, at`, "It is no list of names.");
  requireNoMore(more, place);
  if (to === undefined) return { at };
  if (!isPlain(to, DEEPEST))
    throw formless(
      `${place}, to`,
      "It is no text, number or switch, and no list or table of such.",
    );
  return { at, to };
}

const isTable = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Text, switch, number, or a list or table of such; nothing has no place in a document. */
const isPlain = (value: unknown, deep: number): value is NonNullable<Change["to"]> =>
  typeof value === "string" ||
  typeof value === "boolean" ||
  (typeof value === "number" && Number.isFinite(value)) ||
  (Array.isArray(value) && deep > 0 && value.every((one) => isPlain(one, deep - 1))) ||
  (isTable(value) && deep > 0 && Object.values(value).every((one) => isPlain(one, deep - 1)));

function requireNoMore(more: object, place: string): void {
  const [name] = Object.keys(more);
  if (name !== undefined)
    throw formless(`${place}, “${name.slice(0, 40)}”`, "There is no such field.");
}

const formless = (place: string, reason: string) =>
  new Problem(
    "edit-form",
    place,
    reason,
    'Send {"says": a text, "changes": [{"at": [names], "to": a text, a number, a switch, a list or a table}]}.',
  );
