import { describe, expect, test } from "vitest";
import {
  allSpecies,
  elasticRatios,
  type Species,
  speciesNamed,
  stiffnessAcross,
} from "../../src/wood/index.ts";
import { cite, notesOf, wholeChain } from "../../src/worked/index.ts";

const ways = ["flat", "rift", "quarter"] as const;
const isEstimated = (species: Species, sawn: (typeof ways)[number]) =>
  wholeChain(stiffnessAcross(species, sawn)).some((input) =>
    cite(input.source).includes("our own estimate"),
  );

/** Strain along a width that lies at 45° to the rings, by turning stress and strain step by step. */
function shareAslant(ratios: NonNullable<ReturnType<typeof elasticRatios>>): number {
  const { E_T, E_R, G_RT, mu_RT } = ratios;
  if (!E_T || !E_R || !G_RT || !mu_RT) throw new Error("a ratio is missing");
  // A pull of one along the width is half across the rings, half along them, and a half of shear.
  const half = 0.5;
  const coupling = mu_RT.value / E_R.value;
  const across = half / E_R.value - half * coupling;
  const along = half / E_T.value - half * coupling;
  const shear = half / G_RT.value;
  // Turned back: strain of the width is the mean of the two and half of the shear.
  return 1 / ((across + along) / 2 + shear / 2);
}

describe("stiffness across the grain", () => {
  test.each(allSpecies.map((s) => [s.key, s] as const))("%s: far softer than along", (_, s) => {
    const [flat, rift, quarter] = ways.map((sawn) => stiffnessAcross(s, sawn).value);
    for (const across of [flat, rift, quarter]) {
      expect(across).toBeGreaterThan(0.01 * s.stiffness.value);
      expect(across).toBeLessThan(0.25 * s.stiffness.value);
    }
    expect(rift).toBeLessThanOrEqual(Math.min(flat ?? 0, quarter ?? 0));
    expect(quarter).toBeGreaterThan((flat ?? 0) * 0.95);
  });

  test("is the printed share of a modulus a tenth above the one in bending", () => {
    const printed = allSpecies.filter((s) => elasticRatios(s.key)?.E_T);
    expect(printed.length).toBeGreaterThan(20);
    for (const s of printed) {
      const { E_T, E_R } = elasticRatios(s.key) ?? {};
      const along = 1.1 * s.stiffness.value;
      expect(stiffnessAcross(s, "flat").value / along).toBeCloseTo(E_T?.value ?? 0, 12);
      expect(stiffnessAcross(s, "quarter").value / along).toBeCloseTo(E_R?.value ?? 0, 12);
      expect([isEstimated(s, "flat"), isEstimated(s, "quarter")]).toEqual([false, false]);
    }
  });

  test("aslant, shear makes softwood softer than along its rings, walnut not", () => {
    const spruce = speciesNamed("spruce-sitka");
    const ratios = elasticRatios(spruce.key);
    const share = stiffnessAcross(spruce, "rift").value / (1.1 * spruce.stiffness.value);
    expect(share).toBeCloseTo(ratios ? shareAslant(ratios) : 0, 12);
    expect(share).toBeLessThan(0.3 * (ratios?.E_T?.value ?? 0));
    const walnut = speciesNamed("walnut-black");
    expect(stiffnessAcross(walnut, "rift").value).toBe(stiffnessAcross(walnut, "flat").value);
  });

  test("where nothing is printed the mean of its kind stands, and says so", () => {
    for (const isSoftwood of [false, true]) {
      const kind = allSpecies.filter((s) => s.isSoftwood === isSoftwood);
      const bare = kind.filter((s) => !elasticRatios(s.key)?.E_T);
      const shares = kind.flatMap((s) => elasticRatios(s.key)?.E_T?.value ?? []);
      const mean = shares.reduce((sum, share) => sum + share, 0) / shares.length;
      expect(bare.length).toBeGreaterThan(10);
      for (const s of bare) {
        const across = stiffnessAcross(s, "flat");
        expect(across.value / (1.1 * s.stiffness.value)).toBeCloseTo(mean, 12);
        expect(ways.map((sawn) => isEstimated(s, sawn))).toEqual([true, true, true]);
        expect(notesOf(across).join()).toContain("not published");
      }
    }
  });
});
