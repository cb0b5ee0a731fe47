import { describe, expect, test } from "vitest";
import { rooms } from "../../src/rooms.ts";
import { brandNames, functionDocBreaches } from "./function-docs.ts";
import { readSources } from "./sources.ts";

const brands = [
  "src/units/brands.ts",
  'type Unit<U> = number & { u: U };\nexport type Mm = Unit<"mm">;\nexport type Kg = Unit<"kg">;\nexport type Other = { u: 1 };',
] as const;

const found = (text: string, path = "src/wood/x.ts") =>
  functionDocBreaches(new Map([brands, [path, text]]), rooms).map(
    ({ rule, place }) => `${rule} ${place}`,
  );

test("the brands are read from the units room", () => {
  expect([...brandNames(new Map([brands]))]).toEqual(["Mm", "Kg"]);
  const real = brandNames(readSources("src"));
  expect([...real]).toEqual(expect.arrayContaining(["Mm"]));
});

test("every export of the core says its units", () => {
  expect(functionDocBreaches(readSources("src"), rooms)).toEqual([]);
});

describe("a planted breach is caught", () => {
  test.each([
    ["no doc", "export function f() {}", "no-doc"],
    ["no doc on a constant", "export const f = () => 1;", "no-doc"],
    ["no doc on a default", "export default function () {}", "no-doc"],
    ["no doc on a later export", "function f() {}\nexport { f };", "no-doc"],
    ["a line comment for a doc", "// Says what.\nexport function f() {}", "no-doc"],
    ["a doc of tags alone", "/** @returns it */\nexport function f() {}", "no-doc"],
    ["an undocumented argument", "/** What. */\nexport function f(a: Mm) {}", "param-unit"],
    ["no unit", "/** What.\n * @param a width */\nexport function f(a: Mm) {}", "param-unit"],
    [
      "the unit of another",
      "/** What.\n * @param a width\n * @param b [mm] */\nexport const f = (a: Mm, b: Mm) => a;",
      "param-unit",
    ],
    ["a unit without @param", "/** What, in [mm]. */\nexport function f(a: Mm) {}", "param-unit"],
    ["an empty unit", "/** What.\n * @param a [] */\nexport function f(a: Mm) {}", "param-unit"],
    ["a wrapped brand", "/** What. */\nexport function f(a: Known<Mm>) {}", "param-unit"],
    ["a worked brand", "/** What. */\nexport function f(a: Worked<Kg>) {}", "param-unit"],
    ["a list", "/** What. */\nexport function f(a: readonly Mm[]) {}", "param-unit"],
    ["an optional", "/** What. */\nexport function f(a?: Mm) {}", "param-unit"],
    ["a default", "/** What. */\nexport function f(a: Mm = mm(1)) {}", "param-unit"],
    ["the rest", "/** What. */\nexport function f(...a: Mm[]) {}", "param-unit"],
    ["one of two", "/** What. */\nexport function f(a: Mm | string) {}", "param-unit"],
    ["a typed constant", "/** What. */\nexport const f: (a: Mm) => Mm = (a) => a;", "param-unit"],
    ["a bare number", "/** What. */\nexport function f(a: number) {}", "param-unit"],
    ["a bare default", "/** What. */\nexport function f(a = 2) {}", "param-unit"],
    [
      "a member of an argument",
      "/** What.\n * @param a sizes */\nexport function f(a: { b: Mm }) {}",
      "param-unit",
    ],
    [
      "a taken-apart argument",
      "/** What. */\nexport function f({ b }: { b: Mm }) {}",
      "param-unit",
    ],
    [
      "an overload",
      "/** What. */\nexport function f(a: Mm): void;\n/** @param a [mm] */\nfunction f(a: Mm) {}",
      "param-unit",
    ],
    ["a member", "export interface A { a: Mm }", "member-unit"],
    ["a member with a line comment", "export interface A {\n// [mm]\na: Mm }", "member-unit"],
    ["a member without its unit", "export type A = { /** Width. */ a: Mm };", "member-unit"],
    ["a deep member", "export type A = { b: { a: Known<Mm> } } & B;", "member-unit"],
    [
      "a member after a documented one",
      "export type A = { /** [mm] */ a: Mm; b: Mm };",
      "member-unit",
    ],
  ])("%s", (_, text, rule) => {
    const all = found(text);
    expect(all).toHaveLength(1);
    expect(all[0]).toMatch(new RegExp(`^${rule} src/wood/x\\.ts:\\d+$`));
  });

  test("a brand without its unit, in the units room too", () => {
    expect(found("/** What. */\nexport function f(a: Mm) {}", "src/units/x.ts")).toHaveLength(1);
  });
});

describe("what is allowed is let through", () => {
  test.each([
    [
      "/** What.\n *\n * @param a width, measured\n *   across the grain [mm]\n */\nexport function f(a: Mm) {}",
    ],
    ["/** What.\n * @param a share [1] */\nexport const f = (a: number) => a;"],
    ["/** What.\n * @param a.b width [mm] */\nexport function f({ b }: { b: Mm }) {}"],
    ["/** What. */\nexport function f(a: { /** Width [mm]. */ b: Mm }) {}"],
    ["/** What. */\nexport function f(a: string, b: Piece) {}"],
    ["/** What.\n * @param a width [mm] */\nfunction f(a: Mm) {}\nexport { f };"],
    ["function f(a: Mm) {}\ninterface A { a: Mm }"],
    ["export interface A { /** Width [mm]. */ readonly a: Mm; readonly n: number }"],
    ['export { f } from "./y.ts"; export type { A } from "./z.ts";'],
    ["export const width = mm(3);"],
  ])("%s", (text) => {
    expect(found(text)).toEqual([]);
  });

  test("bare numbers in units and geometry, tables, and the doors", () => {
    expect(found("/** What. */\nexport function f(a: number) {}", "src/units/x.ts")).toEqual([]);
    expect(found("/** What. */\nexport function f(a: number) {}", "src/geometry/x.ts")).toEqual([]);
    expect(found("export function f(a: Mm) {}", "src/wood/data/x.ts")).toEqual([]);
    expect(found("export function f(a: Mm) {}", "src/cli/x.ts")).toEqual([]);
  });
});
