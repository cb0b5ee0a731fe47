import type { Context } from "hono";
import type { ContentfulStatusCode } from "hono/utils/http-status";
import type { Problem } from "../../worked/index.ts";

/** What is not the asker's slip alone; every other Problem is answered with 400. */
const statuses: ReadonlyMap<string, ContentfulStatusCode> = new Map([
  ["piece-unknown", 404],
  ["step-unknown", 404],
  ["sheet-unknown", 404],
  ["address-unknown", 404],
  ["method-unknown", 405],
  ["step-behind", 409],
  ["piece-away", 409],
  ["step-damaged", 410],
  ["body-too-large", 413],
  ["document-too-large", 413],
  ["body-not-json", 415],
  ["store-busy", 503],
  ["store-read-only", 503],
  ["store-unreachable", 503],
  ["store-disk", 503],
  ["store-damaged", 503],
  ["disk-full", 507],
]);

/** Problems as every client gets them. */
export function refused(c: Context, problems: readonly Problem[]): Response {
  const [first] = problems;
  if (!first) throw new Error("something was refused without a reason");
  const told = problems.map(({ code, place, reason, remedy }) => ({ code, place, reason, remedy }));
  return c.json({ problems: told }, statuses.get(first.code) ?? 400);
}
