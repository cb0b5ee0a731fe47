import { type Frame, frameOf, type Vec3 } from "../geometry/index.ts";
import type { Cut, PrismCut } from "./cut.ts";
import type {
  ArmCut,
  Bevel,
  Bore,
  Feature,
  Haunch,
  HingeRecess,
  KnuckleGroove,
  Mortise,
  Rebate,
  ScrewSlot,
  Taper,
  Tenon,
} from "./feature.ts";
import { mouldingCuts } from "./mouldings.ts";
import { OUT } from "./out.ts";
import type { Blank, Part } from "./part.ts";

/** The cuts of all features of a part, in its unmirrored pattern. */
export const cutsOfPart = ({ blank, features }: Pick<Part, "blank" | "features">) =>
  features.flatMap((feature) => cutsOf(feature, blank));

/**
 * What a feature takes off its blank.
 *
 * @param feature  in part coordinates
 * @param blank  which it is cut in
 */
export function cutsOf(feature: Feature, blank: Blank): readonly Cut[] {
  switch (feature.feature) {
    case "tenon":
      return tenonCuts(feature, blank);
    case "mortise":
      return mortiseCuts(feature, blank);
    case "taper":
      return [taperCut(feature, blank)];
    case "bevel":
      return [bevelCut(feature, blank)];
    case "rebate":
      return [rebateCut(feature, blank)];
    case "bore":
      return boreCuts(feature);
    case "screw-slot":
      return slotCuts(feature, blank);
    case "round-over":
    case "cove":
      return mouldingCuts(feature, blank);
    case "hinge-recess":
    case "knuckle-groove":
      return [recessCut(feature, blank)];
    case "arm-cut":
      return [armCut(feature, blank)];
  }
}

type Outline = readonly (readonly [number, number])[];

/** A box between two corners. */
function boxCut(from: Vec3, to: Vec3): PrismCut {
  const [l, w] = [to[0] - from[0], to[1] - from[1]];
  return {
    cut: "prism",
    frame: frameOf(from, [1, 0, 0], [0, 1, 0]),
    outline: [
      [0, 0],
      [l, 0],
      [l, w],
      [0, w],
    ],
    depth: to[2] - from[2],
  };
}

/** Draws an end's cuts as at the right end and turns them about for the left one. */
function atEnd(
  end: "left" | "right",
  blank: Blank,
  cuts: readonly PrismCut[],
): readonly PrismCut[] {
  if (end === "right") return cuts;
  const flip = ([x, y, z]: Vec3): Vec3 => [blank.length - x, y, z];
  const turn = ([x, y, z]: Vec3): Vec3 => [-x, y, z];
  return cuts.map((cut) => {
    // A mirrored frame is left-handed: its first two directions change places, and so do outlines'.
    const { origin, x, y } = cut.frame;
    const frame = frameOf(flip(origin), turn(y), turn(x));
    return { ...cut, frame, outline: cut.outline.map(([a, b]) => [b, a] as const).reverse() };
  });
}

/** The shoulders: both cheeks, below, above up to the haunch, and the mitre off the tip. */
function tenonCuts(tenon: Tenon, blank: Blank): readonly Cut[] {
  const { length: L, width: W, thickness: T } = blank;
  const shoulder = L - tenon.length;
  const end = L + OUT;
  const [[y0, y1], [z0, z1]] = [tenon.y, tenon.z];
  const cuts = [
    ...(z1 < T ? [boxCut([shoulder, -OUT, z1], [end, W + OUT, T + OUT])] : []),
    ...(z0 > 0 ? [boxCut([shoulder, -OUT, -OUT], [end, W + OUT, z0])] : []),
    ...(y0 > 0 ? [boxCut([shoulder, -OUT, -OUT], [end, y0, T + OUT])] : []),
    ...(y1 < W ? [aboveTenon(tenon, blank)] : []),
    ...(tenon.isMitred ? [mitreCut(tenon, blank)] : []),
  ];
  return atEnd(tenon.end, blank, cuts);
}

