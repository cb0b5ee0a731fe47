import type { Frame } from "../../geometry/index.ts";
import type { Feature, Joint, Key, Sawn, Strip } from "../../piece/index.ts";
import { type Deg, deg, type Mm, mm, type PerPct, squareMm } from "../../units/index.ts";
import { coefficientAt, type Species } from "../../wood/index.ts";
import { assumed, given, type Worked } from "../../worked/index.ts";
import type { Unmarked } from "../kind.ts";

/** What a glued-up top is asked. */
export type TopAsked = {
  /** along the grain [mm] */
  readonly length: Mm;
  /** across the grain [mm] */
  readonly width: Mm;
  /** [mm] */
  readonly thickness: Mm;
  /** widest strip that is glued in [mm] */
  readonly widest: Mm;
  readonly sawn: Sawn;
  readonly hearts: "alternating" | "all up";
};

/** Rings to the face, by how the wood is sawn [°]. */
const ringAngles: Readonly<Record<Sawn, Deg>> = { flat: deg(0), rift: deg(45), quarter: deg(90) };

/** How much the top's width moves by, per point of moisture. */
export const topCoefficient = (sawn: Sawn, { radial, tangential }: Species): Worked<PerPct> =>
  coefficientAt(
    radial,
    tangential,
    given("angle of the rings to the face", ringAngles[sawn], "°", assumed(`${sawn}sawn strips`)),
  );

/** How far the pith lay from a strip's middle, until a board is chosen; a little different in each [mm]. */
const pithOff = (i: number) => 70 + 17 * ((i * 7) % 5);

/** Equal strips, none wider than the widest, with rings as each is sawn and turned. */
export function stripsOf({ width, thickness, widest, sawn, hearts }: TopAsked): readonly Strip[] {
  const count = Math.max(1, Math.ceil((width - 1e-6) / widest));
  const each = width / count;
  return Array.from({ length: count }, (_, i): Strip => {
    const heart = hearts === "all up" || i % 2 === 0 ? "up" : "down";
    const side = heart === "up" ? 1 : -1;
    const middle = (i + 0.5) * each;
    const off = side * pithOff(i);
    const lean = each * (((i * 3) % 4) / 8 - 0.2);
    const pith: readonly [number, number] =
      sawn === "flat"
        ? [middle + lean, thickness / 2 + off]
        : sawn === "rift"
          ? [middle + off, thickness / 2 + off]
          : [middle + off + side * (each / 2), thickness / 2];
    return { from: mm(i * each), width: mm(each), heart, pith };
  });
}

/** The top as a part. */
export function topPart(
  asked: TopAsked,
  pose: Frame,
  features: readonly Feature[],
  assembly: Key,
): Unmarked {
  const { length, width, thickness, sawn } = asked;
  return {
    key: `${assembly}/top`,
    name: "top",
    role: "top",
    blank: { length, width, thickness },
    features,
    isMirrored: false,
    pose,
    reference: { face: "show", edge: "lower" },
    shows: ["show", "left", "right", "lower", "upper"],
    sawn,
    strips: stripsOf(asked),
  };
}

/**
 * The frame of a top.
 *
 * @param length  [mm]
 * @param width  [mm]
 * @param underside  above the floor [mm]
 */
export const topFrame = (length: Mm, width: Mm, underside: Mm): Frame => ({
  origin: [-length / 2, -width / 2, underside],
  x: [1, 0, 0],
  y: [0, 1, 0],
  z: [0, 0, 1],
});

/** The glue lines between its strips. */
export function topJoints(asked: TopAsked, assembly: Key): readonly Joint[] {
  const strips = stripsOf(asked);
  if (strips.length < 2) return [];
  return [
    {
      key: `${assembly}/joint/top/edges`,
      kind: "edge-glue",
      says: `${strips.length} strips of the top, edge to edge`,
      parts: [`${assembly}/top`],
      features: [],
      glued: squareMm((strips.length - 1) * asked.length * asked.thickness),
      takes: [],
    },
  ];
}
