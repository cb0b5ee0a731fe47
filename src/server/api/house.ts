import { pieceSchema } from "../../kinds/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { Store } from "../../store/index.ts";
import type { Route } from "./route.ts";

/** What a store in memory has nothing to say of. */
export type Keeping = Partial<Pick<Store, "openingRepairs" | "backups">>;

/** The shop, the form of a piece's file, and how it stands with the store. */
export const houseRoutes = (shop: Shop, store: Keeping): readonly Route[] => [
  { method: "GET", path: "/api/shop", answer: (c) => c.json(shop) },
  {
    method: "GET",
    path: "/schema/piece-1.json",
    answer: (c) =>
      c.body(`${JSON.stringify(pieceSchema(), null, 2)}\n`, 200, {
        "content-type": "application/schema+json",
      }),
  },
  {
    method: "GET",
    path: "/api/state",
    answer: (c) =>
      c.json({
        openingRepairs: store.openingRepairs ?? [],
        backups: store.backups?.() ?? [],
      }),
  },
];
