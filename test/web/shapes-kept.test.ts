import fc from "fast-check";
import { expect, test } from "vitest";
import { createSentShapes } from "../../src/web/piece/sent-shapes.ts";
import type { Told } from "../../src/web/piece/talk.ts";
import { nothingWorked, told } from "../../src/web/piece/told.ts";
import type { DrawnPart, Shape } from "../../src/workup/index.ts";

const shape = {} as Shape;
const figuresOf = (ask: number, names: readonly string[]) => {
  const parts = names.map((name) => ({ shape: name }));
  return { ask, kind: "figures", workup: {}, parts } as unknown as Told;
};

/** What a worker tells of a piece with these shapes; broken off, by a newer request, after some. */
function telling(sent: ReturnType<typeof createSentShapes>, ask: number, names: readonly string[]) {
  return (most: number): readonly Told[] => {
    const all: Told[] = [figuresOf(ask, names)];
    const keep = sent.forgetBut(names);
    if (keep) all.push({ ask, kind: "forget", keep });
    for (const key of names.filter((one) => !sent.has(one)).slice(0, most)) {
      sent.add(key);
      all.push({ ask, kind: "shape", key, shape });
    }
    return all;
  };
}

const pieces = fc.array(
  fc.record({
    names: fc.uniqueArray(fc.integer({ min: 0, max: 60 }).map(String), { maxLength: 12 }),
    most: fc.integer({ min: 0, max: 12 }),
    isPassedOver: fc.boolean(),
  }),
  { minLength: 1, maxLength: 40 },
);

test("the page always has what its worker believes it has, and what it shows, and no end of others", () =>
  fc.assert(
    fc.property(pieces, (all) => {
      const sent = createSentShapes(20);
      let page = nothingWorked;
      for (const [ask, { names, most, isPassedOver }] of all.entries()) {
        const before = page.parts.filter((part) => page.shapes.has(part.shape));
        const newest = isPassedOver ? ask + 1 : ask;
        for (const data of telling(sent, ask, names)(most)) page = told(page, data, newest);
        for (let name = 0; name <= 60; name++)
          if (sent.has(String(name))) expect(page.shapes.has(String(name))).toBe(true);
        // A piece that stays on the screen loses no shape that it had.
        if (isPassedOver)
          expect(
            page.parts.filter((part) => page.shapes.has(part.shape)).length,
          ).toBeGreaterThanOrEqual(before.length);
        expect(page.shapes.size).toBeLessThanOrEqual(20 + 3 * 12);
      }
      // Worked to its end, a piece has all its shapes.
      const { names } = all.at(-1) as (typeof all)[number];
      for (const data of telling(sent, all.length, names)(99)) page = told(page, data, all.length);
      const bare = (page.parts as readonly DrawnPart[]).filter(
        (part) => !page.shapes.has(part.shape),
      );
      expect(bare).toEqual([]);
    }),
  ));

test("nothing is forgotten while there are few", () => {
  const sent = createSentShapes(2);
  for (const name of ["a", "b"]) sent.add(name);
  expect(sent.forgetBut(["a"])).toBeUndefined();
  sent.add("c");
  expect(sent.forgetBut(["c", "d", "a"])).toEqual(["c", "a"]);
  expect(["a", "b", "c"].map(sent.has)).toEqual([true, false, true]);
});
