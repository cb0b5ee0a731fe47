import type { Context } from "hono";

/** An address that is answered, and how. */
export type Route = {
  readonly method: "GET" | "POST";
  /** `:name` stands for any word */
  readonly path: string;
  readonly answer: (c: Context) => Response | Promise<Response>;
};

/** A word of the address. */
export const wordIn = (c: Context, name: string): string => c.req.param(name) ?? "";
