import { useEffect, useRef, useState } from "react";
import type { PieceDocument } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { DrawnPart, Shape, Workup } from "../../workup/index.ts";
import type { Asked, Refusal, Told } from "./talk.ts";

/** What is worked out of the document on the screen; while a newer one is worked, the last that was. */
export type Worked = {
  readonly workup: Workup | undefined;
  readonly parts: readonly DrawnPart[];
  readonly shapes: ReadonlyMap<string, Shape>;
  /** why the newest document stands for no piece; the figures are then of the last that did */
  readonly refusals: readonly Refusal[];
  readonly fault: string | undefined;
};

const nothing: Worked = {
  workup: undefined,
  parts: [],
  shapes: new Map(),
  refusals: [],
  fault: undefined,
};

/** Most shapes that are kept for the picture: a worker that is started anew sends them again. */
const MOST_SHAPES = 2000;

/** Works documents up in a worker; answers to an older one are passed over. */
export function useWorkup(document: PieceDocument | undefined, shop: Shop | undefined): Worked {
  const [worked, setWorked] = useState(nothing);
  const worker = useRef<Worker | undefined>(undefined);
  const newest = useRef(0);
  useEffect(() => {
    if (!shop) return;
    const made = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    worker.current = made;
    made.postMessage({ shop });
    made.onmessage = ({ data }: MessageEvent<Told>) =>
      setWorked((before) => told(before, data, newest.current));
    made.onerror = (event) =>
      setWorked((before) => ({
        ...before,
        fault: event.message || "The model could not be worked.",
      }));
    return () => {
      made.terminate();
      worker.current = undefined;
    };
  }, [shop]);
  useEffect(() => {
    if (!document || !shop) return;
    newest.current += 1;
    worker.current?.postMessage({ ask: newest.current, document } satisfies Asked);
  }, [document, shop]);
  return worked;
}

function told(before: Worked, data: Told, newest: number): Worked {
  // A shape is good whichever document it was made for.
  if (data.kind === "shape") {
    const shapes = before.shapes.size < MOST_SHAPES ? before.shapes : new Map<string, Shape>();
    return { ...before, shapes: new Map([...shapes, [data.key, data.shape]]) };
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
