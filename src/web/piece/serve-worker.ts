/// <reference lib="webworker" />

import type { Shop } from "../../shop/index.ts";
import { createKernel, createSolids, type Solids } from "../../solid/index.ts";
import { createWorkup, latestOnly } from "../../workup/index.ts";

type Numbered = { readonly ask: number };

/** What a worker has to hand while it answers. */
export type AtHand = {
  readonly work: ReturnType<typeof createWorkup>;
  /** shapes; the kernel is loaded when they are first asked for */
  readonly solids: () => Promise<Solids>;
  /** lets newer requests in; false when one came, and this one may end */
  readonly rest: () => Promise<boolean>;
};

let solids: Promise<Solids> | undefined;
const kept = () => {
  solids ??= createKernel()
    .then((kernel) => createSolids(kernel))
    .catch((fault: unknown) => {
      // Another attempt may find what this one did not.
      solids = undefined;
      throw fault;
    });
  return solids;
};

/** A turn of the event loop, in which a newer request can come in. */
const pause = () => new Promise<void>((settle) => setTimeout(settle));

/**
 * Answers the page's requests, the newest alone; the shop is told first.
 *
 * @param answer  to one request
 * @param tell  tells the page of a fault
 */
export function serveWorker<A extends Numbered>(
  answer: (asked: A, hand: AtHand) => Promise<void>,
  tell: (fault: { readonly ask: number; readonly kind: "fault"; readonly says: string }) => void,
): void {
  let work: AtHand["work"] | undefined;
  const newest = latestOnly(async (asked: A, rest: () => Promise<boolean>) => {
    if (!work) throw new Error("a worker was asked before it was told of the shop");
    return answer(asked, { work, solids: kept, rest });
  }, pause);
  addEventListener("message", ({ data }: MessageEvent<{ readonly shop: Shop } | A>) => {
    if ("shop" in data) {
      work = createWorkup(data.shop);
      return;
    }
    newest(data).catch((fault: unknown) =>
      tell({
        ask: data.ask,
        kind: "fault",
        says: fault instanceof Error ? fault.message : String(fault),
      }),
    );
  });
}
