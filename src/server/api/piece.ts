import type { Pieces } from "../../store/index.ts";
import { Problem } from "../../worked/index.ts";
import { baseIn, bodyOf } from "./body.ts";
import { disposition } from "./disposition.ts";
import { editIn } from "./edit-in.ts";
import { type Route, wordIn } from "./route.ts";

/** One piece: as it stands, as it stood, its steps, its file. */
export const pieceRoutes = (store: Pieces): readonly Route[] => [
  {
    method: "GET",
    path: "/api/pieces/:id",
    answer: (c) => c.json(store.open(wordIn(c, "id"))),
  },
  {
    method: "POST",
    path: "/api/pieces/:id/edits",
    answer: async (c) => {
      const body = await bodyOf(c, ["edit", "base"]);
      return c.json(store.edit(wordIn(c, "id"), editIn(body), baseIn(body)));
    },
  },
  ...(["undo", "redo"] as const).map(
    (back): Route => ({
      method: "POST",
      path: `/api/pieces/:id/${back}`,
      answer: async (c) => {
        const base = baseIn(await bodyOf(c, ["base"]));
        return c.json(store[back](wordIn(c, "id"), base));
      },
    }),
  ),
  {
    method: "GET",
    path: "/api/pieces/:id/history",
    answer: (c) => c.json(store.history(wordIn(c, "id"), beforeOf(c.req.query("before")))),
  },
  {
    method: "GET",
    path: "/api/pieces/:id/at/:step",
    answer: (c) => {
      const document = store.at(wordIn(c, "id"), stepOf(wordIn(c, "step")));
      return c.json({ document });
    },
  },
  {
    method: "GET",
    path: "/api/pieces/:id/file",
    answer: (c) => {
      const { text, document } = store.open(wordIn(c, "id"));
      return c.body(text, 200, {
        "content-type": "application/json; charset=utf-8",
        "content-disposition": disposition(document.name, "json"),
      });
    },
  },
  ...(["away", "restore"] as const).map(
    (place): Route => ({
      method: "POST",
      path: `/api/pieces/:id/${place}`,
      answer: async (c) => {
        await bodyOf(c, []);
        const id = wordIn(c, "id");
        if (place === "away") store.remove(id);
        else store.restore(id);
        return c.json({ id });
      },
    }),
  ),
];

const isStep = (text: string) => /^\d{1,15}$/.test(text);

function beforeOf(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  if (isStep(text)) return Number(text);
  throw new Problem(
    "not-a-step",
    `before, “${text.slice(0, 24)}”`,
    "It is no number of a step.",
    "Send the `next` of the page before, or leave it out.",
  );
}

function stepOf(text: string): number {
  if (isStep(text)) return Number(text);
  throw new Problem(
    "step-unknown",
    `step “${text.slice(0, 24)}”`,
    "It is no number of a step.",
    "Choose one of the history’s.",
  );
}
