/// <reference lib="webworker" />

import { Refusal } from "../../kinds/index.ts";
import { shapeKey } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import { createKernel, createSolids, type Solids } from "../../solid/index.ts";
import type { Problem } from "../../worked/index.ts";
import { createWorkup, drawnParts, latestOnly, shapeOf } from "../../workup/index.ts";
import { createSentShapes } from "./sent-shapes.ts";
import type { Asked, Refusal as Refused, Told } from "./talk.ts";

const tell = (told: Told, transfer: Transferable[] = []) => postMessage(told, { transfer });

let solids: Promise<Solids> | undefined;
const kernel = () => {
  solids ??= createKernel()
    .then((made) => createSolids(made))
    .catch((fault: unknown) => {
      // Another attempt may find what this one did not.
      solids = undefined;
      throw fault;
    });
  return solids;
};
const sent = createSentShapes();
let work: ReturnType<typeof createWorkup> | undefined;

/** A problem as it can be sent. */
function plainly(problem: Problem): Refused {
  const { code, place, reason, remedy } = problem;
  const told = { code, place, reason, remedy };
  return problem instanceof Refusal ? { ...told, mend: problem.mend } : told;
}

/** A turn of the event loop, in which a newer request can come in. */
const pause = () => new Promise<void>((settle) => setTimeout(settle));

const answer = latestOnly(async ({ ask, document }: Asked, rest) => {
  if (!work) throw new Error("the worker was asked before it was told of the shop");
  const outcome = work(document);
  if (!outcome.ok) {
    return tell({ ask, kind: "refused", problems: outcome.problems.map(plainly) });
  }
  const { piece } = outcome.workup;
  tell({ ask, kind: "figures", workup: outcome.workup, parts: drawnParts(piece) });
  const keep = sent.forgetBut(piece.parts.map((part) => shapeKey(part)));
  if (keep) tell({ ask, kind: "forget", keep });
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
