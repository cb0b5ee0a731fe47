import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { kindNamed, newDocument, pieceOf } from "../../src/kinds/index.ts";
import type { Piece, Turns } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { deg } from "../../src/units/index.ts";
import { footprintsOf } from "../../src/web/model/footprints.ts";
import { createPieceScene } from "../../src/web/model/scene.ts";
import { turnsOf } from "../../src/web/model/stance.ts";
import { type DrawnPart, drawnParts, type Shape, shapeOf } from "../../src/workup/index.ts";
import { kernel } from "../kit/solids.ts";

let piece: Piece;
let parts: readonly DrawnPart[];
let shapes: ReadonlyMap<string, Shape>;
beforeAll(() => {
  const read = pieceOf(newDocument(kindNamed("drop-leaf-table"), "Demo table", "mm"), demoShop);
  if (!read.ok) throw new Error("a fresh table is refused");
  const solids = createSolids(kernel);
  piece = read.piece;
  parts = drawnParts(piece);
  shapes = new Map(
    piece.parts.map((part, i) => [(parts[i] as DrawnPart).shape, shapeOf(solids, part)]),
  );
  solids.free();
});

const shown = (turns: Turns, isApart = false) => ({
  ...{ parts, motions: piece.motions, turns, shapes, isApart },
});

/** Every motion turned by a share of how far it goes. */
const anyTurns = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 })
  .map(
    (shares): Turns =>
      Object.fromEntries(
        piece.motions.map(({ key, most }, i) => [key, deg((shares[i] as number) * most)]),
      ),
  );

describe("a piece with leaves, as it is shown", () => {
  test.each([false, true])(
    "what a view is fitted to is the same however it stands; apart: %s",
    (isApart) => {
      const scene = createPieceScene();
      scene.show(shown({}, isApart));
      const corners = scene.corners();
      expect(corners.length).toBe(8 * parts.length);
      fc.assert(
        fc.property(anyTurns, (turns) => {
          scene.show(shown(turns, isApart));
          expect(scene.corners()).toBe(corners);
          const fresh = createPieceScene();
          fresh.show(shown(turns, isApart));
          expect(fresh.corners()).toEqual(corners);
          fresh.dispose();
        }),
        { numRuns: 25 },
      );
      scene.dispose();
    },
  );

  test("and every part of it lies within that, but for what an edge rises on its way", () => {
    const scene = createPieceScene();
    fc.assert(
      fc.property(anyTurns, (turns) => {
        scene.show(shown(turns));
        const corners = scene.corners();
        for (const { box } of scene.standing())
          for (const [i, axis] of (["x", "y", "z"] as const).entries()) {
            const places = corners.map((corner) => corner[i] as number);
            expect(box.min[axis]).toBeGreaterThan(Math.min(...places) - 6);
            expect(box.max[axis]).toBeLessThan(Math.max(...places) + 6);
          }
      }),
      { numRuns: 25 },
    );
    scene.dispose();
  });

  test("only its legs stand on the floor, and leaves that are up throw one shadow with the top", () => {
    const scene = createPieceScene();
    const prints = (turns: Turns) => {
      scene.show(shown(turns));
      return footprintsOf(scene.standing());
    };
    const close = (all: ReturnType<typeof prints>) => all.filter(({ dark }) => dark === 1);
    const open = prints(turnsOf(piece.motions, {}));
    const closed = prints(
      Object.fromEntries(
        piece.motions.map(({ key, kind, most }) => [key, kind === "leaf" ? most : deg(0)]),
      ),
    );
    expect([close(open).length, close(closed).length]).toEqual([4, 4]);
    expect(closed.length - open.length).toBe(2);
    const widest = (all: ReturnType<typeof prints>) => Math.max(...all.map(({ y }) => y[1] - y[0]));
    expect(widest(open)).toBeCloseTo(480 + 2 * 290.4, 0);
    scene.dispose();
  });
});
