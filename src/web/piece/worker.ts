/// <reference lib="webworker" />

import { Refusal } from "../../kinds/index.ts";
import { shapeKey } from "../../piece/index.ts";
import type { Problem } from "../../worked/index.ts";
import { drawnParts, shapeOf } from "../../workup/index.ts";
import { createSentShapes } from "./sent-shapes.ts";
import { serveWorker } from "./serve-worker.ts";
import type { Asked, Refusal as Refused, Told } from "./talk.ts";

const tell = (told: Told, transfer: Transferable[] = []) => postMessage(told, { transfer });

const sent = createSentShapes();

/** A problem as it can be sent. */
function plainly(problem: Problem): Refused {
  const { code, place, reason, remedy } = problem;
  const told = { code, place, reason, remedy };
  return problem instanceof Refusal ? { ...told, mend: problem.mend } : told;
}

serveWorker<Asked>(async ({ ask, document }, { work, solids, rest }) => {
  const outcome = work(document);
  if (!outcome.ok) {
    return tell({ ask, kind: "refused", problems: outcome.problems.map(plainly) });
  }
  const { piece } = outcome.workup;
  tell({ ask, kind: "figures", workup: outcome.workup, parts: drawnParts(piece) });
  const keep = sent.forgetBut(piece.parts.map((part) => shapeKey(part)));
  if (keep) tell({ ask, kind: "forget", keep });
  const made = await solids();
  for (const part of piece.parts) {
    const key = shapeKey(part);
    if (sent.has(key)) continue;
    if (!(await rest())) return;
    const shape = shapeOf(made, part);
    sent.add(key);
    tell({ ask, kind: "shape", key, shape }, [
      shape.positions.buffer,
      shape.normals.buffer,
      shape.indices.buffer,
      shape.edges.buffer,
    ]);
  }
  tell({ ask, kind: "drawn" });
}, tell);
