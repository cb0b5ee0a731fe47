import type { Piece } from "../piece/index.ts";
import { mm } from "../units/index.ts";
import { derived, given, work } from "../worked/index.ts";
import type { Hinged, HingePlace } from "./leaf-hinge-place.ts";

/** A hinge's length along the knuckle, as a line of the working. */
const lengthOf = ({ length }: Hinged["leaf"]["hinge"]) =>
  given("length of a hinge", length, "mm", derived("the hinge, as the shop has it"));

/** Between the outermost hinge and the nearer end of leaf and top. */
export function pastEnd({ parts }: Piece, joint: Hinged): HingePlace {
  const { leaf, top, hinges, hinge } = joint.leaf;
  const lengths = parts.flatMap(({ key, blank }) =>
    key === leaf || key === top ? [blank.length] : [],
  );
  const out = Math.max(...hinges.map(Math.abs));
  const L = given("shorter of leaf and top", mm(Math.min(...lengths)), "mm", derived("as made"));
  const z = given(
    "middle of the outermost hinge from the middle",
    mm(out),
    "mm",
    derived("as laid out"),
  );
  const l = lengthOf(hinge);
  return {
    joint,
    measure: hinge.length,
    verdict: "fails",
    margin: work({
      says: "hinge from the end of the leaf",
      unit: "mm",
      formula: "a = L/2 − z − l/2",
      inputs: { L, z, l },
      value: mm(L.value / 2 - z.value - l.value / 2),
      source: derived("geometry of the piece"),
    }),
    says: (show) =>
      `A hinge runs ${show(z.value + l.value / 2 - L.value / 2)} past the end of the leaf: make the leaf longer, or take shorter hinges.`,
  };
}

/** Between neighbours along the line. */
export function tooClose(joint: Hinged): readonly HingePlace[] {
  const { hinges, hinge } = joint.leaf;
  const sorted = [...hinges].sort((a, b) => a - b);
  return sorted.slice(1).map((at, i): HingePlace => {
    const d = given(
      "middles of two hinges apart",
      mm(at - (sorted[i] ?? 0)),
      "mm",
      derived("as laid out"),
    );
    const l = lengthOf(hinge);
    return {
      joint,
      measure: hinge.length,
      verdict: "fails",
      margin: work({
        says: "wood between two hinges",
        unit: "mm",
        formula: "a = d − l",
        inputs: { d, l },
        value: mm(d.value - l.value),
        source: derived("geometry of the piece"),
      }),
      says: () =>
        "Two hinges of a leaf lie over each other: arms or fastenings leave them no room. Move those, or take shorter hinges.",
    };
  });
}
