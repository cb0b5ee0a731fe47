import type { Mm } from "../units/index.ts";
import { derived, type Finding, given, type Worked, work } from "../worked/index.ts";

/**
 * A distance that was measured on the parts as they are cut, for a finding's margin.
 *
 * @param size  [mm]
 */
export const measuredOnCuts = (says: string, size: Mm): Worked<Mm> =>
  work({
    says,
    unit: "mm",
    formula: "a = d",
    inputs: {
      d: given(says, size, "mm", derived("the parts as they are cut, turned step by step")),
    },
    value: size,
    source: derived("geometry of the piece"),
  });

type Said = Pick<Finding, "id" | "group" | "verdict" | "says"> & {
  readonly margin?: Worked | undefined;
  readonly why?: readonly Worked[];
  readonly severity?: number | undefined;
  readonly lights?: readonly string[];
};

/** A finding; its margin is its working where no other is named. */
export function told({ margin, why, severity, lights = [], ...said }: Said): Finding {
  return {
    ...said,
    ...(margin ? { margin } : {}),
    ...(severity === undefined ? {} : { severity }),
    why: why ?? (margin ? [margin] : []),
    lights,
  };
}
