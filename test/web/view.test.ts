import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pressed } from "../../src/web/model/keys.ts";
import {
  axesOf,
  fitted,
  isInSight,
  nearer,
  type Place,
  resized,
  slid,
  spotOf,
  turned,
  type View,
  ways,
} from "../../src/web/model/view.ts";
import { createWatch } from "../../src/web/model/watch.ts";

const place = fc.tuple(
  fc.double({ min: -3000, max: 3000, noNaN: true }),
  fc.double({ min: -3000, max: 3000, noNaN: true }),
  fc.double({ min: 0, max: 2000, noNaN: true }),
);
const view: fc.Arbitrary<View> = fc.record({
  turnDeg: fc.double({ min: -360, max: 360, noNaN: true }),
  tiltDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  target: place,
  mmPerPx: fc.double({ min: 0.05, max: 20, noNaN: true }),
  hold: fc.constantFrom("fitted", "turned", "moved"),
});
const spot = fc.record({
  x: fc.double({ min: -800, max: 800, noNaN: true }),
  y: fc.double({ min: -500, max: 500, noNaN: true }),
});
const size = { width: 900, height: 600 };
const dot = (a: Place, b: Place) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const box = (x: number, y: number, z: number): readonly Place[] =>
  [-x / 2, x / 2].flatMap((a) =>
    [-y / 2, y / 2].flatMap((b) => [0, z].map((c): Place => [a, b, c])),
  );

describe("ways of looking", () => {
  test("its directions are square to one another, and right-handed", () =>
    fc.assert(
      fc.property(view, (v) => {
        const { right, up, out } = axesOf(v);
        for (const way of [right, up, out]) expect(dot(way, way)).toBeCloseTo(1, 9);
        expect(dot(right, up)).toBeCloseTo(0, 9);
        expect(dot(right, out)).toBeCloseTo(0, 9);
        expect(right[0] * up[1] - right[1] * up[0]).toBeCloseTo(out[2], 9);
      }),
    ));

  const base: View = { ...ways.front, target: [0, 0, 0], mmPerPx: 1, hold: "fitted" };
  test.each([
    { way: "front", right: [10, 0, 0], up: [0, 0, 10] },
    { way: "side", right: [0, 10, 0], up: [0, 0, 10] },
    { way: "above", right: [10, 0, 0], up: [0, 10, 0] },
  ] as const)("$way is an elevation", ({ way, right, up }) => {
    const v = { ...base, ...ways[way] };
    expect(spotOf(v, right).x).toBeCloseTo(10, 9);
    expect(spotOf(v, right).y).toBeCloseTo(0, 9);
    expect(spotOf(v, up).x).toBeCloseTo(0, 9);
    expect(spotOf(v, up).y).toBeCloseTo(10, 9);
  });
});

test("fitted, all is in sight and reaches near to two edges at least", () =>
  fc.assert(
    fc.property(view, fc.array(place, { minLength: 2, maxLength: 20 }), (v, points) => {
      const [a, b] = points;
      fc.pre(Math.hypot(...[0, 1, 2].map((i) => (a?.[i] ?? 0) - (b?.[i] ?? 0))) > 10);
      const fit = fitted(v, points, size);
      expect(isInSight(fit, points, size)).toBe(true);
      const spots = points.map((point) => spotOf(fit, point));
      const reach = (side: "x" | "y") =>
        Math.max(...spots.map((s) => s[side])) - Math.min(...spots.map((s) => s[side]));
      const share = Math.max(reach("x") / size.width, reach("y") / size.height);
      // Less only where it is as near as it can be brought.
      if (fit.mmPerPx > 0.011) expect(share).toBeCloseTo(0.86, 6);
    }),
  ));

test("brought nearer, what is under the pointer stays there", () =>
  fc.assert(
    fc.property(view, spot, fc.double({ min: 0.5, max: 2, noNaN: true }), (v, at, factor) => {
      const { right, up } = axesOf(v);
      const under = [0, 1, 2].map(
        (i) =>
          (v.target[i] as number) +
          (right[i] as number) * at.x * v.mmPerPx +
          (up[i] as number) * at.y * v.mmPerPx,
      ) as unknown as Place;
      const after = spotOf(nearer(v, factor, at), under);
      expect(after.x).toBeCloseTo(at.x, 5);
      expect(after.y).toBeCloseTo(at.y, 5);
    }),
  ));

