import { dot, into, outOf, turnedAbout } from "../geometry/index.ts";
import type { ArmPivot, Piece } from "../piece/index.ts";
import { type Mm, mm, printQuantity } from "../units/index.ts";
import { derived, type Finding, given, known, type Worked, work } from "../worked/index.ts";
import { type Arm, armsOf } from "./arms-of.ts";
import { plainOf } from "./leaf-alike.ts";
import { bedOf } from "./leaf-plates.ts";
import { told } from "./told.ts";

/** Steel that stands this little below an arm's upper edge only polishes it [mm]. */
const NO_MATTER = 0.05;

/** Steel of a hinge under the face, in the section: from here out to there, and how far down. */
type Steel = { readonly x: readonly [number, number]; readonly down: Worked<Mm> };

/** Hinges that an arm runs into on its way out, or comes to lie under. */
export function hingesUnderArms(piece: Piece): readonly Finding[] {
  const met = armsOf(piece).flatMap((arm) => meetings(arm));
  const [worst] = [...met].sort((a, b) => a.margin.value - b.margin.value);
  if (!worst) return [];
  const struck = met.filter(({ margin }) => margin.value < -NO_MATTER);
  const isStruck = struck.length > 0;
  const of = isStruck ? struck : met;
  const show = (size: number) => printQuantity(size, "mm", piece.units);
  return [
    told({
      ...{ id: "leaf/hinge-arms", group: "Fit and swing", margin: worst.margin },
      verdict: isStruck ? "fails" : "watch",
      severity: isStruck ? 2 - worst.margin.value : 1,
      says: isStruck
        ? `The ${worst.arm.motion.says} strikes a hinge as it swings: the steel stands ${show(-worst.margin.value)} below the arm’s upper edge. Let the plates in flush, or cut the arm that much lower and wedge the leaf up.`
        : `The ${worst.arm.motion.says}, swung out, lies under a hinge: see that every screw’s head is sunk below its plate, or move the hinge aside.`,
      lights: [...new Set(of.flatMap(({ arm }) => [arm.part.key, arm.leaf.leaf]))],
    }),
  ];
}

type Meeting = { readonly arm: Arm; readonly margin: Worked<Mm> };

/** Where one arm meets steel that stands proud, and where it comes to lie under a hinge let in flush. */
function meetings(arm: Arm): readonly Meeting[] {
  const { leaf } = arm;
  const bed = bedOf(leaf);
  const place = placeOf(arm);
  const steel = steelOf(arm);
  const air = given(
    "air over the closed arm",
    mm(place.air),
    "mm",
    derived("geometry of the piece"),
  );
  return leaf.hinges.flatMap((z): readonly Meeting[] => {
    const along = [z - bed.half, z + bed.half] as const;
    const swept = steel.filter(({ x, down }) => down.value > 0 && isSwept(place, x, along));
    const isOver = Math.abs(z - place.z) < bed.half + place.half;
    const flush = isOver && swept.length === 0 ? steel.slice(0, 1) : [];
    return [...swept, ...flush].map(({ down }) => ({ arm, margin: below(air, down) }));
  });
}

const below = (c: ReturnType<typeof given<Mm>>, p: Worked<Mm>): Worked<Mm> =>
  work({
    says: "air over the arm, less what of the hinge stands under the face",
    unit: "mm",
    formula: "a = c − p",
    inputs: { c, p },
    value: mm(c.value - p.value),
    source: derived("geometry of the piece"),
  });

/** Plates on the face from end to end, and the barrel, each with how far it stands under the face. */
function steelOf({ leaf }: Arm): readonly Steel[] {
  const { hinge, pinHeight, pinOut } = leaf;
  const bed = bedOf(leaf);
  const h = known(pinHeight, "pin over the underside", "mm");
  const r = known(hinge.barrel, "radius of the barrel", "mm");
  const out = plainOf(pinOut);
  const barrel = work({
    says: "barrel stands under the face by",
    unit: "mm",
    formula: "p = max(0, r − h)",
    inputs: { r, h },
    value: mm(Math.max(0, r.value - h.value)),
    source: derived("geometry of the joint’s section"),
  });
  return [
    { x: [bed.inner, bed.outer], down: bed.proud },
    { x: [out - hinge.barrel, out + hinge.barrel], down: barrel },
  ];
}

/** An arm's pivot in the section and along it, and what its ends sweep. */
type Place = {
  readonly x: number;
  readonly z: number;
  /** 1 where its reaching end lies along the section's z when it is in */
  readonly way: 1 | -1;
  readonly reach: number;
  readonly tail: number;
  /** of its thickness */
  readonly half: number;
  /** between its upper edge and the top's underside */
  readonly air: number;
};

function placeOf({ pivot, motion, part, leaf }: Arm): Place {
  const { section } = leaf;
  const [x, , z] = into(section, motion.axis.at);
  // A quarter back from pointing outwards is where the reaching end lies when it is in.
  const closed = turnedAbout(motion.axis.along, section.x, -Math.PI / 2);
  const { width, length, thickness } = part.blank;
  const tops = [0, width].flatMap((y) =>
    [0, length].map((l) => into(section, outOf(part.pose, [l, y, thickness / 2]))[1]),
  );
  const half = plainOf(pivot.thickness) / 2;
  // The corner that is longest, on the outer face where its ends are mitred.
  const outer = half - plainOf(pivot.offset);
  const slope = Math.tan((degreesOf(pivot) * Math.PI) / 180);
  return {
    ...{ x, z, half },
    way: dot(closed, section.z) > 0 ? 1 : -1,
    reach: Math.hypot(plainOf(pivot.reach) + outer * slope, outer),
    tail: Math.hypot(plainOf(pivot.tail), half),
    air: Math.max(0, -Math.max(...tops)),
  };
}

const degreesOf = ({ angle }: ArmPivot): number =>
  typeof angle === "object" ? angle.value : angle;

type Span = readonly [from: number, to: number];

/** Whether an arm's ends, each through its quarter of a circle, pass over a rectangle under the top. */
function isSwept({ x, z, way, reach, tail, half }: Place, across: Span, along: Span): boolean {
  const within = (out: 1 | -1, radius: number) => {
    const o = across.map((one) => out * (one - x)).sort((a, b) => a - b) as [number, number];
    const a = along.map((one) => out * way * (one - z)).sort((p, q) => p - q) as [number, number];
    if (o[1] < -half || a[1] < -half) return false;
    const near = ([from, to]: Span) => Math.max(from, Math.min(0, to), -half);
    return Math.hypot(near(o), near(a)) < radius;
  };
  return within(1, reach) || within(-1, tail);
}
