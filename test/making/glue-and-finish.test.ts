import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  clampCautions,
  clampCoverage,
  clampForce,
  clampsByFan,
  clampsByForce,
  finishAmount,
  finishCautions,
  finishKinds,
  gluePressure,
  latheCautions,
  octagonCautions,
  panelSurface,
  routerCautions,
  spreadingRate,
} from "../../src/making/index.ts";
import { count, coverage, mm, mpa, newtons, pct, squareM } from "../../src/units/index.ts";
import { type Caution, cite, Problem } from "../../src/worked/index.ts";
import { expectNear } from "../kit/near.ts";
import { between, some } from "../kit/sizes.ts";

describe("clamps", () => {
  test("reach along the whole glue line, and one fewer would not", () => {
    fc.assert(
      fc.property(
        between(10, 5000),
        between(10, 300),
        between(0, 100),
        between(0, 80),
        (line, edge, pad, head) => {
          const reach = clampCoverage(mm(edge), mm(pad), mm(head)).value;
          const n = clampsByFan(mm(line), mm(reach)).value;
          expect(Number.isInteger(n)).toBe(true);
          expect(n * reach).toBeGreaterThanOrEqual(line - 1e-6);
          expect((n - 1) * reach).toBeLessThan(line);
          expectNear(clampCoverage(mm(edge + pad), mm(0), mm(head)).value, reach);
          expect(clampCoverage(mm(edge), mm(pad + 10), mm(head)).value).toBeGreaterThan(reach);
        },
      ),
    );
  });

  test("press with the pressure asked for over the whole line, and one fewer would not", () => {
    fc.assert(
      fc.property(between(0.1, 3), some.length, some.length, between(50, 10000), (p, t, l, f) => {
        const force = clampForce(mpa(p), mm(t), mm(l)).value;
        const n = clampsByForce(newtons(force), newtons(f)).value;
        expect(n * f).toBeGreaterThanOrEqual(force * (1 - 1e-9) - 1e-6);
        expect((n - 1) * f).toBeLessThan(force);
        expectNear(force / (t * l), p);
      }),
    );
    for (const [line, reach] of [
      [0, 100],
      [100, 0],
      [-5, 5],
    ] as const) {
      expect(() => clampsByFan(mm(line), mm(reach))).toThrow(Problem);
      expect(() => clampsByForce(newtons(line), newtons(reach))).toThrow(Problem);
    }
  });

  test("hardwood wants more than softwood, the most more than the least", () => {
    const at = (wood: "hardwood" | "softwood", end: "least" | "most") =>
      gluePressure(wood, end).value;
    for (const wood of ["hardwood", "softwood"] as const) {
      expect(at(wood, "least")).toBeLessThan(at(wood, "most"));
    }
    expect(at("softwood", "most")).toBeLessThan(at("hardwood", "least"));
  });
});

describe("finish", () => {
  test("a panel's surface is that of a box, however it is turned", () => {
    fc.assert(
      fc.property(some.length, some.length, some.length, some.pieces, (l, w, t, n) => {
        const surface = panelSurface(l, w, t, n).value;
        expectNear(surface, (2 * n * (l * w + w * t + t * l)) / 1e6);
        expectNear(panelSurface(t, l, w, n).value, surface);
        expectNear(panelSurface(l, w, mm(0), count(1)).value, (2 * l * w) / 1e6);
      }),
    );
  });

  test("grows with surface, coats and waste, and falls with coverage", () => {
    fc.assert(
      fc.property(
        between(0.01, 90),
        fc.integer({ min: 1, max: 9 }),
        between(1, 40),
        between(0, 100),
        (q, n, r, z) => {
          const amount = (surface: number, coats: number, rate: number, waste: number) =>
            finishAmount(squareM(surface), count(coats), coverage(rate), pct(waste)).value;
          const once = amount(q, n, r, z);
          expectNear(amount(2 * q, n, r, z), 2 * once);
          expectNear(amount(q, 3 * n, r, z), 3 * once);
          expectNear(amount(q, n, 2 * r, z), once / 2);
          expectNear(amount(q, n, r, 0) * (1 + z / 100), once);
          expectNear(amount(q, n, r, 100), 2 * amount(q, n, r, 0));
        },
      ),
    );
  });

  test.each(finishKinds)("%s covers a range, and says that it is from memory", (kind) => {
    const [least, most] = [spreadingRate(kind, "least"), spreadingRate(kind, "most")];
    expect(least.value).toBeLessThanOrEqual(most.value);
    expect(cite(least.source)).toContain("from memory");
  });
});

test.each<readonly [string, readonly Caution[]]>([
  ["lathe", latheCautions],
  ["router", routerCautions],
  ["octagon", octagonCautions],
  ["clamps", clampCautions],
  ...finishKinds.map((kind) => [kind, finishCautions(kind)] as const),
])("%s: every caution is said plainly, with who says so", (_, cautions) => {
  expect(cautions.length).toBeGreaterThan(0);
  for (const { says, source } of cautions) {
    expect(says).toMatch(/^[A-Z].{20,}\.$/);
    expect(cite(source).length).toBeGreaterThan(10);
  }
});

test("oily rags are warned of wherever there is oil, and nowhere else", () => {
  const warned = finishKinds.filter((kind) =>
    finishCautions(kind).some(({ says }) => /rags.*heat by themselves/i.test(says)),
  );
  expect(warned).toEqual(["varnish", "oil", "hard-wax oil", "paint"]);
});
