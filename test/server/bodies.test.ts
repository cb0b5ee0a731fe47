import { request } from "node:http";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type RunningServer, startServer } from "../../src/server/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { memoryStore } from "../../src/store/index.ts";
import { clientOf, refusal } from "./api-client.ts";

let server: RunningServer;
const { post, send } = clientOf(() => server.url);

beforeAll(async () => {
  const store = await memoryStore();
  server = await startServer({ webRoot: ".", port: 0, store, shop: demoShop });
});
afterAll(() => server.close());

/** A fresh piece, by its id. */
async function made(name = "Hall table"): Promise<string> {
  const { status, body } = await post("api/pieces", { kind: "plain-table", name, units: "mm" });
  expect(status).toBe(201);
  return body.id;
}

describe("bodies that cannot be read", () => {
  test.each<[string, string, string | undefined, readonly [number, string]]>([
    ["of a form", "kind=plain-table", "application/x-www-form-urlencoded", [415, "body-not-json"]],
    ["of plain text", "{}", "text/plain", [415, "body-not-json"]],
    ["of no type", "{}", undefined, [415, "body-not-json"]],
    ["of a lookalike type", "{}", "application/jsonx", [415, "body-not-json"]],
    ["empty", "", "application/json", [400, "not-json"]],
    ["cut short", '{"kind": "plain', "application/json", [400, "not-json"]],
    ["a list", "[]", "application/json", [400, "body-form"]],
    ["null", "null", "application/json; charset=utf-8", [400, "body-form"]],
    ["a number", "7", "APPLICATION/JSON", [400, "body-form"]],
  ])("%s", async (_, body, type, expected) => {
    expect(refusal(await send("api/pieces", body, type))).toEqual(expected);
    const id = await made();
    for (const route of ["edits", "undo", "redo", "away", "restore"]) {
      expect(refusal(await send(`api/pieces/${id}/${route}`, body, type))).toEqual(expected);
    }
  });

  test("not in UTF-8", async () => {
    const body = Uint8Array.of(0x7b, 0x22, 0xff, 0x22, 0x7d);
    expect(refusal(await send("api/pieces", body, "application/json"))).toEqual([400, "not-utf8"]);
  });

  test("nested without end", async () => {
    const body = `{"edit":${"[".repeat(1_900_000)}${"]".repeat(1_900_000)}}`;
    const id = await made();
    const answer = await send(`api/pieces/${id}/edits`, body, "application/json");
    expect(refusal(answer)[0]).toBe(400);
  });

  /** Sends a head, and then as much as the server takes, in pieces. */
  const pour = (headers: Readonly<Record<string, string>>, megabytes: number) =>
    new Promise<{ status: number; body: string; sent: number }>((settle, fail) => {
      let sent = 0;
      const sending = request(
        {
          ...{ host: "127.0.0.1", port: server.port, path: "/api/pieces", method: "POST" },
          headers: {
            "content-type": "application/json",
            ...headers,
            host: `localhost:${server.port}`,
          },
        },
        (response) => {
          let body = "";
          response.on("data", (piece) => {
            body += piece;
          });
          response.on("end", () => {
            settle({ status: response.statusCode ?? 0, body, sent });
            sending.destroy();
          });
        },
      );
      sending.on("error", fail);
      const piece = Buffer.alloc(1_000_000, " ");
      const more = () => {
        if (sent >= megabytes || sending.destroyed) return void sending.end();
        sent += 1;
        sending.write(piece, more);
      };
      if (megabytes === 0) sending.flushHeaders();
      else more();
    });

  test("that declare more than may be are refused before a byte of them is sent", async () => {
    const { status, body, sent } = await pour({ "content-length": "50000000" }, 0);
    expect([status, sent]).toEqual([413, 0]);
    expect(JSON.parse(body).problems[0].code).toBe("body-too-large");
  });

  test("that go on and on are refused on the way", async () => {
    const { status, body, sent } = await pour({ "transfer-encoding": "chunked" }, 200);
    expect(status).toBe(413);
    expect(JSON.parse(body).problems[0].code).toBe("body-too-large");
    expect(sent).toBeLessThan(60);
  });

  test("that are just within it are read", async () => {
    const { status, body } = await pour({ "transfer-encoding": "chunked" }, 3);
    expect([status, JSON.parse(body).problems[0].code]).toEqual([400, "not-json"]);
  });
});
