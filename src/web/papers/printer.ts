/// <reference lib="webworker" />

import { planOf } from "../../sheets/index.ts";
import type { Shop } from "../../shop/index.ts";
import { createKernel, createSolids, type Solids } from "../../solid/index.ts";
import { createWorkup, latestOnly } from "../../workup/index.ts";
import type { Asked, Told } from "./talk.ts";

// A worker of its own, which is there only while papers are looked at: drawing a set takes a second
// or so, and the figures of the next edit must not wait for it.

const tell = (told: Told) => postMessage(told);

let solids: Promise<Solids> | undefined;
const shapes = () => {
  solids ??= createKernel()
    .then((kernel) => createSolids(kernel))
    .catch((fault: unknown) => {
      // Another attempt may find what this one did not.
      solids = undefined;
      throw fault;
    });
  return solids;
};
let work: ReturnType<typeof createWorkup> | undefined;

/** A turn of the event loop, in which a newer request can come in. */
const pause = () => new Promise<void>((settle) => setTimeout(settle));

const answer = latestOnly(async ({ ask, document, paper, date }: Asked, rest) => {
  if (!work) throw new Error("the printer was asked before it was told of the shop");
  const outcome = work(document);
  if (!outcome.ok) return tell({ ask, kind: "refused" });
  const made = await shapes();
  if (!(await rest())) return undefined;
  const { sheets } = planOf(outcome.workup, made, { units: document.units, paper, date });
  return tell({ ask, kind: "sheets", sheets });
}, pause);

addEventListener("message", ({ data }: MessageEvent<{ readonly shop: Shop } | Asked>) => {
  if ("shop" in data) {
    work = createWorkup(data.shop);
    return;
  }
  answer(data).catch((fault: unknown) =>
    tell({
      ask: data.ask,
      kind: "fault",
      says: fault instanceof Error ? fault.message : String(fault),
    }),
  );
});
