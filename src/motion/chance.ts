/** Draws numbers, the same ones again for the same seed. */
export type Chance = {
  /** between 0 and under 1 */
  readonly even: () => number;
  /** about nought, in standard deviations */
  readonly bell: () => number;
};

/**
 * A small generator of our own: the core knows no chance but what a seed brings.
 *
 * @param seed  any whole number [1]
 */
export function seeded(seed: number): Chance {
  let state = seed >>> 0;
  const even = () => {
    // A Weyl sequence, its bits mixed by two multiplications; period 2³².
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
  const bell = () => {
    const away = Math.sqrt(-2 * Math.log(1 - even()));
    return away * Math.cos(2 * Math.PI * even());
  };
  return { even, bell };
}
