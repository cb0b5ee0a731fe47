import type { Shaped } from "../piece/index.ts";
import { type Kernel, withKernel } from "./kernel.ts";
import { type Solid, solidFrom } from "./mesh.ts";
import { woodOf } from "./wood.ts";

/**
 * The solid of one part, in its own coordinates, kept by nobody.
 *
 * @throws Problem "nothing-left" when its cuts take all of it
 */
export const solidOf = (kernel: Kernel, part: Shaped): Solid =>
  withKernel(kernel, (scope) => solidFrom(scope, woodOf(scope, part)));
