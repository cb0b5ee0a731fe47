import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { demoPieces, pieceSchema } from "../../src/kinds/index.ts";
import { documentText } from "../../src/piece/index.ts";
import { type RunningServer, startServer } from "../../src/server/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { memoryStore, openStore, type Pieces, type Store } from "../../src/store/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { sampleDocument } from "../kit/documents.ts";
import { type Answer, clientOf, refusal } from "./api-client.ts";
import { ask } from "./raw-http.ts";

let folder: string;
let store: Store;
let server: RunningServer;
const { get, post, send } = clientOf(() => server.url);

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "latewood api "));
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

/** A fresh piece, by its id. */
async function made(name = "Hall table"): Promise<string> {
  const { status, body } = await post("api/pieces", { kind: "plain-table", name, units: "mm" });
  expect(status).toBe(201);
  return body.id;
}

const rename = (to: unknown, says = `Named ${to}`) => ({ says, changes: [{ at: ["name"], to }] });
const answerTo = (question: string, to: string) => ({
  says: `${question} ${to}`,
  changes: [{ at: ["assemblies", "table", question], to }],
});

describe("pieces are made, listed, put away and brought back", () => {
  test("of a kind", async () => {
    const id = await made("Of a kind");
    const { status, body, headers } = await get(`api/pieces/${id}`);
    expect([status, headers.get("cache-control")]).toEqual([200, "no-store"]);
    expect(body).toMatchObject({ id, step: 0, repairs: [], document: { name: "Of a kind" } });
    expect(body).not.toHaveProperty("undo");
    expect(body.text).toBe(documentText(body.document));
  });

  test("of a text, which comes back to the byte", async () => {
    for (const piece of demoPieces()) {
      const taken = await post("api/pieces", { text: documentText(piece) });
      expect(taken.status).toBe(201);
      const file = await get(`api/pieces/${taken.body.id}/file`);
      expect(file.text).toBe(documentText(piece));
    }
  });

  test("and are in one list or the other", async () => {
    const id = await made("Here and there");
    const ids = async (list: string) =>
      (await get(`api/${list}`)).body.pieces.map((piece: { id: string }) => piece.id);
    expect(await ids("pieces")).toContain(id);
    expect((await get("api/pieces")).body.pieces[0]).toMatchObject({
      ...{ id, name: "Here and there", client: "", demo: false, steps: 0 },
      changed: expect.stringMatching(/^\d{4}-/),
    });
    expect(await post(`api/pieces/${id}/away`)).toMatchObject({ status: 200, body: { id } });
    expect([await ids("pieces"), await ids("away")]).toEqual([
      expect.not.arrayContaining([id]),
      expect.arrayContaining([id]),
    ]);
    const edit = { edit: rename("No") };
    expect(refusal(await post(`api/pieces/${id}/edits`, edit))).toEqual([409, "piece-away"]);
    expect(await post(`api/pieces/${id}/restore`)).toMatchObject({ status: 200, body: { id } });
    expect([await ids("pieces"), await ids("away")]).toEqual([
      expect.arrayContaining([id]),
      expect.not.arrayContaining([id]),
    ]);
  });

  test.each<[string, unknown, readonly [number, ...string[]]]>([
    ["of nothing", {}, [400, "wrong-type"]],
    ["of an unknown kind", { kind: "throne", name: "a", units: "mm" }, [400, "kind-unknown"]],
    [
      "of an inherited kind",
      { kind: "constructor", name: "a", units: "mm" },
      [400, "kind-unknown"],
    ],
    ["on no side", { kind: "plain-table", name: "a", units: "yard" }, [400, "units-unknown"]],
    ["with no name", { kind: "plain-table", name: "", units: "mm" }, [400, "text-empty"]],
    [
      "with a number for a name",
      { kind: "plain-table", name: 5, units: "mm" },
      [400, "wrong-type"],
    ],
    [
      "with a name without measure",
      { kind: "plain-table", name: "x".repeat(999), units: "mm" },
      [400, "text-too-long"],
    ],
    [
      "with a field too many",
      { kind: "plain-table", name: "a", units: "mm", id: "b" },
      [400, "field-unknown"],
    ],
    ["of a kind and of a text", { kind: "plain-table", text: "{}" }, [400, "body-form"]],
    ["of a text that is none", { text: 5 }, [400, "wrong-type"]],
    ["of a text that is no JSON", { text: "a table" }, [400, "not-json"]],
    [
      "of a text of a newer Latewood",
      { text: '{"format": "latewood-piece", "version": 9}' },
      [400, "version-future"],
    ],
    [
      "of a text with two faults",
      { text: documentText({ ...sampleDocument(), name: "", units: "yard" as never }) },
      [400, "text-empty", "not-a-choice"],
    ],
  ])("but not %s", async (_, body, expected) => {
    const before = (await get("api/pieces")).body.pieces.length;
    expect(refusal(await post("api/pieces", body))).toEqual(expected);
    expect((await get("api/pieces")).body.pieces).toHaveLength(before);
  });
});

