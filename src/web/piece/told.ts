import type { DrawnPart, Shape, Workup } from "../../workup/index.ts";
import type { Refusal, Told } from "./talk.ts";

/** What is worked out of the document on the screen; while a newer one is worked, the last that was. */
export type Worked = {
  readonly workup: Workup | undefined;
  readonly parts: readonly DrawnPart[];
  readonly shapes: ReadonlyMap<string, Shape>;
  /** why the newest document stands for no piece; the figures are then of the last that did */
  readonly refusals: readonly Refusal[];
  readonly fault: string | undefined;
};

export const nothingWorked: Worked = {
  workup: undefined,
  parts: [],
  shapes: new Map(),
  refusals: [],
  fault: undefined,
};

/**
 * What stands after the worker told something; answers to an older document are passed over.
 *
 * @param newest  number of the newest request [1]
 */
export function told(before: Worked, data: Told, newest: number): Worked {
  switch (data.kind) {
    // A shape is good whichever document it was made for.
    case "shape":
      return { ...before, shapes: new Map([...before.shapes, [data.key, data.shape]]) };
    case "forget": {
      // What is on the screen may be older than what the worker is at, and stays whole.
      const keep = new Set([...data.keep, ...before.parts.map((part) => part.shape)]);
      return { ...before, shapes: new Map([...before.shapes].filter(([key]) => keep.has(key))) };
    }
  }
  if (data.ask !== newest) return before;
  switch (data.kind) {
    case "figures":
      return { ...before, workup: data.workup, parts: data.parts, refusals: [], fault: undefined };
    case "refused":
      return { ...before, refusals: data.problems, fault: undefined };
    case "fault":
      return { ...before, fault: data.says };
    case "drawn":
      return before;
  }
}
