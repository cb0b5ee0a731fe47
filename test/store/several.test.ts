import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { afterAll, beforeAll, expect, test } from "vitest";
import { sampleDocument } from "../kit/documents.ts";
import { bundled } from "./bundle.ts";
import { newFolder, opened } from "./folders.ts";
import { setting } from "./model.ts";

let child: Awaited<ReturnType<typeof bundled>>;
beforeAll(async () => {
  child = await bundled(new URL("./several-child.ts", import.meta.url));
});
afterAll(() => child.remove());

const run = async (...args: readonly string[]) =>
  (await promisify(execFile)(process.execPath, [child.file, ...args])).stdout;

test("three programs at once edit one piece: every edit is there once, in one chain", async () => {
  const folder = newFolder();
  const store = await opened(folder);
  const id = store.create(sampleDocument());
  const told = Promise.all(["a", "b", "c"].map((who) => run(folder, who, "40", "edit")));
  // And this one among them.
  for (let i = 0; i < 10; i++) {
    store.edit(id, setting(["client"], `d ${i}`));
    await new Promise((settle) => setTimeout(settle, 20));
  }
  await told;
  const made = store.history(id, undefined, 1000).lines;
  expect(made.length).toBe(131);
  expect(new Set(made.map((line) => line.says)).size).toBe(131);
  expect(made.every((line) => line.isSound)).toBe(true);
  expect(store.open(id)).toMatchObject({ step: 130, repairs: [] });
  expect(store.unsoundSteps(id)).toEqual([]);
}, 60_000);

test("three programs at once make the store itself", async () => {
  const folder = newFolder();
  await Promise.all(["a", "b", "c"].map((who) => run(folder, who, "5", "create")));
  const store = await opened(folder);
  expect(store.list().length).toBe(15);
  expect(store.openingRepairs).toEqual([]);
}, 60_000);

test("two stores in one program see each other's steps", async () => {
  const folder = newFolder();
  const [one, other] = [await opened(folder), await opened(folder)];
  const id = one.create(sampleDocument());
  other.edit(id, setting(["note"], "first"));
  expect(one.undo(id)).toMatchObject({ step: 2, redo: "note first" });
  expect(other.redo(id).document.note).toBe("first");
  expect(one.open(id).step).toBe(3);
});