describe("steps", () => {
  test("are made, undone and redone, and stand in the history", async () => {
    const id = await made();
    const first = await post(`api/pieces/${id}/edits`, { edit: rename("Second"), base: 0 });
    expect(first).toMatchObject({
      status: 200,
      body: { step: 1, undo: "Named Second", document: { name: "Second" } },
    });
    const back = await post(`api/pieces/${id}/undo`, { base: 1 });
    expect(back.body).toMatchObject({
      step: 2,
      redo: "Named Second",
      document: { name: "Hall table" },
    });
    const again = await post(`api/pieces/${id}/redo`);
    expect(again.body).toMatchObject({ step: 3, document: { name: "Second" } });
    const { body } = await get(`api/pieces/${id}/history`);
    expect(
      body.lines.map(({ step, kind }: { step: number; kind: string }) => [step, kind]),
    ).toEqual([
      [3, "redo"],
      [2, "undo"],
      [1, "edit"],
      [0, "made"],
    ]);
    const early = await get(`api/pieces/${id}/history?before=2`);
    expect(early.body.lines.map(({ step }: { step: number }) => step)).toEqual([1, 0]);
    for (const [step, name] of [
      [0, "Hall table"],
      [1, "Second"],
      [2, "Hall table"],
      [3, "Second"],
    ] as const) {
      const { status, body: at } = await get(`api/pieces/${id}/at/${step}`);
      expect([status, at.document.name]).toEqual([200, name]);
    }
  });

  test("there is nothing to undo or redo on a fresh piece", async () => {
    const id = await made();
    for (const back of ["undo", "redo"]) {
      expect(refusal(await post(`api/pieces/${id}/${back}`))).toEqual([400, `nothing-to-${back}`]);
    }
  });

  test("of two makers both get what they meant, or the later is told", async () => {
    const id = await made();
    const edits = `api/pieces/${id}/edits`;
    // Both have read step 0.
    expect((await post(edits, { edit: answerTo("length", "1600 mm"), base: 0 })).status).toBe(200);
    const other = await post(edits, { edit: answerTo("width", "700 mm"), base: 0 });
    expect(other.body).toMatchObject({
      step: 2,
      document: { assemblies: { table: { length: "1600 mm", width: "700 mm" } } },
    });
    const clash = await post(edits, { edit: answerTo("length", "900 mm"), base: 0 });
    expect(refusal(clash)).toEqual([409, "step-behind"]);
    expect(clash.body.problems[0].reason).toContain("length 1600 mm");
    expect(refusal(await post(`api/pieces/${id}/undo`, { base: 1 }))).toEqual([409, "step-behind"]);
    expect(refusal(await post(edits, { edit: rename("x"), base: 7 }))).toEqual([400, "step-ahead"]);
    expect((await get(`api/pieces/${id}`)).body).toMatchObject({ step: 2 });
  });

  test("of two makers at the same moment one waits for the other", async () => {
    const id = await made();
    const lengths = Array.from({ length: 8 }, (_, i) => `${1000 + i} mm`);
    const all = await Promise.all(
      lengths.map((length) =>
        post(`api/pieces/${id}/edits`, { edit: answerTo("length", length), base: 0 }),
      ),
    );
    const statuses = all.map(({ status }) => status).sort();
    expect(statuses).toEqual([200, ...Array(7).fill(409)]);
    expect((await get(`api/pieces/${id}`)).body.step).toBe(1);
  });

  const deep = (levels: number): unknown => (levels === 0 ? "x" : { a: deep(levels - 1) });
  const table = ["assemblies", "table"];

  test.each<[string, unknown, string]>([
    ["no edit", {}, "edit-form"],
    ["null", { edit: null }, "edit-form"],
    ["a list", { edit: [] }, "edit-form"],
    ["no words", { edit: { changes: [] } }, "edit-form"],
    ["words without measure", { edit: { says: "x".repeat(9999), changes: [] } }, "edit-form"],
    ["no changes", { edit: { says: "x" } }, "edit-form"],
    ["changes that are none", { edit: { says: "x", changes: [null] } }, "edit-form"],
    ["a change of nowhere", { edit: { says: "x", changes: [{ to: "y" }] } }, "edit-form"],
    ["a place of numbers", { edit: { says: "x", changes: [{ at: [1], to: "y" }] } }, "edit-form"],
    ["a field too many", { edit: { ...rename("a"), force: true } }, "edit-form"],
    ["nothing for a value", { edit: rename(null) }, "edit-form"],
    ["a number for a value", { edit: rename(5) }, "wrong-type"],
    ["a list for a value", { edit: rename(["a"]) }, "wrong-type"],
    [
      "a value too deep",
      { edit: { says: "x", changes: [{ at: ["cut"], to: deep(9) }] } },
      "edit-form",
    ],
    ["a place that is none", { edit: { says: "x", changes: [{ at: [], to: "y" }] } }, "edit-place"],
    [
      "the file's version",
      { edit: { says: "x", changes: [{ at: ["version"], to: "2" }] } },
      "edit-place",
    ],
    [
      "a place within a text",
      { edit: { says: "x", changes: [{ at: ["name", "a"], to: "y" }] } },
      "edit-place",
    ],
    [
      "a field that is none",
      { edit: { says: "x", changes: [{ at: ["colour"], to: "y" }] } },
      "field-unknown",
    ],
    [
      "a name of all objects",
      { edit: { says: "x", changes: [{ at: ["__proto__", "demo"], to: true }] } },
      "edit-place",
    ],
    [
      "such a name inside",
      { edit: { says: "x", changes: [{ at: [...table, "__proto__"], to: "y" }] } },
      "edit-place",
    ],
    ["a switch for a text", { edit: rename(true) }, "wrong-type"],
    ["the one assembly away", { edit: { says: "x", changes: [{ at: table }] } }, "too-few"],
    ["a base that is a text", { edit: rename("a"), base: "0" }, "wrong-type"],
    ["a base below nought", { edit: rename("a"), base: -1 }, "wrong-type"],
    ["a base in parts", { edit: rename("a"), base: 0.5 }, "wrong-type"],
    ["a base beyond counting", { edit: rename("a"), base: 1e300 }, "wrong-type"],
  ])("%s is no step", async (_, body, code) => {
    const id = await made();
    expect(refusal(await post(`api/pieces/${id}/edits`, body))).toEqual([400, code]);
    expect((await get(`api/pieces/${id}`)).body).toMatchObject({ step: 0 });
    expect(Object.prototype).not.toHaveProperty("demo");
  });

  test("such names and numbers as JSON itself lets through", async () => {
    const id = await made();
    const edits = `api/pieces/${id}/edits`;
    const json = "application/json";
    const change = (to: string) =>
      `{"edit":{"says":"x","changes":[{"at":["overrides"],"to":${to}}]}}`;
    for (const [body, code] of [
      ['{"edit":{},"__proto__":{"base":0}}', "field-unknown"],
      ['{"edit":{"says":"x","changes":[],"__proto__":{"a":1}}}', "edit-form"],
      [change('{"__proto__":"1 in"}'), "name-unreadable"],
      [change('{"a":1e999}'), "edit-form"],
      ['{"edit":{"says":"x","changes":[]},"base":1e999}', "wrong-type"],
    ] as const) {
      expect(refusal(await send(edits, body, json))).toEqual([400, code]);
    }
    expect((await get(`api/pieces/${id}`)).body.step).toBe(0);
  });
});

