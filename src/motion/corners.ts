import type { Sizes } from "./rule-joint.ts";

/** A point of the section, from the round-over's centre [mm]. */
export type Spot = { readonly x: number; readonly y: number };

/**
 * A point turned about the pin, as the leaf turns: downwards.
 *
 * @param point  in the closed section
 * @param radians  of swing; negative: how the top moves as seen from the leaf [rad]
 */
export function swung(s: Sizes, point: Spot, radians: number): Spot {
  const [x, y] = [point.x - s.dx, point.y - s.dy];
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  return { x: s.dx + x * cos + y * sin, y: s.dy - x * sin + y * cos };
}

/** The points that can touch before arcs do, and the cove's centre, each in the closed section. */
export type Corners = {
  readonly foot: Spot;
  readonly lowerEdge: Spot;
  readonly lipTip: Spot;
  readonly leafCorner: Spot;
  readonly coveCentre: Spot;
  /** direction of the lip's tip from the cove's centre, in radians */
  readonly lipAngle: number;
};

/** Every such point of one section, to be asked at many swings. */
export const cornersOf = (s: Sizes): Corners => ({
  foot: { x: s.R, y: 0 },
  lowerEdge: { x: s.R - s.u, y: -s.b },
  lipTip: { x: s.g + s.trim, y: s.k - s.c + Math.sqrt(s.Rc ** 2 - s.trim ** 2) },
  leafCorner: { x: s.g + s.Rc, y: -s.b },
  coveCentre: { x: s.g, y: s.k - s.c },
  lipAngle: Math.acos(s.trim / s.Rc),
});
