import { useEffect, useRef, useState } from "react";
import type { PieceDocument } from "../../piece/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { Asked, Told } from "./talk.ts";
import { nothingWorked, told, type Worked } from "./told.ts";

/** Works documents up in a worker. */
export function useWorkup(document: PieceDocument | undefined, shop: Shop | undefined): Worked {
  const [worked, setWorked] = useState(nothingWorked);
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
