import { into, outOf, type Vec3 } from "../../src/geometry/index.ts";
import {
  bulkOfPart,
  type Feature,
  type Mortise,
  mirrored,
  type Part,
  type Piece,
  shapeKey,
  type Tenon,
} from "../../src/piece/index.ts";
import { demoShop } from "../../src/shop/index.ts";
import type { CutList } from "../../src/stock/index.ts";

/** Nearer than this counts as the same place [mm]. */
const SAME = 1e-6;

const twice = (words: readonly string[]) => words.filter((word, i) => words.indexOf(word) < i);

/** Everything that is wrong with a piece as parts and joints, by geometry alone; none in a sound one. */
export const pieceFaults = (piece: Piece): readonly string[] => [
  ...twice(piece.parts.map((p) => p.mark)).map((mark) => `mark ${mark} stands twice`),
  ...twice(piece.parts.map((p) => p.key)).map((key) => `key ${key} stands twice`),
  ...twice(piece.joints.map((j) => j.key)).map((key) => `joint ${key} stands twice`),
  ...[...new Map(piece.parts.map((part) => [shapeKey(part), part])).values()].flatMap(blankFaults),
  ...piece.parts.flatMap((part) => mirrorFaults(part, piece)),
  ...piece.joints.flatMap((joint) => jointFaults(joint, piece)),
];

/** A part with less than all of its blank, and all of its features within it. */
function blankFaults(part: Part): readonly string[] {
  const { length, width, thickness } = part.blank;
  const { volume } = bulkOfPart(part);
  const isIn = (n: number, most: number) => n > -SAME && n < most + SAME;
  const isWithin = (f: Feature): boolean => {
    switch (f.feature) {
      case "tenon":
        return f.y.every((y) => isIn(y, width)) && f.z.every((z) => isIn(z, thickness));
      case "mortise": {
        const [across, deep] =
          f.face === "upper" || f.face === "lower" ? [thickness, width] : [width, thickness];
        const isHeld = f.across.every((n) => isIn(n, across)) && f.depth < deep - SAME;
        return isHeld && f.x.every((x) => isIn(x, length));
      }
      case "bore":
        return isIn(f.from[0], length) && isIn(f.from[1], width) && isIn(f.from[2], thickness);
      case "screw-slot": {
        const reach = (f.travel + f.headDiameter) / 2;
        const [alongX, throughZ] =
          f.runs === "along" ? [reach, f.headDiameter / 2] : [f.headDiameter / 2, reach];
        const isInLength = isIn(f.x - alongX, length) && isIn(f.x + alongX, length);
        return isInLength && f.z - throughZ > 0 && f.z + throughZ < thickness;
      }
      case "taper":
        return isIn(f.from, length) && f.depth >= 0 && f.depth < Math.max(width, thickness);
      case "bevel":
        return f.run > 0 && f.run < length;
      case "rebate":
        return f.length > 0 && f.length < length && f.depth > 0 && f.depth < thickness;
      case "round-over":
        return f.radius < width && f.fillet + f.radius < thickness && f.bevel >= 0;
      case "cove":
        return f.radius < width && f.lip > 0 && f.lip < thickness;
      case "hinge-recess":
      case "knuckle-groove":
        return (
          f.x.every((x) => isIn(x, length)) &&
          f.y.every((y) => isIn(y, width)) &&
          f.depth < thickness - SAME
        );
      case "arm-cut":
        return [...f.show, ...f.back].every((x) => isIn(x, length)) && f.depth < width - SAME;
    }
  };
  const faults = part.features.filter((f) => !isWithin(f)).map(({ key }) => key);
  return [
    ...(volume > 0 && volume < length * width * thickness + SAME
      ? []
      : [`${part.key} is no part of its blank`]),
    ...faults.map((key) => `${part.key}: ${key} leaves its blank`),
  ];
}

/** Corners of a blank that tell a body from its mirror. */
const probes = ({ length, width, thickness }: Part["blank"]): readonly Vec3[] => [
  [0, 0, 0],
  [length, 0, 0],
  [0, width, 0],
  [0, 0, thickness],
  [length / 3, width / 5, thickness / 7],
];

/** Whether the maker gave sizes of a single part or joint: not of all alike. */
const isOwn = ({ document: { overrides, measured, cut } }: Piece): boolean =>
  [overrides, measured, cut].some((table) =>
    Object.keys(table).some((key) => !key.includes("/tenons/")),
  );

/** A mirror has its twin's dimensions, and stands where the twin would be seen in a glass between them. */
function mirrorFaults(part: Part, piece: Piece): readonly string[] {
  // One that was changed by itself is nobody's mirror any more; that must be the maker's doing.
  if (!part.mirrorOf) {
    return part.isMirrored && !isOwn(piece) ? [`${part.key} is the mirror of nothing`] : [];
  }
  const twin = piece.parts.find((p) => p.key === part.mirrorOf);
  if (!twin) return [`${part.key} mirrors ${part.mirrorOf}, which is not there`];
  if (!part.isMirrored || twin.isMirrored)
    return [`${part.key} is said to be a mirror and is none`];
  const pattern = (p: Part) => shapeKey({ ...p, isMirrored: false });
  if (pattern(part) !== pattern(twin)) return [`${part.key} is not as ${twin.key} is`];
  const seen = probes(part.blank).map(
    (p) => [outOf(part.pose, mirrored(part, p)), outOf(twin.pose, mirrored(twin, p))] as const,
  );
  // A leg of the maker's own moves the middle of its rail, and so of the arms in it.
  const glass = isOwn(piece) && part.role === "arm" && seen[0] ? seen[0][0][0] + seen[0][1][0] : 0;
  const isSeen = seen.every(
    ([[x, y, z], [a, b, c]]) => Math.hypot(x + a - glass, y - b, z - c) < SAME,
  );
  return isSeen ? [] : [`${part.key} is not the mirror of ${twin.key}`];
}