/** What stands above a tenon, less its haunch: seen from the show face. */
function aboveTenon({ length, y, haunch }: Tenon, blank: Blank): PrismCut {
  const [L, W] = [blank.length, blank.width];
  const shoulder = L - length;
  const root = shoulder + (haunch?.length ?? 0);
  // A sloped haunch meets the shoulder at the upper edge, and goes on in its slope beyond it.
  const over = haunch?.isSloped ? shoulder - (haunch.length * OUT) / (W - y[1]) : root;
  const outline: Outline = [
    [root, y[1]],
    [L + OUT, y[1]],
    [L + OUT, W + OUT],
    [over, W + OUT],
  ];
  return sawnThrough(outline, blank);
}

/** An outline seen from the show face, cut through the whole thickness. */
const sawnThrough = (outline: Outline, blank: Blank): PrismCut => ({
  cut: "prism",
  frame: frameOf([0, 0, -OUT], [1, 0, 0], [0, 1, 0]),
  outline,
  depth: blank.thickness + 2 * OUT,
});

/** The wedge off a tip: the outer cheek keeps its length, the inner one is shorter by the thickness. */
function mitreCut({ y, z: [z0, z1], haunch }: Tenon, blank: Blank): PrismCut {
  const L = blank.length;
  const thick = z1 - z0;
  // A haunch stands above the tenon, and the mitre must not reach over into it.
  const top = y[1] + (haunch ? 0 : OUT);
  return {
    cut: "prism",
    // Seen from below: x along the grain, the second direction from back to show face.
    frame: frameOf([0, top, 0], [1, 0, 0], [0, 0, 1]),
    outline: [
      [L - thick - OUT, z0 - OUT],
      [L + OUT, z0 - OUT],
      [L + OUT, z1 + OUT],
    ],
    depth: top - y[0] + OUT,
  };
}

/** A long face: where it starts, then along the grain, across it, and into the wood; either hand. */
function faceAxes(face: Mortise["face"], { width: W, thickness: T }: Blank): Frame {
  switch (face) {
    case "show":
      return { origin: [0, 0, T], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, -1] };
    case "back":
      return { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] };
    case "upper":
      return { origin: [0, W, 0], x: [1, 0, 0], y: [0, 0, 1], z: [0, -1, 0] };
    case "lower":
      return { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 0, 1], z: [0, 1, 0] };
  }
}

function mortiseCuts(mortise: Mortise, blank: Blank): readonly Cut[] {
  const { x, across, depth, haunch } = mortise;
  const at = faceAxes(mortise.face, blank);
  const put = ([a, b, c]: Vec3): Vec3 => [
    at.origin[0] + a * at.x[0] + b * at.y[0] + c * at.z[0],
    at.origin[1] + a * at.x[1] + b * at.y[1] + c * at.z[1],
    at.origin[2] + a * at.x[2] + b * at.y[2] + c * at.z[2],
  ];
  /** An outline in x and depth, cut across from one cheek to the other. */
  const sunk = (outline: Outline): PrismCut => {
    // Half of the face frames are left-handed in x and depth: then the cut starts at the far cheek.
    const right = frameOf(put([0, across[0], 0]), at.x, at.z);
    const isRight = right.z.every((v, i) => Math.abs(v - (at.y[i] ?? 0)) < 1e-12);
    const frame = isRight ? right : frameOf(put([0, across[1], 0]), at.x, at.z);
    return { cut: "prism", frame, outline, depth: across[1] - across[0] };
  };
  const hole = sunk([
    [x[0], -OUT],
    [x[1], -OUT],
    [x[1], depth],
    [x[0], depth],
  ]);
  return haunch ? [hole, sunk(socket(haunch, x[0]))] : [hole];
}

/** The haunch's socket, from the left end to the mortise: open at the end when it is square. */
function socket({ length, isSloped }: Haunch, to: number): Outline {
  if (isSloped)
    return [
      [(-OUT * to) / length, -OUT],
      [to, -OUT],
      [to, length],
    ];
  return [
    [-OUT, -OUT],
    [to, -OUT],
    [to, length],
    [-OUT, length],
  ];
}

