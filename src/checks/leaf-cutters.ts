import type { JointCutters, Shop } from "../shop/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { derived, type Finding, given, known, type Worked, work } from "../worked/index.ts";
import type { Alike } from "./leaf-alike.ts";
import { told } from "./told.ts";

const inShop = derived("measured, as the shop has it");

/** Whether the pair of cutters reaches as far as the mouldings go. */
export function leafCutters(
  { leaf, section, id, lights, show }: Alike,
  shop: Shop,
): readonly Finding[] {
  const { rule } = leaf;
  const cutters = shop.jointCutters.find(({ name }) => name === rule?.cutters);
  if (!rule || !section || !cutters) return [];
  const b = known(section.centreHeight, "round-over’s centre over the underside", "mm");
  const R_c = known(rule.cove, "radius of the cove", "mm");
  const f = known(rule.fillet, "fillet", "mm");
  const cove = coveReach(cutters, b, R_c);
  const round = filletReach(cutters, f);
  const isShort = { cove: cove.value < 0, round: round.value < 0 };
  const says = [
    isShort.cove
      ? `The cove cutter of “${cutters.name}” is ${show(-cove.value)} too short for this cove: cut it in two heights, clearing below the cove with a straight cutter, or take a longer one.`
      : "",
    isShort.round
      ? `The round-over cutter’s straight part is ${show(-round.value)} short of the fillet: saw or plane the rest of that step first, or take another cutter.`
      : "",
  ].filter((one) => one !== "");
  const margin = cove.value < round.value ? cove : round;
  const wanted = margin === cove ? b.value + R_c.value : f.value;
  return [
    told({
      ...{ id: id("cutters"), group: "Can this shop make it", margin, lights },
      verdict: says.length > 0 ? "watch" : "ok",
      severity: says.length > 0 ? 1 - margin.value / wanted : 0,
      says:
        says.length > 0
          ? says.join(" ")
          : `“${cutters.name}” reaches as far as round-over and cove go.`,
      why: [cove, round],
    }),
  ];
}

type Sized = ReturnType<typeof known<Mm>>;

const coveReach = ({ coveLength }: JointCutters, b: Sized, R_c: Sized): Worked<Mm> =>
  work({
    says: "cove cutter longer than the cove is high",
    unit: "mm",
    formula: "a = l − b − R_c",
    inputs: { l: given("cutting length of the cove cutter", coveLength, "mm", inShop), b, R_c },
    value: mm(coveLength - b.value - R_c.value),
    source: derived("the leaf lies on its underside"),
  });

const filletReach = ({ straight }: JointCutters, f: Sized): Worked<Mm> =>
  work({
    says: "round-over cutter’s straight part over the fillet",
    unit: "mm",
    formula: "a = s − f",
    inputs: { s: given("straight part of the round-over cutter", straight, "mm", inShop), f },
    value: mm(straight - f.value),
    source: derived("geometry of the joint’s section"),
  });
