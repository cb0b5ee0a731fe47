import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allSpecies, elasticRatios, type Species, speciesNamed } from "../../src/wood/index.ts";
import { cite, type Given, Problem } from "../../src/worked/index.ts";

const figures = (s: Species): readonly (readonly [string, Given])[] =>
  Object.entries(s).flatMap(([name, v]) =>
    typeof v === "object" ? [[name, v as Given] as const] : [],
  );

function notFound(text: string): Problem {
  try {
    const found = speciesNamed(text);
    throw new Error(`${text} was taken for ${found.name}`);
  } catch (problem) {
    if (problem instanceof Problem) return problem;
    throw problem;
  }
}

/** What any wood of furniture lies within; in inside units. */
const sane: Readonly<Record<string, readonly [number, number]>> = {
  basicGravity: [0.25, 0.95],
  gravity: [0.28, 1.1],
  radialShrinkage: [1.5, 9],
  tangentialShrinkage: [3, 14],
  volumeShrinkage: [5, 21],
  radial: [0.0006, 0.0035],
  tangential: [0.0012, 0.0055],
  stiffness: [4500, 22000],
  bendingStrength: [40, 210],
  shearStrength: [4, 22],
  crushingAlong: [20, 110],
  crushingAcross: [1.5, 25],
  tensionAcross: [0.8, 9],
  hardness: [1000, 20000],
};

describe.each(allSpecies.map((s) => [s.name, s] as const))("%s", (_, s) => {
  test("its figures are those of a wood, each with its source and its words", () => {
    const all = figures(s);
    expect(all.length).toBeGreaterThanOrEqual(6);
    for (const [name, { value, says, source }] of all) {
      const [least, most] = sane[name] ?? [];
      expect(value, name).toBeGreaterThanOrEqual(least ?? Number.NaN);
      expect(value, name).toBeLessThanOrEqual(most ?? Number.NaN);
      expect(says).toContain(s.name);
      expect(cite(source).length).toBeGreaterThan(10);
      expect(["published", "derived"]).toContain(source.kind);
    }
  });

  test("it moves more along the rings than across them, and is denser dry than green", () => {
    expect(s.tangential.value).toBeGreaterThanOrEqual(s.radial.value);
    expect(s.gravity.value).toBeGreaterThanOrEqual(s.basicGravity.value);
    if (s.radialShrinkage && s.tangentialShrinkage) {
      expect(s.tangentialShrinkage.value).toBeGreaterThanOrEqual(s.radialShrinkage.value);
    }
  });

  test("it is found by key, name and botanical name, however they are set", () => {
    const isAlone = allSpecies.filter((o) => o.botanical === s.botanical).length === 1;
    for (const name of [s.key, s.name, ...(isAlone ? [s.botanical] : [])]) {
      for (const text of [name, name.toUpperCase(), `  ${name.replace(/[- ]/g, "  ")} `]) {
        expect(speciesNamed(text).key).toBe(s.key);
      }
    }
  });
});

describe("the table", () => {
  test("has no name twice", () => {
    const names = allSpecies.flatMap((s) => [...new Set([s.key, s.name.toLowerCase()])]);
    expect(names.filter((n, i) => names.indexOf(n) < i)).toEqual([]);
    expect(allSpecies.length).toBeGreaterThan(60);
  });

  test("knows hardwood from softwood, and has both", () => {
    expect(speciesNamed("white oak").isSoftwood).toBe(false);
    expect(speciesNamed("douglas-fir-coast").isSoftwood).toBe(true);
  });
});

describe("a name", () => {
  test.each([
    ["oak, white", "oak-white"],
    ["White Oak", "oak-white"],
    ["cherry", "cherry-black"],
    ["Black Walnut", "walnut-black"],
    ["black cherry", "cherry-black"],
    ["quercus alba", "oak-white"],
    ["QUERCUS_ALBA", "oak-white"],
  ])("%s is %s", (text, key) => {
    expect(speciesNamed(text).key).toBe(key);
  });

  test("that fits several is refused with the nearest", () => {
    const problem = notFound("oak");
    expect(problem.code).toBe("species-unknown");
    expect(problem.reason).toContain("More than one");
    expect(problem.remedy).toContain("red oak");
    expect(notFound("red oaks please").remedy).toContain("red oak");
  });

  test("that several rows share is refused, not taken for the last of them", () => {
    const shared = allSpecies.filter((s) =>
      allSpecies.some((o) => o !== s && o.botanical === s.botanical),
    );
    expect(shared.length).toBeGreaterThan(1);
    for (const { botanical, name } of shared) {
      const problem = notFound(botanical);
      expect(problem.reason).toContain("More than one");
      expect(problem.remedy).toContain(name.toLowerCase());
    }
  });

  test.each(["", " ", "a", "-", "brick", "mdf", "constructor", "__proto__", "oak oak walnut"])(
    "that fits none is refused: %j",
    (text) => {
      const problem = notFound(text);
      expect(problem.code).toBe("species-unknown");
      expect(problem.remedy).toMatch(/^Use .+\.$/);
    },
  );

  test("of any text is found or refused, never more", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        try {
          expect(allSpecies).toContain(speciesNamed(text));
        } catch (problem) {
          expect(problem).toBeInstanceOf(Problem);
        }
      }),
    );
  });
});

describe("elastic ratios", () => {
  const known = allSpecies.flatMap((s) => {
    const ratios = elasticRatios(s.key);
    return ratios ? [[s.key, ratios] as const] : [];
  });

  test("are there for some timbers and no others", () => {
    expect(known.length).toBeGreaterThan(20);
    expect(elasticRatios("no-such-timber")).toBeUndefined();
  });

  test.each(known)("%s: across the rings stiffer than along them, all under one", (_, ratios) => {
    const { E_T, E_R, G_LR, G_LT, G_RT, ...poisson } = ratios;
    for (const modulus of [E_T, E_R, G_LR, G_LT, G_RT]) {
      if (!modulus) continue;
      expect(modulus.value).toBeGreaterThan(0.001);
      expect(modulus.value).toBeLessThan(0.25);
      expect(cite(modulus.source)).toContain("Wood Handbook");
    }
    if (E_T && E_R) expect(E_R.value).toBeGreaterThan(E_T.value * 0.95);
    if (G_RT && G_LR) expect(G_RT.value).toBeLessThan(G_LR.value);
    for (const mu of Object.values(poisson)) {
      if (!mu) continue;
      expect(mu.value).toBeGreaterThan(0.01);
      expect(mu.value).toBeLessThan(1);
    }
    const { mu_LT, mu_TL, mu_RT, mu_TR } = ratios;
    if (mu_LT && mu_TL) expect(mu_TL.value).toBeLessThan(mu_LT.value);
    // Pulling along the stiffer way narrows the other the more.
    if (mu_RT && mu_TR && E_R && E_T) {
      expect(mu_TR.value < mu_RT.value).toBe(E_T.value < E_R.value);
    }
  });
});
