import fc from "fast-check";
import {
  celsius,
  count,
  deg,
  kg,
  mcPct,
  mm,
  mpa,
  newtons,
  pct,
  perPct,
  ratio,
  rhPct,
} from "../../src/units/index.ts";
import { allSpecies } from "../../src/wood/index.ts";

/** Any number of a range, ends included; what lies nearer to nought than any measure is nought. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc
    .double({ min, max, noNaN: true, noDefaultInfinity: true })
    .map((n) => (Math.abs(n) < 1e-12 && min <= 0 ? 0 : n));

/** Sizes, moistures and forces as a shop meets them, branded. */
export const some = {
  length: between(0.5, 5000).map(mm),
  moisture: between(0, 30).map(mcPct),
  coefficient: between(0.0005, 0.006).map(perPct),
  shrinkage: between(0.5, 20).map(pct),
  gravity: between(0.1, 1.2).map(ratio),
  share: between(0.005, 1).map(ratio),
  angle: between(0, 90).map(deg),
  strength: between(1, 200).map(mpa),
  modulus: between(1000, 20000).map(mpa),
  load: between(0.1, 5000).map(newtons),
  mass: between(0.1, 300).map(kg),
  temperature: between(-20, 99).map(celsius),
  humidity: between(0, 99.9).map(rhPct),
  pieces: fc.integer({ min: 1, max: 40 }).map(count),
  species: fc.constantFrom(...allSpecies),
} as const;

/** Whether two figures are the same but for the rounding of floating point. */
export const isNear = (a: number, b: number, part = 1e-9): boolean =>
  a === b || Math.abs(a - b) <= part * Math.max(Math.abs(a), Math.abs(b));