describe("what is asked for and is not there", () => {
  test.each([
    ["GET", "api/pieces/nobody", 404, "piece-unknown"],
    ["GET", "api/pieces/nobody/file", 404, "piece-unknown"],
    ["GET", "api/pieces/nobody/history", 404, "piece-unknown"],
    ["GET", "api/pieces/nobody/at/0", 404, "piece-unknown"],
    ["GET", "api/pieces/__proto__", 404, "piece-unknown"],
    ["GET", "api/pieces/%00%27%20OR%201=1", 404, "piece-unknown"],
    ["GET", "api/pieces/%3Cscript%3E", 404, "piece-unknown"],
    ["GET", `api/pieces/${"a".repeat(4000)}`, 404, "piece-unknown"],
    ["GET", "api/pieces/ID/at/1", 404, "step-unknown"],
    ["GET", "api/pieces/ID/at/-1", 404, "step-unknown"],
    ["GET", "api/pieces/ID/at/0.5", 404, "step-unknown"],
    ["GET", "api/pieces/ID/at/1e99", 404, "step-unknown"],
    ["GET", "api/pieces/ID/at/999999999999999999999", 404, "step-unknown"],
    ["GET", "api/pieces/ID/history?before=x", 400, "not-a-step"],
    ["GET", "api/pieces/ID/history?before=-1", 400, "not-a-step"],
    ["GET", "api/pieces/ID/nothing", 404, "address-unknown"],
    ["GET", "api/nothing", 404, "address-unknown"],
    ["GET", "api/", 404, "address-unknown"],
    ["DELETE", "api/pieces/ID", 405, "method-unknown"],
    ["PUT", "api/pieces", 405, "method-unknown"],
    ["GET", "api/pieces/ID/edits", 405, "method-unknown"],
    ["GET", "api/pieces/ID/away", 405, "method-unknown"],
    ["OPTIONS", "api/pieces", 405, "method-unknown"],
  ] as const)("%s %.40s", async (method, path, status, code) => {
    const id = await made();
    const answer = await get(path.replace("ID", id), method);
    expect(refusal(answer)).toEqual([status, code]);
    if (status === 405) expect(answer.headers.get("allow")).toMatch(/^(GET|POST)/);
  });

  test.each(["edits", "undo", "redo", "away", "restore"])("a piece for %s", async (route) => {
    const body = route === "edits" ? { edit: rename("a") } : {};
    expect(refusal(await post(`api/pieces/nobody/${route}`, body))).toEqual([404, "piece-unknown"]);
  });

  test("HEAD is answered as GET is, without a body", async () => {
    const answer = await get("api/shop", "HEAD");
    expect([answer.status, answer.text]).toEqual([200, ""]);
  });
});

