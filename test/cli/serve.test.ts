import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { homedir, tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { dataFolder } from "../../src/cli/data-folder.ts";
import { serve } from "../../src/cli/serve.ts";
import { demoPieces } from "../../src/kinds/index.ts";
import { startServer } from "../../src/server/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { loadDriver, memoryStore, openStore } from "../../src/store/index.ts";

let webRoot: string;
let data: string;
beforeEach(() => {
  webRoot = mkdtempSync(join(tmpdir(), "latewood-serve-"));
  writeFileSync(join(webRoot, "index.html"), "here");
  data = join(webRoot, "data");
});
afterEach(() => rmSync(webRoot, { recursive: true, force: true }));

function listener() {
  const heard = { out: "", err: "" };
  const io = {
    out: (text: string) => {
      heard.out += text;
    },
    err: (text: string) => {
      heard.err += text;
    },
  };
  return { heard, io };
}

describe("what cannot be read ends with 2, its place, and what would be right", () => {
  test.each([
    [["--port", "abc"], "--port", "“abc”", "5217"],
    [["--port=-1"], "--port", "“-1”", "65535"],
    [["--port", "65536"], "--port", "“65536”", "65535"],
    [["--port", "80.5"], "--port", "“80.5”", "65535"],
    [["--port="], "--port", "“”", "65535"],
    [["--port"], "--port", "Nothing follows", "5217"],
    [["--port", "80", "--port", "81"], "--port", "twice", "once"],
    [["--data", "--open"], "--data", "Nothing follows", "pieces"],
    [["--data="], "--data", "names nothing", "Name a folder"],
    [["--shop", "no/such/shop.json"], "no/such/shop.json", "no such file", "Check its name"],
    [["--open", "--wide"], "the option “--wide”", "no such option", "--open"],
    [["--open=yes"], "--open", "“yes”", "alone"],
    [["here"], "the word “here”", "no option", "behind its option"],
    [[""], "the word “”", "no option", "behind its option"],
  ])("%j", async (argv, place, read, right) => {
    const { heard, io } = listener();
    expect(await serve(argv, io)).toBe(2);
    expect(heard.out).toBe("");
    for (const part of [place, read, right]) expect(heard.err).toContain(part);
  });
});

test.each([[["--help"]], [["-h"]], [["--port", "80", "--help"]]])(
  "%j tells the options and serves nothing",
  async (argv) => {
    const { heard, io } = listener();
    // A folder that is not there: serving it would end with 3.
    expect(await serve(argv, io, join(tmpdir(), "latewood-is-not-here"))).toBe(0);
    expect(heard.err).toBe("");
    for (const part of ["--port N", "--open", "5217", "--data FOLDER", "--shop FILE"])
      expect(heard.out).toContain(part);
  },
);

test("help beside a fault is told the fault", async () => {
  const { heard, io } = listener();
  expect(await serve(["--help", "--wide"], io)).toBe(2);
  expect(heard.err).toContain("--wide");
});

test("without a built screen it says how to get one", async () => {
  const { heard, io } = listener();
  expect(await serve(["--data", data], io, join(tmpdir(), "latewood-is-not-here"))).toBe(3);
  expect(existsSync(data)).toBe(false);
  expect(heard.err).toContain("npm start");
});

test("every fault is told in one go", async () => {
  const { heard, io } = listener();
  expect(await serve(["--port", "x", "--wide", "here", "--shop", "none.json"], io)).toBe(2);
  for (const part of ["--port", "--wide", "here", "none.json"]) expect(heard.err).toContain(part);
});

/** Serves until `meanwhile` is done; what was heard and the exit code. */
async function serving(argv: readonly string[], meanwhile: (url: string) => Promise<void>) {
  const { heard, io } = listener();
  const ended = serve([...argv, "--data", data], io, webRoot);
  await expect.poll(() => heard.out).toContain("The pieces are kept in");
  try {
    await meanwhile(/http\S+/.exec(heard.out)?.[0] ?? "");
  } finally {
    process.emit("SIGTERM");
  }
  return { code: await ended, ...heard };
}

const nothing = async () => {};

test("a port in use is named, and nobody is blamed for it", async () => {
  const holdings = { store: await memoryStore(), shop: demoShop };
  const first = await startServer({ webRoot, port: 0, ...holdings });
  try {
    const { code, out } = await serving(["--port", String(first.port)], nothing);
    expect(code).toBe(0);
    expect(out).toContain(`Port ${first.port} is in use`);
    expect(out).not.toContain("another program");
  } finally {
    await first.close();
  }
});

test("it serves until it is told to stop, and says where the pieces are", async () => {
  let at = "";
  const { code, out, err } = await serving(["--port", "0"], async (url) => {
    at = url;
    expect(await (await fetch(url)).text()).toBe("here");
  });
  expect([code, err]).toEqual([0, ""]);
  expect(out).toMatch(/^Latewood is at http:\/\/localhost:\d+\/ {2}\(/);
  expect(out).toContain(`kept in ${data}\n`);
  await expect(fetch(at)).rejects.toThrow();
});

type Pieces = { readonly pieces: readonly { readonly id: string; readonly name: string }[] };
const listed = async (url: string, list = "pieces") =>
  ((await (await fetch(`${url}api/${list}`)).json()) as Pieces).pieces;

test("an empty store gets pieces to look round with, once", async () => {
  const names = demoPieces().map(({ name }) => name);
  expect(names.length).toBeGreaterThan(0);
  const json = { "content-type": "application/json" };
  await serving(["--port", "0"], async (url) => {
    const pieces = await listed(url);
    expect(pieces.map(({ name }) => name).sort()).toEqual([...names].sort());
    for (const { id } of pieces) {
      const away = { method: "POST", headers: json, body: "{}" };
      expect((await fetch(`${url}api/pieces/${id}/away`, away)).status).toBe(200);
    }
  });
  await serving(["--port", "0"], async (url) => {
    expect(await listed(url)).toEqual([]);
    expect(await listed(url, "away")).toHaveLength(names.length);
  });
});

test("the shop's file is the shop that is served", async () => {
  const shop = join(webRoot, "shop.json");
  const text = { format: "latewood-shop", version: 1, name: "Bay two", chisels: ["10 mm"] };
  writeFileSync(shop, JSON.stringify(text));
  await serving(["--port", "0", "--shop", shop], async (url) => {
    const served = await (await fetch(`${url}api/shop`)).json();
    expect(served).toMatchObject({ name: "Bay two", isDemo: false, chisels: [10] });
  });
});

describe("what the pieces cannot be kept in ends with 2, its place, and what would be right", () => {
  test("a file in the folder's place", async () => {
    writeFileSync(data, "not a folder");
    const { heard, io } = listener();
    expect(await serve(["--data", data, "--port", "0"], io, webRoot)).toBe(2);
    expect(heard.out).toBe("");
    expect(heard.err).toContain(data);
    expect(heard.err).toMatch(/\n {2}\S.{10,}\n$/);
  });

  test("a store of a newer Latewood", async () => {
    const store = await openStore(data);
    store.close();
    const db = (await loadDriver()).open(store.file, false);
    db.exec("PRAGMA user_version=99");
    db.close();
    const { heard, io } = listener();
    expect(await serve(["--data", data, "--port", "0"], io, webRoot)).toBe(2);
    expect(heard.err).toContain(store.file);
    expect(heard.err).toMatch(/newer Latewood/);
  });

  test("what was mended on opening is told, and the pieces are served", async () => {
    mkdirSync(data);
    writeFileSync(join(data, "latewood.db"), "this is no database".repeat(400));
    const { code, err } = await serving(["--port", "0"], async (url) => {
      const state = await (await fetch(`${url}api/state`)).json();
      expect(state).toMatchObject({ openingRepairs: [{ code: expect.any(String) }] });
    });
    expect(code).toBe(0);
    expect(err).toMatch(/^the data: .+\n {2}\S/);
  });
});

test("where the pieces are kept: the option, else the environment, else the maker's own folder", () => {
  const env = { LATEWOOD_DATA: join(data, "of-environment") };
  expect(dataFolder(data, env)).toBe(data);
  expect(dataFolder("here", env)).toBe(resolve("here"));
  expect(dataFolder(undefined, env)).toBe(env.LATEWOOD_DATA);
  for (const none of [{}, { LATEWOOD_DATA: "" }]) {
    expect(dataFolder(undefined, none)).toBe(join(homedir(), ".latewood"));
  }
});
