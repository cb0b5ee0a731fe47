import { expect } from "vitest";
import { isNear } from "./sizes.ts";

/** Expects two figures to be the same but for the rounding of floating point. */
export const expectNear = (a: number | undefined, b: number | undefined, part = 1e-9): void =>
  expect(a !== undefined && b !== undefined && isNear(a, b, part), `${a} is not ${b}`).toBe(true);
