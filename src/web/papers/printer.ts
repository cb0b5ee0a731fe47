/// <reference lib="webworker" />

import { planOf } from "../../sheets/index.ts";
import { serveWorker } from "../piece/serve-worker.ts";
import type { Asked, Told } from "./talk.ts";

// A worker of its own, which is there only while papers are looked at: drawing a set takes a second
// or so, and the figures of the next edit must not wait for it.

const tell = (told: Told) => postMessage(told);

serveWorker<Asked>(async ({ ask, document, paper, date }, { work, solids, rest }) => {
  const outcome = work(document);
  if (!outcome.ok) return tell({ ask, kind: "refused" });
  const made = await solids();
  if (!(await rest())) return;
  const { sheets } = planOf(outcome.workup, made, { units: document.units, paper, date });
  tell({ ask, kind: "sheets", sheets });
}, tell);
