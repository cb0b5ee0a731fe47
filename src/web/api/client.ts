import type { Edit, PieceDocument } from "../../piece/index.ts";
import type { PaperName } from "../../sheets/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { LengthUnit } from "../../units/index.ts";
import { Refused, type Said } from "./refused.ts";

/** A piece as the store has it. */
export type Kept = {
  readonly id: string;
  readonly document: PieceDocument;
  readonly step: number;
  readonly undo?: string;
  readonly redo?: string;
  readonly repairs: readonly {
    readonly found: string;
    readonly safe: string;
    readonly aside: string;
  }[];
};

/** A line of the list of pieces. */
export type Listed = {
  readonly id: string;
  readonly name: string;
  readonly client: string;
  readonly demo: boolean;
  readonly changed: string;
  readonly steps: number;
};

const silent: Said = {
  code: "no-answer",
  place: "Latewood",
  reason: "The program on this computer does not answer.",
  remedy: "Start it again; what was kept is safe.",
};

/** For an answer that names no problem: a mistake of the server's, not of the asker's. */
const wordless = (status: number): Said => ({
  code: "answer-wordless",
  place: "Latewood",
  reason: `The program on this computer made a mistake (${status}).`,
  remedy: "The terminal that it was started in shows it; what was kept is safe.",
});

/** A held file, a busy or full disk: the same request may be granted later. */
const PASSING: readonly number[] = [423, 503, 507];
/** Longer than this nobody waits for a program on the same computer [ms]. */
const PATIENCE_MS = 20_000;
/** Browsers refuse to carry more than 64 KiB past the end of a page, and say so as if nobody answered. */
const MOST_CARRIED = 60_000;

/** Goes out even when the page closes at that moment. */
function posted(body: unknown): RequestInit {
  const text = JSON.stringify(body);
  return {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: text,
    keepalive: new TextEncoder().encode(text).length <= MOST_CARRIED,
  };
}

async function ask<T>(path: string, body?: unknown): Promise<T> {
  const request = body === undefined ? {} : posted(body);
  const signal = AbortSignal.timeout(PATIENCE_MS);
  let response: Response;
  let answer: unknown;
  try {
    response = await fetch(`api/${path}`, { ...request, signal });
    // An answer that breaks off is as good as none: what was asked may have been done or not.
    answer = response.ok ? await response.json() : await response.json().catch(() => undefined);
  } catch {
    // fetch throws only when nobody answers, and says so in each browser's own words.
    throw new Refused([silent], true);
  }
  if (response.ok) return answer as T;
  const { problems } = (answer ?? {}) as { readonly problems?: readonly Said[] };
  throw new Refused(problems ?? [wordless(response.status)], PASSING.includes(response.status));
}

const at = (id: string) => `pieces/${encodeURIComponent(id)}`;

export const api = {
  pieces: () => ask<{ readonly pieces: readonly Listed[] }>("pieces"),
  away: () => ask<{ readonly pieces: readonly Listed[] }>("away"),
  make: (kind: string, name: string, units: LengthUnit) =>
    ask<{ readonly id: string }>("pieces", { kind, name, units }),
  takeIn: (text: string) => ask<{ readonly id: string }>("pieces", { text }),
  open: (id: string) => ask<Kept>(at(id)),
  edit: (id: string, edit: Edit, base: number) => ask<Kept>(`${at(id)}/edits`, { edit, base }),
  undo: (id: string, base: number) => ask<Kept>(`${at(id)}/undo`, { base }),
  redo: (id: string, base: number) => ask<Kept>(`${at(id)}/redo`, { base }),
  putAway: (id: string) => ask<unknown>(`${at(id)}/away`, {}),
  bringBack: (id: string) => ask<unknown>(`${at(id)}/restore`, {}),
  shop: () => ask<Shop>("shop"),
  fileOf: (id: string) => `api/${at(id)}/file`,
  /** a sheet by its name in the set, or all of them */
  papersOf: (id: string, paper: PaperName, sheets = "all") =>
    `api/${at(id)}/papers.pdf?${new URLSearchParams({ paper, sheets })}`,
};
