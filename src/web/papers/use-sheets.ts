import { useEffect, useMemo, useRef, useState } from "react";
import { documentText, type PieceDocument } from "../../piece/index.ts";
import type { PaperName, Sheet } from "../../sheets/index.ts";
import type { Shop } from "../../shop/index.ts";
import type { Asked, Told } from "./talk.ts";

/** The sheets of a piece; while newer ones are drawn, the last that were. */
export type Sheets = {
  readonly sheets: readonly Sheet[];
  /** drawn: they are of the piece as it stands; refused: it cannot be made so, and has none */
  readonly are: "drawing" | "drawn" | "refused" | "faulty";
  /** why they could not be drawn */
  readonly fault?: string;
};

const none: Sheets = { sheets: [], are: "drawing" };

function heard({ sheets }: Sheets, data: Told): Sheets {
  switch (data.kind) {
    case "sheets":
      return { sheets: data.sheets, are: "drawn" };
    case "refused":
      return { sheets, are: "refused" };
    case "fault":
      return { sheets, are: "faulty", fault: data.says };
  }
}

/** Draws sheets in a worker, which ends when whoever uses this leaves the page. */
export function useSheets(
  document: PieceDocument,
  shop: Shop | undefined,
  paper: PaperName,
): Sheets {
  const [drawn, setDrawn] = useState(none);
  const printer = useRef<Worker | undefined>(undefined);
  const newest = useRef(0);
  useEffect(() => {
    if (!shop) return;
    const made = new Worker(new URL("./printer.ts", import.meta.url), { type: "module" });
    printer.current = made;
    made.postMessage({ shop });
    made.onmessage = ({ data }: MessageEvent<Told>) => {
      if (data.ask !== newest.current) return;
      setDrawn((before) => heard(before, data));
    };
    made.onerror = (event) =>
      setDrawn(({ sheets }) => ({ sheets, are: "faulty", fault: event.message }));
    return () => {
      made.terminate();
      printer.current = undefined;
    };
  }, [shop]);
  // A document that was kept comes back as another object that says the same: nothing to draw anew.
  const text = useMemo(() => documentText(document), [document]);
  const latest = useRef(document);
  latest.current = document;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text stands for the document
  useEffect(() => {
    if (!shop) return;
    newest.current += 1;
    setDrawn(({ sheets }) => ({ sheets, are: "drawing" }));
    const date = new Date().toISOString().slice(0, 10);
    printer.current?.postMessage({
      ...{ ask: newest.current, document: latest.current, paper, date },
    } satisfies Asked);
  }, [text, shop, paper]);
  return drawn;
}
