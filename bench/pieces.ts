import fc from "fast-check";
import { answer, demoPieces, pieceOf } from "../src/kinds/index.ts";
import { applyEdit, type PieceDocument } from "../src/piece/index.ts";
import { demoShop } from "../src/shop/index.ts";
import { createKernel, createSolids, type Solids } from "../src/solid/index.ts";
import { createWorkup, shapeOf } from "../src/workup/index.ts";
import { tableDocument } from "../test/kit/tables.ts";
import { type Spread, spread, took } from "./spread.ts";

const SEED = 20_261_126;
const TABLES = 200;

const draw = (solids: Solids, document: PieceDocument): number => {
  const read = pieceOf(document, demoShop);
  if (!read.ok) return 0;
  return read.piece.parts.reduce((sum, part) => sum + shapeOf(solids, part).indices.length / 3, 0);
};

/** The one dimension that is changed, and to what: from the one that touches least to the most. */
const changes = [
  ["height", "733 mm"],
  ["end-overhang", "71 mm"],
  ["top-thickness", "21.5 mm"],
  ["length", "1201 mm"],
  ["leg", "53 mm"],
  ["width", "733 mm"],
] as const;

/** Random tables, and the demo piece, from document to parts, figures and shapes. */
export async function pieces(): Promise<{
  readonly spreads: readonly Spread[];
  readonly triangles: string;
}> {
  const kernel = await createKernel();
  const documents = fc
    .sample(tableDocument, { numRuns: 2 * TABLES, seed: SEED })
    .filter((document) => pieceOf(document, demoShop).ok)
    .slice(0, TABLES);
  const [, demo] = demoPieces();
  if (!demo) throw new Error("there is no demo piece");
  // Once unmeasured, so that the machine has made what it runs.
  for (const document of documents.slice(0, 40)) draw(createSolids(kernel), document);
  for (const document of [...documents, ...documents]) pieceOf(document, demoShop);

  const parts = documents.map((document) => took(() => pieceOf(document, demoShop)));
  const figures = documents.map((document) => {
    const work = createWorkup(demoShop);
    return took(() => work(document));
  });
  const counts: number[] = [];
  const cold = documents.map((document) => {
    const solids = createSolids(kernel);
    const ms = took(() => counts.push(draw(solids, document)));
    solids.free();
    return ms;
  });
  const changed = changes.map(([name, text]) => {
    const times = Array.from({ length: 40 }, () => {
      const solids = createSolids(kernel);
      draw(solids, demo);
      const edited = applyEdit(demo, answer(demo, "table", name, text)).document;
      const ms = took(() => draw(solids, edited));
      solids.free();
      return ms;
    });
    return spread(`the demo table’s shapes after a change of ${name}`, times);
  });
  return {
    spreads: [
      spread("document to parts and joints", parts),
      spread("document to masses, cut list and findings, nothing kept", figures),
      spread("all shapes of a table, nothing kept", cold),
      ...changed,
    ],
    triangles: `A table has ${spread("", counts).medianMs} triangles, ${Math.max(...counts)} at most.`,
  };
}

/** Memory before and after so many rebuilds of changing dimensions. */
export async function memoryOver(rebuilds: number) {
  const kernel = await createKernel();
  const solids = createSolids(kernel, 40);
  const [, demo] = demoPieces();
  if (!demo) throw new Error("there is no demo piece");
  const resident = () => Math.round(process.memoryUsage().rss / 1e6);
  const seen: number[] = [];
  let built = 0;
  for (let i = 0; built < rebuilds; i++) {
    const length = `${1000 + (i % 997)} mm`;
    draw(solids, applyEdit(demo, answer(demo, "table", "length", length)).document);
    built = solids.counts().built;
    if (i % 100 === 0) seen.push(resident());
  }
  solids.free();
  return { built, firstMB: seen[Math.floor(seen.length / 10)] ?? 0, lastMB: seen.at(-1) ?? 0 };
}
