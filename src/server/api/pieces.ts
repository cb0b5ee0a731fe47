import { kindNamed, newDocument } from "../../kinds/index.ts";
import type { Pieces } from "../../store/index.ts";
import { Problem } from "../../worked/index.ts";
import { refused } from "./answer.ts";
import { type Body, bodyOf, textIn } from "./body.ts";
import type { Route } from "./route.ts";

/** The lists, and the making of pieces. */
export const piecesRoutes = (store: Pieces): readonly Route[] => [
  { method: "GET", path: "/api/pieces", answer: (c) => c.json({ pieces: store.list() }) },
  { method: "GET", path: "/api/away", answer: (c) => c.json({ pieces: store.listAway() }) },
  {
    method: "POST",
    path: "/api/pieces",
    answer: async (c) => {
      const body = await bodyOf(c, ["kind", "name", "units", "text"]);
      if (body.text === undefined) return c.json({ id: made(store, body) }, 201);
      requireAlone(body);
      const taken = store.importText(textIn(body, "text"));
      return taken.ok ? c.json({ id: taken.id }, 201) : refused(c, taken.problems);
    },
  },
];

function made(store: Pieces, body: Body): string {
  const kind = kindNamed(textIn(body, "kind"));
  const units = textIn(body, "units");
  if (units !== "inch" && units !== "mm") {
    const place = `units, “${units.slice(0, 24)}”`;
    throw new Problem("units-unknown", place, "There are two sides.", "Use inch or mm.");
  }
  return store.create(newDocument(kind, textIn(body, "name"), units));
}

function requireAlone(body: Body): void {
  if (Object.keys(body).length === 1) return;
  throw new Problem(
    "body-form",
    "the body",
    "A text says kind, name and units by itself.",
    "Send the text alone, or kind, name and units without one.",
  );
}
