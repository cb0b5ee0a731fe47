import type { Hono, MiddlewareHandler } from "hono";
import type { Shop } from "../../shop/index.ts";
import type { Pieces } from "../../store/index.ts";
import { Problem } from "../../worked/index.ts";
import { houseRoutes, type Keeping } from "./house.ts";
import { papersRoutes } from "./papers.ts";
import { pieceRoutes } from "./piece.ts";
import { piecesRoutes } from "./pieces.ts";

/** What the answers come from. */
export type Holdings = { readonly store: Pieces & Keeping; readonly shop: Shop };

/** Puts the answers for programs among the routes; whatever is refused is thrown as a Problem. */
export function addApi(app: Hono, { store, shop }: Holdings): void {
  const routes = [
    ...piecesRoutes(store),
    ...pieceRoutes(store),
    ...papersRoutes(store, shop),
    ...houseRoutes(shop, store),
  ];
  app.use("/api/*", unkept);
  app.use("/schema/*", unkept);
  for (const { method, path, answer } of routes) app.on(method, path, answer);
  for (const path of new Set(routes.map((route) => route.path))) {
    const known = routes.filter((route) => route.path === path).map(({ method }) => method);
    const allowed = known.includes("GET") ? [...known, "HEAD"].join(", ") : known.join(", ");
    app.all(path, (c) => {
      c.header("allow", allowed);
      throw new Problem(
        "method-unknown",
        `${c.req.method.slice(0, 12)} ${path}`,
        "This address is not asked this way.",
        `Use ${allowed}.`,
      );
    });
  }
  app.all("/api/*", (c) => {
    throw new Problem(
      "address-unknown",
      c.req.path.slice(0, 80),
      "There is nothing at this address.",
      "Begin with /api/pieces.",
    );
  });
}

/** A piece may change at any moment, and with another Latewood at this port so may the rest. */
const unkept: MiddlewareHandler = async (c, next) => {
  c.header("cache-control", "no-store");
  await next();
};
