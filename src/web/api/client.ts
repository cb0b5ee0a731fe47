import type { Edit, PieceDocument } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { LengthUnit } from "../../units/index.ts";

/** What went wrong with a request, as the server says it. */
export type Said = {
  readonly code: string;
  readonly place: string;
  readonly reason: string;
  readonly remedy: string;
};

/** The server said no, or could not be asked. */
export class Refused extends Error {
  readonly said: readonly Said[];
  /** whether trying again later may help: nobody answered, or the store was busy */
  readonly isPassing: boolean;
  constructor(said: readonly Said[], isPassing: boolean) {
    super(said.map((s) => `${s.reason} ${s.remedy}`).join(" "));
    this.said = said;
    this.isPassing = isPassing;
  }
}

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

async function ask<T>(path: string, body?: unknown): Promise<T> {
  const request: RequestInit =
    body === undefined
      ? {}
      : {
          method: "POST",
          headers: { "content-type": "application/json" },
          body: JSON.stringify(body),
        };
  let response: Response;
  try {
    response = await fetch(`api/${path}`, request);
  } catch {
    // fetch throws only when nobody answers, and says so in each browser's own words.
    throw new Refused([silent], true);
  }
  if (response.ok) return (await response.json()) as T;
  const said = await response.json().catch(() => undefined);
  throw new Refused(
    said?.problems ?? [{ ...silent, reason: `It answered ${response.status}.` }],
    response.status >= 500,
  );
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
  undo: (id: string) => ask<Kept>(`${at(id)}/undo`, {}),
  redo: (id: string) => ask<Kept>(`${at(id)}/redo`, {}),
  putAway: (id: string) => ask<unknown>(`${at(id)}/away`, {}),
  bringBack: (id: string) => ask<unknown>(`${at(id)}/restore`, {}),
  shop: () => ask<Shop>("shop"),
  fileOf: (id: string) => `api/${at(id)}/file`,
};
