type Spot = readonly [x: number, y: number];

/** Plain sizes of a joint between square edges [mm]. */
export type Square = {
  readonly thickness: number;
  readonly setOut: number;
  readonly pinOut: number;
  readonly pinHeight: number;
};

/** So far both members reach from the joint [mm]. */
const FAR = 300;

/** How deep two convex outlines lie in each other, by every face of either; below nought they are apart. */
function depth(a: readonly Spot[], b: readonly Spot[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [one, other] of [
    [a, b],
    [b, a],
  ] as const)
    one.forEach(([x, y], i) => {
      const [u, v] = one[(i + 1) % one.length] as Spot;
      const size = Math.hypot(u - x, v - y);
      const out = other.map(([p, q]) => ((p - x) * (v - y) - (q - y) * (u - x)) / size);
      least = Math.min(least, -Math.min(...out));
    });
  return least;
}

/**
 * How deep a square-edged leaf lies in a square-edged top when it is down by some degrees.
 *
 * @param degrees  leaf down by this [°]
 */
export function depthAt(
  { thickness: t, setOut: g, pinOut: x, pinHeight: h }: Square,
  degrees: number,
) {
  const top: readonly Spot[] = [
    [-FAR, 0],
    [0, 0],
    [0, t],
    [-FAR, t],
  ];
  const leaf: readonly Spot[] = [
    [g, 0],
    [g + FAR, 0],
    [g + FAR, t],
    [g, t],
  ];
  const a = (degrees * Math.PI) / 180;
  const [cos, sin] = [Math.cos(a), Math.sin(a)];
  const turned = leaf.map(
    ([p, q]): Spot => [x + (p - x) * cos + (q - h) * sin, h - (p - x) * sin + (q - h) * cos],
  );
  return depth(top, turned);
}

/** Swings the leaf down a tenth of a degree at a time, knowing nothing but the two outlines. */
export function sweptSquare(square: Square) {
  let [deepest, first] = [Number.NEGATIVE_INFINITY, undefined as number | undefined];
  for (let i = 0; i <= 900; i++) {
    const now = depthAt(square, i / 10);
    deepest = Math.max(deepest, now);
    if (first === undefined && now > 1e-4) first = i / 10;
  }
  return { deepest, first };
}
