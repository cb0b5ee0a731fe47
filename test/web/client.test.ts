import { afterEach, expect, test, vi } from "vitest";
import { api, Refused } from "../../src/web/api/index.ts";

afterEach(() => void vi.unstubAllGlobals());

/** Answers every request so, and remembers what was sent. */
function answering(answer: () => Response | Promise<Response>): RequestInit[] {
  const sent: RequestInit[] = [];
  vi.stubGlobal("fetch", async (_: string, request: RequestInit) => {
    sent.push(request);
    return answer();
  });
  return sent;
}

const refusalOf = (asked: Promise<unknown>): Promise<Refused> =>
  asked.then(
    () => expect.fail("it was granted"),
    (fault) => (fault instanceof Refused ? fault : expect.fail(String(fault))),
  );

const problem = { code: "some-problem", place: "here", reason: "So.", remedy: "Do." };
const edit = (name: string) => ({ says: "name", changes: [{ at: ["name"], to: name }] });

test.each([
  [423, true],
  [503, true],
  [507, true],
  [400, false],
  [404, false],
  [409, false],
  [410, false],
  [413, false],
  [500, false],
  [502, false],
])("status %i may pass: %s", async (status, isPassing) => {
  answering(() => Response.json({ problems: [problem] }, { status }));
  const fault = await refusalOf(api.edit("a", edit("b"), 3));
  expect(fault.isPassing).toBe(isPassing);
  expect(fault.said).toEqual([problem]);
});

test("an answer without a problem is told as a mistake, and is final", async () => {
  answering(() => new Response("Latewood made a mistake", { status: 500 }));
  const { isPassing, said } = await refusalOf(api.open("a"));
  expect([isPassing, said.map(({ code }) => code)]).toEqual([false, ["answer-wordless"]]);
});

test.each([
  ["nobody answers", () => Promise.reject(new TypeError("Failed to fetch"))],
  ["the answer breaks off", () => new Response('{"id": "a", "docu')],
])("where %s, the same may be granted later", async (_, answer) => {
  answering(answer);
  const { isPassing, said } = await refusalOf(api.undo("a", 3));
  expect([isPassing, said.map(({ code }) => code)]).toEqual([true, ["no-answer"]]);
});

test("what is sent names its step and outlives the page, unless no browser would carry it", async () => {
  const sent = answering(() => Response.json({}));
  await api.edit("a", edit("b"), 3);
  await api.undo("a", 4);
  await api.redo("a", 5);
  // Two bytes a letter: over the bound in bytes, not in letters.
  await api.edit("a", edit("é".repeat(40_000)), 6);
  expect(sent.map(({ keepalive }) => keepalive)).toEqual([true, true, true, false]);
  expect(sent.map(({ body }) => JSON.parse(String(body)).base)).toEqual([3, 4, 5, 6]);
});
