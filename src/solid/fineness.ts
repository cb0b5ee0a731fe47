/** How far a round cut's flats may lie inside its true circle [mm]. */
export const CHORD = 0.05;
/** The same for a moulding, whose halves run within a tenth of a millimetre of each other [mm]. */
export const FINE_CHORD = 0.01;

/** However small a hole: fewer would look like a nut. */
export const LEAST_SIDES = 16;

/**
 * How many flats stand for a full circle, corners on the true circle: so many that none is farther
 * than a chord's height from it. A multiple of four, so that both middle lines of a round hole are exact.
 *
 * @param radius  above 0 [mm]
 * @param chord  how far its flats may be off the circle, above 0 [mm]
 */
export function sidesFor(radius: number, chord: number = CHORD): number {
  if (!(radius > 0)) throw new Error(`a circle with radius ${radius}`);
  const needed = radius > chord ? Math.PI / Math.acos(1 - chord / radius) : LEAST_SIDES;
  return 4 * Math.ceil(Math.max(LEAST_SIDES, needed) / 4);
}
