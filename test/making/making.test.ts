import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  chartedRouterSpeed,
  clampCautions,
  clampCoverage,
  clampForce,
  clampsByFan,
  clampsByForce,
  depthOfPass,
  finishAmount,
  finishCautions,
  finishKinds,
  gluePressure,
  latheCautions,
  latheSpeed,
  octagonCautions,
  panelSurface,
  rimSpeed,
  routerCautions,
  routerPasses,
  routerSpeed,
  slenderness,
  speedByDiameter,
  speedByStage,
  spreadingRate,
  turningStages,
} from "../../src/making/index.ts";
import {
  count,
  coverage,
  mm,
  mpa,
  newtons,
  pct,
  ratio,
  rpm,
  squareM,
} from "../../src/units/index.ts";
import { cite, Problem } from "../../src/worked/index.ts";
import { between, isNear, some } from "../kit/sizes.ts";

const near = (a: number, b: number, part = 1e-9) =>
  expect(isNear(a, b, part), `${a}, ${b}`).toBe(true);
const swing = between(3, 1000);

describe("the lathe", () => {
  test("never goes above the rule or the chart, and slows for slender work", () => {
    fc.assert(
      fc.property(
        swing,
        fc.constantFrom(...turningStages),
        between(0.5, 12),
        between(12.01, 60),
        (d, stage, stout, slender) => {
          const speed = (s: number) => latheSpeed(mm(d), stage, ratio(s)).value;
          const fastest = speedByDiameter(mm(d), 9000).value;
          expect(speed(stout)).toBeLessThanOrEqual(fastest);
          expect(speed(stout)).toBeLessThanOrEqual(speedByStage(mm(d), stage).value);
          expect(speed(stout)).toBeGreaterThan(0);
          near(speed(slender), speed(stout) / 2);
          expect(latheSpeed(mm(d), stage, ratio(slender)).notes).toHaveLength(1);
          near((fastest * d) / 25.4, 9000);
        },
      ),
    );
  });

  test("goes slower the larger the work, faster the later the stage", () => {
    fc.assert(
      fc.property(swing, between(1.01, 3), (d, k) => {
        fc.pre(d * k <= 1000);
        const all = turningStages.map((stage) => latheSpeed(mm(d), stage, ratio(5)).value);
        expect([...all].sort((a, b) => a - b)).toEqual(all);
        for (const [i, stage] of turningStages.entries()) {
          expect(latheSpeed(mm(d * k), stage, ratio(5)).value).toBeLessThanOrEqual(all[i] ?? 0);
        }
      }),
    );
    for (const d of [2.9, 1001, 0]) expect(() => speedByDiameter(mm(d), 9000)).toThrow(Problem);
    near(slenderness(mm(700), mm(35)).value, 20);
  });
});

describe("the router", () => {
  const cutter = between(0.5, 88.9);

  test("never runs above the chart or the machine, nor faster the larger the cutter", () => {
    fc.assert(
      fc.property(cutter, between(1.001, 3), between(1000, 40000), (d, k, top) => {
        const speed = routerSpeed(mm(d), rpm(top)).value;
        expect(speed).toBe(Math.min(top, chartedRouterSpeed(mm(d)).value));
        if (d * k <= 88.9)
          expect(routerSpeed(mm(d * k), rpm(top)).value).toBeLessThanOrEqual(speed);
        // A whole turn of the rim, so many times a minute.
        near(rimSpeed(mm(d), rpm(speed)).value * 60, (Math.PI * d * speed) / 1000);
      }),
    );
    for (const d of [0, -1, 89]) expect(() => chartedRouterSpeed(mm(d))).toThrow(Problem);
  });

  test("reaches the depth in as few passes as its pass allows", () => {
    fc.assert(
      fc.property(between(0.1, 200), fc.boolean(), (depth, easy) => {
        const passes = routerPasses(mm(depth), easy).value;
        const each = depthOfPass(mm(depth), count(passes)).value;
        const most = easy ? 25.4 / 8 : 25.4 / 4;
        expect(passes).toBeGreaterThanOrEqual(1);
        expect(passes * each).toBeGreaterThanOrEqual(depth * (1 - 1e-12));
        expect(each).toBeLessThanOrEqual(most + 1e-6);
        expect((passes - 1) * most).toBeLessThan(depth);
        expect(routerPasses(mm(depth), true).value).toBeGreaterThanOrEqual(
          routerPasses(mm(depth), false).value,
        );
      }),
    );
    // A depth that is just so many passes does not take one more.
    for (const n of [1, 2, 3, 7]) expect(routerPasses(mm((n * 25.4) / 8), true).value).toBe(n);
    for (const depth of [0, -1, 201]) expect(() => routerPasses(mm(depth), true)).toThrow(Problem);
  });
});

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
          near(clampCoverage(mm(edge + pad), mm(0), mm(head)).value, reach);
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
        near(force / (t * l), p);
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
        near(surface, (2 * n * (l * w + w * t + t * l)) / 1e6);
        near(panelSurface(t, l, w, n).value, surface);
        near(panelSurface(l, w, mm(0), count(1)).value, (2 * l * w) / 1e6);
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
          near(amount(2 * q, n, r, z), 2 * once);
          near(amount(q, 3 * n, r, z), 3 * once);
          near(amount(q, n, 2 * r, z), once / 2);
          near(amount(q, n, r, 0) * (1 + z / 100), once);
          near(amount(q, n, r, 100), 2 * amount(q, n, r, 0));
        },
      ),
    );
  });

  test.each(finishKinds)("%s covers a range, and says that it is from memory", (kind) => {
    const [least, most] = [spreadingRate(kind, "least"), spreadingRate(kind, "most")];
    expect(least.value).toBeLessThan(most.value);
    expect(cite(least.source)).toContain("from memory");
  });
});

test.each([
  ["lathe", latheCautions],
  ["router", routerCautions],
  ["octagon", octagonCautions],
  ["clamps", clampCautions],
  ["finish", finishCautions],
])("%s: every caution is said plainly, with who says so", (_, cautions) => {
  expect(cautions.length).toBeGreaterThan(0);
  for (const { says, source } of cautions) {
    expect(says).toMatch(/^[A-Z].{20,}\.$/);
    expect(cite(source).length).toBeGreaterThan(10);
  }
});
