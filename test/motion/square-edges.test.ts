import fc from "fast-check";
import { expect, test } from "vitest";
import { squareBind, squareGapDown, squareRoom } from "../../src/motion/index.ts";
import { mm } from "../../src/units/index.ts";
import { depthAt, sweptSquare } from "../kit/square-sweep.ts";

/** Sizes spread evenly: drawn at the ends of their ranges, few would be near binding. */
const between = (least: number, most: number) =>
  fc.integer({ min: 0, max: 10000 }).map((n) => least + ((most - least) * n) / 10000);

const anySquare = fc.record({
  thickness: between(15, 30).map(mm),
  setOut: between(0, 3).map(mm),
  pinOut: between(-2, 5).map(mm),
  pinHeight: between(-5, 6).map(mm),
});

test("square edges bind, by turned corners and by the formula, just when two outlines run into each other", () => {
  let [free, bound] = [0, 0];
  fc.assert(
    fc.property(anySquare, (edges) => {
      const { deepest, first } = sweptSquare(edges);
      // A sweep in steps may miss the slightest touch.
      if (Math.abs(deepest) < 0.001) return;
      const bind = squareBind(edges);
      expect(bind === undefined).toBe(first === undefined);
      expect(squareRoom(edges).value < 0).toBe(bind !== undefined);
      if (bind === undefined || first === undefined) return void free++;
      bound++;
      // They touch where it is said to begin, and the sweep finds no more than that up to there.
      expect(Math.abs(depthAt(edges, bind.swing))).toBeLessThan(1e-5);
      expect(bind.swing).toBeLessThan(first + 0.001);
    }),
    { numRuns: 500 },
  );
  expect(Math.min(free, bound)).toBeGreaterThan(100);
});

test("over the middle of the gap the pin may lie half as high as the gap is wide, and no higher", () => {
  const at = (height: number) => ({
    thickness: mm(20),
    setOut: mm(2),
    pinOut: mm(1),
    pinHeight: mm(height),
  });
  expect(squareBind(at(0.999))).toBeUndefined();
  expect(squareBind(at(1.01))?.contact).toMatch(/lower edge/);
  expect(squareRoom(at(1)).value).toBeCloseTo(0, 9);
  // Half the gap over the pin's height is the tangent of half the swing at which they touch.
  expect(squareBind(at(4))?.swing).toBeCloseTo((360 / Math.PI) * Math.atan(1 / 4), 6);
  expect(squareGapDown(at(-2)).value).toBe(3);
});