function featureOf<K extends Part["features"][number]["feature"]>(
  piece: Piece,
  kind: K,
  named: readonly (readonly [string, string])[],
) {
  for (const [key, feature] of named) {
    const part = piece.parts.find((p) => p.key === key);
    const found = part?.features.find((f) => f.key === feature && f.feature === kind);
    if (part && found)
      return { part, feature: found as Extract<Part["features"][number], { feature: K }> };
  }
  return undefined;
}

/** The joint's features exist, and a tenon stands in its mortise with just the shop's clearances. */
function jointFaults(joint: Piece["joints"][number], piece: Piece): readonly string[] {
  const lost = joint.features.filter(
    ([key, feature]) =>
      !piece.parts.find((p) => p.key === key)?.features.some((f) => f.key === feature),
  );
  if (lost.length > 0) return [`${joint.key}: ${lost.join(", ")} is not there`];
  if (joint.kind !== "mortise-and-tenon") return [];
  const tenon = featureOf(piece, "tenon", joint.features);
  const mortise = featureOf(piece, "mortise", joint.features);
  if (!tenon || !mortise) return [`${joint.key} lacks a member`];
  const isLoose = Object.hasOwn(piece.document.overrides, `${joint.key}.thickness`);
  return fitFaults(joint.key, tenon, mortise, isLoose);
}

type Held<F> = { readonly part: Part; readonly feature: F };

/** The tenon's corners seen from the leg's pattern, against the mortise's box. */
function fitFaults(
  key: string,
  tenon: Held<Tenon>,
  mortise: Held<Mortise>,
  isLoose: boolean,
): readonly string[] {
  const { length } = tenon.part.blank;
  const { end, y, z, length: long } = tenon.feature;
  const root = end === "left" ? long : length - long;
  const tip = end === "left" ? 0 : length;
  const seen = [root, tip].flatMap((x) =>
    y.flatMap((at) =>
      z.map((through) => inPattern(mortise.part, outOf(tenon.part.pose, [x, at, through]))),
    ),
  );
  const { face, x, across, depth } = mortise.feature;
  const { width, thickness } = mortise.part.blank;
  const spanOf = (pick: (p: Vec3) => number) =>
    [Math.min(...seen.map(pick)), Math.max(...seen.map(pick))] as const;
  const isEdge = face === "upper" || face === "lower";
  const sunk: Readonly<Record<Mortise["face"], (p: Vec3) => number>> = {
    upper: (p) => width - p[1],
    lower: (p) => p[1],
    show: (p) => thickness - p[2],
    back: (p) => p[2],
  };
  const [x0, x1] = spanOf((p) => p[0]);
  const [a0, a1] = spanOf((p) => (isEdge ? p[2] : p[1]));
  const [, deep] = spanOf(sunk[face]);
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-5;
  const { cheekClearance, widthClearance, depthClearance } = demoShop;
  const faults: string[] = [];
  // A thickness of the maker's own may be looser, but stays in the middle and goes in.
  const play = isLoose ? a0 - across[0] : cheekClearance / 2;
  if (play < -1e-6 || !near(a0 - across[0], play) || !near(across[1] - a1, play))
    faults.push(`${key}: the tenon is off its mortise at the cheeks`);
  if (!near(x0 - x[0], widthClearance / 2) || !near(x[1] - x1, widthClearance / 2))
    faults.push(`${key}: the tenon is off its mortise along the leg`);
  if (!near(depth - deep, depthClearance))
    faults.push(`${key}: the tenon and its mortise differ in depth`);
  return faults;
}

/** A place in the piece, as the part's unmirrored pattern has it. */
const inPattern = (part: Part, p: Vec3): Vec3 => mirrored(part, into(part.pose, p));

/** Every part in exactly one row, the pieces of wood adding up, and the rows to the whole. */
export function cutListFaults(piece: Piece, list: CutList): readonly string[] {
  const listed = list.rows.flatMap((row) => row.keys);
  const strips = piece.parts.reduce((sum, p) => sum + p.strips.length, 0);
  const pieces = list.rows.reduce((sum, row) => sum + row.pieces / row.layers, 0);
  const mass = list.rows.reduce((sum, row) => sum + row.mass, 0);
  const shapes = new Set(
    piece.parts.map((p) => `${p.role} ${shapeKey({ ...p, isMirrored: false })}`),
  );
  const feet = list.rows.reduce((sum, row) => sum + row.boardFeet.value, 0);
  const byThickness = list.byThickness.reduce((sum, one) => sum + one.boardFeet, 0);
  return [
    ...twice(listed).map((key) => `${key} is listed twice`),
    ...piece.parts.filter((p) => !listed.includes(p.key)).map((p) => `${p.key} is not listed`),
    ...(pieces === strips ? [] : [`${pieces} pieces are listed for ${strips} sticks`]),
    ...(list.rows.length === shapes.size ? [] : ["equal parts are not together"]),
    ...(Math.abs(mass - list.mass) < 1e-9 * list.mass
      ? []
      : ["the rows do not weigh what the piece does"]),
    ...(Math.abs(feet - byThickness) < 1e-9 * feet ? [] : ["the board feet do not add up"]),
  ];
}
