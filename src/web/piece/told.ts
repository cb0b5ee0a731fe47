import type { DrawnPart, Shape, Workup } from "../../workup/index.ts";
import type { Refusal, Told } from "./talk.ts";

/** What is worked out of the document on the screen; while a newer one is worked, the last that was. */
export type Worked = {
  readonly workup: Workup | undefined;
  readonly parts: readonly DrawnPart[];
  /** parts that wait for their shapes; until then the picture stays as it is, and whole */
  readonly coming: readonly DrawnPart[] | undefined;
  readonly shapes: ReadonlyMap<string, Shape>;
  /** why the newest document stands for no piece; the figures are then of the last that did */
  readonly refusals: readonly Refusal[];
  readonly fault: string | undefined;
  /** number of the newest request all of whose shapes are here */
  readonly drawn: number;
};

export const nothingWorked: Worked = {
  workup: undefined,
  parts: [],
  coming: undefined,
  shapes: new Map(),
  refusals: [],
  fault: undefined,
  drawn: 0,
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
      return arrived({ ...before, shapes: new Map([...before.shapes, [data.key, data.shape]]) });
    case "forget": {
      // What is on the screen may be older than what the worker is at, and stays whole.
      const shown = [...before.parts, ...(before.coming ?? [])].map((part) => part.shape);
      const keep = new Set([...data.keep, ...shown]);
      return { ...before, shapes: new Map([...before.shapes].filter(([key]) => keep.has(key))) };
    }
  }
  if (data.ask !== newest) return before;
  switch (data.kind) {
    case "figures":
      return arrived({
        ...before,
        workup: data.workup,
        // Whoever types on without a rest sees what there is: nothing waits twice.
        parts: before.coming || before.parts.length === 0 ? data.parts : before.parts,
        coming: data.parts,
        refusals: [],
        fault: undefined,
      });
    case "refused":
      return { ...before, refusals: data.problems, fault: undefined };
    case "fault":
      return { ...before, fault: data.says };
    case "drawn":
      return { ...before, drawn: data.ask };
  }
}

/** The parts that were waited for, once the last of their shapes is here. */
function arrived(worked: Worked): Worked {
  const { coming, shapes } = worked;
  return coming?.every((part) => shapes.has(part.shape))
    ? { ...worked, parts: coming, coming: undefined }
    : worked;
}
