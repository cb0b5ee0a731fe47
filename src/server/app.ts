import { Hono } from "hono";
import { Problem } from "../worked/index.ts";
import { refused } from "./api/answer.ts";
import { addApi, type Holdings } from "./api/api.ts";
import { staticFile } from "./static-files.ts";

/**
 * The routes. Guarding and the strict headers come before it, in `start.ts`, so that no route can
 * forget them.
 *
 * @param webRoot  folder with the built screen
 * @param holdings  pieces and shop
 */
export function routes(webRoot: string, holdings: Holdings): Hono {
  const app = new Hono();
  addApi(app, holdings);
  // Hono answers HEAD through this route and drops the body.
  app.get("*", async (c) => {
    const file = await staticFile(webRoot, new URL(c.req.url).pathname);
    if (file === undefined) return c.notFound();
    return c.body(file.bytes, 200, {
      "content-type": file.type,
      "content-length": String(file.bytes.byteLength),
      "cache-control": file.caching,
    });
  });
  app.all("*", (c) =>
    c.text("Only GET and HEAD are answered here.\n", 405, { allow: "GET, HEAD" }),
  );
  app.notFound((c) => c.text("There is nothing at this address.\n", 404));
  app.onError((fault, c) => {
    if (fault instanceof Problem) return refused(c, [fault]);
    console.error(fault);
    return c.text("Latewood made a mistake; the terminal shows it.\n", 500);
  });
  return app;
}
