import type { HingeMounting } from "../piece/index.ts";
import { type Mm, mm } from "../units/index.ts";
import { type Known, known, type Worked, work } from "../worked/index.ts";
import { SECTION } from "./rule-joint.ts";

/**
 * Height of the pin over the underside, as the hinge is mounted; its barrel is let in either way.
 *
 * @param pinOverFace  of the pin over the plates' outer face [mm]
 * @param plate  thickness of the plates [mm]
 * @returns height [mm], negative when the pin lies outside the wood
 */
export function pinHeight(
  pinOverFace: Known<Mm>,
  plate: Known<Mm>,
  mounting: HingeMounting,
): Worked<Mm> {
  const e = known(pinOverFace, "pin over the plates' outer face", "mm");
  const p = known(plate, "thickness of the plates", "mm");
  const says = "pin over the underside";
  return mounting === "let in"
    ? work({
        says,
        unit: "mm",
        formula: "h = e",
        inputs: { e },
        value: e.value,
        source: SECTION,
      })
    : work({
        says,
        unit: "mm",
        formula: "h = e − p",
        inputs: { e, p },
        value: mm(e.value - p.value),
        source: SECTION,
      });
}

/**
 * Height of the pin over the round-over's centre.
 *
 * @param height  of the pin over the underside [mm]
 * @param centre  height of the round-over's centre over the underside [mm]
 * @returns difference, positive when the pin stands higher [mm]
 */
export function pinAboveCentre(height: Known<Mm>, centre: Known<Mm>): Worked<Mm> {
  const h = known(height, "pin over the underside", "mm");
  const b = known(centre, "round-over's centre over the underside", "mm");
  return work({
    says: "pin above the round-over's centre",
    unit: "mm",
    formula: "d_y = h − b",
    inputs: { h, b },
    value: mm(h.value - b.value),
    source: SECTION,
  });
}

/**
 * How deep the plates' outer face lies inside the underside.
 *
 * @param height  of the pin over the underside [mm]
 * @param pinOverFace  of the pin over the plates' outer face [mm]
 * @returns depth, negative when the plates stand proud [mm]
 */
export function outerFaceDepth(height: Known<Mm>, pinOverFace: Known<Mm>): Worked<Mm> {
  const h = known(height, "pin over the underside", "mm");
  const e = known(pinOverFace, "pin over the plates' outer face", "mm");
  return work({
    says: "plates' outer face inside the underside",
    unit: "mm",
    formula: "q = h − e",
    inputs: { h, e },
    value: mm(h.value - e.value),
    source: SECTION,
  });
}

/**
 * Depth of the recess for the plates.
 *
 * @param faceDepth  from `outerFaceDepth` [mm]
 * @param plate  thickness of the plates [mm]
 * @returns depth, 0 when they are laid on the face [mm]
 */
export function plateRecess(faceDepth: Known<Mm>, plate: Known<Mm>): Worked<Mm> {
  const q = known(faceDepth, "plates' outer face inside the underside", "mm");
  const p = known(plate, "thickness of the plates", "mm");
  return work({
    says: "recess for the plates",
    unit: "mm",
    formula: "r = max(0, q + p)",
    inputs: { q, p },
    value: mm(Math.max(0, q.value + p.value)),
    source: SECTION,
  });
}

/**
 * Depth of the groove for the barrel.
 *
 * @param height  of the pin over the underside [mm]
 * @param barrel  radius of the barrel [mm]
 * @param clear  room round it [mm]
 * @returns depth [mm]
 */
export function barrelGroove(height: Known<Mm>, barrel: Known<Mm>, clear: Known<Mm>): Worked<Mm> {
  const h = known(height, "pin over the underside", "mm");
  const r = known(barrel, "radius of the barrel", "mm");
  const a = known(clear, "room round the barrel", "mm");
  return work({
    says: "groove for the barrel",
    unit: "mm",
    formula: "d = h + r + a",
    inputs: { h, r, a },
    value: mm(h.value + r.value + a.value),
    source: SECTION,
  });
}

/**
 * Wood left between the barrel's groove and the face.
 *
 * @param thickness  of the top [mm]
 * @param groove  its depth, from `barrelGroove` [mm]
 * @returns wood left above the groove [mm]
 */
export function woodOverGroove(thickness: Known<Mm>, groove: Known<Mm>): Worked<Mm> {
  const t = known(thickness, "thickness", "mm");
  const d = known(groove, "groove for the barrel", "mm");
  return work({
    says: "wood left over the barrel's groove",
    unit: "mm",
    formula: "w = t − d",
    inputs: { t, d },
    value: mm(t.value - d.value),
    source: SECTION,
  });
}

/**
 * First hole of the long plate from the pin: past the cove, where the leaf is full.
 *
 * @param cove  radius of the cove [mm]
 * @param pinOut  pin out from the cove's centre [mm]
 * @param beyond  hole beyond the cove's lower edge [mm]
 * @returns distance [mm]
 */
export function firstHole(cove: Known<Mm>, pinOut: Known<Mm>, beyond: Known<Mm>): Worked<Mm> {
  const R_c = known(cove, "radius of the cove", "mm");
  const d_x = known(pinOut, "pin out from the cove's centre", "mm");
  const e = known(beyond, "first hole beyond the cove's edge", "mm");
  return work({
    says: "first hole of the long plate from the pin",
    unit: "mm",
    formula: "x = R_c − d_x + e",
    inputs: { R_c, d_x, e },
    value: mm(R_c.value - d_x.value + e.value),
    source: SECTION,
  });
}

/**
 * Longest screw that stays covered, measured from the plate's outer face.
 *
 * @param thickness  of the wood [mm]
 * @param faceDepth  from `outerFaceDepth` [mm]
 * @param cover  wood to be left over its point [mm]
 * @returns length [mm]
 */
export function longestScrew(
  thickness: Known<Mm>,
  faceDepth: Known<Mm>,
  cover: Known<Mm>,
): Worked<Mm> {
  const t = known(thickness, "thickness", "mm");
  const q = known(faceDepth, "plates' outer face inside the underside", "mm");
  const a = known(cover, "wood left over the screw's point", "mm");
  return work({
    says: "longest screw in the plates",
    unit: "mm",
    formula: "L = t − q − a",
    inputs: { t, q, a },
    value: mm(t.value - q.value - a.value),
    source: SECTION,
  });
}
