import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type RunningServer, startServer } from "../../src/server/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { openStore, type Store } from "../../src/store/index.ts";
import { clientOf, refusal } from "./api-client.ts";

let folder: string;
let store: Store;
let server: RunningServer;
const { get, post } = clientOf(() => server.url);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "latewood papers "));
  mkdirSync(join(folder, "web"));
  writeFileSync(join(folder, "web", "index.html"), "here");
  store = await openStore(join(folder, "data"));
  server = await startServer({ webRoot: join(folder, "web"), port: 0, store, shop: demoShop });
});
afterAll(async () => {
  await server.close();
  store.close();
  rmSync(folder, { recursive: true });
});

async function made(kind: string, units: "inch" | "mm", name = "On paper"): Promise<string> {
  const { status, body } = await post("api/pieces", { kind, name, units });
  expect(status).toBe(201);
  return body.id;
}

const papers = (id: string, query = "") => `api/pieces/${id}/papers.pdf${query}`;

/** What a PDF of ours says of its pages: how many, and how large each is [pt]. */
function pagesOf(text: string): readonly string[] {
  expect(text.slice(0, 5)).toBe("%PDF-");
  return [...text.matchAll(/\/Type \/Page\n[^>]*?\/MediaBox \[0 0 ([\d.]+ [\d.]+)\]/g)].map(
    ([, size]) => size ?? "",
  );
}

/** Letter and A4, lying [pt]: 11 × 8.5 in at 72 to the inch; 297 × 210 mm at 72 to 25.4 mm. */
const letter = "792 612";
const a4 = [(297 / 25.4) * 72, (210 / 25.4) * 72];

describe("a piece’s papers", () => {
  test("are a PDF of every sheet, on the paper of the piece’s side unless another is asked for", async () => {
    const id = await made("plain-table", "inch", 'Hall "table" / no. 2');
    const all = await get(papers(id));
    expect([all.status, all.headers.get("content-type")]).toEqual([200, "application/pdf"]);
    expect(all.headers.get("content-disposition")).toContain(
      'inline; filename="hall-table-no-2.pdf"',
    );
    expect(all.headers.get("cache-control")).toBe("no-store");
    const pages = pagesOf(all.text);
    expect(pages.length).toBeGreaterThan(5);
    expect(new Set(pages)).toEqual(new Set([letter]));
    const onA4 = pagesOf((await get(papers(id, "?paper=A4&sheets=all"))).text);
    expect(onA4.length).toBeGreaterThan(5);
    for (const size of onA4)
      for (const [i, side] of size.split(" ").entries())
        expect(Number(side)).toBeCloseTo(a4[i] ?? 0, 1);
  }, 60_000);

  test("or of one sheet, of any kind of furniture", async () => {
    const id = await made("drop-leaf-table", "mm");
    expect(pagesOf((await get(papers(id, "?sheets=title&paper=letter"))).text)).toEqual([letter]);
  }, 60_000);

  test("are refused for a sheet, a paper or a word that there is not, and for a piece that is not there", async () => {
    const id = await made("plain-table", "mm");
    const noSheet = await get(papers(id, "?sheets=attic"));
    expect(refusal(noSheet)).toEqual([404, "sheet-unknown"]);
    expect(noSheet.body.problems[0].remedy).toMatch(/Use all, title, /);
    expect(refusal(await get(papers(id, "?sheets=")))).toEqual([404, "sheet-unknown"]);
    expect(refusal(await get(papers(id, "?paper=a3")))).toEqual([400, "paper-unknown"]);
    expect(refusal(await get(papers(id, "?paper=")))).toEqual([400, "paper-unknown"]);
    expect(refusal(await get(papers(id, "?scale=2")))).toEqual([400, "query-unknown"]);
    expect(refusal(await get(papers("nobody")))).toEqual([404, "piece-unknown"]);
    expect(refusal(await get(papers(id), "POST"))).toEqual([405, "method-unknown"]);
  }, 60_000);

  test("of a design that cannot be made are refused with the reasons", async () => {
    const id = await made("plain-table", "mm");
    const edit = {
      says: "length 300 mm",
      changes: [{ at: ["assemblies", "table", "length"], to: "300 mm" }],
    };
    expect((await post(`api/pieces/${id}/edits`, { edit })).status).toBe(200);
    const [status, ...codes] = refusal(await get(papers(id)));
    expect(status).toBe(400);
    expect(codes.length).toBeGreaterThan(0);
  });
});
