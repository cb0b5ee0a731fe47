import { describe, expect, test } from "vitest";
import { type Frame, frameOf } from "../../src/geometry/index.ts";
import { pieceOf } from "../../src/kinds/index.ts";
import { pathsOf, posedAt } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { deg } from "../../src/units/index.ts";
import { faults, plantedIn } from "../kit/planted-leaves.ts";
import { kernel } from "../kit/solids.ts";
import { partOf } from "./samples.ts";

const solids = createSolids(kernel);
const at = (x: number, y = 0, z = 0): Frame => frameOf([x, y, z], [1, 0, 0], [0, 1, 0]);
const box = (key: string, pose: Frame) => partOf([100, 50, 30], [], { key, pose });

describe("something that moves is told where it first runs into what stands", () => {
  const standing = [box("a", at(0)), box("b", at(300, 10)), box("c", at(0, 500))];
  const way = (places: readonly Frame[]) => places.map((pose) => [box("m", pose)]);

  test("at the first pose, each pair once, with the room they share", () => {
    const moving = way([at(150), at(110), at(99), at(80), at(250)]);
    const found = solids.swept(standing, moving);
    expect(found.map(({ a, b, at: pose }) => [a, b, pose])).toEqual([
      ["m", "a", 2],
      ["m", "b", 4],
    ]);
    expect(found[0]?.volume).toBeCloseTo(1 * 50 * 30, 6);
    expect(found[0]?.bounds.from[0]).toBeCloseTo(99, 9);
    expect(found[0]?.bounds.to).toEqual([100, 50, 30]);
    expect(found[1]?.volume).toBeCloseTo(50 * 40 * 30, 6);
  });

  test("flush along the whole way is free, and less than asked for is not told", () => {
    expect(solids.swept(standing, way([at(100, 0), at(100, 20), at(0, 50), at(0, 0, 30)]))).toEqual(
      [],
    );
    const grazing = way([at(99.999)]);
    expect(solids.swept(standing, grazing, { least: 2 })).toEqual([]);
    expect(solids.swept(standing, grazing, { least: 1 })).toHaveLength(1);
  });

  test("boxes askew whose own boxes cross, while they do not", () => {
    const askew = (off: number) =>
      frameOf([off, 0, 0], [Math.SQRT1_2, Math.SQRT1_2, 0], [-Math.SQRT1_2, Math.SQRT1_2, 0]);
    // Its corner nearest to the origin's box lies at x = off − 50·√½.
    const free = [box("m", askew(100 + 50 * Math.SQRT1_2 + 0.001))];
    const bound = [box("m", askew(100 + 50 * Math.SQRT1_2 - 1))];
    const one = box("a", at(0));
    expect(solids.swept([one], [free])).toEqual([]);
    const [found] = solids.swept([one], [free, bound]);
    expect(found?.at).toBe(1);
    // The corner goes 1 mm into the face: a triangle of 1 mm², as thick as the boxes.
    expect(found?.volume).toBeCloseTo(30, 4);
  });

  test("a way without poses, or with nothing that stands, meets nothing", () => {
    expect(solids.swept(standing, [])).toEqual([]);
    expect(solids.swept([], way([at(0)]))).toEqual([]);
  });

  test("a part that is lost on its way is a fault", () => {
    expect(() => solids.swept(standing, [[box("m", at(900))], []])).toThrow("lost");
  });
});

test.each(Object.entries(faults))(
  "%s: the same clashes as part by part, pose by pose",
  (_, planted) => {
    const read = pieceOf(plantedIn(planted), {
      ...demoShop,
      ...("shop" in planted ? planted.shop : {}),
    });
    if (!read.ok) throw new Error("refused");
    const { parts, motions } = read.piece;
    for (const { motion, from, to, others } of pathsOf(motions)[0] ?? []) {
      const turns = Array.from({ length: 10 }, (_, i) => deg(from + ((to - from) * i) / 9));
      const moving = turns.map((by) =>
        posedAt(
          parts.filter(({ key }) => motion.carries.includes(key)),
          motions,
          { [motion.key]: by },
        ),
      );
      const standing = posedAt(parts, motions, others).filter(
        ({ key }) => !motion.carries.includes(key),
      );
      const plainly = standing.flatMap((part) => {
        const first = moving.findIndex((moved) => solids.interference([...moved, part]).length > 0);
        return first < 0 ? [] : [`${part.key} at ${first}`];
      });
      const swept = solids.swept(standing, moving).map(({ b, at: pose }) => `${b} at ${pose}`);
      expect(swept).toEqual(plainly);
    }
  },
);
