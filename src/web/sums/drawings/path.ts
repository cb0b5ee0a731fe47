/** A point on a plate. */
export type At = readonly [x: number, y: number];

/** Points as a path. */
export const pathOf = (points: readonly At[], close = false): string =>
  points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${x.toFixed(2)} ${y.toFixed(2)}`).join("") +
  (close ? "Z" : "");

/** A small change, as large as it is drawn, and how it is said that it is not drawn true. */
type Magnified = { readonly drawn: number; readonly says: string };

/**
 * How a change is drawn so that it can be seen: so many times as large, from a few round numbers;
 * cut short and said to be so where even the true size is too much.
 *
 * @param change  at the plate's scale, signed
 * @param room  the most that can be drawn
 */
export function magnified(change: number, room: number): Magnified {
  if (change === 0) return { drawn: 0, says: "no change" };
  const times = [500, 200, 100, 50, 20, 10, 5, 2, 1].find((k) => Math.abs(change) * k <= room);
  if (times === undefined) return { drawn: Math.sign(change) * room, says: "not to scale" };
  return { drawn: change * times, says: times === 1 ? "drawn to scale" : `drawn ×${times}` };
}
