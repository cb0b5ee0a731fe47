import { into, outOf, type Vec3 } from "../geometry/index.ts";
import { type LeafJoint, mirrored, type Part, type Piece } from "../piece/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { derived, given, type Worked, work } from "../worked/index.ts";
import type { Hinged, HingePlace } from "./leaf-hinge-place.ts";
import { bedOf } from "./leaf-plates.ts";

/** Wood between a hinge's bed and another lead hole at least; common practice [mm]. */
const BESIDE_LEAD = 2;
/** Plates proud by no more than this are pressed in by the top's own screws [mm]. */
const PRESSED = 0.1;

/** What lies right under the top: rails, legs, blocks, and arms that are in. */
const BELOW: ReadonlySet<Part["role"]> = new Set(["rail", "leg", "corner-block", "arm"]);

/** Short plates laid on the underside that reach in between the top and what it sits on. */
export function underTop({ parts }: Piece, joint: Hinged): readonly HingePlace[] {
  const { leaf } = joint;
  const bed = bedOf(leaf);
  const p = bed.proud;
  if (p.value <= PRESSED) return [];
  return parts
    .filter(({ role }) => BELOW.has(role))
    .flatMap((part): readonly HingePlace[] => {
      const span = spanIn(leaf, part);
      const isUnder = span.y[1] > -p.value + PRESSED && span.y[0] < 0;
      const isMet = leaf.hinges.some(
        (z) => z - bed.half < span.z[1] && z + bed.half > span.z[0] && bed.inner < span.x[1],
      );
      if (!isUnder || !isMet || bed.outer < span.x[0]) return [];
      return [
        {
          joint,
          measure: p.value,
          verdict: "fails",
          margin: seatOf(p, mm(Math.max(0, -span.y[1]))),
          says: (show) =>
            `The hinges’ short plates, laid on the face, lie between the top and the ${part.name}: the top cannot sit down. Let the plates in flush, or give the top ${show(span.x[1] - bed.inner)} more overhang at the leaves.`,
          lights: [part.key],
        },
      ];
    });
}

const seatOf = (p: Worked<Mm>, air: Mm): Worked<Mm> =>
  work({
    says: "air over what the top sits on, less the proud plates",
    unit: "mm",
    formula: "a = c − p",
    inputs: { c: given("air under the top there", air, "mm", derived("geometry of the piece")), p },
    value: mm(air - p.value),
    source: derived("geometry of the piece"),
  });

/** Where a part lies in the joint's section and along it [mm]. */
function spanIn({ section }: LeafJoint, { blank, pose }: Part) {
  const corners = [0, blank.length].flatMap((x) =>
    [0, blank.width].flatMap((y) =>
      [0, blank.thickness].map((z) => into(section, outOf(pose, [x, y, z]))),
    ),
  );
  const along = (i: 0 | 1 | 2) =>
    [
      Math.min(...corners.map((corner: Vec3) => corner[i])),
      Math.max(...corners.map((corner: Vec3) => corner[i])),
    ] as const;
  return { x: along(0), y: along(1), z: along(2) };
}

/** Between a hinge's bed in the top and the lead holes of what holds the top. */
export function besideLeads(piece: Piece, joint: Hinged): readonly HingePlace[] {
  const { leaf } = joint;
  const top = piece.parts.find(({ key }) => key === leaf.top);
  if (!top) return [];
  const bed = bedOf(leaf);
  const held = piece.joints
    .filter(({ kind }) => kind === "screwed-slot" || kind === "button")
    .flatMap(({ key, features }) => features.map(([part, name]) => ({ key, part, name })));
  return held.flatMap(({ key, part, name }): readonly HingePlace[] => {
    const hole = part === top.key ? top.features.find((one) => one.key === name) : undefined;
    if (hole?.feature !== "bore") return [];
    const [x, , z] = into(leaf.section, outOf(top.pose, mirrored(top, hole.from)));
    const away = leaf.hinges.map((at) =>
      Math.hypot(
        Math.max(0, bed.inner - x, x - bed.outer),
        Math.max(0, Math.abs(z - at) - bed.half),
      ),
    );
    const air = Math.min(...away) - hole.diameter / 2 - BESIDE_LEAD;
    return [
      {
        joint,
        measure: BESIDE_LEAD,
        verdict: "watch",
        margin: room("hinge from a lead hole of what holds the top, over the least", air),
        says: () =>
          "A hinge lies over, or hard by, a screw that holds the top: move that fastening along its rail.",
        lights: [key],
      },
    ];
  });
}

const room = (says: string, size: number): Worked<Mm> =>
  work({
    says,
    unit: "mm",
    formula: "a = d",
    inputs: { d: given(says, mm(size), "mm", derived("geometry of the piece")) },
    value: mm(size),
    source: derived("geometry of the piece"),
  });
