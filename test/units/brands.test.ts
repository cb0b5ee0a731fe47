import { describe, expect, test } from "vitest";
import { droopOfArm, tippingLoad } from "../../src/mechanics/index.ts";
import { boardFeetOf } from "../../src/stock/index.ts";
import {
  celsius,
  deg,
  inches,
  type Kg,
  kg,
  kgPerM3,
  type McPct,
  MM_PER_INCH,
  type Mm,
  mcPct,
  mm,
  mpa,
  type N,
  newtons,
  printLength,
  ratio,
  rhPct,
} from "../../src/units/index.ts";
import { density, equilibriumMoisture, widthChange } from "../../src/wood/index.ts";

/**
 * Each line marked here must be an error to the compiler; when one stops being so, the compiler
 * says that the mark is unused, and the types of the whole house fail. Nothing here is run.
 */
function swapped(
  length: Mm,
  force: N,
  mass: Kg,
  moisture: McPct,
  plain: number,
): readonly unknown[] {
  return [
    // @ts-expect-error a plain number is no length
    printLength(plain, { units: "mm" }),
    // @ts-expect-error a force is no length
    printLength(force, { units: "mm" }),
    // @ts-expect-error a length is no force
    droopOfArm(length, length, mpa(10000), force),
    // @ts-expect-error mass and length the wrong way round
    tippingLoad(length, mass, length),
    // @ts-expect-error a force is not a mass
    tippingLoad(force, length, length),
    // @ts-expect-error humidity and temperature the wrong way round
    equilibriumMoisture(rhPct(50), celsius(20)),
    // @ts-expect-error humidity is not moisture
    widthChange(length, 0.003, rhPct(40), rhPct(50)),
    // @ts-expect-error an angle is not moisture
    density(ratio(0.6), deg(12)),
    // @ts-expect-error a density is no specific gravity
    density(kgPerM3(600), moisture),
    // @ts-expect-error a length does not count pieces
    boardFeetOf(length, length, length, length),
    // @ts-expect-error a sum of lengths is a plain number until it is minted again
    printLength(length + length, { units: "mm" }),
  ];
}

void swapped;

describe("minting", () => {
  test("keeps the number", () => {
    expect([mm(3), kg(2), newtons(-1), mcPct(0)]).toEqual([3, 2, -1, 0]);
    expect(inches(1)).toBe(25.4);
    expect(MM_PER_INCH).toBe(25.4);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "%f is a fault in the code that made it",
    (n) => {
      for (const mint of [mm, kg, newtons, mcPct, celsius, ratio, inches]) {
        expect(() => mint(n)).toThrow("finite");
      }
    },
  );
});