describe("names that are more than a name", () => {
  const nameOf = (answer: Answer) => answer.headers.get("content-disposition") ?? "";

  test("markup stays text, and is never sent as a page", async () => {
    const name = '<script>alert("1")</script>';
    const id = await made(name);
    expect(id).toMatch(/^[a-z0-9-]+$/);
    for (const path of ["api/pieces", `api/pieces/${id}`, `api/pieces/${id}/file`]) {
      const { headers, text } = await get(path);
      expect(headers.get("content-type")).toMatch(/^application\/json/);
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(text).toContain(JSON.stringify(name));
    }
  });

  test.each([
    ["Hall table", 'filename="hall-table.json"', "hall-table.json"],
    ["../../etc/passwd", 'filename="etc-passwd.json"', "etc-passwd.json"],
    ['a"; filename="b.exe', 'filename="a-filename-b-exe.json"', "a-filename-b-exe.json"],
    ["a\r\nset-cookie: b=c", 'filename="a-set-cookie-b-c.json"', "a-set-cookie-b-c.json"],
    ["Tisché für Ännchen", 'filename="tische-fur-annchen.json"', "tisché-für-ännchen.json"],
    ["机", 'filename="piece.json"', "机.json"],
    ["con", 'filename="piece-con.json"', "piece-con.json"],
    ["🪑 ‮gnp.exe", 'filename="gnp-exe.json"', "gnp-exe.json"],
    ["!?", 'filename="piece.json"', "piece.json"],
  ])("the file of %j has a safe name", async (name, plain, full) => {
    const disposition = nameOf(await get(`api/pieces/${await made(name)}/file`));
    expect(disposition).toContain(`attachment; ${plain};`);
    expect(decodeURIComponent(disposition.split("UTF-8''")[1] ?? "")).toBe(full);
  });
});

