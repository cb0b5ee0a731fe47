import type { Context } from "hono";
import { paperNamed, usualPaper } from "../../sheets/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { Pieces } from "../../store/index.ts";
import { Problem } from "../../worked/index.ts";
import { createWorkup } from "../../workup/index.ts";
import { refused } from "./answer.ts";
import { disposition } from "./disposition.ts";
import { type Route, wordIn } from "./route.ts";

/** One piece on paper, at true size. */
export const papersRoutes = (store: Pieces, shop: Shop): readonly Route[] => {
  const work = createWorkup(shop);
  return [
    {
      method: "GET",
      path: "/api/pieces/:id/papers.pdf",
      answer: async (c) => {
        const { paper, which } = queryOf(c);
        const { document } = store.open(wordIn(c, "id"));
        const outcome = work(document);
        if (!outcome.ok) return refused(c, outcome.problems);
        // Brings the kernel and the PDF writer along, which nothing else here waits for.
        const { printed } = await import("../../press/index.ts");
        const { units } = document;
        const print = { units, paper: paper ?? usualPaper(units), today: new Date() };
        const made = await printed(outcome.workup, print, which);
        if (!made.ok) throw sheetUnknown(which, made.names);
        return c.body(Uint8Array.from(made.pdf), 200, {
          "content-type": "application/pdf",
          "content-disposition": disposition(document.name, "pdf"),
        });
      },
    },
  ];
};

/**
 * What is asked behind the question mark.
 *
 * @throws Problem "paper-unknown", "query-unknown"
 */
function queryOf(c: Context) {
  const { paper, sheets = "all", ...more } = c.req.query();
  const [name] = Object.keys(more);
  if (name !== undefined) {
    throw new Problem(
      "query-unknown",
      `“${name.slice(0, 40)}”`,
      "This is not asked here.",
      "Use paper and sheets, or neither.",
    );
  }
  return {
    paper: paper === undefined ? undefined : paperNamed(paper, "paper"),
    which: sheets,
  };
}

const sheetUnknown = (which: string, names: readonly string[]) =>
  new Problem(
    "sheet-unknown",
    `sheets, “${which.slice(0, 40)}”`,
    "The set has no sheet of that name.",
    `Use all, ${names.join(", ")}.`,
  );
