import type { Feature, Haunch, Part } from "../../piece/index.ts";
import { type LengthUnit, type Mm, mm } from "../../units/index.ts";
import { drawnLength } from "../figures.ts";
import { isUnderHinge } from "../views/part-places.ts";

/** What is worked on a part and no dimension line tells: one line for each sort, counted. */
export function partNotes(part: Part, units: LengthUnit): readonly string[] {
  const { features, reference, blank } = part;
  const sized = (length: Mm) => drawnLength(length, units, "fit");
  const told = features.map((feature) =>
    feature.feature === "bore" && isUnderHinge(feature, part)
      ? `lead hole for a hinge’s screw, Ø ${sized(feature.diameter)}, ${sized(feature.depth)} deep: mark it through the plate.`
      : noteOf(feature, blank, sized),
  );
  const sorts = [...new Set(told)];
  return [
    `Measured from the left end, the ${reference.edge} edge and the ${reference.face} face: a ring marks where the tape starts.`,
    ...sorts.map((says) => {
      const count = told.filter((one) => one === says).length;
      return count > 1 ? `${count} times: ${says}` : capital(says);
    }),
  ];
}

const capital = (says: string) => says.charAt(0).toUpperCase() + says.slice(1);

const sideNames: Readonly<Record<string, string>> = {
  show: "the show face",
  back: "the back",
  upper: "the upper edge",
  lower: "the lower edge",
};

function noteOf(feature: Feature, blank: Part["blank"], sized: (length: Mm) => string): string {
  const size = ([from, to]: readonly [Mm, Mm]) => sized(mm(to - from));
  switch (feature.feature) {
    case "tenon": {
      const { y, z, length, haunch, isMitred } = feature;
      return `tenon ${size(z)} thick, ${size(y)} wide, ${sized(length)} long${isMitred ? ", its tip mitred" : ""}${haunchNote(haunch, sized)}.`;
    }
    case "mortise": {
      const { x, across, depth, face, haunch } = feature;
      return `mortise in ${sideNames[face]}: ${size(across)} wide, ${size(x)} long, ${sized(depth)} deep${haunchNote(haunch, sized)}.`;
    }
    case "taper":
      return `tapered on ${sideNames[feature.face]}: ${sized(feature.depth)} off at the right end.`;
    case "bevel":
      return `an end sawn aslant, ${sideNames[feature.shorter ?? "show"]} shorter by ${sized(feature.run)}.`;
    case "rebate":
      return `rebate at the ${feature.end} end in ${sideNames[feature.face]}: ${sized(feature.length)} long, ${sized(feature.depth)} deep.`;
    case "bore":
      return `hole Ø ${sized(feature.diameter)}, ${feature.isThrough ? "through" : `${sized(feature.depth)} deep`}${sinkNote(feature.sink, sized)}.`;
    case "screw-slot": {
      const { diameter, travel, headDiameter, headDepth, runs } = feature;
      const way = runs === "along" ? "along the grain" : "through the thickness";
      return `screw slot through the width: ${sized(diameter)} wide, ${sized(mm(diameter + travel))} long ${way}; from the lower edge ${sized(headDiameter)} wide and ${sized(mm(headDiameter + travel))} long, ${sized(headDepth)} deep, leaving ${sized(mm(blank.width - headDepth))}.`;
    }
    case "round-over": {
      const { edge, fillet, radius, bevel } = feature;
      const off = bevel > 0 ? `; its lower corner bevelled by ${sized(bevel)}` : "";
      return `rule joint’s round-over along ${sideNames[edge]}: step ${sized(fillet)}, radius ${sized(radius)}${off}.`;
    }
    case "cove":
      return `rule joint’s cove along ${sideNames[feature.edge]}: radius ${sized(feature.radius)}, lip ${sized(feature.lip)} thick.`;
    case "hinge-recess":
      return `bed for a hinge’s plate in the back: ${size(feature.x)} by ${size(feature.y)}, ${sized(feature.depth)} deep.`;
    case "knuckle-groove":
      return `groove for a hinge’s barrel in the back: ${size(feature.x)} by ${size(feature.y)}, ${sized(feature.depth)} deep.`;
    case "arm-cut":
      return `opening for a swing arm from the upper edge: ${size(feature.show)} long at the show face, ${sized(feature.depth)} deep.`;
  }
}

const sinkNote = (
  sink: { readonly diameter: Mm; readonly depth: Mm } | undefined,
  sized: (length: Mm) => string,
): string => (sink ? `, countersunk to Ø ${sized(sink.diameter)}` : "");

const haunchNote = (haunch: Haunch | undefined, sized: (length: Mm) => string): string =>
  haunch ? `; ${haunch.isSloped ? "sloped" : "square"} haunch of ${sized(haunch.length)}` : "";
