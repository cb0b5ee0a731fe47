import { readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { rooms } from "../../src/rooms.ts";
import { boundaryBreaches } from "./boundaries.ts";
import { readSources, root } from "./sources.ts";

const breaches = (path: string, text: string) =>
  boundaryBreaches(new Map([[path, text]]), rooms).map(({ rule, place }) => `${rule} ${place}`);

describe("the table of rooms", () => {
  test("each room imports only rooms above it, and none is named twice", () => {
    const names = rooms.map((room) => room.name);
    expect(new Set(names).size).toBe(names.length);
    for (const [at, room] of rooms.entries()) {
      const above = names.slice(0, at);
      expect(
        room.mayImport.filter((name) => !above.includes(name)),
        room.name,
      ).toEqual([]);
    }
  });

  test("the core leans on nothing outside the core", () => {
    const doors = rooms.filter((room) => !room.core).map((room) => room.name);
    for (const room of rooms.filter((one) => one.core)) {
      expect(
        room.mayImport.filter((name) => doors.includes(name)),
        room.name,
      ).toEqual([]);
    }
  });

  test("every folder of src is in it", () => {
    const folders = readdirSync(join(root, "src"), { withFileTypes: true })
      .filter((found) => found.isDirectory())
      .map((found) => found.name);
    expect(folders.length).toBeGreaterThan(0);
    expect(folders.filter((name) => !rooms.some((room) => room.name === name))).toEqual([]);
  });
});

test("the sources keep to it", () => {
  const sources = readSources("src");
  expect(sources.size).toBeGreaterThan(1);
  expect(boundaryBreaches(sources, rooms)).toEqual([]);
});

describe("a planted breach is caught", () => {
  test.each([
    ["a room not in the table", "src/attic/x.ts", "", "unknown-room src/attic/x.ts"],
    ["a file beside the rooms", "src/loose.ts", "", "unknown-room src/loose.ts"],
    ["an import from no room", "src/wood/x.ts", 'import "../attic/y.ts";', "unknown-room"],
    ["an import upwards", "src/units/x.ts", 'import { a } from "../wood/index.ts";', "arrow"],
    [
      "a type import upwards",
      "src/units/x.ts",
      'import type { A } from "../wood/index.ts";',
      "arrow",
    ],
    ["an export from above", "src/units/x.ts", 'export { a } from "../wood/index.ts";', "arrow"],
    ["a whole export from above", "src/units/x.ts", 'export * from "../wood/index.ts";', "arrow"],
    ["a late import from above", "src/units/x.ts", 'await import("../wood/index.ts");', "arrow"],
    ["an import in a type", "src/units/x.ts", 'let a: import("../wood/index.ts").A;', "arrow"],
    ["an old import", "src/units/x.ts", 'import a = require("../wood/index.ts");', "arrow"],
    [
      "a worker from above",
      "src/units/x.ts",
      'new URL("../wood/index.ts", import.meta.url);',
      "arrow",
    ],
    [
      "web at the store",
      "src/web/shape/x.tsx",
      'import { a } from "../../store/index.ts";',
      "arrow",
    ],
    ["a room by its window", "src/wood/x.ts", 'import { a } from "../units/length.ts";', "door"],
    [
      "a deep window",
      "src/wood/data/x.ts",
      'import { a } from "../../units/data/index.ts";',
      "door",
    ],
    ["something outside src", "src/wood/x.ts", 'import "../../test/kit/a.ts";', "outside"],
    ["a computed import", "src/wood/x.ts", "await import(name);", "unreadable-import"],
    ["node in the core", "src/wood/x.ts", 'import { readFileSync } from "node:fs";', "node-import"],
    ["node in the web", "src/web/x.ts", 'import { join } from "node:path";', "node-import"],
    ["React in the core", "src/wood/x.ts", 'import type { FC } from "react";', "package"],
    ["any package in the core", "src/wood/x.ts", 'import { z } from "zod/v4";', "package"],
    ["an unlisted package in a door", "src/web/x.ts", 'import { Hono } from "hono";', "package"],
    ["a lookalike package", "src/web/x.ts", 'import "react-other/react";', "package"],
  ])("%s", (_, path, text, found) => {
    const all = breaches(path, text);
    expect(all).toHaveLength(1);
    expect(all[0]).toContain(found);
  });

  test.each([
    "const now = Date.now();",
    "const now = new Date();",
    "const x = Math.random();",
    'const x = Math["random"]();',
    "const { random } = Math;",
    "const m = Math;",
    "fetch(address);",
    "window.alert(1);",
    "if (typeof document === 'undefined') {}",
    "const env = process.env;",
    "performance.now();",
    "setTimeout(() => 1, 5);",
    "globalThis.fetch;",
    "const later = { fetch };",
    "const later = { [process]: 1 };",
    "function f(window: number) { return window; } f(window);",
    "{ const fetch = 1; } fetch;",
    "for (const document of []) {} document;",
    "const f = (at = Date) => at;",
    "class A { made = Date.now(); }",
    "const a = fetch as unknown;",
    "const a = fetch!;",
    "const a = document satisfies object;",
    `const text = \`\${Date.now()}\`;`,
  ])("%s", (text) => {
    const all = breaches("src/wood/x.ts", text);
    expect(all.length).toBeGreaterThan(0);
    for (const breach of all) expect(breach).toMatch(/^free-global src\/wood\/x\.ts:1$/);
  });
});

describe("what is allowed is let through", () => {
  test.each([
    ["src/wood/x.ts", 'import { mm } from "../units/index.ts"; import "./data/oak.ts";'],
    ["src/wood/x.ts", 'import { mm } from "../units";'],
    ["src/wood/data/x.ts", 'import type { A } from "../a.ts"; import oak from "./oak.json";'],
    [
      "src/server/x.ts",
      'import { Hono } from "hono"; import { join } from "node:path"; Date.now();',
    ],
    ["src/server/x.ts", 'import { stream } from "hono/streaming";'],
    ["src/web/x.tsx", 'import { createRoot } from "react-dom/client"; <p>{Date.now()}</p>;'],
    ["src/web/x.ts", 'import look from "./look.css?inline"; fetch("api");'],
    ["src/wood/x.ts", '// Date.now()\nconst says = "window process fetch";'],
    ["src/wood/x.ts", "const a = piece.window; const b = { document: 1, process() {} };"],
    ["src/wood/x.ts", "const a = piece?.fetch; class A { fetch = 1; window() {} }"],
    ["src/wood/x.ts", "type A = Date; let b: typeof fetch; interface C { window: Window }"],
    ["src/wood/x.ts", "const f = (process: number) => process; const { fetch } = f; fetch;"],
    ["src/wood/x.ts", "function f() { { var document = 1; } return document; }"],
    ["src/wood/x.ts", "const a = Math.max(1, 2) * Math.PI; const b = Math['sin'](1);"],
    ["src/wood/x.ts", "try { a(); } catch (window) { throw window; }"],
    ["src/wood/x.ts", "const { window: pane } = frame; pane;"],
    ["src/rooms.ts", "export const rooms = [];"],
  ])("%s: %s", (path, text) => {
    expect(breaches(path, text)).toEqual([]);
  });
});
