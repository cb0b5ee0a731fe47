import { describe, expect, test, vi } from "vitest";
import { answer, demoPieces } from "../../src/kinds/index.ts";
import { applyEdit, shapeKey } from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import { createSolids } from "../../src/solid/index.ts";
import { createWorkup, drawnParts, latestOnly, shapeOf } from "../../src/workup/index.ts";
import { kernel } from "../kit/solids.ts";

const demo = () => {
  const [, document] = demoPieces();
  if (!document) throw new Error("there is no demo piece");
  return document;
};

describe("working a piece up", () => {
  test("the same document is not worked twice, and an equal one gives an equal answer", () => {
    const work = createWorkup(demoShop);
    const document = demo();
    expect(work(document)).toBe(work(document));
    expect(createWorkup(demoShop)(structuredClone(document))).toEqual(work(document));
  });

  test("one changed dimension builds anew only the shapes it touches", () => {
    const work = createWorkup(demoShop);
    const solids = createSolids(kernel);
    const shapesOf = (document: ReturnType<typeof demo>) => {
      const outcome = work(document);
      if (!outcome.ok) throw new Error("the demo piece is refused");
      for (const part of outcome.workup.piece.parts) shapeOf(solids, part);
      return new Set(drawnParts(outcome.workup.piece).map((part) => part.shape));
    };
    const document = demo();
    const before = shapesOf(document);
    const { built } = solids.counts();
    expect(built).toBe(before.size);
    const longer = shapesOf(
      applyEdit(document, answer(document, "table", "end-overhang", "3 in")).document,
    );
    const fresh = [...longer].filter((shape) => !before.has(shape));
    expect(solids.counts().built - built).toBe(fresh.length);
    // The long rails and the top's lead holes; legs, end rails and buttons stay what they were.
    expect(fresh).toHaveLength(2);
    solids.free();
  });

  test("a part's drawn shape is that of its cuts", () => {
    const outcome = createWorkup(demoShop)(demo());
    if (!outcome.ok) throw new Error("the demo piece is refused");
    const [part] = outcome.workup.piece.parts;
    const [drawn] = drawnParts(outcome.workup.piece);
    expect(drawn?.shape).toBe(part && shapeKey(part));
  });
});

describe("the newest request", () => {
  test("is answered; those before it are dropped, and stop at their next rest", async () => {
    const steps = vi.fn();
    const pause = () => Promise.resolve();
    const ask = latestOnly(async (name: string, rest) => {
      for (let i = 0; i < 5; i++) {
        if (!(await rest())) return undefined;
        steps(name);
      }
      return name;
    }, pause);
    const first = ask("first");
    await Promise.resolve();
    await Promise.resolve();
    await Promise.resolve();
    const second = ask("second");
    const third = ask("third");
    expect(await first).toEqual({ isDropped: true });
    expect(await second).toEqual({ isDropped: true });
    expect(await third).toEqual({ isDropped: false, answer: "third" });
    const made = steps.mock.calls.map(([name]) => name);
    expect(made.filter((name) => name === "third")).toHaveLength(5);
    expect(made.filter((name) => name === "second")).toHaveLength(0);
    expect(made.filter((name) => name === "first").length).toBeLessThan(5);
  });

  test("a fault of the work reaches whoever asked, and the next request is answered", async () => {
    const ask = latestOnly(
      async (n: number) => {
        if (n < 0) throw new Error("odd");
        return n;
      },
      () => Promise.resolve(),
    );
    await expect(ask(-1)).rejects.toThrow("odd");
    expect(await ask(2)).toEqual({ isDropped: false, answer: 2 });
  });
});