test("slid, everything goes with the hand", () =>
  fc.assert(
    fc.property(view, place, spot, (v, point, by) => {
      const [before, after] = [spotOf(v, point), spotOf(slid(v, by), point)];
      expect(after.x - before.x).toBeCloseTo(by.x, 5);
      expect(after.y - before.y).toBeCloseTo(by.y, 5);
    }),
  ));

test("turned, it never goes over the top, and what was set by hand stays so", () =>
  fc.assert(
    fc.property(view, fc.integer({ min: -500, max: 500 }), (v, by) => {
      const after = turned(v, by, by);
      expect(Math.abs(after.tiltDeg)).toBeLessThanOrEqual(90);
      expect(after.hold).toBe(v.hold === "moved" ? "moved" : "turned");
    }),
  ));

test("in a picture half as wide it is half as large", () => {
  const v: View = { ...ways.corner, target: [0, 0, 0], mmPerPx: 2, hold: "moved" };
  expect(resized(v, size, { width: 450, height: 600 }).mmPerPx).toBe(4);
  expect(resized(v, { width: 0, height: 0 }, size)).toBe(v);
});

describe("keys", () => {
  const v: View = { ...ways.corner, target: [0, 0, 400], mmPerPx: 2, hold: "fitted" };
  const none = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };
  const by = (key: string, held = {}) => pressed(v, { ...none, key, ...held });
  test("arrows turn, with shift they slide", () => {
    expect(by("ArrowRight")).toMatchObject({ turnDeg: v.turnDeg + 10, hold: "turned" });
    expect(by("ArrowDown")).toMatchObject({ tiltDeg: v.tiltDeg - 10 });
    expect(by("ArrowRight", { shiftKey: true })).toMatchObject({ turnDeg: v.turnDeg });
  });
  test("plus and minus undo one another; 0 and Home fit", () => {
    const near = by("+");
    if (!near || near === "fit") throw new Error("plus brings nearer");
    expect(near.mmPerPx).toBeLessThan(v.mmPerPx);
    expect(pressed(near, { ...none, key: "-" })).toMatchObject({ mmPerPx: 2 });
    expect([by("0"), by("Home")]).toEqual(["fit", "fit"]);
  });
  test("the browser keeps its own, and Tab leaves", () => {
    expect([by("0", { ctrlKey: true }), by("+", { metaKey: true }), by("Tab")]).toEqual(
      Array(3).fill(undefined),
    );
  });
});

describe("when the piece changes", () => {
  const watched = () => {
    const watch = createWatch(() => undefined);
    watch.resize(size);
    watch.look(box(1500, 800, 740));
    return watch;
  };
  test("it is fitted at first, and not for a small change", () => {
    const watch = watched();
    expect(isInSight(watch.view(), watch.points(), size)).toBe(true);
    const before = watch.view();
    watch.look(box(1540, 800, 740));
    expect(watch.view()).toBe(before);
  });
  test("it is fitted again when much larger or smaller, from where it was seen", () => {
    const watch = watched();
    watch.move((v) => turned(v, 50, 0));
    for (const length of [2800, 500]) {
      const { turnDeg, mmPerPx } = watch.view();
      watch.look(box(length, 800, 740));
      expect(watch.view().turnDeg).toBe(turnDeg);
      expect(watch.view().mmPerPx).not.toBe(mmPerPx);
      expect(isInSight(watch.view(), watch.points(), size)).toBe(true);
    }
  });
  test("it is fitted again when a small change takes it out of sight, but not when it was out", () => {
    const watch = watched();
    const square = { width: 600, height: 600 };
    watch.resize(square);
    watch.move((v) => ({ ...v, ...ways.side }));
    watch.fitAll();
    watch.look(box(1500, 940, 740));
    expect(isInSight(watch.view(), watch.points(), square)).toBe(true);
    watch.move((v) => turned(v, -90, 0));
    expect(isInSight(watch.view(), watch.points(), square)).toBe(false);
    const before = watch.view();
    watch.look(box(1500, 950, 740));
    expect(watch.view()).toBe(before);
  });
  test("a view set by hand is left alone", () => {
    const watch = watched();
    watch.move((v) => nearer(v, 3));
    const before = watch.view();
    watch.look(box(2800, 800, 740));
    expect(watch.view()).toBe(before);
  });
});
