import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  droopOfArm,
  edgeDrop,
  edgeSagUnderPoint,
  edgeSagUnderSpread,
  hingeReaction,
  loadOnSupport,
  loadPerArm,
} from "../../src/mechanics/index.ts";
import { count, mm, mm4, mpa, newtons, newtonsPerMm } from "../../src/units/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between } from "../kit/sizes.ts";

const leaf = fc.record({
  w: between(0.01, 5),
  P: between(1, 500),
  W: between(50, 900),
  part: between(0.1, 1),
  E: between(200, 3000),
  I: between(1e4, 1e7),
});
type Leaf = { w: number; P: number; W: number; part: number; E: number; I: number };

const places = (x: Leaf) => [mm(x.W), mm(x.part * x.W)] as const;
const spread = (x: Leaf) =>
  edgeSagUnderSpread(newtonsPerMm(x.w), ...places(x), mpa(x.E), mm4(x.I)).value;
const point = (x: Leaf) => edgeSagUnderPoint(newtons(x.P), ...places(x), mpa(x.E), mm4(x.I)).value;
const onArm = (x: Leaf) => loadOnSupport(newtonsPerMm(x.w), newtons(x.P), ...places(x)).value;
const onHinge = (x: Leaf) => hingeReaction(newtonsPerMm(x.w), newtons(x.P), ...places(x)).value;

/** Sags that nearly cancel are held against what a leaf borne near its hinge would sag. */
function expectSame(sag: (x: Leaf) => number, x: Leaf, value: number, part = 1e-9) {
  const size = sag({ ...x, part: 0.1 });
  expect(Math.abs(value - sag(x)), `${value} is not ${sag(x)}`).toBeLessThan(part * size);
}
const both = (x: Leaf) => spread(x) + point(x);

const STEPS = 400;

/**
 * Sag of the edge by adding up loads and curvature in short pieces, nothing in closed form: the
 * moment at a place is what all loads beyond it make, and the leaf is turned about its hinge until
 * it lies on its support.
 */
function sagByPieces(x: Leaf): number {
  const support = x.part * x.W;
  const pieces = [
    ...piecesOf(0, support).map((at) => ({ ...at, isWithin: true })),
    ...piecesOf(support, x.W).map((at) => ({ ...at, isWithin: false })),
  ];
  let turning = x.P * x.W;
  for (const { middle, long } of pieces) turning += x.w * long * middle;
  const held = turning / support;
  let [slope, drop, atSupport] = [0, 0, 0];
  // From the edge inwards: load beyond and its moment, so that no reaction of the hinge enters.
  let [load, moment] = [x.P, 0];
  const curvature: number[] = [];
  for (const { long, isWithin } of [...pieces].reverse()) {
    const force = load - (isWithin ? held : 0);
    curvature.unshift((moment + (force * long) / 2 + (x.w * long ** 2) / 8) / (x.E * x.I));
    moment += force * long + (x.w * long ** 2) / 2;
    load += x.w * long;
  }
  pieces.forEach(({ long, isWithin }, i) => {
    const bend = curvature[i] ?? 0;
    drop += slope * long + (bend * long ** 2) / 2;
    slope += bend * long;
    if (isWithin) atSupport = drop;
  });
  return drop - (atSupport * x.W) / support;
}

function piecesOf(from: number, to: number) {
  const long = (to - from) / STEPS;
  return Array.from({ length: STEPS }, (_, i) => ({ long, middle: from + (i + 0.5) * long }));
}

