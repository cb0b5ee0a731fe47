/** A place or direction in the piece: right, away, up [mm]. */
export type Place = readonly [number, number, number];
export type Size = { readonly width: number; readonly height: number };
/** A place in the picture, from its middle, to the right and up [px]. */
export type Spot = { readonly x: number; readonly y: number };

/** Where the piece is seen from. Parallel rays, as on a drawing: nothing is smaller for being far. */
export type View = {
  /** round the piece, from its front towards its right side [°] */
  readonly turnDeg: number;
  /** above the floor's plane [°] */
  readonly tiltDeg: number;
  /** what stands in the middle of the picture */
  readonly target: Place;
  readonly mmPerPx: number;
  /** how much of it was set by hand: nothing, the direction alone, or also the part that is seen */
  readonly hold: "fitted" | "turned" | "moved";
};

/** The ways of looking that have a name. */
export const ways = {
  front: { turnDeg: 0, tiltDeg: 0 },
  side: { turnDeg: 90, tiltDeg: 0 },
  above: { turnDeg: 0, tiltDeg: 90 },
  corner: { turnDeg: 34, tiltDeg: 24 },
} as const;
export type Way = keyof typeof ways;

/** Share of the picture left free on each side when the piece is fitted. */
const MARGIN = 0.07;
/** Nearest and farthest [mm/px]. */
const NEAREST = 0.01;
const FARTHEST = 40;

const dot = (a: Place, b: Place) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The picture's own directions in the piece: to its right, up, and out towards the eye. */
export function axesOf({ turnDeg, tiltDeg }: Pick<View, "turnDeg" | "tiltDeg">) {
  const [turn, tilt] = [(turnDeg * Math.PI) / 180, (tiltDeg * Math.PI) / 180];
  const [s, c, st, ct] = [Math.sin(turn), Math.cos(turn), Math.sin(tilt), Math.cos(tilt)];
  const right: Place = [c, s, 0];
  const up: Place = [-s * st, c * st, ct];
  const out: Place = [s * ct, -c * ct, st];
  return { right, up, out };
}

/** The view from the same direction in which all the points just fit. */
export function fitted(view: View, points: readonly Place[], size: Size): View {
  if (points.length === 0 || !(size.width > 0 && size.height > 0)) return view;
  const { right, up, out } = axesOf(view);
  const spanOf = (way: Place) => {
    const places = points.map((point) => dot(point, way));
    const [low, high] = [Math.min(...places), Math.max(...places)];
    return { middle: (low + high) / 2, reach: high - low };
  };
  const [across, upward, deep] = [spanOf(right), spanOf(up), spanOf(out)];
  const room = 1 - 2 * MARGIN;
  const mmPerPx = within(
    Math.max(across.reach / (size.width * room), upward.reach / (size.height * room)),
  );
  const at = (i: 0 | 1 | 2) =>
    right[i] * across.middle + up[i] * upward.middle + out[i] * deep.middle;
  return { ...view, target: [at(0), at(1), at(2)], mmPerPx, hold: "fitted" };
}

/** Whether every point lies within the picture. */
export function isInSight(view: View, points: readonly Place[], size: Size): boolean {
  return points.every((point) => {
    const { x, y } = spotOf(view, point);
    return Math.abs(x) <= size.width / 2 && Math.abs(y) <= size.height / 2;
  });
}

/** Where a point of the piece lies in the picture. */
export function spotOf(view: View, point: Place): Spot {
  const { right, up } = axesOf(view);
  const { target, mmPerPx } = view;
  return {
    x: (dot(point, right) - dot(target, right)) / mmPerPx,
    y: (dot(point, up) - dot(target, up)) / mmPerPx,
  };
}

/** The piece turned under the hand; it never goes over the top. */
export const turned = (view: View, turnDeg: number, tiltDeg: number): View => ({
  ...view,
  turnDeg: (view.turnDeg + turnDeg) % 360,
  tiltDeg: Math.min(90, Math.max(-90, view.tiltDeg + tiltDeg)),
  hold: view.hold === "moved" ? "moved" : "turned",
});

/** The piece moved with the hand by so many pixels. */
export function slid(view: View, by: Spot): View {
  return {
    ...view,
    target: shifted(view, -by.x * view.mmPerPx, -by.y * view.mmPerPx),
    hold: "moved",
  };
}

/** The piece brought nearer, what lies at the spot staying there; a factor below 1 takes it away. */
export function nearer(view: View, factor: number, spot: Spot = { x: 0, y: 0 }): View {
  const mmPerPx = within(view.mmPerPx / factor);
  const gain = view.mmPerPx - mmPerPx;
  return { ...view, mmPerPx, target: shifted(view, spot.x * gain, spot.y * gain), hold: "moved" };
}

/** The same view in a picture of another size: what was seen is seen, as large as that allows. */
export function resized(view: View, from: Size, to: Size): View {
  if (!(from.width > 0 && from.height > 0 && to.width > 0 && to.height > 0)) return view;
  const grown = Math.min(to.width / from.width, to.height / from.height);
  return { ...view, mmPerPx: within(view.mmPerPx / grown) };
}

const within = (mmPerPx: number) => Math.min(FARTHEST, Math.max(NEAREST, mmPerPx));

function shifted(view: View, across: number, upward: number): Place {
  const { right, up } = axesOf(view);
  const at = (i: 0 | 1 | 2) => view.target[i] + right[i] * across + up[i] * upward;
  return [at(0), at(1), at(2)];
}
