import { describe, expect, test } from "vitest";
import {
  anyCommand,
  anyDimension,
  readAnyway,
  runAnyway,
  smallest,
  type Verdict,
} from "./checks.ts";
import { anyString, seeded } from "./strings.ts";

function tally(into: Map<string, number>, verdicts: readonly Verdict[]): void {
  for (const { came } of verdicts) into.set(came, (into.get(came) ?? 0) + 1);
}

describe("whatever is typed", () => {
  test("100,000 strings: each is read as a finite number, or refused with place and remedy", () => {
    const chance = seeded(20260101);
    const came = new Map<string, number>();
    for (let i = 0; i < 100_000; i++) {
      const text = anyString(chance);
      const verdicts = readAnyway(text, anyDimension(chance));
      const wrong = verdicts.find((v) => v.wrong);
      if (wrong) expect.fail(`${JSON.stringify(text)}: ${JSON.stringify(wrong)}`);
      tally(came, verdicts);
    }
    // Strings that are all refused alike would prove little.
    expect(came.get("read")).toBeGreaterThan(20_000);
    const lengthCodes = [...came.keys()].filter((c) => c.startsWith("length-")).sort();
    expect(lengthCodes).toEqual([
      "length-comma-not-metric",
      "length-comma-three-digits",
      "length-empty",
      "length-extra",
      "length-feet-not-whole",
      "length-fraction-improper",
      "length-fraction-zero",
      "length-inches-over-twelve",
      "length-mixed",
      "length-not-a-number",
      "length-too-large",
      "length-too-long",
      "length-unit-unknown",
    ]);
  });

  test("10,000 command lines: each is answered in finite figures, or refused so", async () => {
    const chance = seeded(20260102);
    const came = new Map<string, number>();
    for (let i = 0; i < 10_000; i++) {
      const argv = anyCommand(chance);
      const verdicts = await runAnyway(argv);
      const wrong = verdicts.find((v) => v.wrong);
      if (wrong) expect.fail(`${JSON.stringify(argv)}: ${JSON.stringify(wrong)}`);
      tally(came, verdicts);
    }
    for (const [code, least] of [
      ["figure", 1000],
      ["out-of-range", 100],
      ["length-extra", 100],
      ["species-unknown", 100],
      ["missing", 100],
      ["refused in words", 100],
      ["option-unknown", 10],
      ["stray-word", 10],
    ] as const) {
      expect(came.get(code), code).toBeGreaterThan(least);
    }
  });
});

describe("the strings themselves", () => {
  const some = (seed: number) => {
    const chance = seeded(seed);
    return Array.from({ length: 3000 }, () => anyString(chance));
  };

  test("come again with their seed, and differ without it", () => {
    expect(some(1)).toEqual(some(1));
    expect(some(1)).not.toEqual(some(2));
  });

  test("are of every kind", () => {
    const all = some(3);
    expect(new Set(all).size).toBeGreaterThan(1800);
    expect(all.some((t) => t === "")).toBe(true);
    expect(Math.max(...all.map((t) => t.length))).toBeGreaterThan(1000);
    for (const part of ["\0", "\ud800", "½", "″", "__proto__", "<script>", "\u2009"]) {
      expect(
        all.some((t) => t.includes(part)),
        JSON.stringify(part),
      ).toBe(true);
    }
  });

  test("a failing one is cut down to what makes it fail", async () => {
    expect(await smallest("12 mm and 5' 6\" more", (t) => t.includes("5'"))).toBe("5'");
    expect(await smallest("abc", () => true)).toBe("");
    expect(await smallest("abc", (t) => t === "abc")).toBe("abc");
  });
});
