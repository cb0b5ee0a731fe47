import { expect, test } from "vitest";
import { mutantsOf, mutated } from "../../tools/mutants.ts";

const code = `
const LIMIT = 30;
export function sag(w: number, pick: 3 | 4): number {
  if (w > 12) throw new Problem("too-much", \`\${w.toFixed(2)} of \${99}\`);
  return (5 * w ** 4) / 384 + Math.max(0, list[1] ?? 0) + 1e-9;
}
`;

test("numbers of formulas are found; limits, refusals, types, places and noughts are not", () => {
  expect(mutantsOf("sag.ts", code).map(({ raw }) => raw)).toEqual(["30", "5", "4", "384"]);
});

test("one number is made two per cent too large, the rest of the code left alone", () => {
  const mutant = mutantsOf("sag.ts", code).find(({ raw }) => raw === "384");
  if (!mutant) throw new Error("384 was not found");
  expect(mutant.line).toBe(5);
  expect(mutated(code, mutant)).toBe(code.replace("384", "(384 * 1.02)"));
});
