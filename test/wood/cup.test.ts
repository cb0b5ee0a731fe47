import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { deg, mcPct, mm, perPct } from "../../src/units/index.ts";
import {
  boardCup,
  coefficientAt,
  faceWidthChange,
  ringRadius,
  widthChange,
} from "../../src/wood/index.ts";
import { Problem } from "../../src/worked/index.ts";
import { between, isNear, some } from "../kit/sizes.ts";

const { coefficient, moisture } = some;

describe("cup of one board", () => {
  const board = fc.record({
    width: between(10, 400).map(mm),
    pithDistance: between(5, 500).map(mm),
    radial: coefficient,
    tangential: coefficient,
    from: moisture,
    to: moisture,
  });

  test("turns its sign with the change and with which coefficient is the larger", () => {
    fc.assert(
      fc.property(board, (b) => {
        const cup = boardCup(b).value;
        expect(boardCup({ ...b, from: b.to, to: b.from }).value).toBeCloseTo(-cup, 12);
        const swapped = { ...b, radial: b.tangential, tangential: b.radial };
        expect(boardCup(swapped).value).toBeCloseTo(-cup, 12);
        expect(boardCup({ ...b, to: b.from }).value).toBeCloseTo(0, 12);
        if (b.tangential > 1.001 * b.radial && b.from > b.to + 1e-3) {
          expect(cup).toBeGreaterThan(0);
        }
      }),
    );
  });

  test("grows with the width, falls with the distance from the pith", () => {
    fc.assert(
      fc.property(board, between(1.01, 3), (b, more) => {
        fc.pre(Math.abs(b.from - b.to) > 0.01 && Math.abs(b.tangential - b.radial) > 1e-6);
        const cup = Math.abs(boardCup(b).value);
        expect(Math.abs(boardCup({ ...b, width: mm(more * b.width) }).value)).toBeGreaterThan(cup);
        const far = { ...b, pithDistance: mm(more * b.pithDistance) };
        expect(Math.abs(boardCup(far).value)).toBeLessThan(cup);
        const scaled = { ...b, width: mm(more * b.width), pithDistance: mm(more * b.pithDistance) };
        expect(isNear(Math.abs(boardCup(scaled).value), more * cup, 1e-9)).toBe(true);
      }),
    );
  });

  test("far from the pith it is the arc of a circle, W²/8R, and the face moves flatsawn", () => {
    fc.assert(
      fc.property(board, (b) => {
        const far = { ...b, pithDistance: mm(b.width * 1e4) };
        const points = b.from - b.to;
        const arc = ((b.tangential - b.radial) * points * b.width ** 2) / (4 * far.pithDistance);
        expect(boardCup(far).value).toBeCloseTo(arc, 9);
        const flat = widthChange(b.width, b.tangential, b.from, b.to).value;
        expect(faceWidthChange(far).value).toBeCloseTo(flat, 6);
        const near = { ...b, pithDistance: mm(b.width * 1e-6) };
        const quartered = widthChange(b.width, b.radial, b.from, b.to).value;
        expect(faceWidthChange(near).value).toBeCloseTo(quartered, 3);
      }),
    );
  });

  test("the face's width change is what small pieces of it, each at its own angle, add up to", () => {
    fc.assert(
      fc.property(board, (b) => {
        const pieces = 2000;
        let sum = 0;
        for (let i = 0; i < pieces; i++) {
          const x = ((i + 0.5) / pieces - 0.5) * b.width;
          const toPith = (Math.atan2(x, b.pithDistance) * 180) / Math.PI;
          const c = coefficientAt(b.radial, b.tangential, deg(Math.abs(toPith))).value;
          sum += (b.width / pieces) * c * (b.to - b.from);
        }
        expect(faceWidthChange(b).value).toBeCloseTo(sum, 4);
      }),
      { numRuns: 40 },
    );
  });

  test("a board that holds the pith, or is none, is refused", () => {
    const one = {
      width: mm(200),
      pithDistance: mm(75),
      radial: perPct(0.0018),
      tangential: perPct(0.0037),
      from: mcPct(12),
      to: mcPct(7),
    };
    for (const bad of [
      { ...one, width: mm(0) },
      { ...one, pithDistance: mm(0) },
      { ...one, pithDistance: mm(-5) },
    ]) {
      expect(() => boardCup(bad)).toThrow(Problem);
      expect(() => faceWidthChange(bad)).toThrow(Problem);
    }
  });

  test("a ring's radius comes back from its chord and rise", () => {
    fc.assert(
      fc.property(between(10, 1000), between(0.02, 1.5), (radius, half) => {
        const chord = mm(2 * radius * Math.sin(half));
        const rise = mm(radius * (1 - Math.cos(half)));
        expect(isNear(ringRadius(chord, rise).value, radius, 1e-9)).toBe(true);
      }),
    );
    expect(() => ringRadius(mm(0), mm(3))).toThrow(Problem);
    expect(() => ringRadius(mm(30), mm(0))).toThrow(Problem);
  });
});