describe("a bar on a hinge and a support", () => {
  test("sags at its edge as adding it up piece by piece says", () => {
    fc.assert(
      fc.property(leaf, (x) => {
        expectSame(both, x, sagByPieces(x), 1e-5);
      }),
      { numRuns: 60 },
    );
  });

  test("by the power of each of its sizes", () => {
    fc.assert(
      fc.property(leaf, between(1.1, 4), (x, k) => {
        const powers = { w: [1, 0], P: [0, 1], W: [4, 3], E: [-1, -1], I: [-1, -1] } as const;
        for (const [name, [ofSpread, ofPoint]] of Object.entries(powers)) {
          const more = { ...x, [name]: k * x[name as keyof Leaf] };
          expectSame(spread, x, spread(more) / k ** ofSpread);
          expectSame(point, x, point(more) / k ** ofPoint);
        }
      }),
    );
  });

  test("a load at the edge sags it by the square of what is free, none when borne there", () => {
    fc.assert(
      fc.property(leaf, between(0.1, 0.99), between(0.1, 0.99), (x, p, q) => {
        const at = (part: number) => point({ ...x, part });
        expectNear(at(p) / at(q), ((1 - p) / (1 - q)) ** 2, 1e-8);
        expect(at(1)).toBe(0);
        expect(spread({ ...x, part: 1 })).toBeCloseTo(0, 12);
        expect(at(0.999 * p)).toBeGreaterThan(at(p));
      }),
    );
  });

  test("borne close to its hinge, it is a bar held there but for the hinge's turning", () => {
    fc.assert(
      fc.property(leaf, (x) => {
        const near = { ...x, part: 1e-7 };
        expectNear(point(near), droopOfArm(newtons(x.P), mm(x.W), mpa(x.E), mm4(x.I)).value, 1e-6);
        expectNear(spread(near), (x.w * x.W ** 4) / (8 * x.E * x.I), 1e-6);
      }),
    );
  });

  test("what it bears is held up, and turns about no place", () => {
    fc.assert(
      fc.property(leaf, (x) => {
        const all = x.w * x.W + x.P;
        expectNear(onHinge(x) + onArm(x), all);
        const [up, down] = [onHinge(x) * x.W, onArm(x) * (x.part - 1) * x.W];
        // About the free edge: the hinge and the arm against the spread load.
        const size = Math.abs(up) + Math.abs(down);
        expect(Math.abs(up - down - (x.w * x.W ** 2) / 2)).toBeLessThan(1e-9 * size);
      }),
    );
  });

  test("the hinge is pulled when the middle of all loads lies beyond the support", () => {
    fc.assert(
      fc.property(leaf, (x) => {
        const middle = (x.w * x.W ** 2 * 0.5 + x.P * x.W) / (x.w * x.W + x.P) / x.W;
        expect(onHinge({ ...x, part: 0.999 * middle })).toBeLessThan(0);
        expect(onHinge({ ...x, part: Math.min(1, 1.001 * middle) })).toBeGreaterThan(0);
        expect(onArm({ ...x, part: x.part * 0.9 })).toBeGreaterThan(onArm(x));
      }),
    );
  });

  test("the work of a load at the edge on sinking arms is the arms' own", () => {
    fc.assert(
      fc.property(leaf, between(0.01, 20), fc.integer({ min: 1, max: 6 }), (x, drop, n) => {
        const edge = edgeDrop(mm(drop), ...places(x)).value;
        const bare = onArm({ ...x, w: 0 });
        expectNear(x.P * edge, bare * drop);
        expectNear(n * loadPerArm(newtons(bare), count(n)).value, bare);
        expect(edge).toBeGreaterThanOrEqual(drop);
      }),
    );
  });

  test("the same in inches", () => {
    fc.assert(
      fc.property(leaf, (x) => {
        const inch = 25.4;
        const small = {
          ...x,
          w: x.w * inch,
          W: x.W / inch,
          E: x.E * inch ** 2,
          I: x.I / inch ** 4,
        };
        expectSame(spread, x, inch * spread(small));
        expectSame(point, x, inch * point(small));
        expectNear(onArm(small), onArm(x));
      }),
    );
  });

  test.each([0, -1, 300.1])("a support %s mm out on a leaf of 300 mm is refused", (out) => {
    const [w, P, W, a] = [newtonsPerMm(0.1), newtons(100), mm(300), mm(out)];
    const [E, I] = [mpa(900), mm4(1e5)];
    for (const refused of [
      () => edgeSagUnderSpread(w, W, a, E, I),
      () => edgeSagUnderPoint(P, W, a, E, I),
      () => loadOnSupport(w, P, W, a),
      () => hingeReaction(w, P, W, a),
      () => edgeDrop(mm(1), W, a),
    ]) {
      expect(refused).toThrow(Problem);
    }
  });
});
