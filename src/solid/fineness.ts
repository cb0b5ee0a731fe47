/** How far a round cut's flats may lie inside its true circle [mm]. */
export const CHORD = 0.05;

/** However small a hole: fewer would look like a nut. */
export const LEAST_SIDES = 16;

/**
 * How many flats stand for a full circle, corners on the true circle: so many that none is farther
 * than `CHORD` from it. A multiple of four, so that both middle lines of a round hole are exact.
 *
 * @param radius  above 0 [mm]
 */
export function sidesFor(radius: number): number {
  if (!(radius > 0)) throw new Error(`a circle with radius ${radius}`);
  const needed = radius > CHORD ? Math.PI / Math.acos(1 - CHORD / radius) : LEAST_SIDES;
  return 4 * Math.ceil(Math.max(LEAST_SIDES, needed) / 4);
}
