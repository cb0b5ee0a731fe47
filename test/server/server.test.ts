import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openCommand, type RunningServer, startServer } from "../../src/server/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { memoryStore, type Pieces } from "../../src/store/index.ts";
import { ask } from "./raw-http.ts";

const page = "<!doctype html><title>Latewood</title>";
const outside = "not for anybody else";
let folder: string;
let webRoot: string;
let holdings: { readonly store: Pieces; readonly shop: typeof demoShop };
let server: RunningServer;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "latewood server "));
  webRoot = join(folder, "web");
  mkdirSync(join(webRoot, "assets"), { recursive: true });
  writeFileSync(join(webRoot, "index.html"), page);
  writeFileSync(join(webRoot, "assets", "index-Ab3_dE-9.js"), "export {};");
  writeFileSync(join(webRoot, "mark.svg"), "<svg xmlns='http://www.w3.org/2000/svg'/>");
  writeFileSync(join(webRoot, ".hidden"), outside);
  writeFileSync(join(folder, "outside.txt"), outside);
  writeFileSync(join(folder, "web-sibling.txt"), outside);
  symlinkSync(join(folder, "outside.txt"), join(webRoot, "link.txt"));
  holdings = { store: await memoryStore(), shop: demoShop };
  server = await startServer({ webRoot, port: 0, ...holdings });
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

const get = (path: string, headers: readonly string[] = [], method = "GET") =>
  ask(server.port, [`${method} ${path} HTTP/1.1`, `Host: localhost:${server.port}`, ...headers]);

describe("what is served", () => {
  test("the page, at every name of this computer", async () => {
    for (const name of ["localhost", "LOCALHOST", "127.0.0.1", "[::1]"]) {
      const answer = await ask(server.port, ["GET / HTTP/1.1", `Host: ${name}:${server.port}`]);
      expect(answer).toMatchObject({ status: 200, body: page });
      expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
      expect(answer.headers.get("cache-control")).toBe("no-cache");
    }
  });

  test("hashed assets may be kept for good, others not", async () => {
    const asset = await get("/assets/index-Ab3_dE-9.js");
    expect(asset).toMatchObject({ status: 200, body: "export {};" });
    expect(asset.headers.get("content-type")).toBe("text/javascript; charset=utf-8");
    expect(asset.headers.get("cache-control")).toBe("public, max-age=31536000, immutable");
    const mark = await get("/mark.svg");
    expect(mark.headers.get("content-type")).toBe("image/svg+xml");
    expect(mark.headers.get("cache-control")).toBe("no-cache");
  });

  test("HEAD gives the same headers and no body", async () => {
    const answer = await get("/", [], "HEAD");
    expect(answer).toMatchObject({ status: 200, body: "" });
    expect(answer.headers.get("content-length")).toBe(String(page.length));
    expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
  });

  test("a query does not change the file", async () => {
    expect(await get("/?topic=emc")).toMatchObject({ status: 200, body: page });
  });

  test.each(["/nothing", "/assets", "/assets/", "/index.html/", `/${"a".repeat(5000)}`, "/%ff"])(
    "%.20s is not there",
    async (path) => {
      const answer = await get(path);
      expect(answer.status).toBe(404);
      expect(answer.headers.get("content-type")).toMatch(/^text\/plain/);
    },
  );

  test("nothing but GET and HEAD", async () => {
    for (const method of ["POST", "PUT", "DELETE", "PATCH", "OPTIONS"]) {
      const answer = await get("/", ["Content-Length: 0"], method);
      expect(answer.status).toBe(405);
      expect(answer.headers.get("allow")).toBe("GET, HEAD");
    }
  });
});

describe("what stays inside", () => {
  test.each([
    "/../outside.txt",
    "/assets/../../outside.txt",
    "/%2e%2e/outside.txt",
    "/..%2foutside.txt",
    "/..%5coutside.txt",
    "/..\\outside.txt",
    "/%2e%2e%2foutside.txt",
    "/..%252foutside.txt",
    "/../web-sibling.txt",
    "//outside.txt",
    "/link.txt",
    "/.hidden",
    "/%2ehidden",
    "/index.html%00.txt",
    "/C:/Windows/win.ini",
    "/%2fetc%2fpasswd",
  ])("%s is refused", async (path) => {
    const answer = await get(path);
    // 400 where the address cannot be one at all, which is decided before our routes.
    expect([400, 404]).toContain(answer.status);
    expect(answer.body).not.toContain(outside);
  });
});

