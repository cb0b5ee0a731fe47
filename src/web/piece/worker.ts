/// <reference lib="webworker" />

import { shapeKey } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import { createKernel, createSolids, type Solids } from "../../solid/index.ts";
import { createWorkup, drawnParts, latestOnly, shapeOf } from "../../workup/index.ts";
import type { Asked, Told } from "./talk.ts";

const tell = (told: Told, transfer: Transferable[] = []) => postMessage(told, { transfer });

let solids: Promise<Solids> | undefined;
const kernel = () => {
  solids ??= createKernel().then((made) => createSolids(made));
  return solids;
};
const sent = new Set<string>();
let work: ReturnType<typeof createWorkup> | undefined;

/** A turn of the event loop, in which a newer request can come in. */
const pause = () => new Promise<void>((settle) => setTimeout(settle));

const answer = latestOnly(async ({ ask, document }: Asked, rest) => {
  if (!work) throw new Error("the worker was asked before it was told of the shop");
  const outcome = work(document);
  if (!outcome.ok) {
    const problems = outcome.problems.map(({ code, place, reason, remedy, ...more }) => ({
      ...{ code, place, reason, remedy },
      ...("mend" in more ? { mend: more.mend } : {}),
    }));
    return tell({ ask, kind: "refused", problems: problems as never });
  }
  const { piece } = outcome.workup;
  tell({ ask, kind: "figures", workup: outcome.workup, parts: drawnParts(piece) });
  const made = await kernel();
  for (const part of piece.parts) {
    const key = shapeKey(part);
    if (sent.has(key)) continue;
    if (!(await rest())) return undefined;
    const shape = shapeOf(made, part);
    sent.add(key);
    tell({ ask, kind: "shape", key, shape }, [
      shape.positions.buffer,
      shape.normals.buffer,
      shape.indices.buffer,
      shape.edges.buffer,
    ]);
  }
  return tell({ ask, kind: "drawn" });
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
