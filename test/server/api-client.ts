import { expect } from "vitest";

/** What the API answered. */
export type Answer = {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: whatever was answered; tests say what they expect
  readonly body: any;
};

async function answered(response: Response): Promise<Answer> {
  const text = await response.text();
  const isJson = response.headers.get("content-type")?.includes("json") === true;
  const body = isJson && text !== "" ? JSON.parse(text) : undefined;
  return { status: response.status, headers: response.headers, text, body };
}

/** Asks a server of ours as a program does. */
export const clientOf = (url: () => string) => ({
  get: async (path: string, method = "GET") => answered(await fetch(`${url()}${path}`, { method })),
  post: async (path: string, body: unknown = {}) =>
    answered(
      await fetch(`${url()}${path}`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(body),
      }),
    ),
  /** a body and a type as they are */
  send: async (path: string, body: string | Uint8Array<ArrayBuffer>, type?: string) =>
    answered(
      await fetch(`${url()}${path}`, {
        method: "POST",
        headers: type === undefined ? {} : { "content-type": type },
        body: typeof body === "string" ? new TextEncoder().encode(body) : body,
      }),
    ),
});

/** A refusal: its status and codes; each problem whole, and never kept by anybody. */
export function refusal({ status, body, headers }: Answer): readonly [number, ...string[]] {
  expect(headers.get("cache-control")).toBe("no-store");
  expect(Object.keys(body)).toEqual(["problems"]);
  for (const problem of body.problems) {
    expect(Object.keys(problem)).toEqual(["code", "place", "reason", "remedy"]);
    for (const words of Object.values(problem)) expect(String(words).length).toBeGreaterThan(2);
  }
  return [status, ...body.problems.map(({ code }: { code: string }) => code)];
}
