import fc from "fast-check";
import { expect, test } from "vitest";
import { LONGEST_LINE, type LongLine, linesOf } from "../../src/cli/lines.ts";

async function read(pieces: readonly string[]): Promise<readonly (string | LongLine)[]> {
  async function* text() {
    yield* pieces;
  }
  const lines: (string | LongLine)[] = [];
  for await (const line of linesOf(text())) lines.push(line);
  return lines;
}

const filled = (lines: readonly (string | LongLine)[]) => lines.filter((line) => line !== "");

test("any lines, with any of the three ends and parted anywhere, come back", () =>
  fc.assert(
    fc.asyncProperty(
      fc.array(fc.string({ unit: fc.constantFrom("a", ",", " ", "½", "{"), minLength: 1 })),
      fc.constantFrom("\n", "\r\n", "\r"),
      fc.integer({ min: 1, max: 7 }),
      async (lines, end, size) => {
        const text = lines.join(end);
        const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, i) =>
          text.slice(i * size, (i + 1) * size),
        );
        expect(filled(await read(pieces))).toEqual(lines);
      },
    ),
  ));

test.each([1, 1000, 10 ** 6])(
  "a line at the limit is kept, one above it is told once, in pieces of %i",
  async (size) => {
    const longest = "x".repeat(LONGEST_LINE);
    const text = `a\n${longest}\n  ${longest}\n${longest.repeat(3)}\nb\n${longest}`;
    const pieces = text.match(new RegExp(`[^]{1,${size}}`, "g")) ?? [];
    const long = { begins: "x".repeat(40) };
    expect(filled(await read(pieces))).toEqual(["a", longest, long, long, "b", longest]);
  },
);

test("a line without an end is told before it ends", async () => {
  let taken = 0;
  async function* endless() {
    for (;;) {
      taken += 1000;
      yield " ".repeat(1000);
    }
  }
  const first = await linesOf(endless()).next();
  expect(first.value).toEqual({ begins: "" });
  expect(taken).toBeLessThanOrEqual(LONGEST_LINE + 1000);
});
