import type { JointCutters, LeafHinge } from "../../shop/index.ts";
import type { Making } from "../kind.ts";
import type { DropLeafAnswers } from "./asks.ts";

/** The shop's things that the answers name; undefined when one is not there. */
export function chosenThings(
  given: DropLeafAnswers,
  { shop, refuse }: Making,
): { readonly cutters: JointCutters; readonly hinge: LeafHinge } | undefined {
  const cutters = named(shop.jointCutters, given.cutters);
  const hinge = named(shop.leafHinges, given.hinge);
  const missing = (question: string, name: string, first: string | undefined) =>
    refuse({
      code: "thing-unknown",
      question,
      reason: `The shop has no “${name.slice(0, 40)}”.`,
      use: first ?? "",
    });
  if (!cutters) missing("cutters", given.cutters, shop.jointCutters[0]?.name);
  if (!hinge) missing("hinge", given.hinge, shop.leafHinges[0]?.name);
  return cutters && hinge && { cutters, hinge };
}

/** By its name, however its letters are written. */
const named = <T extends { readonly name: string }>(
  things: readonly T[],
  name: string,
): T | undefined => things.find((one) => one.name.toLowerCase() === name.toLowerCase());
