import { expect, test } from "vitest";
import { demoPieces } from "../../src/kinds/index.ts";
import type { PieceDocument } from "../../src/piece/index.ts";
import { demoShop, type Shop } from "../../src/shop/index.ts";
import { createKernel, createSolids } from "../../src/solid/index.ts";
import { createWorkup, shapeOf } from "../../src/workup/index.ts";
import { startLatewood } from "../kit/browser.ts";
import { openDemo } from "./piece-page.ts";

const latewood = startLatewood();

type Heard = {
  readonly figures: unknown;
  readonly shapes: readonly (readonly [string, readonly number[], readonly number[]])[];
};

/** Engines differ in the last digits of sines and roots; nothing else may. */
const SAME = 1e-9;
/** Graphics take 32 bits, a hundred-thousandth of a millimetre at two metres. */
const SAME_CORNER = 1e-3;

/** The first place where two values differ, other than in a number's last digits. */
function difference(a: unknown, b: unknown, at = ""): string | undefined {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a)) ? undefined : `${at}: ${a}, ${b}`;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null)
    return a === b ? undefined : `${at}: ${String(a)}, ${String(b)}`;
  const [as, bs] = [a, b] as readonly Readonly<Record<string, unknown>>[];
  for (const name of new Set([...Object.keys(a), ...Object.keys(b)])) {
    const found = difference(as?.[name], bs?.[name], `${at} › ${name}`);
    if (found) return found;
  }
  return undefined;
}

const areNear = (a: readonly number[], b: readonly number[]): boolean =>
  a.length === b.length && a.every((n, i) => Math.abs(n - (b[i] ?? Number.NaN)) < SAME_CORNER);

test("a browser's worker comes to the same figures and shapes as Node, but for last digits", async () => {
  const { page } = await openDemo(await latewood.open());
  for (const document of demoPieces()) {
    const heard: Heard = await page.evaluate(
      async ({ document, shop }: { document: PieceDocument; shop: Shop }) => {
        const script = performance
          .getEntriesByType("resource")
          .map((entry) => entry.name)
          .find((name) => /\/worker-[^/]*\.js$/.test(name));
        if (!script) throw new Error("the page has no worker");
        const worker = new Worker(script, { type: "module" });
        try {
          return await new Promise((settle, fail) => {
            let figures: unknown;
            const shapes: [string, number[], number[]][] = [];
            worker.onerror = (event) => fail(new Error(event.message));
            worker.onmessage = ({ data }) => {
              if (data.kind === "figures") figures = data.workup;
              if (data.kind === "shape")
                shapes.push([data.key, [...data.shape.positions], [...data.shape.indices]]);
              if (data.kind === "drawn") settle({ figures, shapes });
              if (data.kind === "fault" || data.kind === "refused")
                fail(new Error(JSON.stringify(data)));
            };
            worker.postMessage({ shop });
            worker.postMessage({ ask: 1, document });
          });
        } finally {
          worker.terminate();
        }
      },
      { document, shop: demoShop },
    );
    const outcome = createWorkup(demoShop)(document);
    if (!outcome.ok) throw new Error("the demo piece is refused");
    const plain: unknown = JSON.parse(JSON.stringify(outcome.workup));
    expect(difference(JSON.parse(JSON.stringify(heard.figures)), plain)).toBeUndefined();
    const solids = createSolids(await createKernel());
    const here = [...new Set(outcome.workup.piece.parts.map((part) => solids.of(part)))].length;
    const shapes = outcome.workup.piece.parts.map((part) => shapeOf(solids, part));
    expect(heard.shapes.length).toBe(here);
    for (const [key, positions, indices] of heard.shapes) {
      const same = shapes.some(
        (shape) => areNear(indices, [...shape.indices]) && areNear(positions, [...shape.positions]),
      );
      expect(same, key.slice(0, 60)).toBe(true);
    }
    solids.free();
  }
});