describe("the house", () => {
  test("the shop", async () => {
    const { status, body } = await get("api/shop");
    expect([status, body]).toEqual([200, JSON.parse(JSON.stringify(demoShop))]);
  });

  test("the schema", async () => {
    const { status, headers, body } = await get("schema/piece-1.json");
    expect(status).toBe(200);
    expect(headers.get("content-type")).toBe("application/schema+json");
    expect(headers.get("cache-control")).toBe("no-store");
    expect(body).toEqual(JSON.parse(JSON.stringify(pieceSchema())));
  });

  test("the state of the store, with its backups", async () => {
    await made();
    store.backUp();
    const { body } = await get("api/state");
    expect(body.openingRepairs).toEqual([]);
    expect(body.backups[0]).toMatchObject({
      number: expect.any(Number),
      writtenMs: expect.any(Number),
    });
    const inMemory = await startServer({
      ...{ webRoot: folder, port: 0, shop: demoShop },
      store: await memoryStore(),
    });
    try {
      const answer = await clientOf(() => inMemory.url).get("api/state");
      expect(answer.body).toEqual({ openingRepairs: [], backups: [] });
    } finally {
      await inMemory.close();
    }
  });

  test("the screen is served beside it", async () => {
    expect(await get("")).toMatchObject({ status: 200, text: "here" });
  });
});

describe("who is answered", () => {
  test.each([
    ["a foreign host", ["Host: latewood.example"], 421],
    ["a foreign origin", ["Host: localhost:PORT", "Origin: http://latewood.example"], 403],
  ])("not %s", async (_, lines, status) => {
    const real = lines.map((line) => line.replace("PORT", String(server.port)));
    const before = (await get("api/pieces")).body.pieces.length;
    const head = [
      "POST /api/pieces HTTP/1.1",
      ...real,
      "Content-Type: application/json",
      "Content-Length: 2",
    ];
    expect((await ask(server.port, head)).status).toBe(status);
    expect((await get("api/pieces")).body.pieces).toHaveLength(before);
  });
});

describe("a store that fails", () => {
  /** What a client hears when the store throws. */
  async function heard(fault: unknown): Promise<Answer> {
    const whole = await memoryStore();
    const failing: Pieces = {
      ...whole,
      list: () => {
        throw fault;
      },
    };
    const other = await startServer({ webRoot: folder, port: 0, shop: demoShop, store: failing });
    try {
      return await clientOf(() => other.url).get("api/pieces");
    } finally {
      await other.close();
    }
  }

  test.each([
    ["store-busy", 503],
    ["store-read-only", 503],
    ["store-damaged", 503],
    ["disk-full", 507],
    ["anything-else", 400],
  ])("%s is answered with %i", async (code, status) => {
    const answer = await heard(new Problem(code, "the place", "the reason", "the remedy"));
    expect(refusal(answer)).toEqual([status, code]);
  });

  test("a fault of ours is shown on the terminal, and said in plain words", async () => {
    const shown = vi.spyOn(console, "error").mockImplementation(() => {});
    try {
      const answer = await heard(new Error("ours, with a secret"));
      expect([answer.status, answer.text]).toEqual([500, expect.stringContaining("mistake")]);
      expect(answer.text).not.toContain("secret");
      expect(answer.headers.get("cache-control")).toBe("no-store");
      expect(shown).toHaveBeenCalledOnce();
    } finally {
      shown.mockRestore();
    }
  });
});
