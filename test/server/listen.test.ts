import { createServer } from "node:http";
import { expect, test } from "vitest";
import { listenOn } from "../../src/server/listen.ts";

test("every error after listening is heard, the first one too", async () => {
  const heard: string[] = [];
  const listening = await listenOn(
    ["127.0.0.1"],
    0,
    () => createServer(),
    (fault) => heard.push(fault.message),
  );
  const server = listening?.servers[0];
  if (server === undefined) throw new Error("no port was free");
  try {
    server.emit("error", new Error("first"));
    server.emit("error", new Error("second"));
    expect(heard).toEqual(["first", "second"]);
  } finally {
    await new Promise((settle) => server.close(settle));
  }
});

test("a taken port is no trouble of a listening server, and leaves no listener behind", async () => {
  const heard: string[] = [];
  const trouble = (fault: Error) => heard.push(fault.message);
  const first = await listenOn(["127.0.0.1"], 0, () => createServer(), trouble);
  const refused = createServer();
  const again = await listenOn(["127.0.0.1"], first?.port ?? 0, () => refused, trouble);
  await Promise.all((first?.servers ?? []).map((s) => new Promise((settle) => s.close(settle))));
  expect(first).toBeDefined();
  expect(again).toBeUndefined();
  expect(heard).toEqual([]);
  expect([refused.listenerCount("error"), refused.listening]).toEqual([0, false]);
});