function taperCut({ face, from, depth }: Taper, blank: Blank): Cut {
  const at = faceAxes(face, blank);
  const run = blank.length - from;
  const size = Math.hypot(run, depth);
  const [along, out] = [depth / size, -run / size];
  return {
    cut: "half-space",
    point: [from + at.origin[0], at.origin[1], at.origin[2]],
    away: [along, out * at.z[1], out * at.z[2]],
  };
}

function bevelCut({ end, run, shorter = "show" }: Bevel, { length, thickness }: Blank): Cut {
  const size = Math.hypot(run, thickness);
  const [along, up] = [thickness / size, (shorter === "show" ? run : -run) / size];
  const whole = shorter === "show" ? 0 : thickness;
  return end === "right"
    ? { cut: "half-space", point: [length, 0, whole], away: [along, 0, up] }
    : { cut: "half-space", point: [0, 0, whole], away: [-along, 0, up] };
}

function rebateCut(
  { end, face, length, depth }: Rebate,
  { length: L, width: W, thickness: T }: Blank,
): Cut {
  const [x0, x1] = end === "left" ? [-OUT, length] : [L - length, L + OUT];
  const [z0, z1] = face === "back" ? [-OUT, depth] : [T - depth, T + OUT];
  return boxCut([x0, -OUT, z0], [x1, W + OUT, z1]);
}

function boreCuts({ from, along, diameter, depth, isThrough, sink }: Bore): readonly Cut[] {
  const back = (by: number): Vec3 => [
    from[0] - along[0] * by,
    from[1] - along[1] * by,
    from[2] - along[2] * by,
  ];
  const hole: Cut = {
    cut: "bore",
    from: back(diameter),
    along,
    radius: diameter / 2,
    depth: depth + diameter + (isThrough ? diameter : 0),
  };
  if (!sink) return [hole];
  const slope = (sink.diameter - diameter) / 2 / sink.depth;
  return [
    hole,
    {
      cut: "bore",
      from: back(OUT),
      along,
      radius: sink.diameter / 2 + OUT * slope,
      endRadius: diameter / 2,
      depth: sink.depth + OUT,
    },
  ];
}

/** Open at an edge that it reaches. */
function recessCut({ x, y, depth }: HingeRecess | KnuckleGroove, { width }: Blank): Cut {
  const from = y[0] <= 0 ? -OUT : y[0];
  const to = y[1] >= width ? width + OUT : y[1];
  return boxCut([x[0], from, -OUT], [x[1], to, depth]);
}

/** Slanting ends go on in their slope outside of both faces. */
function armCut({ show, back, depth }: ArmCut, { width, thickness }: Blank): Cut {
  const over = (i: 0 | 1, by: number) => (by * (show[i] - back[i])) / thickness;
  return {
    cut: "prism",
    // Seen from below: x along the grain, the second direction from back to show face.
    frame: frameOf([0, width + OUT, 0], [1, 0, 0], [0, 0, 1]),
    outline: [
      [back[0] - over(0, OUT), -OUT],
      [back[1] - over(1, OUT), -OUT],
      [show[1] + over(1, OUT), thickness + OUT],
      [show[0] + over(0, OUT), thickness + OUT],
    ],
    depth: depth + OUT,
  };
}

function slotCuts(slot: ScrewSlot, blank: Blank): readonly Cut[] {
  const { x, z, runs, travel, diameter, headDiameter, headDepth } = slot;
  const half = travel / 2;
  const ends: readonly [Vec3, Vec3] =
    runs === "along"
      ? [
          [x - half, -OUT, z],
          [x + half, -OUT, z],
        ]
      : [
          [x, -OUT, z - half],
          [x, -OUT, z + half],
        ];
  const sweep = (width: number, depth: number): Cut => ({
    cut: "sweep",
    from: ends[0],
    to: ends[1],
    along: [0, 1, 0],
    radius: width / 2,
    depth: depth + OUT,
  });
  return [sweep(diameter, blank.width + OUT), sweep(headDiameter, headDepth)];
}
