import type { Joint, Mortise, Part, Piece } from "../piece/index.ts";
import { type Mm, mm } from "../units/index.ts";
import {
  commonPractice,
  derived,
  type Finding,
  given,
  type Worked,
  work,
} from "../worked/index.ts";

/** Least wood outside a mortise that is not called thin; common practice. */
const GOOD_WALL = given("least wood outside a mortise", mm(6), "mm", commonPractice);

/**
 * Wood left outside a mortise, against what the trade asks.
 *
 * @param wall  from the leg's outer face to the mortise [mm]
 * @returns margin; below nought when it is thin [mm]
 */
function wallMargin(wall: Mm): Worked<Mm> {
  const o = given("wood outside the mortise", wall, "mm", derived("geometry of the joint"));
  return work({
    says: "wood outside the mortise, over the least",
    unit: "mm",
    formula: "a = o − g",
    inputs: { o, g: GOOD_WALL },
    value: mm(wall - GOOD_WALL.value),
    source: derived("arithmetic"),
  });
}

const mortisesOf = (part: Part): readonly Mortise[] =>
  part.features.flatMap((f) => (f.feature === "mortise" ? [f] : []));

/** From a mortise's cheek to the outer face beside it, whichever of the two is nearer. */
function wallOf(part: Part, { face, across }: Mortise): Mm {
  const whole = face === "upper" || face === "lower" ? part.blank.thickness : part.blank.width;
  return mm(Math.min(across[0], whole - across[1]));
}

/** The thinnest wall outside the legs' mortises. */
export function outerWalls({ parts }: Piece): readonly Finding[] {
  const walls = parts
    .filter((part) => part.role === "leg")
    .flatMap((part) => mortisesOf(part).map((m) => ({ part, wall: wallOf(part, m) })))
    .sort((a, b) => a.wall - b.wall);
  const [thinnest] = walls;
  if (!thinnest) return [];
  const margin = wallMargin(thinnest.wall);
  const isThin = margin.value < 0;
  return [
    {
      id: "mortises/outer-wall",
      group: "Joinery",
      verdict: isThin ? "watch" : "ok",
      says: isThin
        ? "Thin wood outside a mortise: it may break out when the joint is driven up or racked."
        : "The legs keep enough wood outside their mortises.",
      margin,
      why: [margin],
      lights: parts
        .map((part) => part.key)
        .filter((key) => walls.some((w) => w.part.key === key && w.wall - thinnest.wall < 0.05)),
    },
  ];
}

/**
 * Length of a tenon in times its width, between its shoulders.
 *
 * @param length  [mm]
 * @param width  above 0 [mm]
 */
function tenonWidths(length: Mm, width: Mm): Worked {
  return work({
    says: "length of the tenon, in widths",
    unit: "1",
    formula: "r = m/b",
    inputs: {
      m: given("length of the tenon", length, "mm", derived("geometry of the joint")),
      b: given("width of the tenon", width, "mm", derived("geometry of the joint")),
    },
    value: length / width,
    source: derived("arithmetic"),
  });
}

/** Tenons much wider than they are long pull the leg about with the seasons. */
export function wideTenons({ parts, joints }: Piece): readonly Finding[] {
  const rails = parts.flatMap((part) =>
    part.features.flatMap((f) =>
      f.feature === "tenon"
        ? [{ part, worked: tenonWidths(f.length, mm(f.y[1] - f.y[0])), wide: f.y[1] - f.y[0] }]
        : [],
    ),
  );
  const [shortest] = [...rails].sort((a, b) => a.worked.value - b.worked.value);
  if (!shortest) return [];
  const isStubby = shortest.worked.value < 0.35;
  const isWide = rails.some(({ wide }) => wide > 100);
  const lights = rails
    .filter((r) => r.worked.value - shortest.worked.value < 0.01)
    .map((r) => r.part.key);
  return [
    {
      id: "mortises/tenon-shape",
      group: "Joinery",
      verdict: isStubby || isWide ? "watch" : "ok",
      says: isWide
        ? "A tenon over 100 mm wide moves enough in a year to loosen its glue: two narrower ones hold better."
        : isStubby
          ? "A tenon is short for its width: the rail can rack. A thicker leg or mitred tips make it longer."
          : "The tenons are long enough for their width, by the trade’s habit.",
      why: [shortest.worked],
      lights: [...new Set([...lights, ...legsAt(joints, lights)])],
    },
  ];
}

const legsAt = (joints: readonly Joint[], rails: readonly string[]): readonly string[] =>
  joints
    .filter((j) => j.kind === "mortise-and-tenon" && j.parts.some((p) => rails.includes(p)))
    .map((j) => j.key);

/** Slack at both cheeks that glue no longer bridges well; common practice [mm]. */
const LOOSE = 0.4;

/** Tenons that were made too thin for their mortises. */
export function looseTenons({ values }: Piece): readonly Finding[] {
  const thick = values.filter(({ key }) => /\/joint\/[^.]*\.thickness$/.test(key));
  const slack = thick.flatMap((tenon) => {
    const mortise = values.find(({ key }) => key === tenon.key.replace(/thickness$/, "mortise"));
    return mortise ? [{ tenon, worked: slackOf(mortise.inForce, tenon.inForce) }] : [];
  });
  const [worst] = [...slack].sort((a, b) => b.worked.value - a.worked.value);
  if (!worst) return [];
  const isLoose = worst.worked.value > LOOSE;
  return [
    {
      id: "mortises/slack",
      group: "Joinery",
      verdict: isLoose ? "watch" : "ok",
      says: isLoose
        ? "A tenon is loose in its mortise: glue does not bridge it. Pack its cheeks, or cut a narrower mortise."
        : "The tenons are snug in their mortises.",
      margin: worst.worked,
      why: [worst.worked],
      lights: isLoose
        ? slack
            .filter(({ worked }) => worked.value > LOOSE)
            .map(({ tenon }) => tenon.key.replace(/\.thickness$/, ""))
        : [],
    },
  ];
}

const slackOf = (mortise: Mm, tenon: Mm): Worked<Mm> =>
  work({
    says: "slack between tenon and mortise, both cheeks together",
    unit: "mm",
    formula: "a = w − t",
    inputs: {
      w: given("width of the mortise", mortise, "mm", derived("as made")),
      t: given("thickness of the tenon", tenon, "mm", derived("as made")),
    },
    value: mm(mortise - tenon),
    source: derived("arithmetic"),
  });
