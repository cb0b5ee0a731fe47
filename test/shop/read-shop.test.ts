import { describe, expect, test } from "vitest";
import { demoShop, readShop, shopAsks } from "../../src/shop/index.ts";

const shop = (more: Record<string, unknown>) =>
  JSON.stringify({ format: "latewood-shop", version: 1, ...more });
const codes = (text: string) => {
  const read = readShop(text);
  return read.ok ? [] : read.problems.map(({ code, place }) => `${code} ${place}`);
};

test("what is left out is the demo shop's; what is given is the shop's own, and no demo", () => {
  const read = readShop(
    shop({ name: "Ours", units: "inch", chisels: ["3/8", "1/4"], "extra-length": "2" }),
  );
  if (!read.ok) throw new Error("refused");
  expect(read.shop).toEqual({
    ...demoShop,
    name: "Ours",
    isDemo: false,
    chisels: [6.35, (3 / 8) * 25.4],
    extraLength: 50.8,
  });
});

test("the demo shop's own figures are those its questions fall back on", () => {
  const read = readShop(
    shop(Object.fromEntries(Object.entries(shopAsks).map(([name, q]) => [name, q.fallback]))),
  );
  expect(read.ok && { ...read.shop, name: demoShop.name, isDemo: true }).toEqual(demoShop);
});

describe("a wrong file is refused with every fault", () => {
  test.each([
    ["no JSON", "{", ["not-json the shop’s file"]],
    ["a list", "[]", ["not-json the shop’s file"]],
    [
      "a piece's file",
      JSON.stringify({ format: "latewood-piece", version: 1 }),
      ["not-this format"],
    ],
    ["a later version", shop({ version: 2 }), ["version-unknown version"]],
    ["an unknown field", shop({ colour: "red" }), ["field-unknown colour"]],
    [
      "several",
      shop({ "extra-length": "much", "extra-width": 6, units: "ell" }),
      [
        "not-a-choice units",
        "length-not-a-number extra-length, at character 1, “m”",
        "wrong-type extra-width",
      ],
    ],
    ["no chisels", shop({ chisels: [] }), ["wrong-type chisels"]],
    [
      "a chisel too wide",
      shop({ chisels: ["1 m"] }),
      ["out-of-range chisels, number 1, at character 1, “1 m”"],
    ],
  ])("%s", (_, text, expected) => {
    expect(codes(text)).toEqual(expected);
  });
});
