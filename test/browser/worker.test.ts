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

test("a browser's worker comes to the same figures and shapes as Node, number for number", async () => {
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
    expect(JSON.stringify(heard.figures)).toBe(JSON.stringify(outcome.workup));
    const solids = createSolids(await createKernel());
    const here = new Map(
      outcome.workup.piece.parts.map((part) => {
        const { positions, indices } = shapeOf(solids, part);
        return [`${[...positions]} ${[...indices]}`, true] as const;
      }),
    );
    expect(heard.shapes.length).toBe(new Set(here.keys()).size);
    for (const [, positions, indices] of heard.shapes)
      expect(here.has(`${positions} ${indices}`)).toBe(true);
    solids.free();
  }
});