describe("who is answered", () => {
  test.each([
    ["another name", ["Host: latewood.example"]],
    ["another name at our port", ["Host: latewood.example:PORT"]],
    ["another port", ["Host: localhost:1"]],
    ["no port", ["Host: localhost"]],
    ["a name that only begins like ours", ["Host: localhost.example:PORT"]],
    ["a name that only ends like ours", ["Host: evil-localhost:PORT"]],
    ["a user before the name", ["Host: localhost:PORT@latewood.example"]],
    ["an address of the network", ["Host: 192.168.1.5:PORT"]],
    ["every address", ["Host: 0.0.0.0:PORT"]],
    ["an empty name", ["Host: "]],
    ["two names", ["Host: localhost:PORT", "Host: latewood.example"]],
  ])("Host with %s is refused", async (_, lines) => {
    const real = lines.map((line) => line.replace("PORT", String(server.port)));
    const answer = await ask(server.port, ["GET / HTTP/1.1", ...real]);
    // 400 is Node's own word for two Host lines, given before we see the request.
    expect([400, 421]).toContain(answer.status);
    expect(answer.body).not.toContain(page);
  });

  test("a missing Host is refused", async () => {
    expect((await ask(server.port, ["GET / HTTP/1.1"])).status).toBe(400);
    expect((await ask(server.port, ["GET / HTTP/1.0"])).status).toBe(421);
  });

  test("the refusal says in plain text where the server is", async () => {
    const answer = await ask(server.port, ["GET / HTTP/1.1", "Host: latewood.example"]);
    expect(answer.status).toBe(421);
    expect(answer.headers.get("content-type")).toMatch(/^text\/plain/);
    expect(answer.body).toContain(`http://localhost:${server.port}/`);
  });

  test("a whole address in place of a path is refused", async () => {
    expect((await get("http://latewood.example/")).status).toBe(400);
  });

  test.each(["http://latewood.example", "http://localhost:1", "https://localhost:PORT", "null"])(
    "sending from %s is refused",
    async (origin) => {
      const line = `Origin: ${origin.replace("PORT", String(server.port))}`;
      const answer = await get("/", [line, "Content-Length: 0"], "POST");
      expect(answer.status).toBe(403);
      expect(answer.headers.get("content-type")).toMatch(/^text\/plain/);
    },
  );

  test("our own page is not refused for its origin", async () => {
    const line = `Origin: http://127.0.0.1:${server.port}`;
    expect((await get("/", [line, "Content-Length: 0"], "POST")).status).toBe(405);
  });
});

test("every answer carries the strict headers", async () => {
  const answers = [
    await get("/"),
    await get("/nothing"),
    // A worker is under the policy that its own script comes with.
    await get("/assets/index-Ab3_dE-9.js"),
    await get("/api/pieces"),
    await get("/api/nothing"),
    await get("/schema/piece-1.json"),
    await get("/", [], "HEAD"),
    await get("/", ["Content-Length: 0"], "POST"),
    await ask(server.port, ["GET / HTTP/1.1", "Host: latewood.example"]),
  ];
  for (const { headers } of answers) {
    const policy = headers.get("content-security-policy")?.split("; ");
    expect(policy).toEqual([
      "default-src 'none'",
      "script-src 'self' 'wasm-unsafe-eval'",
      "style-src 'self'",
      "img-src 'self' data:",
      "font-src 'self'",
      "connect-src 'self'",
      "worker-src 'self'",
      "manifest-src 'self'",
      "base-uri 'none'",
      "form-action 'none'",
      "frame-ancestors 'none'",
    ]);
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(headers.get("referrer-policy")).toBe("no-referrer");
    expect(headers.get("cross-origin-opener-policy")).toBe("same-origin");
    expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
    expect(headers.get("permissions-policy")).toContain("camera=()");
    expect(headers.get("access-control-allow-origin")).toBeUndefined();
  }
});

describe("ports", () => {
  test("a taken port is passed over and named", async () => {
    const second = await startServer({ webRoot, port: server.port, ...holdings });
    try {
      expect(second.taken[0]).toBe(server.port);
      expect(second.port).toBeGreaterThan(server.port);
      expect(second.url).toBe(`http://localhost:${second.port}/`);
      const lines = ["GET / HTTP/1.1", `Host: localhost:${second.port}`];
      expect((await ask(second.port, lines)).status).toBe(200);
    } finally {
      await second.close();
    }
  });

  test("a port taken on one of the two loopback addresses alone is passed over too", async () => {
    const other = createServer();
    await new Promise<void>((settle) => other.listen(0, "127.0.0.1", settle));
    const address = other.address();
    const port = typeof address === "object" && address !== null ? address.port : 0;
    const second = await startServer({ webRoot, port, ...holdings });
    try {
      expect(second.taken[0]).toBe(port);
    } finally {
      await second.close();
      await new Promise((settle) => other.close(settle));
    }
  });

  test("no port is left above 65535", async () => {
    const top = await startServer({ webRoot, port: 65_535, ...holdings });
    try {
      await expect(startServer({ webRoot, port: 65_535, ...holdings })).rejects.toMatchObject({
        first: 65_535,
        last: 65_535,
      });
    } finally {
      await top.close();
    }
  });

  test("closing ends open connections and frees the port", async () => {
    const first = await startServer({ webRoot, port: 0, host: "127.0.0.1", ...holdings });
    const lines = ["GET / HTTP/1.1", `Host: localhost:${first.port}`];
    const socket = connect(first.port, "127.0.0.1");
    const ended = new Promise((settle) => socket.once("close", settle));
    const answered = new Promise((settle) => socket.once("data", settle));
    socket.write(`${lines.join("\r\n")}\r\n\r\n`);
    await answered;
    await first.close();
    await ended;
    await expect(ask(first.port, lines)).rejects.toMatchObject({ code: "ECONNREFUSED" });
  });
});

describe("opening the browser", () => {
  const url = "http://localhost:5217/";
  test.each([
    ["linux", { DISPLAY: ":0" }, ["xdg-open", url]],
    ["linux", { WAYLAND_DISPLAY: "wayland-0" }, ["xdg-open", url]],
    ["linux", {}, undefined],
    ["darwin", {}, ["open", url]],
    ["darwin", { SSH_CONNECTION: "a b" }, undefined],
    ["win32", {}, ["cmd", "/c", "start", "", url]],
    ["win32", { CI: "true" }, undefined],
    ["linux", { DISPLAY: ":0", CI: "1" }, undefined],
  ] as const)("on %s with %o", (platform, env, command) => {
    expect(openCommand(url, platform, env)).toEqual(command);
  });
});
