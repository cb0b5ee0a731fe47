import { convexHull, distanceInside, type PlanPoint } from "../geometry/index.ts";
import { type Kg, type Mm, mm, type N, newtons, ratio, STANDARD_GRAVITY } from "../units/index.ts";
import {
  derived,
  type Given,
  given,
  type Known,
  known,
  Problem,
  type Worked,
  work,
} from "../worked/index.ts";

const gravity = given(
  "standard gravity [m/s²]",
  ratio(STANDARD_GRAVITY),
  "1",
  derived("standard gravity, by definition"),
);

/** About the least anybody leans with, and a firm lean; our own measure, not a standard's. */
export const LIGHT_LEAN = newtons(100);
export const FIRM_LEAN = newtons(200);

/**
 * Vertical load that lifts the far feet, for one line of feet.
 *
 * @param massOfAll  of the piece as it stands, above 0 [kg]
 * @param holding  from the foot line back to the centre of gravity [mm]
 * @param reach  from the foot line out to the load, above 0 [mm]
 * @returns load; nought or less when it falls by itself [N]
 */
export function tippingLoad(massOfAll: Known<Kg>, holding: Known<Mm>, reach: Known<Mm>): Worked<N> {
  const m = known(massOfAll, "mass of the piece", "kg");
  const a = known(holding, "foot line to centre of gravity", "mm");
  const b = known(reach, "foot line out to the load", "mm");
  return work({
    says: "load that tips it",
    unit: "N",
    formula: "F = m·g·a/b",
    inputs: { m, g: gravity, a, b },
    value: newtons((m.value * STANDARD_GRAVITY * a.value) / b.value),
    source: derived("statics"),
  });
}

/** How a piece stands: its feet, its mass and where that lies, seen from above. */
export type Stance = {
  /** where it touches the floor; at least three, not in one line */
  readonly feet: readonly PlanPoint[];
  /** of the piece in this state [kg] */
  readonly mass: Known<Kg>;
  readonly centre: PlanPoint;
};

/**
 * Vertical load at a place that tips the piece, by whichever line of feet gives way first.
 *
 * @param stance  feet, mass, centre of gravity
 * @param load  where somebody leans
 * @returns the load, or undefined when the place lies within the feet and no load tips it
 * @throws Problem "centre-outside-feet" when it falls by itself
 */
export function tippingLoadAt(stance: Stance, load: PlanPoint): Worked<N> | undefined {
  const hull = convexHull(stance.feet);
  const edges = hull.map((a, i) => [a, hull[(i + 1) % hull.length] ?? a] as const);
  const tips = edges.flatMap(([a, b]) => {
    const holding = distanceInside(a, b, stance.centre);
    const reach = -distanceInside(a, b, load);
    if (holding <= 0) throw fallsByItself();
    return reach > 0
      ? [
          tippingLoad(
            stance.mass,
            inPlan("foot line to centre of gravity", holding),
            inPlan("foot line out to the load", reach),
          ),
        ]
      : [];
  });
  return tips.sort((x, y) => x.value - y.value)[0];
}

const inPlan = (says: string, distance: number): Given<Mm> =>
  given(says, mm(distance), "mm", derived("geometry of the feet and the load, seen from above"));

const fallsByItself = () =>
  new Problem(
    "centre-outside-feet",
    "centre of gravity",
    "It lies outside the feet: the piece falls by itself.",
    "Spread the feet, or lighten what overhangs.",
  );

/**
 * Level push at a height that tips the piece over a line of feet that cannot slide.
 *
 * @param massOfAll  of the piece, above 0 [kg]
 * @param holding  from the foot line back to the centre of gravity [mm]
 * @param height  of the push over the floor, above 0 [mm]
 * @returns push [N]
 */
export function tippingPush(
  massOfAll: Known<Kg>,
  holding: Known<Mm>,
  height: Known<Mm>,
): Worked<N> {
  const m = known(massOfAll, "mass of the piece", "kg");
  const a = known(holding, "foot line to centre of gravity", "mm");
  const h = known(height, "height of the push", "mm");
  return work({
    says: "level push that tips it, feet blocked",
    unit: "N",
    formula: "F_h = m·g·a/h",
    inputs: { m, g: gravity, a, h },
    value: newtons((m.value * STANDARD_GRAVITY * a.value) / h.value),
    source: derived("statics"),
  });
}

/**
 * From the middle of the piece's foot line back to its centre of gravity.
 *
 * @param feet  between the outer edges of the feet, above 0 [mm]
 * @param offset  of the centre of gravity towards that foot line [mm]
 * @returns distance; nought or less when the piece falls by itself [mm]
 */
export function footHolding(feet: Known<Mm>, offset: Known<Mm>): Worked<Mm> {
  const f = known(feet, "between the feet", "mm");
  const o = known(offset, "centre of gravity off the middle", "mm");
  return work({
    says: "foot line to centre of gravity",
    unit: "mm",
    formula: "a = f/2 − o",
    inputs: { f, o },
    value: mm(f.value / 2 - o.value),
    source: derived("geometry"),
  });
}

/**
 * From a foot line out to a load near the edge of the top on the same side.
 *
 * @param top  from edge to edge, above 0 [mm]
 * @param inset  of the load from the edge [mm]
 * @param feet  between the outer edges of the feet, above 0 [mm]
 * @returns distance; nought or less when the load lies within the feet [mm]
 */
export function edgeReach(top: Known<Mm>, inset: Known<Mm>, feet: Known<Mm>): Worked<Mm> {
  const t = known(top, "top, edge to edge", "mm");
  const i = known(inset, "load in from the edge", "mm");
  const f = known(feet, "between the feet", "mm");
  return work({
    says: "foot line out to the load",
    unit: "mm",
    formula: "b = t/2 − i − f/2",
    inputs: { t, i, f },
    value: mm(t.value / 2 - i.value - f.value / 2),
    source: derived("geometry"),
  });
}
