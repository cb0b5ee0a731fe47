import { expect, test } from "vitest";
import { reckon, topicNamed } from "../../src/reckon/index.ts";
import { allSpecies } from "../../src/wood/index.ts";
import { cite } from "../../src/worked/index.ts";

/** Verdicts on a shelf, by the last word of their names. */
function verdicts(texts: Readonly<Record<string, string>>): Readonly<Record<string, string>> {
  const shelf = { species: "white oak", span: "900", depth: "280", thickness: "22", load: "20 kg" };
  const outcome = reckon(topicNamed("sag"), { ...shelf, ...texts }, "mm", (name) => name);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return Object.fromEntries(outcome.answer.findings.map((f) => [f.id, f.verdict]));
}

test("a light load on a read table's figures is proven, on figures from memory only watched", () => {
  expect(verdicts({})).toEqual({ "sag/strength": "ok", "sag/looks": "ok" });
  const damp = { "sag/strength": "watch", "sag/looks": "watch" };
  expect(verdicts({ moisture: "8 %" })).toEqual(damp);
  expect(verdicts({ species: "European oak" })).toEqual(damp);
});

test("what breaks fails, whether its figures were read or remembered", () => {
  expect(verdicts({ load: "2000 kg" })["sag/strength"]).toBe("fails");
  expect(verdicts({ load: "2000 kg", species: "European oak" })["sag/strength"]).toBe("fails");
});

test("no European figure from memory is credited to the handbook, and each says that it is", () => {
  const european = allSpecies.filter(
    (s) => s.name.startsWith("European") || s.key.endsWith("scots"),
  );
  expect(european.length).toBeGreaterThan(3);
  for (const { gravity, stiffness, tangentialShrinkage } of european) {
    for (const figure of [gravity, stiffness, tangentialShrinkage]) {
      expect(figure && cite(figure.source)).toMatch(/^European timbers.*from memory$/);
    }
  }
});
