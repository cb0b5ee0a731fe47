import { type Mm, mm, type N, newtons, type Pct, pct } from "../units/index.ts";
import { derived, type Known, known, type Worked, work } from "../worked/index.ts";
import { PLAN } from "./swing-arm.ts";

const LEVER = derived("lever of the arm about its pivot");

/**
 * Part of the leaf's width that an open arm bears.
 *
 * @param beyond  arm beyond the rail [mm]
 * @param overhang  from the rail's face to the leaf's joint [mm]
 * @param leaf  width of the leaf [mm]
 * @returns share of that width, from none to all of it [%]
 */
export function bornePart(beyond: Known<Mm>, overhang: Known<Mm>, leaf: Known<Mm>): Worked<Pct> {
  const o = known(beyond, "arm beyond the rail", "mm");
  const v = known(overhang, "from the rail's face to the joint", "mm");
  const W = known(leaf, "width of the leaf", "mm");
  return work({
    says: "of the leaf's width is borne",
    unit: "%",
    formula: "p = 100·max(0, min(1, (o − v)/W))",
    inputs: { o, v, W },
    value: pct(100 * Math.max(0, Math.min(1, (o.value - v.value) / W.value))),
    source: PLAN,
  });
}

/**
 * How far an arm sinks at its end because its pivot's screw has play in its hole.
 *
 * @param reach  from the pivot to the end [mm]
 * @param hole  diameter of the hole [mm]
 * @param screw  diameter of the screw, no larger [mm]
 * @param bearing  length of the hole, the arm's height [mm]
 * @returns droop at the end [mm]
 */
export function droopFromPlay(
  reach: Known<Mm>,
  hole: Known<Mm>,
  screw: Known<Mm>,
  bearing: Known<Mm>,
): Worked<Mm> {
  const a = known(reach, "pivot to the end that swings out", "mm");
  const d = known(hole, "hole of the pivot", "mm");
  const s = known(screw, "screw of the pivot", "mm");
  const L = known(bearing, "length of the pivot's hole", "mm");
  return work({
    says: "droop that the pivot's play lets through",
    unit: "mm",
    formula: "δ = a·max(0, d − s)/L",
    inputs: { a, d, s, L },
    value: mm((a.value * Math.max(0, d.value - s.value)) / L.value),
    source: LEVER,
  });
}

/**
 * How far the end sinks until the tail meets the underside of the top.
 *
 * @param reach  from the pivot to the end [mm]
 * @param tail  from the pivot to the tail's end [mm]
 * @param gap  between tail and top [mm]
 * @returns droop at the end [mm]
 */
export function droopUntilTail(reach: Known<Mm>, tail: Known<Mm>, gap: Known<Mm>): Worked<Mm> {
  const a = known(reach, "pivot to the end that swings out", "mm");
  const b = known(tail, "pivot to the tail's end", "mm");
  const v = known(gap, "gap over the tail", "mm");
  return work({
    says: "droop until the tail meets the top",
    unit: "mm",
    formula: "δ = v·a/b",
    inputs: { v, a, b },
    value: mm((v.value * a.value) / b.value),
    source: LEVER,
  });
}

/**
 * How far an arm droops at its end: as far as its pivot lets it, or until its tail holds it.
 *
 * @param play  from `droopFromPlay` [mm]
 * @param tail  from `droopUntilTail` [mm]
 * @returns droop at the end [mm]
 */
export function armDroop(play: Known<Mm>, tail: Known<Mm>): Worked<Mm> {
  const p = known(play, "droop that the pivot's play lets through", "mm");
  const q = known(tail, "droop until the tail meets the top", "mm");
  return work({
    says: "arm's end sinks by",
    unit: "mm",
    formula: "δ = min(p, q)",
    inputs: { p, q },
    value: mm(Math.min(p.value, q.value)),
    source: LEVER,
  });
}

/**
 * How hard a tail that holds its arm presses up against the top.
 *
 * @param load  on the arm's end [N]
 * @param reach  from the pivot to the end [mm]
 * @param tail  from the pivot to the tail's end [mm]
 * @returns force [N]
 */
export function tailForce(load: Known<N>, reach: Known<Mm>, tail: Known<Mm>): Worked<N> {
  const F = known(load, "load on the arm's end", "N");
  const a = known(reach, "pivot to the end that swings out", "mm");
  const b = known(tail, "pivot to the tail's end", "mm");
  return work({
    says: "tail presses up against the top",
    unit: "N",
    formula: "T = F·a/b",
    inputs: { F, a, b },
    value: newtons((F.value * a.value) / b.value),
    source: LEVER,
  });
}

/** Washers that lift an arm to where it should be. */
export type WasherStack = {
  /** thickness of each, the thinnest first [mm] */
  readonly washers: readonly Mm[];
  /** their sum [mm] */
  readonly lift: Mm;
  /** what is still missing [mm] */
  readonly short: Mm;
};

/** Thicknesses are reckoned in whole hundredths of a millimetre, as a caliper reads them. */
const HUNDREDTHS = 100;
const MOST_LIFT = 100;

/**
 * Washers for under an arm that its lower saw cut has let down: as high as they go without standing
 * proud, and as few as will do.
 *
 * @param lift  wanted: cut, counterbore, and how proud it is to be [mm]
 * @param available  thicknesses at hand, each as often as wanted [mm]
 */
export function washerStack(lift: Mm, available: readonly Mm[]): WasherStack {
  const wanted = Math.max(0, Math.round(Math.min(lift, MOST_LIFT) * HUNDREDTHS));
  const sizes = available.map((t) => Math.round(t * HUNDREDTHS)).filter((t) => t > 0);
  const fewest: (readonly number[] | undefined)[] = [[]];
  for (let sum = 1; sum <= wanted; sum++) {
    const ways = sizes.flatMap((size) => {
      const before = fewest[sum - size];
      return before ? [[...before, size]] : [];
    });
    fewest[sum] = ways.sort((a, b) => a.length - b.length)[0];
  }
  const best = fewest.findLastIndex((stack) => stack !== undefined);
  const washers = (fewest[best] ?? []).map((t) => mm(t / HUNDREDTHS)).sort((a, b) => a - b);
  return {
    washers,
    lift: mm(best / HUNDREDTHS),
    short: mm((Math.max(0, lift) * HUNDREDTHS - best) / HUNDREDTHS),
  };
}

/**
 * Where the arm's top comes to stand against the rail's: proud it would jam under the top.
 *
 * @param kerf  of the cut under the arm [mm]
 * @param counterbore  depth that washers sink into [mm]
 * @param washers  their sum [mm]
 * @returns height over the rail's edge, negative when it is shy of it [mm]
 */
export function armProud(kerf: Known<Mm>, counterbore: Known<Mm>, washers: Known<Mm>): Worked<Mm> {
  const k = known(kerf, "cut under the arm", "mm");
  const c = known(counterbore, "counterbore for the washers", "mm");
  const w = known(washers, "washers", "mm");
  return work({
    says: "arm's top over the rail's",
    unit: "mm",
    formula: "p = w − k − c",
    inputs: { w, k, c },
    value: mm(w.value - k.value - c.value),
    source: PLAN,
  });
}
